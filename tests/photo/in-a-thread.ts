import type { Box, PhotoReading } from '../../src/photo/reading.ts';
import type { Jobs } from '../../src/workers/jobs.ts';
import { sharedWorkers } from '../workers/shared.ts';

/*
 * Photos read by the threads that all tests of a run share: the network is compiled there once, which takes each process that looks by itself
 * some five seconds. A photo that was read is known, so what is to be read twice is read here (`src/photo/read.ts`).
 */
const workers = sharedWorkers();
const reader = { owner: 'reader' } as const;

export const readPhoto = async (bytes: Uint8Array): Promise<PhotoReading> =>
  (await workers.run('readPhoto', { bytes }, reader)).reading;

export const photoColours = (bytes: Uint8Array, region?: Box): ReturnType<Jobs['photoColours']> =>
  workers.run('photoColours', { bytes, ...(region && { region }) }, reader);
