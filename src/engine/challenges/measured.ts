import { leastAssignment } from '../colour/measuring/assignment.ts';
import { colourDifference, type Lab } from '../colour/spectra/cielab.ts';
import { groupedBy } from '../grouped.ts';
import type { Target } from './terms.ts';

/** One colour found in the photo of a bar. */
export type BarColour = {
  readonly lab: Lab;
  /** The part of the bar's face it takes, 0 to 1. */
  readonly share: number;
  /** How far the measurement may be off, CIEDE2000. */
  readonly plusMinus: number;
};

/** Why a bar has no measured score. */
export type Unscored = 'no-white' | 'neon' | 'pearl' | 'no-colours';

/** One palette colour beside the colour of the bar that stands for it. */
export type Match = {
  /** Number of the palette colour, from 0. */
  readonly target: number;
  /** Number of the bar's colour, from 0; undefined where the bar had none left for it. */
  readonly bar: number | undefined;
  /** CIEDE2000 between them. */
  readonly difference: number;
  /** Its weight in the score; the weights of a palette sum to 1. */
  readonly weight: number;
};

/** How near a bar came to the palette; the lower the nearer. */
export type ColourScore = {
  /** Weighted mean of the matches, plus what stray colour adds; CIEDE2000. */
  readonly score: number;
  readonly plusMinus: number;
  readonly matches: readonly Match[];
  /** Colours of the bar that stand for no palette colour: their part of the face, and what they add. */
  readonly stray: { readonly share: number; readonly adds: number };
};

/** A colour on less of the face than this stands for nothing: a speck is no colour of the bar. Our own choice. */
export const leastFaceShare = 0.02;

/** What a palette colour costs that the bar lacks: CIEDE2000 of black against white. */
export const missingDifference = 100;

/** Square root of the sum of squares: how errors add up that know nothing of one another. */
const together = (errors: readonly number[]) => Math.hypot(...errors);

/**
 * Scores the colours of a bar against a palette. Each palette colour is matched with a bar colour of its own so
 * that the weighted CIEDE2000 is least over all matches; colours wanted in unequal shares weigh by their share.
 * A bar colour that stands for none adds its part of the face times its difference from the nearest palette
 * colour. Both palette and bar are in CIELAB under D65. Undefined where there is no palette, or no colour.
 */
export function scoreColours(palette: readonly Target[], bar: readonly BarColour[]): ColourScore | undefined {
  const seen = bar.flatMap((colour, number) =>
    colour.share >= leastFaceShare ? [{ ...colour, number }] : [],
  );
  if (seen.length === 0 || palette.length === 0) return undefined;
  const wanted = palette.reduce((sum, { share = 1 }) => sum + share, 0);
  const weights = palette.map(({ share = 1 }) => share / wanted);
  const differences = palette.map(({ lab }) => seen.map(colour => colourDifference(lab, colour.lab)));
  const { columnOf } = leastAssignment(differences.map((row, target) => row.map(d => d * weights[target]!)));
  const matches = palette.map((_, target): Match => {
    const column = columnOf[target];
    if (column === undefined)
      return { target, bar: undefined, difference: missingDifference, weight: weights[target]! };
    return {
      target,
      bar: seen[column]!.number,
      difference: differences[target]![column]!,
      weight: weights[target]!,
    };
  });
  const face = seen.reduce((sum, { share }) => sum + share, 0);
  const strays = seen
    .map((colour, column) => ({ ...colour, share: colour.share / face, column }))
    .filter(({ column }) => !columnOf.includes(column));
  const nearest = (column: number) => Math.min(...differences.map(row => row[column]!));
  const adds = strays.reduce((sum, { share, column }) => sum + share * nearest(column), 0);
  return {
    score: matches.reduce((sum, match) => sum + match.weight * match.difference, 0) + adds,
    plusMinus: together([
      ...matches.map(({ bar: number, weight }) =>
        number === undefined ? 0 : weight * bar[number]!.plusMinus,
      ),
      ...strays.map(({ share, plusMinus }) => share * plusMinus),
    ]),
    matches,
    stray: { share: strays.reduce((sum, { share }) => sum + share, 0), adds },
  };
}

/** A bar with its score, or without one. */
export type Scored = { readonly entry: string; readonly score: ColourScore | undefined };

/** True when the first is nearer to the palette than the errors of both can explain. */
export const surelyNearer = (first: ColourScore, second: ColourScore): boolean =>
  second.score - first.score > together([first.plusMinus, second.plusMinus]);

/**
 * Places by measured colour, from the first. A bar's place is one more than the number of bars that are surely
 * nearer than it, so bars within their errors of one another share a place. Unscored bars are not placed.
 */
export function colourPlaces(bars: readonly Scored[]): readonly (readonly string[])[] {
  const scored = bars.flatMap(({ entry, score }) => (score ? [{ entry, score }] : []));
  const before = ({ score }: { score: ColourScore }) =>
    scored.filter(bar => surelyNearer(bar.score, score)).length;
  const byPlace = groupedBy(scored, before);
  return [...byPlace.keys()]
    .sort((a, b) => a - b)
    .map(place =>
      byPlace
        .get(place)!
        .map(({ entry }) => entry)
        .sort(),
    );
}
