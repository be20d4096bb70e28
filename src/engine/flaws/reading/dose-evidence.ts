import { colourantById } from '../../colourants/catalogue.ts';
import type { Colourant } from '../../colourants/colourant.ts';
import { US_CUP_ML, US_TEASPOON_ML } from '../../quantities/units.ts';
import type { Token } from '../../text/tokens.ts';
import type { ColourRate } from '../batch-numbers.ts';
import type { FindingId } from '../findings.ts';
import type { Concept, Mention } from './concepts.ts';
import type { Measured } from './measured.ts';

/** A finding that a number in the text speaks for or against. */
export type NumberSays = {
  readonly finding: FindingId;
  readonly probability: number;
  readonly from: number;
  readonly to: number;
  /** The rate it was judged by, where the portion is told too. */
  readonly rate?: ColourRate;
};

/** Which entry of the catalogue stands for what a maker calls it; its dose and weight are those of its kind. */
const STANDS_FOR: readonly (readonly [Concept, string])[] = [
  ['titanium', 'titanium-dioxide'],
  ['oxide', 'red-iron-oxide'],
  ['neon', 'neon-pink'],
  ['carbon', 'activated-charcoal'],
  ['mica', 'mica-unknown-coat'],
  ['colourant', 'red-iron-oxide'],
  ['powder', 'mica-unknown-coat'],
  ['colour', 'mica-unknown-coat'],
];

/** Raw batter from a gram of oils, ml: oil 1, water a third, lye a seventh, near 1 g/ml. Computed from usual recipes. */
const BATTER_ML_PER_G_OILS = 1.47;
/** A whole home batch where no size is given, cups. Common practice: a two- to three-pound loaf. */
const HOME_BATCH_CUPS = 5;
const NEAR = 7;
const LIQUID =
  /^(oils?|glycerin|water|olive|aceite|agua|glicerina|fragrance|fo|lye|sosa|honey|sugar|milk|salt)$/;

type Dosed = {
  readonly concept: Concept;
  readonly colourant: Colourant;
  readonly teaspoons: number;
  readonly from: number;
  readonly to: number;
};

function teaspoons(amount: Measured, colourant: Colourant): number {
  const millilitres =
    amount.measure === 'volume' ? amount.value : amount.value / colourant.bulkDensity.typical;
  return millilitres / US_TEASPOON_ML;
}

/** The colourant an amount speaks of: the nearest named within reach, rather after it than before. */
function dosedBy(
  amount: Measured,
  named: ReadonlyMap<number, Concept>,
  tokens: readonly Token[],
): Dosed | undefined {
  const next = tokens[amount.to]?.text ?? '';
  if (LIQUID.test(/^(of|de)$/.test(next) ? (tokens[amount.to + 1]?.text ?? '') : next)) return undefined;
  const order = [...Array(NEAR).keys()].flatMap(step => [amount.to + step, amount.from - 1 - step]);
  for (const at of order) {
    const concept = named.get(at);
    const id = STANDS_FOR.find(([known]) => known === concept)?.[1];
    const colourant = id === undefined ? undefined : colourantById(id);
    if (concept === undefined || colourant === undefined) continue;
    const between = tokens.slice(Math.min(at, amount.to), Math.max(at, amount.from));
    if (between.some(token => token.kind === 'mark' && /[.;!?\n]/.test(token.text))) continue;
    return {
      concept,
      colourant,
      teaspoons: teaspoons(amount, colourant),
      from: Math.min(at, amount.from),
      to: Math.max(at + 1, amount.to),
    };
  }
  return unnamed(amount, next);
}

/** "Used 1/8 tsp for the whole loaf": spoons of nothing named, in a talk about colour, are spoons of colour. */
function unnamed(amount: Measured, next: string): Dosed | undefined {
  const colourant = colourantById('mica-unknown-coat');
  const spoons =
    amount.measure === 'volume' ? amount.value <= 30 : amount.value <= 5 && /^(en|in|per|por)$/.test(next);
  if (!spoons || !colourant || !/^(for|in|per|to|into|for|en|para|por|[.,;!?\n]|)$/.test(next))
    return undefined;
  return {
    concept: 'colour',
    colourant,
    teaspoons: teaspoons(amount, colourant),
    from: amount.from,
    to: amount.to,
  };
}

