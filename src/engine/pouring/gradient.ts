import { type ColourJar, opticsOfJar } from '../colour/jars/jar.ts';
import { barLab } from '../colour/mixing/bar.ts';
import { baseSoap, type ShadeShare } from '../colour/mixing/base-soap.ts';
import { colourDifference, hexOfLab, type Lab } from '../colour/spectra/cielab.ts';
import { ONE_COLOUR, placesAlong } from '../palettes/even-steps.ts';

/** One pot of coloured batter: grams of each jar per 100 g of batter; none for plain batter. */
export type Pot = readonly { readonly jar: ColourJar; readonly grams: number }[];

export type GradientAsk = {
  readonly from: Pot;
  readonly to: Pot;
  readonly steps: number;
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
};

export type Gradient = {
  readonly steps: readonly {
    /** Of the second pot, 0 to 1. */
    readonly share: number;
    readonly lab: Lab;
    readonly hex: string;
    /** CIEDE2000 from the step before; 0 for the first. */
    readonly deltaE: number;
  }[];
  /** The greatest and the least step that equal parts would have given instead, CIEDE2000. */
  readonly byParts: { readonly most: number; readonly least: number };
};

const ROUNDS = 80;

/**
 * A gradient between two pots whose neighbouring steps look equally far apart (CIEDE2000): how much of the second pot goes into
 * each. The colour of every share comes from the mixing itself, K and S of both pots added by the share. Starts from equal length
 * along the line of mixes, then evens out the steps themselves.
 */
export function evenGradient({ from, to, steps, shades, gelled }: GradientAsk): Gradient {
  const base = baseSoap(shades, gelled);
  const [first, second] = [from, to].map(pot =>
    pot.map(({ jar, grams }) => ({ optics: opticsOfJar(jar), grams })),
  );
  const at = (share: number): Lab =>
    barLab(
      [
        ...first!.map(part => ({ ...part, grams: part.grams * (1 - share) })),
        ...second!.map(part => ({ ...part, grams: part.grams * share })),
      ],
      base,
    );
  let shares = placesAlong(at, steps);
  for (let round = 0; round < ROUNDS; round++) shares = evened(shares, at);
  const labs = shares.map(at);
  const equal = Array.from({ length: steps }, (_, step) => at(step / (steps - 1)));
  const chords = chordsOf(equal);
  return {
    steps: labs.map((lab, step) => ({
      share: shares[step]!,
      lab,
      hex: hexOfLab(lab),
      deltaE: step === 0 ? 0 : colourDifference(labs[step - 1]!, lab),
    })),
    byParts: { most: Math.max(...chords), least: Math.min(...chords) },
  };
}

const chordsOf = (labs: readonly Lab[]): readonly number[] =>
  labs.slice(1).map((lab, at) => colourDifference(labs[at]!, lab));

/** Moves the inner shares so that the steps grow together, taking each step for straight. */
function evened(shares: readonly number[], at: (share: number) => Lab): readonly number[] {
  const chords = chordsOf(shares.map(at));
  const whole = chords.reduce((sum, chord) => sum + chord, 0);
  if (whole < ONE_COLOUR) return shares;
  const ends = [0];
  for (const chord of chords) ends.push(ends.at(-1)! + chord);
  return shares.map((share, step) => {
    if (step === 0 || step === shares.length - 1) return share;
    const wanted = (whole * step) / (shares.length - 1);
    const piece = Math.max(
      1,
      ends.findIndex(end => end >= wanted - 1e-12),
    );
    const [low, high] = [ends[piece - 1]!, ends[piece]!];
    const along = high > low ? (wanted - low) / (high - low) : 0;
    const aimed = shares[piece - 1]! + along * (shares[piece]! - shares[piece - 1]!);
    // Half of the way: CIEDE2000 does not add up along a line, so the whole of it overshoots.
    return (share + aimed) / 2;
  });
}
