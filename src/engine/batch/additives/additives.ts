import { metalIn, refuseMetal } from '../../colourants/metals.ts';
import { refuseBarred } from '../../hazards/colours/refuse.ts';
import { riskyScents } from '../../hazards/scents/read.ts';
import { unbroken } from '../../over-lines.ts';
import type { Amount } from '../../quantities/amount.ts';
import { plainText, readDecimal } from '../../quantities/number.ts';
import { refuse } from '../../refusal.ts';
import { leadingAmount } from '../../text/amounts/leading-amount.ts';
import { excerpt } from '../../text/excerpt.ts';
import { fold } from '../../text/fold.ts';
import { oilById } from '../oils/find-oil.ts';
import type { OilMass } from '../oils/oil.ts';
import type { Additive, AdditiveAsk, AdditiveId } from './additive.ts';
import { ADDITIVES } from './additive-table.ts';

export type { Additive, AdditiveEffect } from './additive.ts';
export { ADDITIVES };

declare module '../../refusal.ts' {
  interface Reasons {
    'additive-unknown': { text: string; known: readonly AdditiveId[] };
    'additive-without-amount': { text: string };
    /** More than this additive is ever used at; percents of the oils. */
    'additive-over-usual': { additive: AdditiveId; percent: number; most: number };
    /** A scent has its own option, which minds how much of it skin takes. */
    'scent-as-additive': { text: string };
    'additive-too-much': { text: string; most: number };
    /** What uses up lye decides how much lye is weighed: a spoon of it is no weight. */
    'additive-eats-lye-by-spoon': { additive: AdditiveId };
  }
}

const byName = new Map(
  ADDITIVES.flatMap(additive => additive.synonyms.map(name => [fold(name), additive.id] as const)),
);

/** Percent of the oils beyond which no additive is an additive; salt bars go to their oils' weight. */
const MOST_PERCENT = 100;

/** Percent of the oils beyond which an amount is a slip or no soap comes of it (common practice). */
const CEILINGS: Partial<Readonly<Record<AdditiveId, number>>> = {
  honey: 5,
  sugar: 5,
  clay: 15,
  'citric-acid': 3,
  'citric-anhydrous': 3,
  'sodium-lactate': 6,
  oatmeal: 15,
};

/** What counts as one where there are several: each of them alone would be let through. */
const ALIKE: Partial<Readonly<Record<AdditiveId, 'sweet' | 'citric'>>> = {
  honey: 'sweet',
  sugar: 'sweet',
  'citric-acid': 'citric',
  'citric-anhydrous': 'citric',
};

/** Throws a Refusal `additive-over-usual` for an additive above its ceiling, whatever it was measured by. */
export function checkCeilings(additives: readonly AdditiveMass[], oilGrams: number): void {
  for (const { additive } of additives) {
    const most = CEILINGS[additive.id];
    const group = ALIKE[additive.id];
    const grams = additives
      .filter(one => one.additive.id === additive.id || (group && ALIKE[one.additive.id] === group))
      .reduce((sum, one) => sum + one.grams, 0);
    const percent = (100 * grams) / oilGrams;
    if (most !== undefined && percent > most + 1e-9)
      refuse('additive-over-usual', { additive: additive.id, percent, most });
  }
}

/** The additive of that id. */
export function additiveById(id: AdditiveId): Additive {
  return ADDITIVES.find(additive => additive.id === id)!;
}

/**
 * Reads `honey 10 g, salt 5%, 1 Tbsp sugar`: grams, a percent of the oils, or spoons turned to grams by density.
 * English or Spanish. Throws a Refusal: `additive-unknown`, `additive-without-amount`, `additive-too-much`.
 */
export function parseAdditives(text: string): readonly AdditiveAsk[] {
  return plainText(text.replaceAll('\n', ';'))
    .split(/[;|]|,(?!\d)|\s\+\s/u)
    .map(piece => piece.trim())
    .filter(piece => piece !== '')
    .map(readAdditive);
}

function readAdditive(piece: string): AdditiveAsk {
  if (/(?:^|\s)-\s?\d/u.test(piece)) refuse('additive-without-amount', { text: excerpt(piece) });
  const percent =
    /([\d.,]+)\s*(?:%|percent|por ciento)(?:\s*(?:of|de)?\s*(?:the\s)?(?:oils?|aceites?))?/iu.exec(piece);
  if (percent) {
    const percentOfOils = readDecimal(percent[1]!)[0] ?? Number.NaN;
    if (!(percentOfOils > 0)) refuse('additive-without-amount', { text: excerpt(piece) });
    if (percentOfOils > MOST_PERCENT)
      refuse('additive-too-much', { text: excerpt(piece), most: MOST_PERCENT });
    return { id: idOf(piece.replace(percent[0], ' ')), amount: { percentOfOils } };
  }
  const number = /\d/u.exec(piece)?.index ?? refuseNameless(piece);
  const head = leadingAmount(piece.slice(number));
  if (head === undefined) refuse('additive-without-amount', { text: excerpt(piece) });
  const id = idOf(`${piece.slice(0, number)} ${head.rest}`);
  return { id, amount: { grams: gramsOf(id, head.amount) } };
}

/** Grams of a weight as written, or of spoons by bulk density. Throws a Refusal `additive-eats-lye-by-spoon`. */
export function gramsOf(id: AdditiveId, amount: Amount): number {
  if (amount.measure === 'mass') return amount.grams;
  const { effects, bulk } = additiveById(id);
  if (effects.includes('eats-lye')) refuse('additive-eats-lye-by-spoon', { additive: id });
  return amount.millilitres * bulk.typical;
}

function refuseNameless(piece: string): never {
  idOf(piece);
  return refuse('additive-without-amount', { text: excerpt(piece) });
}

