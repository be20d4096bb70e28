import type { Context } from '../../../src/conversation/context.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import type { Bar } from '../../../src/records/challenges/index.ts';

/** A part of a photo, as fractions of its width and height. */
export type PhotoPart = NonNullable<Bar['region']>;

/** Parts a member may pick where the bar was not found as they see it; `found` leaves it to the assistant. */
export const photoParts = {
  found: undefined,
  whole: { left: 0, top: 0, width: 1, height: 1 },
  middle: { left: 0.25, top: 0.25, width: 0.5, height: 0.5 },
  core: { left: 0.4, top: 0.4, width: 0.2, height: 0.2 },
  top: { left: 0.1, top: 0.05, width: 0.8, height: 0.4 },
  bottom: { left: 0.1, top: 0.55, width: 0.8, height: 0.4 },
  left: { left: 0.05, top: 0.1, width: 0.4, height: 0.8 },
  right: { left: 0.55, top: 0.1, width: 0.4, height: 0.8 },
} as const satisfies Record<string, PhotoPart | undefined>;
export type PhotoPartName = keyof typeof photoParts;

/** Why a bar with these colourants of the catalogue (ids) cannot be scored by a photo, whatever the photo. */
export function unscoredKind(ids: readonly (string | undefined)[]): 'neon' | 'pearl' | undefined {
  const kinds = new Set(ids.map(id => (id === undefined ? undefined : colourantById(id)?.kind)));
  if (kinds.has('neon')) return 'neon';
  return kinds.has('mica') ? 'pearl' : undefined;
}

/** Measures the colours of a kept photo, or of a part of it; gives what is kept of that. */
export async function measure(
  bytes: Uint8Array,
  part: PhotoPart | undefined,
  { workers, asker }: Context,
): Promise<Bar['colour']> {
  const region = part && { x: part.left, y: part.top, width: part.width, height: part.height };
  try {
    const { colours, whiteReference } = await workers.run(
      'photoColours',
      { bytes, ...(region && { region }) },
      { owner: asker.id },
    );
    if (!whiteReference) return { unscored: 'no-white' };
    if (colours.length === 0) return { unscored: 'no-colours' };
    return { colours: colours.map(({ lab, share, plusMinus }) => ({ lab, share, plusMinus })) };
  } catch (refusal) {
    // A photo that is no photo was refused before; here it only shows nothing that could be measured.
    if (refusal instanceof Refusal && refusal.id === 'photo-bar-unseen') return { unscored: 'no-colours' };
    throw refusal;
  }
}
