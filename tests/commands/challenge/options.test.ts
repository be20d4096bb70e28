import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { day, type Fair, type FairRooms, openFair, photoOf } from './room.ts';

let rooms: FairRooms;
let fair: Fair;
beforeEach(async () => {
  rooms = await openFair();
  fair = rooms.group();
});
afterEach(async () => {
  expect(fair.faults).toEqual([]);
  await rooms[Symbol.asyncDispose]();
});

type Options = Record<string, string | number | boolean>;
const open = (more: Options = {}) =>
  fair.steward.run('/challenge open', {
    title: 'Slate',
    'entries-until': 'in 1 day',
    'votes-until': 'in 2 days',
    ...more,
  });
const enter = async (who: 'ana' | 'bea', more: Record<string, string> = {}) =>
  (
    await fair[who].run('/challenge enter', {
      photo: await photoOf(['#3f6fa8']),
      title: `Bar of ${who}`,
      colourants: 'ultramarine blue',
      ...more,
    })
  ).text;
const shown = async (challenge: string) => (await fair.member.run('/challenge show', { challenge })).text;

describe('the terms of a challenge', () => {
  test('it opens when it is told to', async () => {
    await open({ opens: 'in 1 day', 'entries-until': 'in 2 days', 'votes-until': 'in 3 days' });
    expect(await shown('Slate')).toContain('“Slate” has not begun.');
    await fair.wait(day);
    expect(await shown('Slate')).toContain('“Slate” is taking entries.');
  });

  test('makers are hidden unless a steward says that they are not', async () => {
    await open();
    await open({ title: 'Moss', anonymous: false });
    for (const challenge of ['Slate', 'Moss']) await enter('ana', { challenge });
    expect(await shown('Slate')).not.toContain('by Ana');
    expect(await shown('Moss')).toContain('by Ana');
  });

  test('at most so many colourants', async () => {
    await open({ colourants: 1 });
    expect(await enter('ana', { colourants: 'ultramarine blue, gold mica' })).toContain(
      'At most 1 colourant; yours has 2.',
    );
    expect(await enter('ana')).toContain('Bar 1');
  });

  test('a class about technique asks how it was made, and another note may be told', async () => {
    await open({ class: 'technique' });
    expect(await enter('ana')).toContain('say in the note how you made it');
    expect(await enter('ana', { note: 'poured high' })).toContain('Bar 1');
    const noted = { challenge: 'slate', note: 'poured through a funnel' };
    expect((await fair.ana.run('/challenge replace', noted)).text).toContain('Bar 1');
    const kept = await fair.ana.run('/privacy export');
    expect(Buffer.from(kept.files[0]!.bytes()).toString()).toContain('poured through a funnel');
  });

  test('a bar is as old as its maker told last', async () => {
    await open({ 'made-from': '2026-10-01' });
    expect(await enter('ana', { made: '2026-11-01' })).toContain('Bar 1');
    expect((await fair.ana.run('/challenge replace', { made: '2026-09-01' })).text).toContain('2026');
    expect((await fair.ana.run('/challenge replace', { made: '2026-11-02' })).text).toContain('Bar 1');
  });
});

test('of two challenges at once the one that is named is voted in, counted and looked up', async () => {
  await open();
  await open({ title: 'Moss' });
  for (const challenge of ['Slate', 'Moss'])
    for (const who of ['ana', 'bea'] as const) await enter(who, { challenge });
  await fair.wait(day);
  const { member, steward } = fair;
  await member.run('/challenge vote', { challenge: 'Slate', ranking: '1' });
  await member.run('/challenge vote', { challenge: 'Moss', ranking: '2' });
  const ballot = async (challenge: string) => (await member.run('/challenge ballot', { challenge })).text;
  expect(await ballot('Slate')).toContain('“Bar of ana” (bar 1)');
  expect(await ballot('Moss')).toContain('“Bar of bea” (bar 2)');
  await fair.wait(day + 6_000);
  for (const [challenge, first] of [
    ['Slate', 'Bar of ana'],
    ['Moss', 'Bar of bea'],
  ] as const) {
    expect((await member.run('/challenge results', { challenge })).text).toContain(
      `First in “${challenge}”: “${first}”`,
    );
    expect((await steward.run('/challenge audit', { challenge })).text).toContain(`“${challenge}”`);
    const { files } = await steward.run('/challenge export', { challenge });
    const json = files.find(({ name }) => name.endsWith('.json'))!;
    expect(JSON.parse(Buffer.from(json.bytes()).toString())).toMatchObject({ title: challenge });
  }
});
