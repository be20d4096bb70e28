import sharp from 'sharp';
import { afterAll, describe, expect, test } from 'vitest';
import { Refusal } from '../../src/engine/refusal.ts';
import { openWorkers } from '../../src/workers/workers.ts';
import { codedIn, heic } from '../photo/heif/writer.ts';

const workers = openWorkers();
afterAll(() => workers.close());
const owner = 'ana';
const plain = (side: number) => ({
  create: { width: side, height: side, channels: 3, background: '#7f5fa8' } as const,
});

describe('work done in another thread', () => {
  test('brings an expected “no” back as one, with its values', async () => {
    const noPhoto = workers.run('keepEntryPhoto', { bytes: new TextEncoder().encode('no photo') }, { owner });
    await expect(noPhoto).rejects.toThrow(Refusal);
    await expect(noPhoto).rejects.toMatchObject({ id: 'photo-not-a-picture' });
  });

  test('leaves a fault of ours a fault', async () => {
    const broken = workers.run('challengeCard', {} as never, { owner });
    await expect(broken).rejects.not.toThrow(Refusal);
  });
});

describe('a job that does not end', () => {
  test('is stopped, told as a refusal, and another thread serves the next', async () => {
    const hasty = openWorkers({ limitMs: 1 });
    try {
      const sheet = new Uint8Array(await sharp(plain(3000)).jpeg().toBuffer());
      const read = () => hasty.run('readPhoto', { bytes: sheet }, { owner });
      await expect(read()).rejects.toMatchObject({ id: 'work-took-too-long' });
      await expect(read()).rejects.toMatchObject({ id: 'work-took-too-long' });
    } finally {
      await hasty.close();
    }
  });

  test('is ended in the middle of decoding a HEIC', async () => {
    const hasty = openWorkers({ limitMs: 300, threads: 1 });
    try {
      const grid = { rows: 12, columns: 16, size: { width: 8000, height: 6000 } };
      const bytes = new Uint8Array(heic({ tile: codedIn('grain.heic'), grid }));
      const long = hasty.run('keepEntryPhoto', { bytes }, { owner });
      await expect(long).rejects.toMatchObject({ id: 'work-took-too-long' });
    } finally {
      await hasty.close();
    }
  });

  test('the time in the queue does not count', async () => {
    const patient = openWorkers({ limitMs: 20_000 });
    try {
      const bytes = new Uint8Array(await sharp(plain(400)).jpeg().toBuffer());
      const all = Array.from({ length: 3 }, () => patient.run('keepEntryPhoto', { bytes }, { owner }));
      expect(await Promise.all(all)).toHaveLength(3);
    } finally {
      await patient.close();
    }
  });
});
