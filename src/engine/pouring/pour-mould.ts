import { parseSize } from '../batch/batch-size.ts';
import { mouldMillilitres } from '../batch/mould-sides.ts';
import { unbroken } from '../over-lines.ts';
import { plainText, readDecimal } from '../quantities/number.ts';
import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';
import type { Loaf } from './layers.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'pour-not-a-mould': { readonly text: string };
    'pour-cavity-depth': Record<never, never>;
    'pour-tilt-round': { readonly shape: 'cylinder' | 'cavities' };
  }
}

/** The inside of a mould that is poured into, centimetres: a loaf or slab, a cylinder that stands, or a tray of cavities. */
export type PourMould =
  | ({ readonly shape: 'loaf' } & Loaf)
  | { readonly shape: 'cylinder'; readonly diameterCm: number; readonly heightCm: number }
  | {
      readonly shape: 'cavities';
      readonly count: number;
      readonly eachMillilitres: number;
      /** Undefined where nobody said. */
      readonly depthCm: number | undefined;
    };

export type LengthUnit = 'cm' | 'in';

/** What its owner measures a mould in, as they wrote it. */
export const lengthUnitOf = (text: string): LengthUnit =>
  /\d\s*(?:["”]|''|ins?\b|inch|pulg)/iu.test(text.slice(0, 120)) ? 'in' : 'cm';

/** `, 3 cm deep`, `de 3 cm de hondo`. */
const DEEP = new RegExp(
  unbroken`
    [,;]?\s*(?:de\s+)?(\d+(?:[.,]\d+)?)\s*(mm|cm|in|inch|inches|pulgadas?|["”])\s*(?:deep|high|tall|depth|
    de\s+)?\s*(?:deep|high|tall|depth|hondos?|hondas?|fondo|profundidad|altura|alto)\b
  `,
  'iu',
);
/** An inch is 2.54 cm by definition (NIST Handbook 44, Appendix C). */
const CM: readonly (readonly [RegExp, number])[] = [
  [/^mm/iu, 0.1],
  [/^cm/iu, 1],
  [/./u, 2.54],
];

/**
 * Reads a mould to pour into: `25x9x7 cm` and `slab 30x30x3 cm` (length, width, filled height), `cylinder 8x25 cm` (diameter,
 * filled height), `12 cavities x 100 ml, 3 cm deep`. Throws a Refusal `pour-not-a-mould`, or those of a size.
 */
export function parsePourMould(text: string): PourMould {
  const plain = plainText(text.slice(0, 120));
  const deep = DEEP.exec(plain);
  const isTray = /\bx?\s*[\d.,]+\s*(?:ml|millilit|oz|fl|cups?|tbsp|tazas?|cda)/iu.test(plain);
  const rest = deep && isTray ? plain.replace(DEEP, '') : plain;
  const size = parseSize(
    /mou?ld|loaf|molde|cavit|cavidad|cyl|cilind|round|redond/iu.test(rest) || isTray ? rest : `mould ${rest}`,
  );
  if (size.by !== 'mould') return refuse('pour-not-a-mould', { text: excerpt(text) });
  const { mould } = size;
  if (mould.shape === 'loaf') return mould;
  if (mould.shape === 'cylinder')
    return { shape: 'cylinder', diameterCm: mould.diameterCm, heightCm: mould.lengthCm };
  const cm = deep && readDecimal(deep[1]!)[0]! * CM.find(([unit]) => unit.test(deep[2]!))![1];
  return { ...mould, depthCm: cm !== null && cm > 0 ? cm : undefined };
}

/** Of all its soap, when filled as it was told; ml. */
export const pouredMillilitres = (mould: PourMould): number =>
  mouldMillilitres(
    mould.shape === 'cylinder' ? { ...mould, shape: 'cylinder', lengthCm: mould.heightCm } : mould,
  );

/** How high it is filled, cm; undefined of cavities whose depth nobody said. */
export const filledCm = (mould: PourMould): number | undefined =>
  mould.shape === 'cavities' ? mould.depthCm : mould.heightCm;

/**
 * Its surface, cm2; of cavities all together, taken as straight-sided. Throws a Refusal `pour-cavity-depth` where a volume is known
 * and no depth.
 */
export function surfaceCm2(mould: PourMould): number {
  const height = filledCm(mould);
  return height === undefined ? refuse('pour-cavity-depth', {}) : pouredMillilitres(mould) / height;
}

/** One of several layers that are as high as one another; of cavities as high in each, straight sides taken for granted. */
export type LevelLayer = {
  /** In all. */
  readonly millilitres: number;
  /** Into each cavity. */
  readonly eachMillilitres: number | undefined;
  /** Height of its top, cm; undefined where no depth is known. */
  readonly topCm: number | undefined;
};

/** Layers of one height in a mould that stands level, bottom first. */
export function levelLayers(mould: PourMould, count: number): readonly LevelLayer[] {
  const [all, height] = [pouredMillilitres(mould), filledCm(mould)];
  return Array.from({ length: count }, (_, at) => ({
    millilitres: all / count,
    eachMillilitres: mould.shape === 'cavities' ? mould.eachMillilitres / count : undefined,
    topCm: height === undefined ? undefined : (height * (at + 1)) / count,
  }));
}

/** A mould that can be tilted for a wedge. Throws a Refusal `pour-tilt-round` for a round one or cavities: no even wedge sets there. */
export const tiltable = (mould: PourMould): Loaf =>
  mould.shape === 'loaf' ? mould : refuse('pour-tilt-round', { shape: mould.shape });
