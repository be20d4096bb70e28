import { plainText } from '../../../quantities/number.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { Refusal } from '../../../refusal.ts';
import type { OilBlend } from '../blend.ts';
import { parseOils } from './oil-list.ts';

/** Refusals of a list whose figures lack their unit. */
const WITHOUT_UNIT: ReadonlySet<string> = new Set(['oils-without-unit', 'oils-mixed-units']);
/** Weights of less may be ounces or percents, and so may a batch of less in all: 300 oz of oils would be 8.5 kg. */
const LEAST_G = 20;
const LEAST_BATCH_G = 300;

const OTHER_UNIT =
  /%|\d\s*(?:percent|per cent|por ?ciento|parts?|partes?|oz|ounces?|onzas?|lbs?|pounds?|libras?|cups?|tazas?|ml|l|lit(?:er|re)s?|litros?)(?!\p{L})/iu;
/** The melting point in coconut oil's trade name is no weight. */
const GRADE = /(?:coconut|coco)(?: oil)? (?:76|92)(?!\d)/iu;
const IN_GRAMS =
  /(?<![\d.,/])(\d+\/\d+|\d+(?:[.,]\d+)?)\s*(kgs?|kilos?|kilogram(?:me|o)?s?|g|grs?|grams?|gramos?)?(?!\p{L}|[\d.,/]\d)/giu;

const figureOf = (text: string): number => {
  const [over = 0, under = 1] = text.replace(',', '.').split('/').map(Number);
  return over / under;
};

/** The list with its bare figures in grams; undefined where one of them may be something else. */
function inGrams(text: string): string | undefined {
  const said = spokenAmounts(plainText(text));
  if (OTHER_UNIT.test(said) || GRADE.test(said)) return undefined;
  const figures = [...said.matchAll(IN_GRAMS)].map(({ 1: figure = '', 2: unit }) => ({
    isBare: unit === undefined,
    grams: figureOf(figure) * (/^k/iu.test(unit ?? '') ? 1000 : 1),
  }));
  const sum = figures.reduce((all, { grams }) => all + grams, 0);
  const areWeights = figures.every(
    ({ isBare, grams }) => !isBare || (Number.isInteger(grams) && grams >= LEAST_G),
  );
  if (!areWeights || sum < LEAST_BATCH_G) return undefined;
  return said.replace(IN_GRAMS, (all, figure: string, unit?: string) =>
    unit === undefined ? `${figure} g` : all,
  );
}

/**
 * The oils of a batch that somebody plans, whose answer shows the grams of each: as {@link parseOils} reads them, and bare whole
 * figures of 20 and more that come to 300 and more as grams ("olive 500, coconut 250, castor 50"). Throws as it does. Questions of lye
 * alone read their lists without it. Pure.
 */
export function oilsOfBatch(text: string): OilBlend {
  try {
    return parseOils(text);
  } catch (refusal) {
    const grams = refusal instanceof Refusal && WITHOUT_UNIT.has(refusal.id) ? inGrams(text) : undefined;
    if (grams === undefined) throw refusal;
    return parseOils(grams);
  }
}
