import { fold } from '../colourants/fold.ts';
import type { Origin } from '../origin.ts';
import { plainText, readDecimal } from '../quantities/number.ts';
import { refuse } from '../refusal.ts';
import { leadingAmount } from './leading-amount.ts';
import { oilById } from './oils/find-oil.ts';
import type { OilMass } from './oils/oil.ts';
import type { AdditiveAsk, AdditiveId } from './request.ts';
import { shown } from './shown.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'additive-unknown': { text: string; known: readonly AdditiveId[] };
    'additive-without-amount': { text: string };
    'additive-too-much': { text: string; most: number };
  }
}

/** What an additive does besides weighing something; `src/words` speaks each. */
export type AdditiveEffect = 'heats' | 'browns' | 'replaces-water' | 'drinks-water' | 'hardens' | 'eats-lye';

/** What one gram of an additive brings. Fractions of its mass. */
export type Additive = {
  readonly id: AdditiveId;
  readonly synonyms: readonly string[];
  readonly water: number;
  readonly fat: { readonly oil: string; readonly share: number } | undefined;
  readonly sugar: number;
  /** Moles of hydroxide that a gram neutralises. */
  readonly acid: number;
  /** g/ml of the additive as added. */
  readonly density: number;
  readonly effects: readonly AdditiveEffect[];
  readonly origin: Origin;
};

/** Citric acid gives three protons; anhydrous 192.12 g/mol, monohydrate 210.14 g/mol. */
const CITRIC_MOLES_PER_GRAM = 3 / 192.124;
export const CITRIC_MONOHYDRATE_RATIO = 192.124 / 210.139;

const FOOD: Origin = { trust: 'from memory', source: 'USDA FoodData Central, composition per 100 g' };
const HANDBOOK: Origin = { trust: 'from memory', source: 'handbook density; effect is common practice' };
const plain = { water: 0, fat: undefined, sugar: 0, acid: 0 } as const;

export const ADDITIVES: readonly Additive[] = [
  {
    ...plain,
    id: 'milk',
    synonyms: ['milk', 'cow milk', 'whole milk', 'leche', 'leche de vaca'],
    water: 0.881,
    fat: { oil: 'butterfat', share: 0.0327 },
    sugar: 0.048,
    density: 1.03,
    effects: ['replaces-water', 'heats', 'browns'],
    origin: FOOD,
  },
  {
    ...plain,
    id: 'goat-milk',
    synonyms: ['goat milk', 'goats milk', 'leche de cabra'],
    water: 0.87,
    fat: { oil: 'butterfat', share: 0.0414 },
    sugar: 0.0445,
    density: 1.03,
    effects: ['replaces-water', 'heats', 'browns'],
    origin: FOOD,
  },
  {
    ...plain,
    id: 'coconut-milk',
    synonyms: ['coconut milk', 'leche de coco'],
    water: 0.729,
    fat: { oil: 'coconut', share: 0.213 },
    sugar: 0.028,
    density: 0.98,
    effects: ['replaces-water', 'heats', 'browns'],
    origin: FOOD,
  },
  {
    ...plain,
    id: 'honey',
    synonyms: ['honey', 'miel'],
    water: 0.171,
    sugar: 0.824,
    density: 1.42,
    effects: ['heats', 'browns'],
    origin: FOOD,
  },
  {
    ...plain,
    id: 'sugar',
    synonyms: ['sugar', 'azucar', 'sucrose'],
    sugar: 1,
    density: 1.59,
    effects: ['heats'],
    origin: HANDBOOK,
  },
  {
    ...plain,
    id: 'salt',
    synonyms: ['salt', 'sea salt', 'table salt', 'sal'],
    density: 2.165,
    effects: ['hardens'],
    origin: HANDBOOK,
  },
  {
    ...plain,
    id: 'clay',
    synonyms: ['clay', 'kaolin', 'kaolin clay', 'bentonite', 'arcilla', 'caolin'],
    density: 2.6,
    effects: ['drinks-water'],
    origin: HANDBOOK,
  },
  {
    ...plain,
    id: 'citric-acid',
    synonyms: ['citric acid', 'citric', 'acido citrico'],
    acid: CITRIC_MOLES_PER_GRAM,
    density: 1.665,
    effects: ['eats-lye'],
    origin: { trust: 'computed', source: 'three carboxyl groups a molecule, CIAAW atomic weights' },
  },
  {
    ...plain,
    id: 'sodium-lactate',
    synonyms: ['sodium lactate', 'lactate', 'lactato de sodio', 'lactato sodico'],
    water: 0.4,
    density: 1.33,
    effects: ['hardens'],
    origin: { trust: 'from memory', source: 'sold as a 60 % solution; common practice' },
  },
  {
    ...plain,
    id: 'oatmeal',
    synonyms: ['oatmeal', 'oats', 'oat', 'avena'],
    density: 1.3,
    effects: ['drinks-water'],
    origin: HANDBOOK,
  },
];

const byName = new Map(
  ADDITIVES.flatMap(additive => additive.synonyms.map(name => [fold(name), additive.id] as const)),
);

/** Percent of the oils beyond which no additive is an additive; salt bars go to their oils' weight. */
const MOST_PERCENT = 100;

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
  const percent =
    /([\d.,]+)\s*(?:%|percent|por ciento)(?:\s*(?:of|de)?\s*(?:the\s)?(?:oils?|aceites?))?/iu.exec(piece);
  if (percent) {
    const percentOfOils = readDecimal(percent[1]!)[0] ?? Number.NaN;
    if (!(percentOfOils > 0)) refuse('additive-without-amount', { text: shown(piece) });
    if (percentOfOils > MOST_PERCENT) refuse('additive-too-much', { text: shown(piece), most: MOST_PERCENT });
    return { id: idOf(piece.replace(percent[0], ' ')), amount: { percentOfOils } };
  }
  const number = /\d/u.exec(piece)?.index ?? refuseNameless(piece);
  const head = leadingAmount(piece.slice(number));
  if (head === undefined) refuse('additive-without-amount', { text: shown(piece) });
  const id = idOf(`${piece.slice(0, number)} ${head.rest}`);
  const { amount } = head;
  const grams = amount.measure === 'mass' ? amount.grams : amount.millilitres * additiveById(id).density;
  return { id, amount: { grams } };
}

function refuseNameless(piece: string): never {
  idOf(piece);
  return refuse('additive-without-amount', { text: shown(piece) });
}

function idOf(name: string): AdditiveId {
  const words = fold(name)
    .replace(/^(?:of|de) | (?:of|de)$/gu, '')
    .trim();
  return (
    byName.get(words) ??
    refuse('additive-unknown', { text: shown(name), known: ADDITIVES.map(({ id }) => id) })
  );
}

/** One additive weighed for a batch. */
export type AdditiveMass = { readonly additive: Additive; readonly grams: number };

/** What each additive weighs in a batch of that much oil. */
export function weighAdditives(asks: readonly AdditiveAsk[], oilGrams: number): readonly AdditiveMass[] {
  return asks.map(({ id, amount }) => ({
    additive: additiveById(id),
    grams: 'grams' in amount ? amount.grams : (oilGrams * amount.percentOfOils) / 100,
  }));
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
