import { afterAll, expect, it } from 'vitest';
import { openStore } from '../../src/records/open.ts';
import { instead } from '../../src/records/store.ts';

const store = await openStore('sqlite::memory:', 700);
afterAll(() => store.close());

it('a store of which some calls are made otherwise waits as long as the store itself', () => {
  expect(instead(store, { commit: async () => ({ done: true }) as never }).patience).toBe(700);
});
