import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import type { LyeTopic } from './topic.ts';

/** Another substance, a spill, or harm: these are answered even where an amount of lye is asked for. */
export const BEFORE_AMOUNTS: ReadonlySet<LyeTopic> = new Set([
  'clean-up',
  'drain-cleaner',
  'bleach',
  'baking-soda',
  'spooned-lye',
  'koh-for-naoh',
  'disposal',
  'hot-loaf',
  'lye-with-cleaner',
  'scale-batch',
  'no-superfat',
  'water-forgotten',
  'not-an-oil',
  'swallowed',
  'electric-shock',
  'lye-in-food',
  'amounts-swapped',
  'oil-forgotten',
  'hot-liquid',
]);

/** What is no matter of figures, whatever is weighed beside it. */
export const isOfHarm = (topic: LyeTopic | undefined): boolean =>
  topic !== undefined && WHATEVER_IS_WEIGHED.has(topic);
const WHATEVER_IS_WEIGHED: ReadonlySet<LyeTopic> = new Set([
  'swallowed',
  'electric-shock',
  'lye-in-food',
  'amounts-swapped',
  'water-forgotten',
  'undissolved-lye',
  'lye-guessed',
  'fluid-ounces',
  'extra-lye',
]);

/** What a figure answers better, where the whole recipe is told. */
export const OF_A_WEIGHED_RECIPE: ReadonlySet<string> = new Set([
  'too-much-in',
  'too-little-in',
  'extra-lye',
]);

/** General answers that a whole recipe whose lye is asked for does not wait behind: what of them touches a weight is asked back with it. */
const GIVES_WAY_TO_A_WEIGHT: ReadonlySet<LyeTopic> = new Set([
  'children',
  'drink-bottle',
  'extra-lye',
  'lye-guessed',
  'mixing-temperature',
  'oil-spilled',
  'oil-swapped',
  'old-oil',
  'power-cut',
  'scale',
  'scale-batch',
  'two-figures',
]);
/** Lye that lies somewhere is cleaned up first; "clean lard" is none. */
const IS_SPILT = new RegExp(
  unbroken`
    (?<!\p{L})(?:spil\p{L}*|drop\p{L}*|knock\p{L}*|splash\p{L}*|fell|floor|bench|counter|derram\p{L}*|
    ca[iy]\p{L}*|volc\p{L}*|vert\p{L}*|salpic\p{L}*|tir[eéoó]|suelo|piso|mesa|mesada|encimera)(?!\p{L})
  `,
  'iu',
);
/** "Me pasé con el oliva, 640 en vez de 600": more of an oil than was meant, and no more lye. */
const TOO_MUCH_OF =
  /(?<!\p{L})(?:(?:se me (?:fue|pas[oó]) la mano|me pas[eé]) (?:con |de )(?:el |la )?(?<es>\p{L}+)|(?:weighed|measured) (?:the )?(?<en>\p{L}+) wrong)/iu;
/** Whether what went wrong is the weight of an oil: no weight of it is one of lye. Takes what was typed. */
export function isOfAnOil(typed: string): boolean {
  const { es, en } = TOO_MUCH_OF.exec(typed)?.groups ?? {};
  const name = es ?? en;
  return name !== undefined && knownOil(name) !== undefined;
}

/** Lye that does not go into its water: a cold kitchen alone makes none. */
const IS_UNDISSOLVED = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:un)?diss?olv\p{L}*|disuel\p{L}*|disol\p{L}*|cloudy|murky|milky|turbi[oa]|crystals?|
    cristal\p{L}*|grains?|gran(?:os|it\p{L}*)|grum\p{L}*|clump\p{L}*|specks|bottom|fondo|posos?|
    sediment\p{L}*)(?!\p{L})
  `,
  'iu',
);
/** What is left over is lye, or lye water: of fat it is a superfat. */
const LYE_LEFT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:left ?over|spare|sobrante|sobrad[oa]|sobra|sobro|sobró) (?:of (?:the )?|
    de (?:la )?)?(?:lye|naoh|koh|caustic|sosa|soda|potasa|solution|solucion)|(?:lye|naoh|koh|caustic|sosa|
    soda|potasa|solution|solución)(?: \p{L}+){0,3} (?:left ?over|is left|sobrante|sobra|sobró|sobro)|
    (?:dispose|throw|get rid|tirar|desechar|botar|deshacerme)(?!\p{L}))
  `,
  'iu',
);

/** More or less of an oil than a recipe that follows has: none of it is in a pot. */
const THAN_THIS = new RegExp(
  unbroken`
    (?<!\p{L})(?:less|fewer|more|menos|m[aá]s)(?!\p{L})[^.;:]{1,60}?(?<!\p{L})(?:than|que) (?:in |
    en )?(?:this|that|these|below|esta|esto|est[ao]s|aqu[ií])(?!\p{L})
  `,
  'iu',
);

/** Whether a general answer gives way to the lye of a recipe that is weighed whole beside it. Takes the matter and what was typed. */
export const givesWayToAWeight = (topic: LyeTopic, typed: string): boolean =>
  GIVES_WAY_TO_A_WEIGHT.has(topic) ||
  (topic === 'clean-up' && !IS_SPILT.test(typed)) ||
  (topic === 'undissolved-lye' && !IS_UNDISSOLVED.test(typed)) ||
  (topic === 'oil-forgotten' && THAN_THIS.test(typed)) ||
  (topic === 'disposal' && !LYE_LEFT.test(typed)) ||
  (topic === 'too-much-in' && isOfAnOil(typed));
