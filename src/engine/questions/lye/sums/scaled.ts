import { knownOil } from '../../../batch/oils/find-oil.ts';
import { ofLye, ofRole, one } from '../slips/reckoned.ts';
import { toldAmounts, wordsOfBatch } from '../slips/told-amounts.ts';

/** A recipe of unnamed oils made larger or smaller: grams of oils, lye and water, all by the same number. */
export type Scaled = {
  readonly factor: number;
  readonly oilGrams: number;
  readonly lyeGrams: number;
  readonly waterGrams: number | undefined;
};

const TIMES: readonly (readonly [RegExp, number])[] = [
  [/(?<!\p{L})(?:doubl(?:e|ed|ing)|(?:el |al )?doble|duplic\p{L}+|twice)(?!\p{L})/u, 2],
  [/(?<!\p{L})(?:tripl(?:e|ed|ing)|(?:el |al )?triple|triplic\p{L}+|three times)(?!\p{L})/u, 3],
  [/(?<!\p{L})(?:half|halv(?:e|ed|ing)|(?:la )?mitad)(?!\p{L})/u, 0.5],
];
/** "Half olive, half tallow": what the oils share, and no multiple of them. */
const tellsShare = (plain: string): boolean =>
  [...plain.matchAll(/(?<!\p{L})(?:half|mitad)(?: (?:of|de|it|the|la|el))* (\p{L}+)/gu)].some(
    ([, word]) => knownOil(word!) !== undefined,
  );
/** What was done to one of them alone, or by mistake, is no scaling. */
const AMISS =
  /(?<!\p{L})(?:by mistake|accident\p{L}*|but not|forgot|sin querer|pero no|olvid\p{L}+|doubled the lye|dupliqu?e la (?:sosa|lejia))(?!\p{L})/u;

/**
 * A recipe with its lye told by weight, and the size that is wished. Undefined where the oils are named (they are reckoned anew),
 * or nothing is to be made larger or smaller. Pure.
 */
export function scaledIn(question: string): Scaled | undefined {
  const plain = wordsOfBatch(question);
  if (AMISS.test(plain) || tellsShare(plain)) return undefined;
  const amounts = toldAmounts(plain);
  const wholes = ofRole(amounts, 'whole');
  const [water, lye] = [ofRole(amounts, 'water'), one(ofLye(amounts))];
  const wished = wishedIn(
    plain,
    amounts.map(({ grams }) => grams),
    wholes.length,
  );
  if (lye === undefined || water.length > 1 || wholes.length === 0 || wholes.length > 2) return undefined;
  const [from, to] = wholes;
  const factor = to ? to.grams / from!.grams : wished?.factor;
  const counted = wholes.length + 1 + water.length;
  if (factor === undefined || amounts.length !== counted + (wished?.extra ?? 0)) return undefined;
  if (!(factor > 0.01 && factor < 100) || factor === 1) return undefined;
  return {
    factor,
    oilGrams: from!.grams * factor,
    lyeGrams: lye * factor,
    waterGrams: water[0] && water[0].grams * factor,
  };
}

const WISHED =
  /(?<!\p{L})(?:la quiero (?:de|a|para)|quiero (?:hacer )?(?:la )?(?:de|para)|i (?:only )?want|make it|for only) (?:\d)/u;

/** "Doubled", or a last weight that is wished. */
function wishedIn(plain: string, grams: readonly number[], wholes: number) {
  const times = TIMES.find(([cue]) => cue.test(plain))?.[1];
  if (times !== undefined) return { factor: times, extra: 0 };
  const at = WISHED.exec(plain);
  const last = grams.at(-1);
  if (!at || last === undefined || wholes !== 1) return undefined;
  const [first] = grams;
  return { factor: last / first!, extra: 1 };
}
