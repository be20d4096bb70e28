import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openTalk, type Reply, type Talk, understoodOf } from './talking.ts';

/*
 * Talks that another hand wrote, who has seen neither code nor rules, with what a good answer says first and what none may say. `reads`: what a
 * turn is read as where its answer is right or useful by that; a turn without it is answered wrongly or uselessly still. `firstRun` counts the
 * turns of the talks that were put aside, run once; “readAlone” those of the version that read each turn by itself.
 */

type Turn = { readonly text: string; readonly good: string; readonly never: string; readonly reads?: object };
type Talks = {
  readonly firstRun: {
    readonly turns: number;
    readonly right: number;
    readonly useful: number;
    readonly askedBack: number;
    readonly wrong: number;
  };
  readonly talks: readonly { readonly language: 'en' | 'es'; readonly turns: readonly Turn[] }[];
};
const file = new URL('postwoman-and-two-friends.json', import.meta.url);
const { firstRun, talks } = JSON.parse(readFileSync(file, 'utf8')) as Talks;

let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(() => talk[Symbol.asyncDispose]());

function readAs(reply: Reply): object {
  const { data } = reply;
  if ('emergency' in data) return { emergency: (data.emergency as { id: string }).id };
  const { technique, lye, askedBack, command, given, ...others } = understoodOf(reply);
  if (technique !== undefined) return { technique };
  if (lye !== undefined) return { matter: lye };
  if (askedBack) return { asks: true };
  return 'outside' in others ? { outside: true } : { command, given };
}

describe.each(
  talks.map(({ language, turns }, at) => ({ name: `${at + 1}: ${turns[0]?.text}`, at, language, turns })),
)('talk $name', ({ at, language, turns }) => {
  test('every turn whose answer was found good is read as it was', async () => {
    const read: (object | undefined)[] = [];
    for (const { text, reads } of turns) {
      const answer = await talk.say(text, { channel: `talk ${at}`, language });
      read.push(reads && readAs(answer));
    }
    expect(read).toEqual(turns.map(({ reads }) => reads));
  });
});

test('the turns of the first run are counted each once', () => {
  const { turns, right, useful, askedBack, wrong } = firstRun;
  expect(right + useful + askedBack + wrong).toBe(turns);
  expect(talks.slice(45).flatMap(one => one.turns.slice(1))).toHaveLength(turns);
});
