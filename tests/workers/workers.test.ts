import { afterAll, describe, expect, test } from 'vitest';
import { Refusal } from '../../src/engine/refusal.ts';
import { openWorkers } from '../../src/workers/workers.ts';

const workers = openWorkers();
afterAll(() => workers.close());
const owner = 'ana';

describe('work done in another thread', () => {
  test('brings an expected “no” back as one, with its values', async () => {
    const noPhoto = workers.run('keepEntryPhoto', { bytes: new TextEncoder().encode('no photo') }, { owner });
    await expect(noPhoto).rejects.toThrow(Refusal);
    await expect(noPhoto).rejects.toMatchObject({ id: 'photo-not-a-picture' });
  }, 60_000);

  test('leaves a fault of ours a fault', async () => {
    const broken = workers.run('challengeCard', {} as never, { owner });
    await expect(broken).rejects.not.toThrow(Refusal);
  });
});
