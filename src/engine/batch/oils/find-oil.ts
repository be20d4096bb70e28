import { spaced, unbroken } from '../../over-lines.ts';
import { refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import { foldedWords } from '../../text/fold.ts';
import { slipCost } from '../../text/spelling/slip-cost.ts';
import { unaccented } from '../../text/unaccented.ts';
import { whenAsked } from '../../when-asked.ts';
import { OILS } from './index.ts';
import { isNeverSoap } from './not-soap.ts';
import type { Oil } from './oil.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** `nearest` are the three closest oils we know. */
    'oil-not-clarified': { text: string };
    'oil-unknown': { text: string; nearest: readonly Oil['names'][] };
    /** A drink or another watery liquid: hardly a fat in it, and none to make soap of. */
    'oil-is-liquid': { text: string };
    /** A kitchen name that stands for different fats, each with a lye of its own. */
    'oil-unclear': { text: string };
    /** A food of which only a part is fat: fruit, nuts, meat, nut butter. */
    'oil-is-food': { text: string };
    /** Lye makes no soap of it: paraffin, mineral oil, silicones. */
    'oil-never-soap': { text: string };
  }
}

/** Words that say nothing about which oil is meant, in either language. */
const fillers = new Set(
  spaced`
    aceite al butter cold de del el extra fat grasa la manteca mantequilla of oil organic organico prensado
    pressed pure puro raw refined refinado the unrefined virgen virgin
  `.split(' '),
);

/** A name without accents, case, word order and fillers; `manteca` alone stays, since it means lard. */
function nameKey(text: string): string {
  const words = foldedWords(text);
  const telling = words.filter(word => !fillers.has(word));
  return [...new Set(telling.length > 0 ? telling : words)].sort().join(' ');
}

/** All the names an oil answers to. */
export function namesOf(oil: Oil): readonly string[] {
  return [oil.id.replaceAll('-', ' '), oil.names.en, oil.names.es, oil.inci, ...oil.synonyms];
}

const byKey = new Map<string, Oil>();
for (const oil of OILS) {
  for (const name of namesOf(oil)) if (!byKey.has(nameKey(name))) byKey.set(nameKey(name), oil);
}

/** The oil of that id. Throws on an id that no oil has, which is a fault of ours. */
export function oilById(id: string): Oil {
  const oil = OILS.find(candidate => candidate.id === id);
  if (oil === undefined) throw new Error(`no oil has the id ${id}`);
  return oil;
}

/** No oil's name is longer; cut, so that work stays bounded. */
const LONGEST_KEY = 60;

const keysByOil = whenAsked(() => OILS.map(oil => ({ oil, keys: [...new Set(namesOf(oil).map(nameKey))] })));

/** The oils whose names are closest in spelling to `text`, the closest first. */
export function nearestOils(text: string, count: number): readonly Oil[] {
  const key = nameKey(text);
  const scored = keysByOil().map(({ oil, keys }) => {
    const apart = keys.map(other => {
      const starts = key.length > 2 && other.startsWith(key);
      return starts ? 0 : slipCost(key.slice(0, LONGEST_KEY), other) / Math.max(key.length, other.length, 1);
    });
    return { oil, apart: Math.min(...apart) };
  });
  return scored
    .sort((a, b) => a.apart - b.apart)
    .slice(0, count)
    .map(({ oil }) => oil);
}

/** Makers' short hands for the commonest oils (trade usage). */
const SHORT: ReadonlyMap<string, string> = new Map([
  ['evoo', 'olive'],
  ['oo', 'olive'],
  ['eoo', 'olive'],
  ['co', 'coconut'],
  ['coc', 'coconut'],
  ['vco', 'coconut'],
  ['cno', 'coconut'],
  ['po', 'palm'],
  ['pko', 'palm kernel'],
  ['rbo', 'rice bran'],
  ['sao', 'sweet almond'],
  ['sb', 'shea butter'],
  ['cb', 'cocoa butter'],
  ['avo', 'avocado'],
  ['til oil', 'sesame'],
  ['cocoa butta', 'cocoa butter'],
  ['shea butta', 'shea butter'],
  ['soya bean oil', 'soybean'],
  ['soya bean', 'soybean'],
  // Lard in the north-west of Spain (from memory).
  ['unto', 'lard'],
]);

/** Cocoa butter for one, coconut for another, and a quarter of the lye between them. */
const COCOA_OR_COCONUT = /\bcoco butter\b/iu;

/** The fruit itself, whose oil is called by its seeds. */
const FRUIT = new RegExp(
  unbroken`
    ^(?:the |la |una? )?(?:pumpkins?|squash|calabazas?|zapallos?|auyama|ahuyama|carrots?|zanahorias?|
    tomato(?:es)?|tomates?|(?:pure|puree|pulpa|pulp) (?:de|of) .*)$
  `,
  'iu',
);

