import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { Reading } from '../read.ts';

/* What of a question about lye its answer hangs on, before any weight in it is read. */

/** Whoever opens with the word wants the whole plan, however many oils follow. */
const PLAN_FIRST = /^\W*(?:please |por favor )?plan(?:e[ae]\w*|ifi\w*)? /iu;
/** Whether a question opens with the plan that it asks for. Pure. */
export const opensWithPlan = (question: string): boolean => PLAN_FIRST.test(question);

/** What a recipe is asked for by: with none of it, and no figure, oils are not what is missing. */
const OF_A_RECIPE = new RegExp(
  unbroken`
    \d|(?<!\p{L})(?:recipes?|batch(?:es)?|calculat\p{L}*|calc|weigh\p{L}*|need|amount|how much|work out|
    percent|oils?|olive|coconut|castile|lard|tallow|recetas?|lotes?|calcul\p{L}*|pes[ao]\p{L}*|
    necesit\p{L}*|cantidad|cuant[oa]s?|aceites?|oliva|coco|castilla|manteca|sebo|plan\p{L}*|for|
    para)(?!\p{L})
  `,
  'iu',
);
/** Whether a question speaks of lye and of nothing that a recipe is asked for by. Pure. */
export const isOnlyOfLye = (question: string): boolean => !OF_A_RECIPE.test(unaccented(question));

/** Somebody has the lye in a jug, a batter or a bar already. */
const MADE =
  /\b(?:put|added|poured|used|mixed|made|weighed|went in|eché|eche|echó|puse|puso|hice|usé|use|agregué|añadí|mezclé|pesé)\b/iu;
/** Whether it tells that the lye is in a jug, a batter or a bar. Pure. */
export const tellsOfMade = (question: string): boolean => MADE.test(question);

/** Whether a reading of lye is of a word alone: no oil and no figure is told, which is no recipe. Pure. */
export const isOfAWord = ({ job, given }: Reading, question: string): boolean =>
  job === 'lye' && given.oils === undefined && !/\d/u.test(question);
