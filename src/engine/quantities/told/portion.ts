import { unbroken } from '../../over-lines.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { amountAlone } from '../../text/amounts/amount-alone.ts';
import { VESSEL_WORDS } from '../../text/amounts/amount-asides.ts';
import { readOff } from '../../text/amounts/filled-to.ts';
import { restated } from '../../text/amounts/restated.ts';
import { isAnyOil } from '../../text/amounts/stop-words.ts';
import { thousandsPlain } from '../../text/amounts/thousands.ts';
import { toldAmount } from '../../text/amounts/told-amount.ts';
import { portionBeside, withHundreds } from '../../text/amounts/told-beside.ts';
import { withUpperEnd } from '../../text/amounts/upper-end.ts';
import { excerpt } from '../../text/excerpt.ts';
import { type Bounds, type Portion, readPhrase } from '../amount.ts';
import { plainAmount } from '../plain-amount.ts';
import { type AmountPhrase, amountPhrase } from '../spoken/amount-phrases.ts';
import { hedged, withoutRemark } from '../spoken/amount-remarks.ts';
import { spokenAmounts } from '../spoken/spoken-amounts.ts';
import { unitSize } from '../unit-words.ts';
import { MEASURES, type Measures } from '../units.ts';
import { LONGEST_AMOUNT, readWritten } from '../written.ts';
import { ofKindTold } from './kind-told.ts';
import { oilsTold } from './oils-told.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** A jug or a pail of no stated size. */
    'amount-vessel': { vessel: string };
    /** What was weighed holds a jug or a pail too. */
    'amount-gross': { text: string };
  }
}

/** A coloured portion below a millilitre cannot be poured. */
const ANY_PORTION: Bounds = { low: 1, high: 200_000 };

const BATTER: ReadonlySet<string> = new Set([
  'total',
  'in',
  'en',
  'batch',
  'left',
  'loaf',
  'bar',
  'full',
  'measure',
  'cavity',
  'hueco',
  'cavidad',
  'lleno',
  'llena',
  'mould',
  'mold',
  'molde',
  'lote',
  'batter',
  'soap',
  'raw',
  'masa',
  'mezcla',
  'mix',
  'pasta',
  'jabon',
  'crudo',
  'cruda',
  'weight',
  'peso',
  'together',
  'all',
  'altogether',
  'of',
  'para',
  'each',
  ':',
]);
/** What batter is parted into and stirred in at home, each of any size. */
const VESSEL = new RegExp(
  unbroken`
    ^(?:jarr(?:a|ita|on)s?|jugs?|pails?|buckets?|cubetas?|cubetitas?|baldes?|ollas?|ollitas?|pots?|bowls?|
    tazon(?:es)?|tazoncitos?|vas(?:o|ito)s?|glass(?:es)?|mugs?|pitchers?|containers?|recipientes?|tubs?|
    jars?|frasc(?:o|ito)s?|bot(?:e|ecito)s?|latas?|latitas?|tins?|cans?|cazos?|cazuelas?|scoops?|ladles?|
    cucharones|cucharon|crocks?|kettles?|bottles?|botellas?|handfuls?|punados?|punos?)$
  `,
  'u',
);

const WEIGHED =
  /\d\s*(?:g|grs?|grams?|gramos?|kgs?|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)(?!\p{L})/iu;
