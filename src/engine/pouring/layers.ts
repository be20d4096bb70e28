import { refuse } from '../refusal.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'layers-tilt-too-steep': { readonly most: number };
  }
}

/** The inside of a loaf mould, centimetres; `heightCm` is how high it is filled. */
export type Loaf = { readonly lengthCm: number; readonly widthCm: number; readonly heightCm: number };

export type Layer = {
  /** Bottom first. */
  readonly millilitres: number;
  /** Height of its top at the low and at the high side of the mould once it stands level, cm; equal for a level layer. */
  readonly topCm: readonly [low: number, high: number];
};

/** How much batter each layer of a loaf takes so that all are as high as one another, in ml, bottom first. */
export function equalLayers({ lengthCm, widthCm, heightCm }: Loaf, count: number): readonly Layer[] {
  const each = heightCm / count;
  return Array.from({ length: count }, (_, at) => ({
    millilitres: lengthCm * widthCm * each,
    topCm: [each * (at + 1), each * (at + 1)] as const,
  }));
}

/**
 * The same with the first layer poured while one long side stands on a block, so that it sets as a wedge: all layers take the
 * same volume, the rest are poured level upon it. The wedge's top is level when poured, so it lies at the angle of the tilt once
 * the mould stands level: a trapezium, at the steepest a triangle that just reaches the raised side. The second layer fills up the
 * wedge; its top is level at the height of two layers, which the wedge must not pass.
 * Throws a Refusal `layers-tilt-too-steep` for a block at which the wedge would stand above the top of the second layer.
 * @param raisedCm height of the block under one long side
 */
export function wedgedLayers(loaf: Loaf, count: number, raisedCm: number): readonly Layer[] {
  const { lengthCm, widthCm, heightCm } = loaf;
  const level = equalLayers(loaf, count);
  if (raisedCm === 0) return level;
  const each = heightCm / count;
  const slope = slopeOf(raisedCm, widthCm);
  // Where its high side comes to the top of the second layer, or to the filled height of a mould that has no second.
  const most = (2 * (Math.min(2 * each, heightCm) - each)) / widthCm;
  if (!(slope <= most)) refuse('layers-tilt-too-steep', { most: raisedOf(most, widthCm) });
  const half = (slope * widthCm) / 2;
  // The low side of the tilt is where the batter gathers, so there it stands highest.
  return [{ millilitres: widthCm * each * lengthCm, topCm: [each - half, each + half] }, ...level.slice(1)];
}

/** Tangent of the tilt: a block under one side of a mould of that width. A block as high as the mould is wide turns it over. */
function slopeOf(raisedCm: number, widthCm: number): number {
  const sine = raisedCm / widthCm;
  return sine < 1 ? sine / Math.sqrt(1 - sine * sine) : Number.POSITIVE_INFINITY;
}

const raisedOf = (slope: number, widthCm: number): number => (widthCm * slope) / Math.hypot(1, slope);
