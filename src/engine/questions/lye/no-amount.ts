import { wordsOf } from '../found/words-of.ts';
import { planParts } from '../plans/plan-parts.ts';
import type { QuestionRead } from '../read.ts';

const AMOUNT = /\d|\b(?:how (?:much|many)|cu[aá]nt[oa]s?|calcul\w*|amount|cantidad|recipe|receta)\b/iu;

/**
 * Whether a question is only taken for one for an amount of lye: it names no oil, no figure and no amount, as "is it bad that lye
 * water is not clear". Pure.
 */
export const isOfNoAmount = (
  question: string,
  { facts, readings: [reading] }: Pick<QuestionRead, 'facts' | 'readings'>,
): boolean =>
  reading?.job === 'lye' &&
  facts.oils === undefined &&
  !AMOUNT.test(question) &&
  planParts(wordsOf(question)).oils.length === 0;
