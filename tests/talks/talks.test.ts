import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { drawn, hasChanged } from '../walk.ts';
import { openTalk, type Reply, type Talk, understoodOf } from './talking.ts';

/*
 * Talks that other hands wrote, who have seen neither code nor rules, with what a good answer says first and what none may say. `reads`: what a
 * turn is read as where its answer is right or useful by that; a turn without it is answered wrongly or uselessly still. `firstRun` counts the
 * later turns from the talk `from` on, run once; “readAlone” those of the version that read each turn by itself.
 */

type Turn = { readonly text: string; readonly good: string; readonly never: string; readonly reads?: object };
type Talks = {
  readonly firstRun: {
    /** Number of the first talk that is counted, from 1. */
    readonly from: number;
    readonly turns: number;
    readonly right: number;
    readonly useful: number;
    readonly askedBack: number;
    readonly wrong: number;
  };
  readonly talks: readonly { readonly language: 'en' | 'es'; readonly turns: readonly Turn[] }[];
};
const folder = new URL('.', import.meta.url);
const sets = readdirSync(folder)
  .filter(name => name.endsWith('.json'))
  .sort()
  .map(name => ({
    name: name.replace('.json', ''),
    ...(JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Talks),
  }));

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

const all = sets.flatMap(({ name: writer, talks }) =>
  talks.map(({ language, turns }, at) => ({
    name: `${at + 1} of ${writer}: ${turns[0]?.text}`,
    channel: `${writer} ${at}`,
    language,
    turns,
  })),
);

/** What breaks one talk in thirty is met by so many twice; each commit draws others, and one that changes how questions are read asks all. */
const DRAWN = (['jobs', 'matters', 'techniques'] as const).some(what => hasChanged(what, process.env.CHANGED))
  ? all.length
  : 60;

describe.each(drawn(all, DRAWN, 'talks'))('talk $name', ({ channel, language, turns }) => {
  test('every turn whose answer was found good is read as it was', async () => {
    const read: (object | undefined)[] = [];
    for (const { text, reads } of turns) {
      const answer = await talk.say(text, { channel, language });
      read.push(reads && readAs(answer));
    }
    expect(read).toEqual(turns.map(({ reads }) => reads));
  });
});

test.each(sets)('the turns of the first run of $name are counted each once', ({ firstRun, talks }) => {
  const { from, turns, right, useful, askedBack, wrong } = firstRun;
  expect(right + useful + askedBack + wrong).toBe(turns);
  expect(talks.slice(from - 1).flatMap(one => one.turns.slice(1))).toHaveLength(turns);
});
