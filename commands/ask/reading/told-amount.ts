import type { Context } from '../../../src/conversation/context.ts';
import { parseAmount } from '../../../src/engine/quantities/amount.ts';
import { practicalSpoons } from '../../../src/engine/quantities/spoons.ts';
import { US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { amountJudged } from '../../../src/engine/questions/found/amount-judged.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import type { Ran } from '../understood.ts';

/**
 * Who names how much they would put in is told first whether that is too much; the dose follows. Undefined where no
 * amount of powder was told, or several colours were.
 */
export function toldAmountHeadline(
  answer: Ran,
  { question, read: { facts } }: { readonly question: string; readonly read: QuestionRead },
  { say }: Pick<Context, 'say'>,
): string | undefined {
  const told = amountJudged(question, facts);
  const [dose, ...others] = answer.doses ?? [];
  if (told === undefined || !dose || others.length > 0 || !isPositive(dose)) return undefined;
  const teaspoons = teaspoonsOf(told, dose.grams.typical / dose.teaspoons);
  if (teaspoons === undefined) return undefined;
  const spoons = (value: number) => say.quantities.measure(practicalSpoons(value));
  return say.ask.toldAmount({
    told,
    times: teaspoons / dose.ceilingTeaspoons,
    most: spoons(dose.ceilingTeaspoons),
    usual: spoons(dose.teaspoons),
    isMedium: dose.strength === 'medium',
  });
}

function teaspoonsOf(text: string, gramsPerTeaspoon: number): number | undefined {
  try {
    const amount = parseAmount(text);
    return amount.measure === 'mass' ? amount.grams / gramsPerTeaspoon : amount.millilitres / US_TEASPOON_ML;
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

/** Whether a dose is one that an amount can be held against. */
const isPositive = ({ teaspoons, ceilingTeaspoons, grams }: NonNullable<Ran['doses']>[number]): boolean =>
  teaspoons > 0 && ceilingTeaspoons > 0 && grams.typical > 0;
