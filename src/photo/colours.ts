import { refuse } from '../engine/refusal.ts';
import { decodePhoto, type Pixels } from './decode.ts';
import { showsNoSoap } from './findings/answers.ts';
import { faceColours, mainColours, softened } from './findings/main-colours.ts';
import { outline } from './network/passes.ts';
import { type LightMatrix, labOf } from './pixels/lab.ts';
import type { Box, MainColour, PhotoColours } from './reading.ts';
import { faceOf } from './scene/face.ts';
import { lightOf } from './scene/light.ts';
import { sceneOf } from './scene/scene.ts';

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
export async function photoColours(bytes: Uint8Array, region?: Box): Promise<PhotoColours> {
  const photo = await decodePhoto(bytes);
  // Which flaws there are is not asked: one look is enough.
  const seen = await outline(photo);
  const scene = sceneOf(photo, seen && !showsNoSoap(seen.noSoap) ? seen : undefined);
  const { matrix, reference, plusMinus } = lightOf(scene);
  const told = (colours: MainColour[]) => ({ colours, whiteReference: reference !== undefined });
  if (region) return told(coloursOf(cut(photo, region), matrix, plusMinus));
  const [bar] = scene.bars;
  if (!bar) return refuse('photo-bar-unseen', {});
  return told(faceColours(faceOf(photo, bar, scene.factor, matrix), plusMinus));
}

function coloursOf(pixels: Pixels, matrix: LightMatrix, plusMinus: number): MainColour[] {
  const inside = new Uint8Array(pixels.width * pixels.height).fill(1);
  return mainColours(softened(labOf(pixels, matrix)), inside, plusMinus);
}

/** A part of a picture; at least 8 pixels each way, and no more of it than there is. */
function cut({ width, height, rgb }: Pixels, box: Box): Pixels {
  const span = (from: number, length: number, all: number) => {
    const first = Math.min(Math.max(0, Math.floor(from * all)), all - 8);
    return [first, Math.min(all, Math.max(first + 8, Math.ceil((from + length) * all)))] as const;
  };
  const [left, right] = span(box.x, box.width, width);
  const [top, bottom] = span(box.y, box.height, height);
  const out = new Uint8Array((right - left) * (bottom - top) * 3);
  for (let y = top; y < bottom; y++)
    out.set(rgb.subarray((y * width + left) * 3, (y * width + right) * 3), (y - top) * (right - left) * 3);
  return { width: right - left, height: bottom - top, rgb: out };
}
