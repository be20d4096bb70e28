import type { Dose, DoseAnswer } from '../../src/engine/dosing/request.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';

/** Where all were lessened together no amount of one is as it was told. */
const isScaled = ({ cautions }: DoseAnswer): boolean =>
  cautions.some(({ id }) => id === 'mix-scaled' || id === 'whites-scaled');

/** Whether a dose is of an amount that was told in spoons or grams, and is more than its portion should take. */
const isOver = ({ askedTeaspoons, strength, premix }: Dose): boolean =>
  askedTeaspoons !== undefined && strength.by === 'cup' && premix === undefined;

/**
 * The doses of a mix as they were told: who looks at an amount sees that amount, however much it is; `over` are those that are more than
 * the portion should take. Pure.
 */
export function asAsked(
  answer: DoseAnswer,
  { owned }: Pick<Measures, 'owned'>,
): { readonly doses: readonly Dose[]; readonly over: readonly Dose[] } {
  if (isScaled(answer)) return { doses: answer.doses, over: [] };
  return {
    doses: answer.doses.map(dose => (isOver(dose) ? told(dose, owned) : dose)),
    over: answer.doses.filter(isOver),
  };
}

function told(dose: Dose, owned: Measures['owned']): Dose {
  const teaspoons = dose.askedTeaspoons!;
  const times = teaspoons / dose.teaspoons;
  const { low, typical, high } = dose.grams;
  return {
    ...dose,
    teaspoons,
    spoons: practicalSpoons(teaspoons, undefined, owned),
    millilitres: dose.millilitres * times,
    grams: { ...dose.grams, low: low * times, typical: typical * times, high: high * times },
  };
}
