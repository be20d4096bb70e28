import type { MatchCandidate } from '../colour/matching/match-request.ts';
import { barLab } from '../colour/mixing/bar.ts';
import type { BaseOptics } from '../colour/mixing/optics.ts';
import { chromaOf, colourDifference, type Lab } from '../colour/spectra/cielab.ts';
import { Refusal, refuse } from '../refusal.ts';
import { choosePalette, drawColours } from './palette-draw.ts';

/** Nearer than this, CIEDE2000, a bar is of the colour: what a maker would call it by eye (common practice). */
export const withinReach = 5;
/** How many colours are drawn: the first few often do, with the last a palette is given up. */
const DRAWN = [100, 400, 1_500] as const;

/** Fullness of a portion (dose over ceiling, all colourants together) and the part of it that is white. */
const STRENGTHS = [0.12, 0.3, 0.6, 1] as const;
const WHITES = [0, 0.35, 0.7] as const;
const BALANCES = [0.25, 0.5, 0.75] as const;

/** Grams of batter in a US cup at 1 g/ml. */
const GRAMS_PER_CUP = 236.6;

const part = ({ optics, gramsPerTeaspoon, ceilingTspPerCup }: MatchCandidate, fullness: number) => ({
  optics,
  grams: (100 * fullness * ceilingTspPerCup * gramsPerTeaspoon) / GRAMS_PER_CUP,
});

/**
 * Colours that one shelf makes in a plain bar: each colourant and each pair of them in a few strengths and balances,
 * with and without a white. CIELAB under D65. A sample, not a search: it may miss a colour, it invents none.
 */
export function colourRange(shelf: readonly MatchCandidate[], base: BaseOptics): readonly Lab[] {
  const white = shelf.find(candidate => candidate.white);
  const colours = shelf.filter(candidate => !candidate.white);
  const found: Lab[] = [];
  const add = (parts: readonly (readonly [MatchCandidate, number])[]) => {
    for (const strength of STRENGTHS)
      for (const pale of white ? WHITES : [0]) {
        const mix = parts.map(([candidate, share]) => part(candidate, strength * (1 - pale) * share));
        found.push(barLab(white && pale > 0 ? [...mix, part(white, strength * pale)] : mix, base));
      }
  };
  for (const [index, one] of colours.entries()) {
    add([[one, 1]]);
    for (const other of colours.slice(index + 1))
      for (const balance of BALANCES)
        add([
          [one, balance],
          [other, 1 - balance],
        ]);
  }
  return found;
}

/** One colour of each cell of CIELAB 2 units wide: nearer ones tell nobody anything. */
const thinned = (colours: readonly Lab[]): readonly Lab[] => [
  ...new Map(
    colours.map(colour => [
      [colour.l, colour.a, colour.b].map(value => Math.round(value / 2)).join(),
      colour,
    ]),
  ).values(),
];

/**
 * True when some colour of the range is the wanted one by eye. CIEDE2000 shrinks differences of lightness to half
 * at most, and those of chroma by 1 + 0.045 C: whatever lies further apart need not be compared.
 */
export function reaches(range: readonly Lab[], wanted: Lab): boolean {
  const near = withinReach * 1.6 + 0.35 * chromaOf(wanted);
  return range.some(
    colour =>
      Math.abs(colour.l - wanted.l) < 2 * withinReach &&
      Math.hypot(colour.a - wanted.a, colour.b - wanted.b) < near &&
      colourDifference(colour, wanted) <= withinReach,
  );
}

/** A palette drawn from a seed, its colours in CIELAB (D65), and the part of the shelves that make all of it. */
export type RandomPalette = {
  readonly colours: readonly Lab[];
  readonly share: number;
  readonly shelves: number;
};

/**
 * The palette of a seed that at least a part of the shelves can make: the same seed over the same shelves, in
 * whatever order, gives the same palette. Refuses when there is no shelf, or no such palette.
 */
export function drawPalette({
  seed,
  size,
  leastShare,
  shelves,
  base,
}: {
  readonly seed: string;
  readonly size: number;
  readonly leastShare: number;
  readonly shelves: readonly (readonly MatchCandidate[])[];
  readonly base: BaseOptics;
}): RandomPalette {
  if (shelves.length === 0) refuse('palette-no-shelves', {});
  const ranges = shelves.map(shelf => thinned(colourRange(shelf, base)));
  const needed = Math.max(1, Math.ceil(leastShare * shelves.length - 1e-9));
  const drawn = drawColours(seed, DRAWN.at(-1)!);
  let reachable: { readonly colour: Lab; readonly reach: readonly boolean[] }[] = [];
  let tried = 0;
  for (const upTo of DRAWN) {
    const fresh = drawn.slice(tried, upTo).map(colour => ({ colour, reach: reachOf(colour) }));
    // Colours that too few shelves make can be no part of a palette.
    reachable = [...reachable, ...fresh.filter(({ reach }) => reach.filter(Boolean).length >= needed)];
    tried = upTo;
    const found = paletteOf(upTo === DRAWN.at(-1));
    if (found) return found;
  }
  return refuse('palette-out-of-reach', { wanted: size, found: 0, share: leastShare });

  function paletteOf(last: boolean): RandomPalette | undefined {
    if (reachable.length === 0) return undefined;
    const reach = reachable.map(one => one.reach);
    try {
      const { numbers, share } = choosePalette({
        colours: reachable.map(({ colour }) => colour),
        reach,
        size,
        leastShare,
      });
      return { colours: numbers.map(number => reachable[number]!.colour), share, shelves: shelves.length };
    } catch (refusal) {
      if (last || !(refusal instanceof Refusal)) throw refusal;
      return undefined;
    }
  }

  function reachOf(colour: Lab): readonly boolean[] {
    let missed = 0;
    return ranges.map(range => {
      if (missed > shelves.length - needed) return false;
      const reached = reaches(range, colour);
      if (!reached) missed += 1;
      return reached;
    });
  }
}
