import type { BarPrediction } from '../../engine/colour/mixing/bar.ts';
import type { WrittenBase } from '../../engine/colour/reading/base-text.ts';
import type { Lab } from '../../engine/colour/spectra/cielab.ts';
import type { Words } from '../../words/index.ts';

/** Whole units: the error itself is a guess. */
export const whole = (units: number): number => Math.max(1, Math.round(units));
/** A difference of colour to a tenth. */
export const tenth = (deltaE: number): number => Math.round(deltaE * 10) / 10;

/**
 * How near a recipe should come, no nearer than anybody knows: how far the prediction is off, and how far the bar may be
 * off the prediction, as independent errors.
 */
export const closenessOf = (
  { deltaE, predicted }: { readonly deltaE: number; readonly predicted: Pick<BarPrediction, 'plusMinus'> },
  say: Words,
): string => say.match.nearness({ within: whole(Math.hypot(deltaE, predicted.plusMinus)) });

export const wordOf = ({ word }: Pick<BarPrediction, 'word'>, say: Words): string => say.colour.names[word];

/** The base as it was said: its cast, or that it goes by the oils. */
export const baseView = ({ shade }: WrittenBase, say: Words): string =>
  shade === undefined ? say.preview.ofOils : say.colour.bases[shade];

export const gelView = (gelled: boolean, { colour }: Words): string =>
  gelled ? colour.gelled : colour.notGelled;

/** The same prediction for programs, nothing that no eye can see. */
export const predictedData = ({ lab, ...rest }: BarPrediction) => ({ ...rest, lab: rounded(lab) });

/** CIELAB to a hundredth. */
export const rounded = ({ l, a, b }: Lab): Lab => ({ l: hundredth(l), a: hundredth(a), b: hundredth(b) });
const hundredth = (value: number) => Math.round(value * 100) / 100;

/** What one colour cannot tell: pearl, glow, more than a screen shows. */
export function looksView(predicted: BarPrediction, { colour }: Words): readonly string[] {
  return [
    ...(predicted.pearl ? [colour.pearl] : []),
    ...(predicted.fluorescent ? [colour.fluorescent] : []),
    ...(predicted.onScreen ? [] : [colour.offScreen]),
  ];
}
