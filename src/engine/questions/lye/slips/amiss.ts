import { unbroken } from '../../../over-lines.ts';
import { superfatIn } from '../amounts/amounts.ts';
import { POTASSIUM, Remaining } from '../amounts/words.ts';
import { USUAL_SUPERFAT, verdictOf } from '../sums/check.ts';
import { withHalfAsPercent } from '../sums/ready-lye.ts';
import { CAUSTIC } from '../topics/care-words.ts';
import { asksWhetherTooMuch } from './lye-difference.ts';
import { oilShortIn } from './oil-short.ts';
import {
  type Alkali,
  demandOfAny,
  demandOfNamed,
  type LyeAmiss,
  leftByDifference,
  leftByOils,
  leftByRatio,
  molesOf,
  ofRole,
  one,
  sum,
} from './reckoned.ts';
import { type ToldAmount, toldAmounts, wordsOfBatch } from './told-amounts.ts';
import { spoonedOnTop } from './weighed-amiss.ts';

/** "Didn't double the lye": nothing was. */
const NOT = "(?<!(?:not|n['’]?t|never|nunca|forgot to|no|sin|without|to) )";
const timesLye = (done: string, much: string) =>
  new RegExp(
    unbroken`
      ${NOT}(?<!\p{L})(?:${done})(?: up)?(?: on)?(?: (?:the|my|la))?(?: amount of)? ${CAUSTIC}|
      ${NOT}(?<!\p{L})(?:${much})(?: (?:the|as much|amount|of|de|la))* ${CAUSTIC}
    `,
    'u',
  );
const TIMES: readonly (readonly [cue: RegExp, factor: number])[] = [
  [timesLye('doubled|dupliq\\p{L}+', 'double|twice|el doble'), 2],
  [timesLye('tripled|tripliq\\p{L}+', 'three times|triple|el triple'), 3],
];
const PERCENT_OVER = new RegExp(
  unbroken`
    (\d+(?:\.\d+)?) ?(?:%|percent|por ciento) ?(?:of )?(?:too much|over|more|extra|excess|(?:de )?mas|
    de sobra|por encima)(?!\p{L})(?! (?:(?:on|of|in|de|en) )?(?:the |la )?(?:(?:super ?)?fats?|oils?|
    grasas?|aceites?)(?!\p{L}))|(?:over by|me pase) (?:(?:en|de|por|un|about|unos?) )*(\d+(?:\.\d+)?) ?(?:%|
    percent|por ciento)
  `,
  'u',
);
/** Asked ahead, and nothing went in yet. */
const IF =
  /(?<!\p{L})(?:if|(?:can|could|may|should|shall|do|must) (?:i|we) (?:put|add|use|take)|si (?:pongo|echo|uso)|puedo (?:poner|echar|usar)|debo)(?!\p{L})/u;
const OF_LYE = new RegExp(`(?<!\\p{L})${CAUSTIC}(?!\\p{L})`, 'u');
/** "How much lye for the lot": what is asked for did not go in yet. */
const ASKED_FOR = new RegExp(
  unbroken`
    (?<!\p{L})(?:how much|what|cuant[oa]s?|que cantidad de)(?: (?:more|of|the|my|la|mas|de|gramos de|
    grams of))* ${CAUSTIC}(?= (?:for|do|should|to|would|does|will|is|para|le|pongo|echo|hace|necesit|lleva)|,| ?;| ?$)
  `,
  'gu',
);
const SHARE = /(?:recipe|at|was|receta|con|al|era) (?:a |at |de |al )?(\d{1,2}) ?(?:%|percent|por ciento)/u;

/** A superfat by its name, or as the one share that stands beside the recipe. */
function superfatTold(plain: string): number | undefined {
  const { superfat } = superfatIn(new Remaining(plain));
  const beside = SHARE.exec(plain)?.[1];
  return superfat ?? (beside === undefined ? undefined : Number(beside));
}

/**
 * Lye that went in amiss by what a question tells of it: weighed instead of what was meant, over or short by grams or by percent,
 * twice; or oil missing that it was weighed for. Undefined where the weights do not tell, or nothing went in. Pure.
 * @example lyeAmissIn('I put in an ounce over of lye in a 2 lb olive oil batch')?.verdict // 'lye-heavy'
 */
export function lyeAmissIn(question: string): LyeAmiss | undefined {
  const plain = wordsOfBatch(withHalfAsPercent(question));
  if (IF.test(plain) || asksWhetherTooMuch(plain) || spoonedOnTop(question)) return undefined;
  const superfat = superfatTold(plain);
  if (superfat !== undefined && !(superfat >= 0 && superfat <= 50)) return undefined;
  const amounts = toldAmounts(plain);
  const short = oilShortIn(plain, amounts, superfat);
  if (short || !OF_LYE.test(plain.replace(ASKED_FOR, ' ')) || ofRole(amounts, 'unknown').length > 0)
    return short;
  return wentIn({ amounts, plain, superfat, alkali: POTASSIUM.test(plain) ? 'KOH' : 'NaOH' });
}

