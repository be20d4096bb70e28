import { unbroken } from '../../../over-lines.ts';
import { COUNT, decimal, gramsOf, MASS, PERCENT, POTASSIUM } from '../amounts/words.ts';
import { ofLye, ofRole, one } from '../slips/reckoned.ts';
import { toldAmounts, wordsOfBatch } from '../slips/told-amounts.ts';
import { CAUSTIC } from '../topics/care-words.ts';
import { USUAL_STRENGTH } from './check.ts';

/** Lye water of known strength that takes the place of dry lye: grams of it, and of water beside it. Percent. */
export type ReadyLye = {
  readonly strength: number;
  readonly lyeGrams: number;
  readonly solutionGrams: number;
  /** Water that is still missing, grams; undefined where the recipe's water is not told, less than nothing where it has too much. */
  readonly waterGrams: number | undefined;
};
/** Lye of less than full purity in place of pure lye: grams to weigh. Percent. */
export type ImpureLye = { readonly percent: number; readonly pureGrams: number; readonly grams: number };
/** Water for weighed lye at a strength (percent) or a ratio that is told. */
export type WaterForLye = {
  readonly lyeGrams: number;
  readonly waterGrams: number;
  readonly percent: number;
};

const READY = new RegExp(
  unbroken`
    (?<!\p{L})(?:solution|premix\p{L}*|pre ?made|ready|mixed already|already mixed|master ?batch\p{L}*|
    (?:ya )?(?:hecha|preparada|disuelta|mezclada)|disolucion|solucion)(?!\p{L})
  `,
  'u',
);
const NEEDS = /(?<!\p{L})(?:needs?|wants?|calls? for|need|necesit\p{L}+|pide|lleva|quiero)(?!\p{L})/u;
/** Lye water is sold and kept from 20 to 50 %; stronger sets solid (handbook tables). */
const STRENGTHS = { least: 20, most: 55 };

const PERCENTS = new RegExp(PERCENT, 'gu');
const onlyPercent = (plain: string): number | undefined => {
  const found = [...plain.matchAll(PERCENTS)];
  return found.length === 1 ? decimal(found[0]![1]!) : undefined;
};

/** Lye water of as much lye as water. */
const HALF_LYE =
  /(?<![\d.,])(?:50 ?[/:-] ?50|1 ?: ?1)(?!\d|[.,]\d)|(?<!\p{L})(?:half and half|equal (?:parts|weights)|(?:a )?partes iguales|mitad y mitad)(?!\p{L})/giu;
/** A question in which half lye and half water is told as the percent that it is. Pure. */
export const withHalfAsPercent = (question: string): string => question.replace(HALF_LYE, '50% ');

/** How much of ready-made lye water a recipe wants; undefined where that is not asked. Pure. */
export function readyLyeIn(question: string): ReadyLye | undefined {
  const plain = wordsOfBatch(withHalfAsPercent(question));
  const strength = onlyPercent(plain);
  if (strength === undefined || !READY.test(plain) || !NEEDS.test(plain)) return undefined;
  if (strength < STRENGTHS.least || strength > STRENGTHS.most) return undefined;
  const amounts = toldAmounts(plain);
  const lyeGrams = one(ofLye(amounts));
  const water = one(ofRole(amounts, 'water'));
  if (lyeGrams === undefined || amounts.length !== 1 + (water === undefined ? 0 : 1)) return undefined;
  const solutionGrams = (100 * lyeGrams) / strength;
  return {
    strength,
    lyeGrams,
    solutionGrams,
    waterGrams: water === undefined ? undefined : water - (solutionGrams - lyeGrams),
  };
}

const PURE = /(?<!\p{L})(?:pure|purity|pureza|pura|puro)(?!\p{L})/u;
const LACKS =
  /(?<!\p{L})(?:short|more|enough|adjust|correct|extra|falta|faltan?|mas|corrijo|ajusto|basta)(?!\p{L})/u;

