import type { Context } from '../../src/conversation/context.ts';
import type { Given } from '../../src/conversation/question.ts';
import { planParts } from '../../src/engine/questions/plan-parts.ts';
import type { Reading } from '../../src/engine/questions/read.ts';
import { wordsOf } from '../../src/engine/questions/words-of.ts';

const isShort = ({ command }: Reading, given: Given): boolean =>
  command === 'plan' && given.oils === undefined;

/** The options of a plan with the colours that are told beside oils without amounts: they are kept while those are asked. */
export function withPortions(reading: Reading, given: Given, question: string): Given {
  if (!isShort(reading, given) || given.portions !== undefined) return given;
  const { portions } = planParts(wordsOf(question));
  return portions === undefined ? given : { ...given, portions };
}

/** Asks only for the shares of the oils that were named; undefined where none was. */
export function oilsWithoutShares(
  reading: Reading,
  given: Given,
  { question, context: { say } }: { readonly question: string; readonly context: Context },
): string | undefined {
  const { oils } = isShort(reading, given) ? planParts(wordsOf(question)) : { oils: [] };
  return oils.length === 0 ? undefined : say.ask.oilsWithoutShares({ oils });
}
