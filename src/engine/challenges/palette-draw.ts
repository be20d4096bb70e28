import { colourDifference, isOnScreen, type Lab } from '../colour/spectra/cielab.ts';
import { refuse } from '../refusal.ts';
import { chanceFrom } from './voting/chance.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'palette-no-shelves': Record<never, never>;
    'palette-out-of-reach': {
      readonly wanted: number;
      readonly found: number;
      readonly share: number;
    };
  }
}

/** Two colours of one palette differ by at least this, CIEDE2000: nobody takes one for the other. Our choice. */
export const leastApart = 15;

/**
 * Colours drawn from a seed, the same for the same seed and the first of a longer draw: evenly over CIELAB
 * (D65) within what soap shows without glowing (L 15 to 92) and a screen can show.
 */
export function drawColours(seed: string, count: number): readonly Lab[] {
  const chance = chanceFrom(seed);
  const between = (low: number, high: number) => low + (high - low) * chance.fraction();
  const drawn: Lab[] = [];
  while (drawn.length < count) {
    // Whole numbers, so that a seed gives the same colours on every machine.
    const colour = {
      l: Math.round(between(15, 92)),
      a: Math.round(between(-70, 90)),
      b: Math.round(between(-90, 90)),
    };
    if (isOnScreen(colour)) drawn.push(colour);
  }
  return drawn;
}

/** How many colours are tried before the search gives up: a hopeless draw would go on for years. */
const mostSteps = 100_000;

export type PaletteDraw = {
  /** In the order they were drawn. */
  readonly colours: readonly Lab[];
  /** For each colour and each shelf whether the shelf reaches the colour, as whoever predicts colours says. */
  readonly reach: readonly (readonly boolean[])[];
  /** How many colours the palette needs. */
  readonly size: number;
  /** The part of the shelves, 0 to 1, that must reach every colour of the palette. */
  readonly leastShare: number;
};

/** A palette, by the numbers of its colours in the draw, and the part of the shelves that reach all of it. */
export type DrawnPalette = { readonly numbers: readonly number[]; readonly share: number };

/**
 * The first palette, in the order of the draw, that enough shelves reach as a whole and whose colours are well
 * apart. Refuses when there is no shelf, or no such palette among the colours drawn.
 */
export function choosePalette({ colours, reach, size, leastShare }: PaletteDraw): DrawnPalette {
  const shelves = reach[0]?.length ?? 0;
  if (shelves === 0) refuse('palette-no-shelves', {});
  const needed = Math.max(1, Math.ceil(leastShare * shelves - 1e-9));
  let longest = 0;
  let steps = 0;
  const grown = grow([], new Array<boolean>(shelves).fill(true));
  if (grown) return grown;
  return refuse('palette-out-of-reach', { wanted: size, found: longest, share: leastShare });

  /** Adds colours drawn later than the last, going back when no more fit. */
  function grow(numbers: readonly number[], reaching: readonly boolean[]): DrawnPalette | undefined {
    longest = Math.max(longest, numbers.length);
    if (numbers.length === size) return { numbers, share: reaching.filter(Boolean).length / shelves };
    for (let next = (numbers.at(-1) ?? -1) + 1; next < colours.length; next++) {
      if (++steps > mostSteps) return undefined;
      const still = reaching.map((reaches, shelf) => reaches && reach[next]![shelf]!);
      if (still.filter(Boolean).length < needed) continue;
      if (numbers.some(other => colourDifference(colours[other]!, colours[next]!) < leastApart)) continue;
      const grown = grow([...numbers, next], still);
      if (grown) return grown;
    }
    return undefined;
  }
}