const batterCups = (amount: Measured): number =>
  (amount.measure === 'volume' ? amount.value : amount.value * BATTER_ML_PER_G_OILS) / US_CUP_ML;

const isPortion = (amount: Measured): boolean => amount.cups || amount.value > 100;

/** What a rate of colourant says, against the full dose and the ceiling of its kind in the catalogue. */
function judged(dosed: Dosed, cups: number, certain: boolean): NumberSays[] {
  const { fullTspPerCup: full, ceilingTspPerCup: most } = dosed.colourant.dose;
  const rate = dosed.teaspoons / cups;
  const [much, little]: FindingId[] =
    dosed.concept === 'titanium' ? ['much-white-pigment', 'little-colour'] : ['much-colour', 'little-colour'];
  const { id: colourant, kind } = dosed.colourant;
  const say = (finding: FindingId, probability: number): NumberSays => ({
    finding,
    probability,
    from: dosed.from,
    to: dosed.to,
    ...(certain && { rate: { colourant, kind, perCup: rate, full, most } }),
  });
  const sure = certain ? 0.95 : 0.8;
  if (rate > most * (certain ? 1.05 : 1.5)) return [say(much!, sure), say(little!, 0.05)];
  if (rate <= full * 0.3) return [say(little!, sure), say(much!, 0.05)];
  if (certain && rate <= full * 0.5) return [say(little!, 0.8), say(much!, 0.1)];
  return certain ? [say(much!, 0.1), say(little!, 0.15)] : [];
}

/** "0.3 % charcoal on oils": a share of the oils beside a colourant's name, in grams for the oils of one cup. */
function shares(tokens: readonly Token[], named: ReadonlyMap<number, Concept>): NumberSays[] {
  return tokens.flatMap((token, at) => {
    const percent = token.text === '%' ? Number(tokens[at - 1]?.text.replace(',', '.')) : Number.NaN;
    if (!(percent > 0 && percent <= 15)) return [];
    const place = [at + 1, at + 2, at - 2].find(
      i => named.has(i) && !/^(on|of|de|sobre)$/.test(tokens[i]!.text),
    );
    const concept = place === undefined ? undefined : named.get(place);
    const colourant = colourantById(STANDS_FOR.find(([known]) => known === concept)?.[1] ?? '');
    if (place === undefined || concept === undefined || colourant === undefined) return [];
    const grams = (percent / 100) * (US_CUP_ML / BATTER_ML_PER_G_OILS);
    const teaspoons = grams / colourant.bulkDensity.typical / US_TEASPOON_ML;
    const [from, to] = [Math.min(at - 1, place), Math.max(at, place) + 1];
    return judged({ concept, colourant, teaspoons, from, to }, 1, false);
  });
}

/** Compares amounts of colourant in the text with what their kind bears. */
export function doseEvidence(
  tokens: readonly Token[],
  mentions: readonly Mention[],
  amounts: readonly Measured[],
): NumberSays[] {
  const named = new Map<number, Concept>();
  for (const mention of mentions)
    if (STANDS_FOR.some(([concept]) => concept === mention.concept))
      for (let at = mention.from; at < mention.to; at += 1) {
        const rank = (concept: Concept | undefined) => STANDS_FOR.findIndex(([known]) => known === concept);
        const old = named.get(at);
        if (old === undefined || rank(mention.concept) < rank(old)) named.set(at, mention.concept);
      }
  const spoken = amounts.flatMap((amount, i) => {
    if (isPortion(amount) || amount.per) return [];
    const dosed = dosedBy(amount, named, tokens);
    if (!dosed) return [];
    const portion =
      amounts.slice(i + 1, i + 3).find(other => isPortion(other) || other.per) ??
      (i > 0 && isPortion(amounts[i - 1]!) ? amounts[i - 1] : undefined);
    const near = portion && Math.abs(portion.from - amount.from) <= 18 ? portion : undefined;
    return near ? judged(dosed, batterCups(near), true) : judged(dosed, HOME_BATCH_CUPS, false);
  });
  return [...spoken, ...shares(tokens, named)];
}
