import type { StrengthName } from '../../quantities/strength.ts';
import { type ColourJar, opticsOfJar } from '../jars/jar.ts';
import { type BarPrediction, predictBar } from './bar.ts';
import { baseSoap, type ShadeShare } from './base-soap.ts';
import type { MixPart } from './optics.ts';
import { type Swatch, swatches } from './swatches.ts';

/** One colourant of a mix to look at: how much is asked, and how much a full dose of it is, grams per 100 g of batter. */
export type PreviewPart = {
  readonly jar: ColourJar;
  readonly grams: number;
  readonly full: number;
  readonly white: boolean;
};

export type PreviewAsk = {
  readonly parts: readonly PreviewPart[];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
};

export type Preview = {
  readonly predicted: BarPrediction;
  /** The same mix in the other base: gelled where it is not, and the other way round. */
  readonly otherwise: BarPrediction;
  /** The base without any colourant. */
  readonly plain: BarPrediction;
  readonly swatches: readonly Swatch[];
  /** Share of the full dose that the card's full column holds of each part. */
  readonly fullShares: readonly number[];
  /** CIEDE2000 expected of each part alone at its full dose. */
  readonly plusMinus: readonly number[];
};

/**
 * The cured colour of a mix, and the card around it: the same colourants in the same proportions from tint to full,
 * where full is the strongest of them at its full dose. A white beside colours keeps its dose in every field.
 * Pure, though not quick for colourants seen for the first time: their optics are worked out once.
 */
export function previewMix({ parts, shades, gelled }: PreviewAsk): Preview {
  const mix = parts.map(({ jar, grams }): MixPart => ({ optics: opticsOfJar(jar), grams }));
  const colours = parts.some(({ white }) => !white);
  const isSteady = ({ white }: PreviewPart) => white && colours;
  const strongest = Math.max(...parts.filter(part => !isSteady(part)).map(({ grams, full }) => grams / full));
  const fullMix = mix.map((part, at) => ({
    ...part,
    grams: isSteady(parts[at]!) ? part.grams : part.grams / strongest,
  }));
  return {
    predicted: predictBar(mix, baseSoap(shades, gelled)),
    otherwise: predictBar(mix, baseSoap(shades, !gelled)),
    plain: predictBar([], baseSoap(shades, gelled)),
    swatches: swatches(
      fullMix.filter((_, at) => !isSteady(parts[at]!)),
      shades,
      fullMix.filter((_, at) => isSteady(parts[at]!)),
    ),
    fullShares: fullMix.map(({ grams }, at) => grams / parts[at]!.full),
    plusMinus: mix.map(({ optics }) => optics.plusMinus),
  };
}

/** Names of the card's columns, weakest first. */
export const CARD_STRENGTHS: readonly StrengthName[] = ['tint', 'pastel', 'medium', 'full'];
