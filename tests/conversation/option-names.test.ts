import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../src/terminal/seat.ts';
import { openConversation } from '../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const seat = { member: 'ana', group: 'bench', language: 'en', manages: false, roles: [] } as const;
const ask = async (line: string, language: 'en' | 'es' = 'en') =>
  (await askLine(line, { ...seat, language }, conversation)).answer;
const said = (answer: Awaited<ReturnType<typeof ask>>) =>
  answer.kind === 'reply' ? answer.headline : answer.kind === 'problem' ? answer.text : answer.title;

describe('one thing has one name', () => {
  /** What an option was once called, where that is another's name for the same thing; `except` says it of another thing. */
  const RETIRED: readonly { name: string; now: string; except: readonly string[] }[] = [
    { name: 'grams', now: 'amount', except: [] },
    { name: 'to', now: 'size', except: ['pour gradient'] },
    { name: 'name', now: 'save-as', except: ['batch poured'] },
    { name: 'picture', now: 'photo', except: [] },
    { name: 'color', now: 'colour', except: [] },
    { name: 'colorant', now: 'colourant', except: [] },
  ];
  test.each(RETIRED)('$name is called $now', ({ name, except }) => {
    const paths = [...conversation.registry.actions]
      .filter(([, { options }]) => options.some(option => option.name === name))
      .map(([path]) => path);
    expect(paths).toEqual(except);
  });

  test('an option that was renamed keeps no name that is another option of its command', () => {
    for (const [path, { options, formerly }] of conversation.registry.actions)
      for (const [old, now] of Object.entries(formerly)) {
        expect([path, options.some(({ name }) => name === now)]).toEqual([path, true]);
        expect([path, options.some(({ name }) => name === old)]).toEqual([path, false]);
      }
  });
});

describe('lines under the old names are still read', () => {
  test.each([
    ['/recipe rescale recipe:Harbour to:2', '"factor":2'],
    ['/recipe copy recipe:Harbour name:Quay', '“Quay”'],
    ['/shelf weigh item:Amber grams:2.35', '2.35 g'],
    ['/shelf low-mark item:Amber grams:5', '5 g'],
  ])('%s', async (line, shown) => {
    await ask('/plan oils:"olive 700 g, coconut 300 g" save-as:Harbour');
    await ask('/shelf add item:Amber colourant:"gold mica" amount:"30 g"');
    const answer = await ask(line);
    expect(answer).toMatchObject({ kind: 'reply' });
    expect(JSON.stringify(answer)).toContain(shown);
  });

  test('a number that an older line gave is the text of today', async () => {
    const weigh = conversation.registry.actions.get('shelf weigh')!;
    expect(weigh.formerly).toEqual({ grams: 'amount' });
    const reply = await ask('/shelf weigh item:Amber amount:"1/2 tsp"');
    expect(reply).toMatchObject({ kind: 'problem', id: 'spoon-weight-unreadable' });
  });
});

describe('an option that a command does not have', () => {
  test.each([
    ['/dose color:"ultramarine blue" portion:"2 cups"', 'colourant'],
    ['/dose colourant:"ultramarine blue" amount:"2 cups"', 'portion'],
    ['/dose pigment:"ultramarine blue" portion:"2 cups"', 'colourant'],
    ['/dose colourant:"ultramarine blue" porton:"2 cups"', 'portion'],
    ['/preview mixture:"1 tsp gold mica" portion:"1 cup"', undefined],
    ['/match colour:teal', 'target'],
    ['/diagnose text:"white powder on top"', 'words'],
  ])('%s: %s', async (line, meant) => {
    const answer = await ask(line);
    expect(said(answer)).toMatch(/There is no option/u);
    if (meant === undefined) return;
    expect(said(answer)).toContain(`“${meant}”`);
    const [button] = ('choices' in answer ? answer.choices : undefined) ?? [];
    expect(button).toMatchObject({ kind: 'button', label: expect.stringContaining(`${meant}:`) });
  });

  test('names the command’s options in Spanish too', async () => {
    expect(said(await ask('/dose color:"ultramar azul" portion:"2 tazas"', 'es'))).toMatch(
      /¿Será «colourant»\? Las opciones son: .*portion/u,
    );
  });

  test('what it is not near is only told', async () => {
    expect(await ask('/dose constructor:"x" portion:"2 cups"')).toMatchObject({ kind: 'problem' });
  });
});
