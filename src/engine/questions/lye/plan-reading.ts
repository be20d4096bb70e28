import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { QuestionRead, Reading } from '../read.ts';
import { readPlanQuestion, refuseWeighedFat } from './plan-question.ts';

/** A plan as `/plan` reads it, and the parts of the question that none of its options takes. */
export type PlanReading = {
  readonly reading: Reading & { readonly job: 'plan' };
  readonly left: readonly string[];
};

const WEIGHT = /\d ?(?:k?g|kilos?|gramos?|grams?|oz|lbs?|pounds?|libras?)\b/u;

/**
 * A whole plan asked for in plain words: every part of it is taken into the plan or is among what is `left`. Throws the Refusals of
 * {@link readPlanQuestion}, and where a weighed fat would be left out.
 */
export function planReading(question: string, read: QuestionRead): PlanReading | undefined {
  const [reading] = read.readings;
  const told = readPlanQuestion(question);
  if (!reading) return undefined;
  if (!told) return withoutOils(reading);
  const { size, ...rest } = reading.given;
  const texts = Object.fromEntries(Object.entries(told.given).map(([name, value]) => [name, String(value)]));
  const weighed = told.given.oils !== undefined && WEIGHT.test(told.given.oils);
  // A mass beside weighed oils is of something else: of honey, of salt.
  const taken =
    typeof size === 'string' && !weighed && told.given.size === undefined
      ? told.left.find(piece => isSizeAlone(piece, size))
      : undefined;
  const left = told.left.filter(piece => piece !== taken);
  for (const piece of left) refuseWeighedFat(piece);
  return {
    reading: {
      ...reading,
      job: 'plan',
      given: { ...rest, ...(taken !== undefined && size !== undefined && { size }), ...texts },
      missing: [],
    },
    left,
  };
}

/** Words beside a size that name nothing else it could be of. */
const BESIDE_SIZE = new RegExp(
  unbroken`
    \b(?:for|of|in|an?|my|the|to|fill|size|about|total|batter|soap|batch|oils?|mou?ld|loaf|wide|para|de|en|
    un|una|mi|el|la|tamano|unos|unas|masa|jabon|lote|tanda|aceites?|molde)\b|[\s.:,?!]
  `,
  'gu',
);

/** Whether a part of a question that no other option takes is the size and nothing but the size: “2 cups blue” is of the blue. */
const isSizeAlone = (piece: string, size: string): boolean => {
  const bare = (text: string) => unaccented(text).replace(BESIDE_SIZE, '');
  return bare(piece) !== '' && bare(piece) === bare(size);
};

/** Oils that do not read as one list are asked for, and a size beside them: lye for some of them is lye for none. */
function withoutOils(reading: Reading): PlanReading | undefined {
  if (reading.given.oils === undefined) return undefined;
  const { oils: _, size: __, ...rest } = reading.given;
  return { reading: { ...reading, job: 'plan', given: rest, missing: ['oils'] }, left: [] };
}
