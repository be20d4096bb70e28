import type { Context } from '../../../src/conversation/context.ts';
import { practicalSpoons } from '../../../src/engine/quantities/spoons.ts';
import { asksForLimit, asksInGrams } from '../../../src/engine/questions/found/asked/limit-asked.ts';
import { rough } from '../../../src/presenting/dose.ts';
import type { Ran } from '../understood.ts';

/** A dose as it is told to whoever asks for its weight, or for the most that does no harm: that with the headline, for one colour. */
export function asItIsAsked(answer: Ran, question: string, { say }: Pick<Context, 'say'>): Ran {
  const [dose, ...others] = answer.doses ?? [];
  if (!dose || others.length > 0) return answer;
  const isLimit = asksForLimit(question) && dose.ceilingTeaspoons > 0;
  const inGrams = asksInGrams(question)
    ? say.ask.byWeight({ grams: rough(dose.grams.typical), dose: answer.headline })
    : answer.headline;
  const most = say.quantities.measure(practicalSpoons(dose.ceilingTeaspoons, dose.ceilingTeaspoons));
  return { ...answer, headline: isLimit ? say.ask.atMost({ dose: inGrams, most }) : inGrams };
}
