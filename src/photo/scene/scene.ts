import type { Pixels } from '../decode.ts';
import { type Outlined as Looked, laidOver } from '../network/passes.ts';
import { labOf } from '../pixels/lab.ts';
import { grown, shrunk } from '../pixels/nearest.ts';
import { areaOf, type Mask, maskWhere, type Plane } from '../pixels/plane.ts';
import { type Thing, thingsIn } from './objects.ts';
import { shrink } from './shrink.ts';
import { whitePatches } from './white.ts';

/** What lies in the picture, at `factor` times fewer pixels each way. */
export type Scene = {
  readonly small: Pixels;
  readonly factor: number;
  /** Bars, the largest first. */
  readonly bars: readonly Thing[];
  /** The pixels of white paper or card, well inside it. */
  readonly white: Mask | undefined;
};

/** The longer side, in pixels, at which bars and paper are outlined. */
const SEEK_AT = 256;
/** A white patch of which more than this is soap is part of the bar, unless it lies by itself. */
const OF_THE_BAR = 0.3;
/**
 * A patch by itself has hardly any that is sure to be soap round it (so many pixels off: nearer is its own edge), other
 * soap elsewhere of at least this part of its area, and is this much lighter (L*). How much of it the network takes for
 * soap tells nothing. Chosen on four pictures of paper beside a bar that it takes for soap, all of it or in places.
 */
const ALONE = { from: 6, to: 9, round: 0.12, sure: 0.8, other: 0.4, lighter: 4 } as const;
/** Beside the bar: its edge, and the light that it throws on the paper next to it, do not count as white. */
const BESIDE = 2.5;
const LEAST_PAPER = 0.012;
/** A mask with this part of the picture fills it, and a picture whose L* wanders less than this is even. */
const FILLS = 0.9;
const EVEN = 1.5;

/** The bars that the network outlined, and white paper among the rest. Nothing seen: no bars, and any white is paper. */
export function sceneOf(photo: Pixels, seen: Looked | undefined): Scene {
  const factor = Math.max(1, Math.round(Math.max(photo.width, photo.height) / SEEK_AT));
  const small = shrink(photo, factor);
  const { width, height } = small;
  const laid = (from?: number) =>
    seen
      ? laidOver(seen.bar, seen.square, { width, height, factor }, from)
      : maskWhere(width, height, () => false);
  const lab = labOf(small);
  const patches = whitePatches(small, lab);
  const soap = withoutPaper({ soap: laid(), sure: laid(ALONE.sure), patches, lightness: lab.l });
  const white = paperBeside(soap, patches);
  const bars = isBareField(soap, lab.l) ? [] : thingsIn(soap);
  return { small, factor, bars, white: white && shrunk(white, 1.5) };
}

/** A picture of one even colour from edge to edge: soap, a table or a wall, nobody can tell. */
function isBareField(soap: Mask, { data }: Plane): boolean {
  if (areaOf(soap) < FILLS * data.length) return false;
  const mean = data.reduce((sum, value) => sum + value, 0) / data.length;
  const spread = Math.sqrt(data.reduce((sum, value) => sum + (value - mean) ** 2, 0) / data.length);
  return spread < EVEN;
}

type Outlined = { readonly soap: Mask; readonly sure: Mask; readonly lightness: Plane };

/** The soap without white patches that lie by themselves beside a darker bar: paper passes for soap to the network. */
function withoutPaper({ patches, ...outlined }: Outlined & { readonly patches: readonly Mask[] }): Mask {
  const { soap } = outlined;
  const alone = patches
    .filter(patch => overlap(patch, soap) > 0 && liesAlone(patch, outlined))
    .map(patch => grown(patch, ALONE.from));
  return alone.length === 0
    ? soap
    : maskWhere(soap.width, soap.height, i => soap.data[i] === 1 && alone.every(({ data }) => data[i] === 0));
}

function liesAlone(patch: Mask, { soap, sure, lightness }: Outlined): boolean {
  const [near, round] = [grown(patch, ALONE.from), grown(patch, ALONE.to)];
  const count = { ring: 0, sureInRing: 0, other: 0 };
  const sum = { patch: 0, other: 0 };
  for (let i = 0; i < soap.data.length; i++) {
    if (patch.data[i]) sum.patch += lightness.data[i]!;
    else if (near.data[i]) continue;
    else if (round.data[i]) {
      count.ring++;
      if (sure.data[i]) count.sureInRing++;
    } else if (soap.data[i]) {
      count.other++;
      sum.other += lightness.data[i]!;
    }
  }
  const area = areaOf(patch);
  return (
    count.sureInRing < ALONE.round * count.ring &&
    count.other > ALONE.other * area &&
    sum.patch / area > sum.other / Math.max(1, count.other) + ALONE.lighter
  );
}

function paperBeside(soap: Mask, patches: readonly Mask[]): Mask | undefined {
  const { width, height } = soap;
  const papers = patches.filter(patch => overlap(patch, soap) < OF_THE_BAR * areaOf(patch));
  if (papers.length === 0) return undefined;
  const near = grown(soap, BESIDE);
  const paper = maskWhere(width, height, i => near.data[i] === 0 && papers.some(({ data }) => data[i] === 1));
  return areaOf(paper) < LEAST_PAPER * width * height ? undefined : paper;
}

function overlap(one: Mask, other: Mask): number {
  let count = 0;
  for (let i = 0; i < one.data.length; i++) if (one.data[i] && other.data[i]) count++;
  return count;
}
