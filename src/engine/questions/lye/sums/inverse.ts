import { hydroxideDemand, hydroxideIn } from '../../../batch/lye/lye.ts';
import { parseOils } from '../../../batch/oils/lists/oil-list.ts';
import type { Names } from '../../../language.ts';
import type { Band } from '../../../origin.ts';
import { unbroken } from '../../../over-lines.ts';
import { unlessRefused } from '../../../refusal.ts';
import { alkaliIn } from '../amounts/alkali.ts';
import { superfatIn, weighedIn } from '../amounts/amounts.ts';
import { trimmed } from '../amounts/oils.ts';
import { MASS, plainWords, Remaining } from '../amounts/words.ts';
import { USUAL_SUPERFAT, type WeighedLye } from './check.ts';

/** The oils that take up lye which is weighed already, grams: `low` if they take much of it, `high` if little. */
export type OilsForLye = {
  readonly lye: WeighedLye;
  /** Percent. */
  readonly superfat: number;
  readonly grams: Band;
  readonly oils: readonly { readonly names: Names; readonly grams: number }[];
};

const ASKS_OIL = new RegExp(
  unbroken`
    \b(?:how (?:much|many)|cuant[oa]s?)(?: (?:grams?|gramos|kg|oz|ounces))?(?: (?:of|
    de))? ((?:[a-z%\d., ]+? )?(?:oils?|butter|lard|tallow|fats?|olive|coconut|palm|aceites?|manteca|oliva|
    coco|grasas?)(?: (?:oil|de|y|and|[a-z]+))*)
  `,
  'u',
);
const AFTER =
  / (?:do|does|should|can|will|would|to|for|in|is|are|does|necesito|hace|hacen|para|con|le|lleva|debo|me|i)\b.*$/u;

/**
 * How much oil takes lye that somebody has weighed, at the superfat that is told or the usual one; undefined where no
 * oil is asked for, or one is weighed too. Grams, rounded by nobody. Pure.
 * @example oilsForLye('I have 100 g lye, how much olive oil')?.grams.typical // about 778
 */
export function oilsForLye(question: string): OilsForLye | undefined {
  const rest = new Remaining(plainWords(question));
  const { superfat = USUAL_SUPERFAT } = superfatIn(rest);
  const lye = weighedIn(rest, alkaliIn(rest));
  const asked = ASKS_OIL.exec(rest.text)?.[1]?.replace(AFTER, '');
  if (lye === undefined || asked === undefined || superfat < 0 || superfat > 50) return undefined;
  if (new RegExp(MASS, 'u').test(rest.text)) return undefined;
  const blend = blendOf(trimmed(asked));
  if (!blend) return undefined;
  const told = hydroxideIn([{ ...lye, exactGrams: lye.grams }]);
  const demand = hydroxideDemand(blend.map(({ oil, share }) => ({ oil, grams: share })));
  const grams = (ofOne: number) => told / (ofOne * (1 - superfat / 100));
  const typical = grams(demand.typical);
  return {
    lye,
    superfat,
    grams: { low: grams(demand.high), typical, high: grams(demand.low) },
    oils: blend.map(({ oil, share }) => ({ names: oil.names, grams: share * typical })),
  };
}

/** One oil, or several by percent; undefined where it does not read. */
const blendOf = (asked: string) =>
  unlessRefused(() => parseOils(/\d/u.test(asked) ? asked : `${asked} 100%`).shares);