/** What weighed lye lacks by its purity; undefined where that is not asked, or oils stand beside it. Pure. */
export function impureLyeIn(question: string): ImpureLye | undefined {
  const plain = wordsOfBatch(question);
  const percent = onlyPercent(plain);
  if (percent === undefined || percent < 70 || percent >= 100 || !PURE.test(plain) || !LACKS.test(plain))
    return undefined;
  const amounts = toldAmounts(plain);
  const [only] = amounts;
  if (amounts.length !== 1 || !only || !new RegExp(`(?<!\\p{L})${CAUSTIC}(?!\\p{L})`, 'u').test(plain))
    return undefined;
  if (only.oil !== undefined || only.role === 'whole' || only.role === 'water') return undefined;
  return { percent, pureGrams: only.grams, grams: (100 * only.grams) / percent };
}

const RATIO = String.raw`(\d+(?:[.,]\d+)?) ?(?::|to|a|por|x) ?(\d+(?:[.,]\d+)?|one|un[oa])`;
const WATER_ASKED = new RegExp(
  unbroken`
    ^(?:(?:how much|cuanta) )?(?:water|agua) (?:do i (?:need|use) )?(?:for|para|con|a) (${MASS}|
    ${COUNT}(?= (?:of |de )?(?:the |la )?${CAUSTIC}))(?: (?:of|de))?(?: (?:the|la))? ${CAUSTIC},? (?:(?:at|
    a|al|with|con|for) )*(?:${PERCENT}|${RATIO})(?: (?:(?:of|de) )?(?:lye|concentration|concentracion|ratio|
    water to lye))*[ ;]*$
  `,
  'u',
);

const HOW_MUCH_WATER = /(?<!\p{L})(?:how much water|what water|cuanta agua|que cantidad de agua)(?!\p{L})/u;
const WENT_WRONG = new RegExp(
  unbroken`
    (?<!\p{L})(?:too much|too little|instead|wrong|milk|beer|wine|coffee|tea|more|extra|lost|evaporat\p{L}+|
    en vez|de mas|leche|cerveza|vino|cafe|quito|take off|left|falta\p{L}*|need(?:s|ed)? (?:to be )?added|
    solution|disolucion|solucion|pure|pureza)(?!\p{L})
  `,
  'u',
);

/** A strength or a ratio of its own; two ratios that were read somewhere are none. */
const TELLS_STRENGTH =
  /%|(?<!\p{L})(?:percent|por ciento|concentra\p{L}*|strength|doble|triple|twice|double|times|veces|x ?\d|fuerza)(?!\p{L})/u;
const ONE_RATIO = /(?<![\d.,])\d(?:[.,]\d)? ?(?:a|to|:) ?(?:1|one|un[oa])(?!\d)/gu;

/** Water for weighed lye, where neither strength nor ratio is told and lye is all that is weighed. */
function usualWaterFor(plain: string): WaterForLye | undefined {
  if (!HOW_MUCH_WATER.test(plain) || WENT_WRONG.test(plain)) return undefined;
  if (TELLS_STRENGTH.test(plain) || [...plain.matchAll(ONE_RATIO)].length === 1) return undefined;
  const [lye, ...others] = toldAmounts(plain).filter(({ role }) => role !== 'unknown');
  if (lye?.role !== 'lye' || others.length > 0 || POTASSIUM.test(plain)) return undefined;
  return {
    lyeGrams: lye.grams,
    waterGrams: (lye.grams * (100 - USUAL_STRENGTH)) / USUAL_STRENGTH,
    percent: USUAL_STRENGTH,
  };
}

/** Water for weighed lye, where its strength or its ratio stands at the end; undefined elsewhere. Pure. */
export function waterForLyeIn(question: string): WaterForLye | undefined {
  const plain = wordsOfBatch(question);
  const [, mass, percent, water, lye] = WATER_ASKED.exec(plain) ?? [];
  if (mass === undefined) return usualWaterFor(plain);
  const lyeGrams = /^[\d.,/ ]+$/u.test(mass) ? decimal(mass) : gramsOf(mass);
  const perLye =
    percent === undefined
      ? decimal(water!) / (/^\d/u.test(lye!) ? decimal(lye!) : 1)
      : 100 / decimal(percent) - 1;
  // Less water than lye does not dissolve it; more than five times is no lye water for soap.
  if (!(perLye >= 1 && perLye <= 5)) return undefined;
  return { lyeGrams, waterGrams: lyeGrams * perLye, percent: 100 / (1 + perLye) };
}
