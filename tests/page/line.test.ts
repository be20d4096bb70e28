import { describe, expect, test } from 'vitest';
import { quoted } from '../../src/engine/text/lines/option-line.ts';
import { readLine, writeLine } from '../../src/page/browser/composer/line.ts';
import type { Action, Option } from '../../src/page/browser/declared.ts';

const option = (name: string, over: Partial<Option> = {}): Option => ({
  name,
  kind: 'text',
  required: false,
  says: '',
  completes: false,
  choices: [],
  ...over,
});
const actions: readonly Action[] = [
  { path: 'dose', says: '', options: ['colourant', 'portion', 'with-1', 'with-2'].map(name => option(name)) },
  { path: 'shelf add', says: '', options: [option('item'), option('amount')] },
  { path: 'shelf list', says: '', options: [] },
];
const values = (line: string) => Object.fromEntries(readLine(line, actions).values);

describe('a line that may not be finished', () => {
  test('names its command and what it says of each option', () => {
    const read = readLine('/dose colourant:"gold mica" portion:2 cups', actions);
    expect(read.action?.path).toBe('dose');
    expect(Object.fromEntries(read.values)).toEqual({ colourant: 'gold mica', portion: '2 cups' });
  });

  test('belongs to a subcommand as soon as that is written', () => {
    expect(readLine('/shelf', actions).action).toBeUndefined();
    expect(readLine('/shelf add item:Plum', actions).action?.path).toBe('shelf add');
    expect(values('/shelf add item:Plum amount:"25 g"')).toEqual({ item: 'Plum', amount: '25 g' });
  });

  test('keeps colons, quotes and other names inside a value', () => {
    expect(values('/dose colourant:"a \\"soft\\" ratio 1:2" portion:1 cup')).toEqual({
      colourant: 'a "soft" ratio 1:2',
      portion: '1 cup',
    });
    expect(values('/dose colourant:mica item:x')).toEqual({ colourant: 'mica item:x' });
  });

  test('takes the first of a repeated option without its number, and either spelling', () => {
    expect(values('/dose colorant:mica with:oxide')).toEqual({ colourant: 'mica', 'with-1': 'oxide' });
  });

  test('says which words belong nowhere', () => {
    expect(readLine('/dose please colourant:mica', actions).stray).toBe('please');
  });

  test.each([
    ['/do', { kind: 'command', typed: '/do', from: 0, to: 3 }],
    ['/dose por', { kind: 'option', typed: 'por', from: 6, to: 9 }],
    ['/dose colourant:ul', { kind: 'value', option: 'colourant', typed: 'ul', from: 16, to: 18 }],
    ['/dose colourant:"gold mi', { kind: 'value', option: 'colourant', typed: 'gold mi', from: 16, to: 24 }],
    ['/dose colourant:mica portion:', { kind: 'value', option: 'portion', typed: '', from: 29, to: 29 }],
  ])('knows where the caret stands at the end of %s', (line, at) => {
    expect(readLine(line, actions).at).toEqual(at);
  });

  test('a caret in the middle of a value replaces that value', () => {
    const line = '/dose colourant:mica portion:"2 cups"';
    expect(readLine(line, actions, 18).at).toMatchObject({ kind: 'value', option: 'colourant' });
  });
});

test('what is written as a line reads back as it was', () => {
  const said = new Map([
    ['colourant', 'Ana\'s "best" \\ mica'],
    ['portion', '1 1/2 cups'],
    ['with-2', 'a:b'],
  ]);
  const line = writeLine('dose', said);
  expect(readLine(line, actions).values).toEqual(said);
  expect(quoted('mica')).toBe('mica');
});
