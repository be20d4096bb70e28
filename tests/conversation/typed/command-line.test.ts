import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { readCommandLine } from '../../../src/conversation/typed/command-line.ts';

const optionsOf = (path: string) =>
  ({ dose: ['colourant', 'portion'], 'shelf add': ['item', 'grams'] })[path];
const read = (line: string) => readCommandLine(line, optionsOf);

describe('a command line', () => {
  test.each([
    [
      'quoted values keep their spaces',
      '/dose colourant:"ultramarine blue" portion:"2 cups"',
      { colourant: 'ultramarine blue', portion: '2 cups' },
    ],
    [
      'values without quotes run up to the next option of that command',
      '/dose colourant:ultramarine blue portion:2 cups',
      { colourant: 'ultramarine blue', portion: '2 cups' },
    ],
    [
      'curly quotes from a phone are quotes',
      '/dose colourant:“red: oxide” portion:2cups',
      { colourant: 'red: oxide', portion: '2cups' },
    ],
    ['American spelling is understood', '/dose colorant:x portion:1', { colourant: 'x', portion: '1' }],
    ['a quote inside is escaped', '/dose colourant:"say \\"blue\\""', { colourant: 'say "blue"' }],
    ['an empty value stays empty', '/dose colourant:""', { colourant: '' }],
  ])('%s', (_, line, expected) => {
    const { options } = read(line);
    expect(Object.fromEntries(options.map(({ name, text }) => [name, text]))).toEqual(expected);
  });

  test('subcommands belong to the path', () => {
    expect(read('/shelf add item:"rosa"').path).toEqual(['shelf', 'add']);
    expect(read('/shelf list').path).toEqual(['shelf', 'list']);
  });

  test.each([
    ['text without a slash', 'dose please', 'line-not-a-command'],
    ['a quote that never closes', '/dose colourant:"blue', 'line-quote-open'],
    ['words after a quoted value', '/dose colourant:"blue" 2 cups', 'line-not-understood'],
  ])('%s is refused', (_, line, id) => {
    expect(() => read(line)).toThrow(expect.objectContaining({ id }));
  });

  property.prop([fc.string({ maxLength: 300 })])('whatever is quoted comes back as it was', value => {
    const line = `/dose colourant:"${value.replaceAll(/["\\]/g, '\\$&')}" portion:1`;
    expect(read(line).options).toEqual([
      { name: 'colourant', text: value },
      { name: 'portion', text: '1' },
    ]);
  });
});
