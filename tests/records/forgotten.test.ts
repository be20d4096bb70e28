import { afterAll, beforeAll, expect, test } from 'vitest';
import { askedLineOf } from '../../src/records/asked/index.ts';
import { batchOf } from '../../src/records/batches/queries.ts';
import { refusalOf, StoreFailure } from '../../src/records/failure.ts';
import { foldsOfAnswer, keepFolds } from '../../src/records/folds/index.ts';
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
