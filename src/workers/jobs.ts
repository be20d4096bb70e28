import { photoColours } from '../photo/colours.ts';
import { readPhoto } from '../photo/read.ts';
import type { Box } from '../photo/reading.ts';
import { markPhoto } from './mark-photo.ts';

/**
 * The heavy work that leaves the main thread, by name. Each job is a pure function of plain data: what it is
 * given and what it returns is copied between threads, so small numbers in and small pictures out.
 */
export const jobs = {
  readPhoto: ({ bytes }: { bytes: Uint8Array }) => readPhoto(bytes),
  photoColours: ({ bytes, region }: { bytes: Uint8Array; region?: Box }) => photoColours(bytes, region),
  markPhoto,
};

export type Jobs = typeof jobs;
export type JobName = keyof Jobs;
