import { afterAll, beforeAll, expect, test } from 'vitest';
import { askedLineOf } from '../../src/records/asked/index.ts';
import { batchOf } from '../../src/records/batches/queries.ts';
import { refusalOf, StoreFailure } from '../../src/records/failure.ts';
import { foldsOfAnswer, keepFolds, keepFoldsAgain } from '../../src/records/folds/index.ts';
import { recentMatchOf } from '../../src/records/matches/index.ts';
import { openStore } from '../../src/records/open.ts';
import { wordsIn } from '../../src/words/index.ts';
import { PATIENT } from './patience.ts';

let store: Awaited<ReturnType<typeof openStore>>;
beforeAll(async () => {
  store = await openStore('sqlite::memory:', PATIENT);
});
afterAll(() => store.close());

const says = (refusal: Parameters<ReturnType<typeof wordsIn>['refusal']>[0]) =>
  wordsIn('en').refusal(refusal);

test.for([
  ['fold-forgotten', () => foldsOfAnswer({ store, member: 'odile' }, 'gone'), 'Ask the question again'],
  ['line-forgotten', () => askedLineOf({ store, member: 'odile' }, 'gone'), 'ask it again'],
  ['match-forgotten', () => recentMatchOf({ store, member: 'odile' }, 'gone'), '/match'],
  ['batch-gone', () => batchOf({ store, member: 'odile' }, 'gone'), 'no longer in your book'],
] as const)('%s: what has run out is said to have run out', async ([id, look, words]) => {
  const refusal = await look().then(
    () => undefined,
    error => error,
  );
  expect(refusal).toMatchObject({ id });
  expect(says(refusal)).toContain(words);
});

test('a store that fails is never said to have saved', () => {
  const failed = (during: 'read' | 'write', saved?: 'no' | 'unknown') =>
    refusalOf(new StoreFailure('unreachable', during, 'the line is cut', saved ? { saved } : {}));
  expect(failed('read').id).toBe('records-not-read');
  expect(says(failed('read'))).toContain('Nothing was changed');
  expect(failed('write', 'no').id).toBe('records-not-saved');
  expect(failed('write', 'unknown').id).toBe('records-maybe-saved');
  expect(says(failed('write', 'unknown'))).toContain('Look before you try again');
});

test('what answers folded away is kept of the newest: twenty for sure, and never more than as many again', async () => {
  const whose = { store, member: 'folding' };
  const folded = (at: number) => ({ headline: String(at), blocks: [], cautions: [] });
  const kept = () => store.range('late-fold/folding/', 'late-fold/folding0', 999);
  for (let at = 0; at < 90; at += 1) {
    await keepFolds(whose, `fold-${at}`, folded(at), new Date(Date.UTC(2026, 2, 1) + 60_000 * at));
    const count = (await kept()).length;
    expect(count).toBeGreaterThanOrEqual(Math.min(at + 1, 20));
    expect(count).toBeLessThan(40);
  }
  const ids = (await kept()).map(({ key }) => Number(key.split('fold-')[1]));
  expect(Math.min(...ids)).toBe(90 - ids.length);
});

const folded = (headline: string) => ({ headline, blocks: [], cautions: [] });
const MINUTE = 60_000;
const FOUR = Date.UTC(2026, 2, 1, 16);
const linesOf = async (member: string) =>
  (await store.range(`late-fold/${member}/`, `late-fold/${member}0`, 999)).map(
    ({ value }) => value as { readonly headline: string; readonly at: string },
  );

test('the same answer, given again and again, is kept once and pushes out the folds of no other', async () => {
  const whose = { store, member: 'again' };
  await keepFolds(whose, 'other', folded('another answer'), new Date(FOUR));
  for (let time = 0; time < 100; time += 1)
    await keepFoldsAgain(whose, 'same', folded('told again'), new Date(FOUR + time));
  expect((await linesOf('again')).map(({ headline }) => headline)).toEqual(['another answer', 'told again']);
  expect(await foldsOfAnswer(whose, 'other')).toMatchObject({ headline: 'another answer' });
});

test('what is given again counts as given last: nineteen newer ones and it stays, whatever came before goes', async () => {
  const whose = { store, member: 'last' };
  const at = new Date(FOUR);
  await keepFoldsAgain(whose, 'same', folded('told again'), at);
  for (let n = 0; n < 38; n += 1) await keepFolds(whose, `older-${n}`, folded(`older ${n}`), at);
  await keepFoldsAgain(whose, 'same', folded('told again'), at);
  for (let n = 0; n < 19; n += 1) await keepFolds(whose, `newer-${n}`, folded(`newer ${n}`), at);
  const told = (await linesOf('last')).map(({ headline }) => headline);
  expect(told).toContain('told again');
  expect(told).toContain('newer 18');
  expect(told).not.toContain('older 0');
});

test('given again after ten minutes its folds live on from then', async () => {
  const whose = { store, member: 'renewed' };
  const timesAt = async (minutes: number) => {
    await keepFoldsAgain(whose, 'same', folded('told again'), new Date(FOUR + minutes * MINUTE));
    return (await linesOf('renewed')).map(({ at }) => (Date.parse(at) - FOUR) / MINUTE);
  };
  expect(await timesAt(0)).toEqual([0]);
  expect(await timesAt(9.9)).toEqual([0]);
  expect(await timesAt(10)).toEqual([10]);
  expect(await timesAt(19)).toEqual([10]);
});

test('what was erased since, or never reached the disk, is kept anew when it is given again', async () => {
  const whose = { store, member: 'gone' };
  await keepFoldsAgain(whose, 'same', folded('told again'), new Date(FOUR));
  await store.commit([{ kind: 'drop', key: 'late-fold/gone/same' }]);
  await keepFoldsAgain(whose, 'same', folded('told again'), new Date(FOUR + 1));
  expect(await foldsOfAnswer(whose, 'same')).toMatchObject({ headline: 'told again' });
});
