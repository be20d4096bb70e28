import { unbroken } from '../../over-lines.ts';
import { VESSEL_WORDS } from './amount-asides.ts';

/** A figure of a text with its unit, where it has one, and where it stands. */
export type FigureTold = {
  readonly value: number;
  readonly unit: string | undefined;
  readonly at: number;
  readonly end: number;
};

/** An amount of which every figure is known, with what it measures. */
export type Sized = FigureTold & { readonly measure: 'mass' | 'volume'; readonly unit: string };

/** "A pint jug with 400 ml in it": how large a vessel is tells nothing of what it holds now. */
export const isOfVessel = (text: string, { end }: FigureTold): boolean =>
  new RegExp(
    String.raw`^[\s-]*(?:(?:plastic|glass|measuring|big|small|old|medidora|de pl[aá]stico|de vidrio) )?${VESSEL_WORDS}(?!\p{L})`,
    'iu',
  ).test(text.slice(end));

/** Said of an amount that stands for one that was told more roughly before. */
const RESTATES = new RegExp(
  unbroken`
    (?<!\p{L})(?:dir[ií]a|i['’ ]?d say|(?:should|would) say|call it|let['’]?s say|say|more like|digamos|
    pongamos|o sea|osea|or rather|(?:to be )?exact(?:ly)?|precise(?:ly)?|exact[oa]s?|para ser exact[oa]s?|
    really|en realidad|it says|says|reads?|marca|i make it|that is)(?!\p{L})
  `,
  'iu',
);
/** An amount that is told again is at most so much more or less than it was. */
const AGAIN = 1.3;
const METRIC =
  /^(?:g|gr|grs|gm|gms|grams?|gramos?|kg|kgs|kilos?|kilograms?|kilogramos?|ml|mls|cc|cl|dl|l|lt|lts|lit(?:er|re)s?|litros?|millilit(?:er|re)s?|mililitros?)$/iu;

/** Of two amounts that may be one, the one it was measured by: the metric one, or the one that is said to be what it is. */
export function restatedIn(text: string, told: readonly Sized[]): number | undefined {
  const [first, second, ...more] = told;
  if (first === undefined || second === undefined || more.length > 0) return undefined;
  const ratio = Math.max(first.value, second.value) / Math.min(first.value, second.value);
  if (!(ratio <= AGAIN)) return undefined;
  const metric = told.filter(({ unit }) => METRIC.test(unit));
  if (metric.length === 1) return metric[0]!.value;
  return RESTATES.test(text) ? second.value : undefined;
}