/** Words that tell a liquid's making and not what it is. */
const ADJECTIVES = new RegExp(
  unbroken`
    \b(?:of|de|the|canned|fresh|strong|cold|flat|boiled|raw|light|dark|brewed|organic|homemade|unsweetened|
    pasteuri[sz]ed|plain|full fat|frozen|green|black|red|white|rooibos|mint|ripe|mashed|dry|pureed|cooked|
    fresca|fresco|fuerte|fria|frio|negro|negra|verde|tinto|blanco|rubia|casera|natural|congelada|
    congelado)\b
  `,
  'gu',
);

/** The additive or liquid of that name, or undefined; adjectives such as `canned` or `strong` do not matter. */
export function knownAdditive(name: string): AdditiveId | undefined {
  const words = fold(name)
    .replace(/^(?:of|de) | (?:of|de)$/gu, '')
    .trim();
  const bare = words.replace(ADJECTIVES, ' ').replace(/\s+/gu, ' ').trim();
  const lone = byName.get(words) ?? byName.get(bare);
  if (lone !== undefined) return lone;
  return /^(?:[a-z]+ )?(?:puree|pure|pulp|pulpa)(?: [a-z]+)*$/u.test(bare) ? 'fruit-puree' : undefined;
}

const SPIRITS = new RegExp(
  unbroken`
    \b(?:vodka|rum|gin|whisk(?:e?y)|bourbon|tequila|mezcal|brandy|cognac|liqueur|schnapps|moonshine|grappa|
    everclear|spirit|ethanol|alcohol|isopropyl|isopropilico|ron|ginebra|aguardiente|pisco|orujo|licor|
    etanol|tintura|tincture)\b
  `,
  'u',
);

/** Throws a Refusal `liquid-is-spirit` for strong drink and alcohol; "alcohol-free" is none. */
export function refuseSpirit(name: string): void {
  const said = fold(name);
  if (SPIRITS.test(said) && !/\b(?:free|sin alcohol)\b/u.test(said))
    refuse('liquid-is-spirit', { text: excerpt(name) });
}

/** Words that make an additive a scent, whatever it is made from. */
const SCENT = /\b(?:essential oil|aceites? esencial|fragrance|fragancia|scent|eo|perfume|parfum)\b/u;

function idOf(name: string): AdditiveId {
  const known = knownAdditive(name);
  if (known === undefined) {
    if (metalIn(name)?.certainty !== 'glitter') refuseMetal(name);
    refuseBarred(name);
    refuseSpirit(name);
    if (SCENT.test(fold(name))) refuse('scent-as-additive', { text: excerpt(name) });
    riskyScents(name);
  }
  return known ?? refuse('additive-unknown', { text: excerpt(name), known: ADDITIVES.map(({ id }) => id) });
}

/** One additive weighed for a batch, and where a liquid is to go if the member says. */
export type AdditiveMass = {
  readonly additive: Additive;
  readonly grams: number;
  readonly into?: 'jug' | 'oils' | undefined;
  readonly frozen?: boolean | undefined;
};

/**
 * What each additive weighs in a batch of that much oil. `waterGrams` is all the water of the recipe, of which a liquid
 * in its place brings a share: gram for gram of water, not of liquid.
 */
export function weighAdditives(
  asks: readonly AdditiveAsk[],
  { oilGrams, waterGrams }: { readonly oilGrams: number; readonly waterGrams: number },
): readonly AdditiveMass[] {
  return asks.map(({ id, amount, into, frozen }) => {
    const additive = additiveById(id);
    return { additive, grams: weighed(amount, additive, { oilGrams, waterGrams }), into, frozen };
  });
}

function weighed(
  amount: AdditiveAsk['amount'],
  { water }: Additive,
  batch: { readonly oilGrams: number; readonly waterGrams: number },
): number {
  if ('grams' in amount) return amount.grams;
  if ('percentOfOils' in amount) return (batch.oilGrams * amount.percentOfOils) / 100;
  return (batch.waterGrams * amount.percentOfWater) / 100 / water;
}

/** What all the additives bring together: grams of water and sugar, fats that take lye, moles of acid that eat it. */
export type AdditiveTotals = {
  readonly grams: number;
  readonly waterGrams: number;
  readonly sugarGrams: number;
  readonly fats: readonly OilMass[];
  readonly acidMoles: number;
  /** Of what is neither water nor fat, millilitres. */
  readonly solidMillilitres: number;
};

/** Adds the additives up. Fats keep their own saponification values; solids take the volume their density gives. */
export function additiveTotals(additives: readonly AdditiveMass[]): AdditiveTotals {
  const sum = (of: (mass: AdditiveMass) => number) => additives.reduce((total, mass) => total + of(mass), 0);
  return {
    grams: sum(({ grams }) => grams),
    waterGrams: sum(({ additive, grams }) => grams * additive.water),
    sugarGrams: sum(({ additive, grams }) => grams * additive.sugar),
    acidMoles: sum(({ additive, grams }) => grams * additive.acid),
    fats: additives.flatMap(({ additive, grams }) =>
      additive.fat === undefined
        ? []
        : [{ oil: oilById(additive.fat.oil), grams: grams * additive.fat.share }],
    ),
    solidMillilitres: sum(({ additive, grams }) => solidVolume(additive, grams)),
  };
}

/** A liquid additive keeps its own density; the water and fat in it are counted with the batch's own. */
function solidVolume(additive: Additive, grams: number): number {
  const liquid = additive.water + (additive.fat?.share ?? 0);
  const whole = grams / additive.density;
  const counted = grams * (additive.water + (additive.fat?.share ?? 0) / 0.91);
  return liquid === 0 ? whole : Math.max(0, whole - counted);
}
