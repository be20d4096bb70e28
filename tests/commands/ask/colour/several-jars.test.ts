import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openTerminalRoom, type TerminalRoom } from '../../terminal-room.ts';

type Shown = { readonly data: { readonly understood: { readonly lines: readonly string[] } } };

let room: TerminalRoom<Shown>;
beforeAll(async () => {
  room = await openTerminalRoom<Shown>('jars');
});
afterAll(() => room[Symbol.asyncDispose]());

const linesOf = async (question: string) =>
  (await room.ask('ines', `/ask question:"${question}"`)).data.understood.lines;

describe('several jars at once', () => {
  test.each([
    ['add 30 g gold mica and 2 oz kaolin to my shelf', ['30 g', '2 oz']],
    ['add gold mica 30 g, kaolin 1/2 lb to my shelf', ['30 g', '1/2 lb']],
    ['pon 30 g de mica dorada y 20 g de caolín en mi estantería', ['30 g', '20 g']],
    ['add gold mica and two ounces of kaolin to my shelf', [undefined, '2 ounces']],
    // Before or behind: which of the two is of the white nobody can tell.
    ['put 1 tsp gold mica and 2 tsp titanium dioxide 20 g on my shelf', ['1 tsp', undefined]],
  ])('each has the amount that stands by it, and no other’s: %s', async (question, amounts) => {
    const lines = await linesOf(question);
    expect(lines.map(line => /amount:"?([^"]+)"?/u.exec(line)?.[1])).toEqual(amounts);
  });
});
