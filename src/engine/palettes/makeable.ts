import { opticsOfJar } from '../colour/jars/jar.ts';
import type { JarCandidate } from '../colour/matching/match-jars.ts';
import { spoonDoses } from '../colour/matching/spoon-grid.ts';
import { type BarPrediction, predictBar } from '../colour/mixing/bar.ts';
import { baseSoap, type ShadeShare } from '../colour/mixing/base-soap.ts';
import type { Spoon } from '../quantities/spoons.ts';
import { HUE_SCHEMES, type HueScheme, paletteOf, type SchemeFound } from './hue-schemes.ts';

export type MakeableAsk = {
  readonly candidates: readonly JarCandidate[];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  readonly portion: { readonly cups: number; readonly grams: number };
  /** The spoons there are to measure with; every one unless said. */
  readonly owned?: readonly Spoon[] | undefined;
  /** Every scheme unless said. */
  readonly scheme?: HueScheme | undefined;
};

/** A colour that real spoons of one or two jars give. */
export type Makeable = {
  readonly doses: readonly { readonly id: string; readonly teaspoons: number }[];
  readonly predicted: BarPrediction;
};

export type MadePalette = Omit<SchemeFound, 'places'> & { readonly colours: readonly Makeable[] };

/** How full a portion is, dose over ceiling, and how two jars share it. */
const FULLNESS = [0.15, 0.5, 1] as const;
const BALANCES = [0.3, 0.7] as const;

/** The best palette of each hue scheme that the jars make in one size of portion, the surest first. */
export function makeablePalettes(ask: MakeableAsk): readonly MadePalette[] {
  const colours = makeable(ask);
  const labs = colours.map(({ predicted }) => predicted.lab);
  const schemes = ask.scheme ? [ask.scheme] : (Object.keys(HUE_SCHEMES) as HueScheme[]);
  return schemes
    .flatMap(scheme => paletteOf(scheme, labs) ?? [])
    .map(({ places, ...found }) => ({ ...found, colours: places.map(place => colours[place]!) }));
}

/** Colours of single jars, of pairs, and of either with the first white. */
function makeable({ candidates, shades, gelled, portion, owned }: MakeableAsk): readonly Makeable[] {
  const base = baseSoap(shades, gelled);
  const optics = new Map(candidates.map(({ id, jar }) => [id, opticsOfJar(jar)]));
  const grids = new Map(
    candidates.map(({ id, ceilingTspPerCup }) => [id, spoonDoses(ceilingTspPerCup * portion.cups, owned)]),
  );
  const colours = candidates.filter(({ white }) => !white);
  const white = candidates.find(candidate => candidate.white);
  const made = new Map<string, Makeable>();
  const add = (parts: readonly (readonly [JarCandidate, number])[]) => {
    const doses = parts.flatMap(([{ id, ceilingTspPerCup, stockTeaspoons }, share]) => {
      const teaspoons = below(grids.get(id)!, share * ceilingTspPerCup * portion.cups);
      return teaspoons > 0 && teaspoons <= (stockTeaspoons ?? Infinity) ? [{ id, teaspoons }] : [];
    });
    const key = doses.map(({ id, teaspoons }) => `${id} ${teaspoons}`).join('+');
    if (doses.length < parts.length || made.has(key)) return;
    const mix = doses.map(({ id, teaspoons }, at) => ({
      optics: optics.get(id)!,
      grams: (100 * teaspoons * parts[at]![0].gramsPerTeaspoon) / portion.grams,
    }));
    made.set(key, { doses, predicted: predictBar(mix, base) });
  };
  for (const [at, one] of colours.entries()) {
    for (const fullness of FULLNESS) {
      add([[one, fullness]]);
      if (white)
        add([
          [one, fullness / 2],
          [white, fullness / 2],
        ]);
      for (const other of colours.slice(at + 1))
        for (const share of BALANCES)
          add([
            [one, fullness * share],
            [other, fullness * (1 - share)],
          ]);
    }
  }
  return [...made.values()];
}

/** The greatest dose of the grid that is no more than wanted, 0 where there is none. */
const below = (grid: readonly number[], wanted: number): number =>
  grid.findLast(dose => dose <= wanted * (1 + 1e-9)) ?? 0;
