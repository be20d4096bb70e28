import { decodePhoto, type Pixels } from './decode.ts';
import { isTooPoor, showsNoSoap } from './findings/answers.ts';
import { findingsOf } from './findings/found.ts';
import { faceColours } from './findings/main-colours.ts';
import { look, type Seen } from './network/passes.ts';
import { corners } from './pixels/polygon.ts';
import type { Bar, Box, PhotoQuality, PhotoReading, Point, Unread } from './reading.ts';
import { faceOf } from './scene/face.ts';
import { lightOf } from './scene/light.ts';
import type { Thing } from './scene/objects.ts';
import { lightIn, qualityOf } from './scene/quality.ts';
import { type Scene, sceneOf } from './scene/scene.ts';

/** Blur from which small things are gone, as a fraction of the bar's width. Chosen: the smallest flaws are 0.01 wide. */
const TOO_BLURRED = 0.02;
/** Brightness of a picture's brightest twentieth under which it is night, and under which night is why it is poor. Chosen. */
const TOO_DARK = 0.2;
const DIM = 0.4;

/**
 * Reads a photo of soap: bars, white reference, main colours and flaws; see {@link PhotoReading}. Flaws are those of
 * all bars in view, colours the largest bar's. Throws the Refusals of `decodePhoto`.
 */
export async function readPhoto(bytes: Uint8Array): Promise<PhotoReading> {
  return readPixels(await decodePhoto(bytes));
}

/** {@link readPhoto} for a picture that is open already. */
export async function readPixels(photo: Pixels): Promise<PhotoReading> {
  return readingOf(photo, await look(photo));
}

/** The reading of a picture that the network has looked at. */
export function readingOf(photo: Pixels, seen: Seen | undefined): PhotoReading {
  const scene = sceneOf(photo, seen && !showsNoSoap(seen.noSoap) ? seen : undefined);
  const light = lightOf(scene);
  const [first] = scene.bars;
  const common = {
    width: photo.width,
    height: photo.height,
    bars: scene.bars.map(bar => barOf(bar, scene)),
    whiteReference: light.reference,
  };
  if (!first || !seen) {
    const quality = { blur: 0, noise: 0, glare: 0, light: lightIn(scene.small), resolution: 0 };
    const unread = quality.light < TOO_DARK ? 'dark' : 'no-soap';
    return { ...common, unread, colours: [], findings: [], quality };
  }
  const face = faceOf(photo, first, scene.factor, light.matrix);
  const quality = qualityOf(photo, scene.small, face);
  const unread = unreadable(quality, isTooPoor(seen.poor));
  return {
    ...common,
    unread,
    colours: faceColours(face, light.plusMinus),
    findings: unread ? [] : findingsOf(photo, seen),
    quality,
  };
}

function unreadable({ blur, light }: PhotoQuality, tooPoor: boolean): Unread | undefined {
  if (light < TOO_DARK || (tooPoor && light < DIM)) return 'dark';
  return tooPoor || blur > TOO_BLURRED ? 'blur' : undefined;
}

function barOf({ rectangle, rectangularity }: Thing, { small }: Scene): Bar {
  const outline = corners(rectangle).map(({ x, y }): Point => ({ x: x / small.width, y: y / small.height }));
  return { box: boxOf(outline), outline, rectangularity };
}

function boxOf(points: readonly Point[]): Box {
  const clamp = (value: number) => Math.min(1, Math.max(0, value));
  const xs = points.map(({ x }) => clamp(x));
  const ys = points.map(({ y }) => clamp(y));
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
