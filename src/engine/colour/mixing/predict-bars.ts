import { type ColourJar, opticsOfJar } from '../jars/jar.ts';
import { type BarPrediction, predictBar } from './bar.ts';
import { baseSoap, type ShadeShare } from './base-soap.ts';

/** Portions of one batch: each mix as jars with their pigment in grams per 100 g of batter. */
export type BarsAsk = {
  readonly portions: readonly (readonly { readonly jar: ColourJar; readonly grams: number }[])[];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
};

/** The cured colour of every portion of a batch. Throws an Error for a colourant that the catalogue does not have. */
export function predictBars({ portions, shades, gelled }: BarsAsk): readonly BarPrediction[] {
  const base = baseSoap(shades, gelled);
  return portions.map(mix =>
    predictBar(
      mix.map(({ jar, grams }) => ({ optics: opticsOfJar(jar), grams })),
      base,
    ),
  );
}
