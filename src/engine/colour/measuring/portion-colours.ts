import { colourDifference, type Lab } from '../spectra/cielab.ts';
import { leastAssignment } from './assignment.ts';

/** A portion that is looked for on a cured bar; `share` of the batter, 0 to 1. */
export type SoughtPortion = {
  readonly predicted: { readonly lab: Lab; readonly plusMinus: number };
  readonly share: number;
};

/** A colour seen on the bar; `share` of its face, 0 to 1. */
export type SeenColour = { readonly lab: Lab; readonly share: number; readonly plusMinus: number };

/** Which colour a portion became; `unsure` where another reading of the bar is about as likely. */
export type PortionColour = {
  readonly portion: number;
  readonly lab: Lab;
  readonly plusMinus: number;
  readonly unsure: boolean;
};

/** How far a portion's share of the face strays from its share of the batter: swirls do as they like. From memory. */
const SHARE_SPREAD = 0.25;
/** No prediction is surer than this when colours are told apart, CIEDE2000. */
const LEAST_SPREAD = 6;
/** Another reading that costs no more than this (in squared standard errors) is about as likely. */
const AS_LIKELY = 2;
/** A second colour of a bar of one portion that takes up so much of the face makes it unclear which is meant. */
const SECOND_COLOUR = 0.25;
const FORBIDDEN = 1e6;

/** Gives each portion one of the colours seen, so that all together lie nearest to what was foretold. */
export function portionColours(
  portions: readonly SoughtPortion[],
  colours: readonly SeenColour[],
): readonly PortionColour[] {
  if (portions.length === 0 || colours.length === 0) return [];
  const costs = portions.map(portion => colours.map(colour => costOf(portion, colour)));
  const best = leastAssignment(costs);
  return best.columnOf.flatMap((column, portion) => {
    const colour = column === undefined ? undefined : colours[column];
    if (!colour || column === undefined) return [];
    const otherwise = costs.map((row, at) =>
      at === portion ? row.map((cost, which) => (which === column ? cost + FORBIDDEN : cost)) : row,
    );
    const isOnly = portions.length === 1;
    const unsure = isOnly
      ? colours.some(other => other !== colour && other.share > SECOND_COLOUR)
      : colours.length > 1 && leastAssignment(otherwise).total - best.total < AS_LIKELY;
    return [{ portion, lab: colour.lab, plusMinus: colour.plusMinus, unsure }];
  });
}

function costOf({ predicted, share }: SoughtPortion, colour: SeenColour): number {
  const spread = Math.max(predicted.plusMinus, LEAST_SPREAD);
  const off = colourDifference(predicted.lab, colour.lab) / spread;
  return off ** 2 + ((share - colour.share) / SHARE_SPREAD) ** 2;
}