const THE = '(?:(?:the|my|its|el|la|mi|su) )*';
/** "615 g with the jug", "700 gramos con la jarra y todo", "jug and all". */
const WITH_VESSEL = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?<!measured )(?<!medid[oa] )(?:with|including|incl\.?|counting|con|contando|incluyendo|
    incluid[oa]) ${THE}${VESSEL_WORDS}(?: (?:itself|and all|too|y todo|incluid[oa]|tambi[eé]n))?(?=\s*(?:$|
    [,.;)]))|${VESSEL_WORDS} (?:and all|included|counted|y todo|incluid[oa]))(?!\p{L})
  `,
  'iu',
);

/** Throws a Refusal `amount-gross`: what a jug weighs nobody here knows. */
function refuseGross(text: string): void {
  // Where the empty one is told too, what is in it can be reckoned.
  const isOneFigure = text.match(/\d[\d.,]*/gu)?.length === 1;
  if (isOneFigure && WEIGHED.test(text) && WITH_VESSEL.test(text))
    refuse('amount-gross', { text: excerpt(text) });
}

/** Words about oils that tell nothing about how much. */
const ASIDE: ReadonlySet<string> = new Set(
  'only solo pure puro puros my mi mis our worth soaping base wee un una the todo todos el los junto juntos ( )'.split(
    ' ',
  ),
);
/** The colour a batter has already tells nothing about how much of it there is. */
const BATTER_COLOUR: ReadonlySet<string> = new Set(
  'white uncoloured uncolored plain coloured colored blanca blanco natural fresh thin thick liquid fresca liquida'.split(
    ' ',
  ),
);

/**
 * Reads how much is to be coloured: an amount of batter (`2 cups`, `500 g batter`) or the oils that went into it
 * (`1 lb oils`, `500 g de aceites`); `1,250 g` is 1,250 g. 1 ml to 200 l, 1 g to 200 kg. Throws as {@link parseAmount} does, and a Refusal
 * `amount-vessel` (`half a pail`).
 * @example parsePortion('500 g oils') // { measure: 'mass', grams: 500, of: 'oils' }
 */
export function parsePortion(text: string, measures: Measures = MEASURES.us): Portion {
  const said = withoutRemark(thousandsPlain(restated(text.slice(0, LONGEST_AMOUNT + 1))));
  return portionOf(said, amountPhrase(said.slice(0, LONGEST_AMOUNT + 1)), measures);
}

function portionOf(said: string, phrase: AmountPhrase, measures: Measures): Portion {
  refuseVessel(phrase);
  const { amount, words } = readPhrase(said, phrase, { measures, bounds: ANY_PORTION });
  const strange = words.filter(
    word =>
      !isAnyOil(word) &&
      !BATTER.has(word) &&
      !(words.length > 1 && ASIDE.has(word)) &&
      // A vessel beside its size: "a 250 ml pot of batter", "500 ml jug full".
      !VESSEL.test(word) &&
      !(words.length > 1 && BATTER_COLOUR.has(word)),
  );
  if (strange.length > 0) refuse('amount-unit-unknown', { unit: excerpt(strange.join(' ')) });
  return { ...amount, of: words.some(isAnyOil) ? 'oils' : 'batter' };
}

/** Throws a Refusal `amount-vessel` where a portion is counted in jugs and nothing else tells its size. */
function refuseVessel({ low }: AmountPhrase): void {
  const written = readWritten(low);
  const vessel = written?.words.find(word => VESSEL.test(word));
  if (vessel !== undefined && written?.terms.every(({ unit }) => unit === undefined))
    refuse('amount-vessel', { vessel: excerpt(vessel) });
}

/** A portion, or the two ends of a range of portions; `about` where the member said so. */
export type PortionRange = { readonly low: Portion; readonly high?: Portion; readonly about: boolean };

/** How long a text may be in which an amount is sought among other words. */
const LONGEST_TOLD = 200;
const OF_OILS = /(?<!\p{L})(?:oils?|fats?|aceites?|grasas?)(?!\p{L})/iu;
const STRANGE: ReadonlySet<string> = new Set(['amount-unit-unknown', 'amount-unreadable', 'amount-vessel']);

/**
 * Reads a portion or a range of them, such as `2-3 cups`, and what people say around it ("all that's left, about 900 ml").
 * Throws as {@link parsePortion} does, but for ranges, and a Refusal `amount-gross` (`615 g with the jug`).
 */
export function parsePortionRange(typed: string, measures: Measures = MEASURES.us): PortionRange {
  const whole = readOff(withHundreds(typed));
  const plain = plainPortion(whole, measures);
  if (plain) return { low: plain, about: false };
  refuseGross(whole);
  const text = restated(/up to|as much as|hasta/iu.test(whole) ? withUpperEnd(spokenAmounts(whole)) : whole);
  const readings = [
    text,
    () => portionBeside(text),
    () => amountAlone(text),
    () => oilsTold(whole),
    () => toldAmount(text),
  ];
  let first: Refusal | undefined;
  for (const reading of readings) {
    try {
      const said = typeof reading === 'string' ? reading : reading();
      if (said === undefined) continue;
      const range = kindsTold(rangeOf(said, measures), whole);
      return said === text ? range : { ...range, about: hedged(text).about };
    } catch (refusal) {
      if (!(refusal instanceof Refusal) || text.length > LONGEST_TOLD) throw refusal;
      // "Oil weight 720": a bare figure of oils is read by who knows of them.
      const isOfOils =
        refusal.id === 'amount-without-unit' && (OF_OILS.test(text) || oilsTold(whole) !== undefined);
      if (!STRANGE.has(refusal.id) && !isOfOils) throw refusal;
      // That it lacks a unit tells more than which word is none.
      first = refusal.id === 'amount-without-unit' ? refusal : (first ?? refusal);
    }
  }
  throw first;
}

/** Both ends with what the whole text says that they are of. */
function kindsTold({ low, high, about }: PortionRange, whole: string): PortionRange {
  const text = spokenAmounts(whole);
  return { low: ofKindTold(low, text), ...(high && { high: ofKindTold(high, text) }), about };
}

/** A portion in range that is a figure with its unit; undefined where there is more to read, or to refuse. */
function plainPortion(text: string, measures: Measures): Portion | undefined {
  const plain = plainAmount(text);
  if (!plain) return undefined;
  const { measure, size } = unitSize(plain.unit, measures);
  const value = plain.count * size;
  if (value < ANY_PORTION.low || value > ANY_PORTION.high) return undefined;
  const of = plain.of !== undefined && isAnyOil(plain.of) ? 'oils' : 'batter';
  return measure === 'volume' ? { measure, millilitres: value, of } : { measure, grams: value, of };
}

function rangeOf(text: string, measures: Measures): PortionRange {
  const said = withoutRemark(thousandsPlain(text.slice(0, LONGEST_AMOUNT + 1)));
  const phrase = amountPhrase(said);
  const { low, high } = phrase;
  const { about } = hedged(text);
  if (high === undefined) return { low: portionOf(said, phrase, measures), about };
  return { low: parsePortion(low, measures), high: parsePortion(high, measures), about };
}