/** The oil a member means, in English, Spanish or INCI, or undefined. Word order and accents do not matter. */
export function knownOil(text: string): Oil | undefined {
  const named = byKey.get(nameKey(SHORT.get(text.trim().toLowerCase()) ?? text));
  // Every word of a question is asked about, and hardly one of them is an oil.
  if (named === undefined) return undefined;
  return COCOA_OR_COCONUT.test(text) || FRUIT.test(unaccented(text).trim()) ? undefined : named;
}

/** Fats that are blends, or named after an oil that is only part of them. */
const UNCLEAR = new RegExp(
  unbroken`
    \b(?:shortening|manteca vegetal|aceite vegetal|vegetable oil|grasa vegetal|vegetable fat|margarin[ea]?|
    margarina|almond butter|(?:manteca|mantequilla) de almendra)\b
  `,
  'u',
);

/** About 82 % fat, the rest water, milk and perhaps salt (Codex CXS 279-1971: at least 80 %): its weight is not that of its fat. */
const KITCHEN_BUTTER =
  /^(?:(?:plain|kitchen|dairy|cows?|sweet|salted|unsalted|real|irish|organic) )*butter$|^mantequilla(?: (?:de vaca|sin sal|con sal|salada|de cocina))*$/u;

/** Watery liquids by their whole name; what is pressed or churned from them is another thing. */
const LIQUID = new RegExp(
  unbroken`
    ^(?:(?:fresh|whole|raw|skimmed|goats?|cows?|sheep|coconut|almond|oat|soy|rice|human|breast|powdered|
    canned) )*(?:milk|buttermilk|cream|yogh?urt|kefir|whey|water|beer|wine|tea|coffee|honey|vinegar|juice|
    aloe(?: vera)?(?: juice| gel)?)$|^(?:leche|suero|yogur|agua|cerveza|vino|te|cafe|miel|vinagre|zumo|jugo|
    nata)(?: (?:de|entera?|fresca?|cruda?|descremada?|cabra|vaca|oveja|coco|almendras?|avena|soja|soya|
    arroz|limon|naranja|manzana|rosas?|aloe|vera))*$
  `,
  'u',
);

/**
 * The fruit, the nut or the animal itself, and what is ground of it: a tenth to two thirds of it is fat, so that lye for
 * an oil of its weight would burn (USDA FoodData Central: chicken about 9 %, olives 11 %, avocado 15 %, peanut butter 50 %,
 * walnuts 65 %; from memory). "Olive", "avocado" and "sweet almond" in the singular are what makers call the oils.
 */
const FOOD = new RegExp(
  unbroken`
    ^(?:(?:fresh|raw|roasted|salted|green|black|ripe|crudos?|tostad[oa]s?|salad[oa]s?) )*(?:olives|avocados|
    coconuts|almonds|walnuts|hazelnuts|peanuts|cashews?|pistachios|pecans|macadamias|chocolate|aceitunas|
    olivas|aguacates|cocos|almendras|nueces|avellanas|cacahuetes|cacahuates|manies|anacardos|pistachos|
    chicken|pork|beef|duck|goose|lamb|mutton|turkey|bacon|ham|sausage|meat|pollo|cerdo|vaca|ternera|pato|
    oca|ganso|cordero|pavo|tocino|panceta|jamon|carne)(?: (?:meat|breasts?|legs?|skin|flesh|pechuga|piel|
    powder|en polvo))*$|\b(?:peanut|coconut|cashew|hazelnut|walnut|nut) butter\b|\b(?:mantequilla|manteca|
    crema) de (?:cacahuetes?|cacahuates?|mani|anacardos?|avellanas?)\b|\bmantequilla de coco\b
  `,
  'u',
);

/**
 * {@link knownOil}. Throws a Refusal `oil-unknown` that names the three nearest, `oil-is-liquid`,
 * `oil-is-food`, `oil-unclear`, `oil-not-clarified` or `oil-never-soap`.
 */
export function findOil(text: string): Oil {
  const plain = foldedWords(text).join(' ');
  if (UNCLEAR.test(plain) || COCOA_OR_COCONUT.test(text)) refuse('oil-unclear', { text: excerpt(text) });
  if (KITCHEN_BUTTER.test(plain)) refuse('oil-not-clarified', { text: excerpt(text) });
  if (
    FOOD.test(
      unaccented(text)
        .trim()
        .replace(/^(?:de|of) /u, ''),
    )
  )
    refuse('oil-is-food', { text: excerpt(text) });
  if (
    LIQUID.test(
      foldedWords(text)
        .filter(word => word !== 'of')
        .join(' '),
    )
  )
    refuse('oil-is-liquid', { text: excerpt(text) });
  const known = knownOil(text);
  if (known === undefined && isNeverSoap(text)) refuse('oil-never-soap', { text: excerpt(text) });
  if (known !== undefined) return known;
  const near = whenAsked(() => nearestOils(text, 3).map(oil => oil.names));
  return refuse('oil-unknown', {
    text: excerpt(text),
    // Most that asks whether a text is a list of oils goes on without: comparing it with every name waits for who looks.
    get nearest() {
      return near();
    },
  });
}