type WeightsTold = {
  readonly amounts: readonly ToldAmount[];
  readonly plain: string;
  readonly superfat: number | undefined;
  readonly alkali: Alkali;
};
/** Grams that went in and that were meant, and the first by the second. */
type Weights = {
  readonly put: number | undefined;
  readonly meant: number | undefined;
  readonly ratio: number;
};

/** Lye that was too much or too little: by what went in and what was meant. */
function wentIn(told: WeightsTold): LyeAmiss | undefined {
  const { amounts, superfat, alkali } = told;
  const [named, whole] = [ofRole(amounts, 'oil'), ofRole(amounts, 'whole')];
  const byName = named.length > 0 && whole.length === 0 ? demandOfNamed(named) : undefined;
  const any =
    named.length === 0 && whole.length === 1 ? demandOfAny(whole[0]!.grams, whole[0]!.isBatch) : undefined;
  const meantSuperfat = superfat ?? USUAL_SUPERFAT;
  const usual = byName ?? any;
  const wanted = usual && (usual.typical * (1 - meantSuperfat / 100)) / molesOf(1, alkali);
  const weights = weightsOf(told, wanted, byName !== undefined);
  if (!weights || !(weights.ratio > 0 && weights.ratio < 20) || Math.abs(weights.ratio - 1) < 0.001)
    return undefined;
  const { put, meant, ratio } = weights;
  const isByDifference = any !== undefined && meant === wanted && put !== undefined && meant !== undefined;
  const left =
    byName && put !== undefined
      ? leftByOils(molesOf(put, alkali), byName)
      : isByDifference
        ? leftByDifference(molesOf(put - meant, alkali), any, meantSuperfat)
        : leftByRatio(ratio, meantSuperfat);
  const oils = sum([...named, ...whole.filter(({ isBatch }) => !isBatch)]);
  return {
    percentOver: 100 * (ratio - 1),
    superfat: left,
    verdict: verdictOf(left),
    putGrams: put,
    meantGrams: meant,
    meantSuperfat,
    isTold: superfat !== undefined,
    moreOilGrams: ratio > 1 && oils > 0 ? oils * (ratio - 1) : undefined,
    isOilShort: false,
  };
}

/** The clause in which a place of the plain words lies. */
const clauseAt = (plain: string, at: number): string =>
  `${/[^,;]*$/u.exec(plain.slice(0, at))![0]}${/^[^,;]*/u.exec(plain.slice(at))![0]}`;

/** Figures of lye nearer than this share to what the oils want were meant, and not doubled yet. */
const NEAR_WANTED = 1.2;

function weightsOf(
  { amounts, plain }: WeightsTold,
  wanted: number | undefined,
  isNamed: boolean,
): Weights | undefined {
  const of = (role: ToldAmount['role']) => ofRole(amounts, role);
  const [more, less, lye] = [of('more'), of('less'), of('lye')];
  if (more.length + less.length > 1) return undefined;
  if (more.length + less.length === 1) {
    // Where no lye is told, a difference is of lye only beside its name.
    const isOfLye = [...more, ...less].every(({ at }) => OF_LYE.test(clauseAt(plain, at)));
    const meant = one(of('meant')) ?? one(lye) ?? (isOfLye ? wanted : undefined);
    const put = meant === undefined ? undefined : meant + sum(more) - sum(less);
    return put === undefined || meant === undefined ? undefined : { put, meant, ratio: put / meant };
  }
  const factor = TIMES.find(([cue]) => cue.test(plain))?.[1];
  const toldPut = one(of('put')) ?? (factor !== undefined || of('meant').length > 0 ? one(lye) : undefined);
  if (factor !== undefined) {
    if (toldPut === undefined) return undefined;
    // "Doubled, 160 g": that is what went in, unless it is what the oils want.
    const isMeant = isNamed && wanted !== undefined && toldPut < NEAR_WANTED * wanted;
    return isMeant
      ? { put: factor * toldPut, meant: toldPut, ratio: factor }
      : { put: toldPut, meant: toldPut / factor, ratio: factor };
  }
  const toldMeant = one(of('meant')) ?? (of('put').length > 0 ? one(lye) : undefined);
  if (toldPut !== undefined && toldMeant !== undefined)
    return { put: toldPut, meant: toldMeant, ratio: toldPut / toldMeant };
  const [, behind, before] = PERCENT_OVER.exec(plain) ?? [];
  const percent = behind ?? before;
  return percent === undefined
    ? undefined
    : { put: undefined, meant: undefined, ratio: 1 + Number(percent) / 100 };
}
