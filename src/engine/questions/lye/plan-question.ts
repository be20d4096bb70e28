import { findOil } from '../../batch/oils/find-oil.ts';
import { parseOils } from '../../batch/oils/lists/oil-list.ts';
import { unbroken } from '../../over-lines.ts';
import { Refusal } from '../../refusal.ts';
import { addedIn } from './amounts/added.ts';
import { alkaliIn } from './amounts/alkali.ts';
import { superfatIn, waterIn } from './amounts/amounts.ts';
import { trimmed } from './amounts/oils.ts';
import { MASS, plainWords, Remaining } from './amounts/words.ts';
import type { LyeQuestion } from './question.ts';

/** What of a question for a whole plan `/plan` takes, and what of it is not taken. */
export type PlanQuestion = {
  readonly given: LyeQuestion['given'];
  /** Pieces of the question that no option was found for, as they were read. */
  readonly left: readonly string[];
};

/** Words that ask for a plan and say nothing of it. */
const ASKING = [
  unbroken`
    (?:please |can you |could you |help me |i want to |quiero |puedes )?
    (?:plan|plane[ao]\w*|planifica\w*|make|making|hacer|armame|hazme|set up|prepara\w*)(?: me| us| out)?
    (?: a| an| the| my| un| una| el| la| mi)?(?: full| whole| new| small| big)?
    (?: batch| lote| tanda| loaf| recipe| receta| soap| jabon| bar)?(?: of| de| with| con| for| para)?
  `,
  'step by step|paso a paso|por favor|please|thanks|gracias',
];

/** Refusals that tell that oils were read, and only their amounts do not stand alone. */
const OF_AMOUNTS: ReadonlySet<string> = new Set([
  'oils-percent-sum',
  'oils-without-unit',
  'oils-mixed-units',
  'oil-without-amount',
]);

function isOils(piece: string): boolean {
  try {
    return parseOils(piece).shares.length > 0;
  } catch (refusal) {
    if (refusal instanceof Refusal) return OF_AMOUNTS.has(refusal.id) && /\d/u.test(piece);
    throw refusal;
  }
}

/**
 * Takes a question for a plan apart as one about lye is, but leaves what it does not know to be shown and asked for, since
 * a plan is changed afterwards. Undefined where its oils do not read as one list. Pure.
 * @example readPlanQuestion('plan a batch with 700 g olive, 300 g coconut, 20 g honey, gold mica')?.left // ['gold mica']
 */
export function readPlanQuestion(question: string): PlanQuestion | undefined {
  const rest = new Remaining(plainWords(question));
  for (const words of ASKING) rest.take(words);
  const superfat = superfatIn(rest);
  const alkali = alkaliIn(rest);
  const water = waterIn(rest);
  const added = addedIn(rest);
  const size = rest.take(
    `(${MASS})(?: total| of| de| in)* (?:total )?(?:oils|oil|fats|aceites|aceite|grasas)(?: in all| in total| en total)?(?! de | [a-z]+ oil)`,
  )?.[1];
  const pieces = rest.text
    .split(/[;,](?!\d)|\b(?:with|w|con|and then|plus|mas)\b|\b(?:and|y)\b(?= (?:\d|a |an |some |un |una ))/u)
    .map(trimmed)
    .filter(piece => piece !== '');
  const oils = pieces.filter(isOils).join(', ');
  try {
    parseOils(oils);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
  return {
    given: {
      oils,
      ...(size !== undefined && { size: `${size} oils` }),
      ...superfat,
      ...alkali.given,
      ...water,
      ...added,
    },
    left: pieces.filter(piece => !isOils(piece)),
  };
}

/** Refusals of a name that is a fat, though none that lye can be worked out for. */
const OF_FATS: ReadonlySet<string> = new Set([
  'oil-unclear',
  'oil-not-clarified',
  'oil-is-food',
  'oil-never-soap',
]);

/** Throws the Refusal of a fat that was weighed for a plan and cannot be taken into it ("500 g margarine"). */
export function refuseWeighedFat(piece: string): void {
  const [, before = '', after = ''] =
    new RegExp(`^(.*?)${MASS}(?: (?:of|de))? ?(.*)$`, 'u').exec(piece) ?? [];
  const name = trimmed(after === '' ? before : after);
  if (name === '') return;
  try {
    findOil(name);
  } catch (refusal) {
    if (refusal instanceof Refusal && OF_FATS.has(refusal.id)) throw refusal;
  }
}
