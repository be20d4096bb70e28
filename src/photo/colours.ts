import type { Box, PhotoColours } from './reading.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'photo-bar-unseen': Record<string, never>;
  }
}

/**
 * The main colours of the bar in a photo, balanced by the white sheet where one is in view, largest share first.
 * With `region` (fractions of the upright picture) the colours of that part instead, whatever is there.
 * Throws the Refusals of `decodePhoto`, and `photo-bar-unseen` when there is no bar and no region.
 */
export async function photoColours(_bytes: Uint8Array, _region?: Box): Promise<PhotoColours> {
  throw new Error('not built yet');
}
