import { afterAll, beforeAll, expect, test } from 'vitest';
import { openStore } from '../../../src/records/open.ts';
import { instead } from '../../../src/records/store.ts';
import { openRoom } from '../../loopback/room.ts';
import { PATIENT } from '../../records/patience.ts';

/*
 * The answer to the same words is given again as it was made. Each test asks once, changes one thing that the words do not
 * tell, and asks again: the answer has to mind it.
 */

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
  // What is asked a second time is kept.
  for (let time = 0; time < 2; time += 1) await dosed();
});
afterAll(() => room[Symbol.asyncDispose]());

const CUPS = { colourant: 'chromium oxide green', portion: '3 cups' };
const dosed = async (member = room.member) => await member.run('/dose', CUPS);
const headOf = (text: string) => text.split('\n')[0];

test('the same words get the same answer, and no cautions that have been met in full', async () => {
  const member = room.group.addMember({ name: 'Ines' });
  const [first, second, third] = [await dosed(member), await dosed(member), await dosed(member)];
  expect(headOf(second.text)).toBe(headOf(first.text));
  expect(second.text).toBe(third.text);
  expect(first.text.length).toBeGreaterThan(second.text.length);
});

test('of one who measures with other cups it is another one', async () => {
  const before = await dosed();
  const member = room.group.addMember({ name: 'Teo' });
  await member.run('/prefer', { spoons: 'metric' });
  const after = await dosed(member);
  // A metric cup is 250 ml, a US cup 236.6 ml.
  expect(gramsIn(after.text)).toBeGreaterThan(gramsIn(before.text));
});

test('of one who reads Spanish it is in Spanish, and of the next one in English again', async () => {
  const member = room.group.addMember({ name: 'Luz' });
  await member.run('/prefer', { language: 'es' });
  expect((await dosed(member)).text).toContain('verde');
  expect((await dosed()).text).toContain('chromium');
});

test('a jar of one’s own is meant from the moment it is on the shelf, and seen by its owner alone', async () => {
  const member = room.group.addMember({ name: 'Noa' });
  expect((await dosed(member)).ephemeral).toBe(false);
  await member.run('/shelf add', { item: 'Chromium oxide green', amount: '100 g' });
  const own = await dosed(member);
  expect(own.ephemeral).toBe(true);
  expect(JSON.stringify(own)).toContain('Take');
  expect((await dosed()).ephemeral).toBe(false);
});

test('what the group has seen since is told', async () => {
  const before = await dosed();
  await room.member.run('/colourant report', {
    item: CUPS.colourant,
    result: 'faded',
    process: 'gel',
  });
  const after = await dosed();
  expect(after.text).not.toBe(before.text);
});

test('nothing is written for it again: its folds lie there already', async () => {
  const inner = await openStore('sqlite::memory:', PATIENT);
  const written: string[] = [];
  const store = instead(inner, {
    commit: writes => {
      written.push(...writes.map(({ key }) => key));
      return inner.commit(writes);
    },
  });
  await using own = await openRoom({ store });
  const member = own.group.addMember({ name: 'Pia' });
  // Cautions met, asked twice, kept.
  for (let time = 0; time < 4; time += 1) await dosed(member);
  written.length = 0;
  for (let time = 0; time < 5; time += 1) await dosed(member);
  expect(written).toEqual([]);
});

/** The middle figure of "about 4.1 g" on the face. */
function gramsIn(text: string): number {
  const found = /(\d+(?:\.\d+)?) g\b/.exec(text)?.[1];
  if (found === undefined) throw new Error(`no grams in ${text}`);
  return Number(found);
}
