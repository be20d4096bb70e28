import { strengthInPortion } from '../../dosing/amount-in-portion.ts';
import { answerDose } from '../../dosing/answer.ts';
import type { Caution } from '../../dosing/cautions.ts';
import type { Dose, DoseAsked } from '../../dosing/request.ts';
import { practicalSpoons } from '../../quantities/spoons.ts';
import type { Measures } from '../../quantities/units.ts';
import type { PlannedColour, PlannedPortion, PlanRequest } from '../request.ts';
import { batterOfPot, type Pot } from './pot.ts';
import { splitBatter } from './split.ts';

/** Batter drawn for one portion, and the colours measured for that much of it. */
export type Draw = {
  readonly portion: PlannedPortion;
  readonly millilitres: number;
  readonly doses: readonly Dose[];
  readonly cautions: readonly Caution[];
};

const UNCLAIMED: PlannedPortion = { name: 'rest', share: { by: 'rest' }, colours: [], scented: true };

/**
 * Splits a pot into its portions and doses each. Batter that no portion claims is one more, plain, named `rest`.
 * Throws the Refusals of the split and of the dosing.
 */
export function drawPortions(pot: Pot, request: PlanRequest): { draws: readonly Draw[]; reserve: number } {
  const { portions, reservePercent } = request;
  const shares = portions.map(({ share }) => share);
  const split = splitBatter(pot, shares, reservePercent);
  const draws = portions.map((portion, at) => draw(portion, split.portions[at]!, pot, request.measures));
  const plain = draw(UNCLAIMED, split.unclaimed, pot, request.measures);
  return { draws: split.unclaimed > 0 ? [...draws, plain] : draws, reserve: split.reserve };
}

function draw(portion: PlannedPortion, millilitres: number, pot: Pot, measures: Measures): Draw {
  if (portion.colours.length === 0 || millilitres <= 0) {
    return { portion, millilitres, doses: [], cautions: [] };
  }
  const answer = answerDose({
    portion: { measure: 'volume', millilitres, of: 'batter' },
    colourants: portion.colours.map(colour => doseAsked(colour, { millilitres, measures })),
    batter: batterOfPot(pot),
    measures,
  });
  const doses = answer.doses.map((dose, at) => withMeasuredCarrier(dose, portion.colours[at]!, measures));
  return { portion, millilitres, doses, cautions: answer.cautions };
}

/** What `/dose` is asked for a colour in a portion of so many millilitres. */
function doseAsked(
  { asked, carrier }: PlannedColour,
  portion: { readonly millilitres: number; readonly measures: Measures },
): DoseAsked {
  const { colourant, gramsPerTeaspoon, premix } = asked;
  const jar = {
    colourant,
    ...(gramsPerTeaspoon !== undefined && { gramsPerTeaspoon }),
    ...(premix?.by === 'percent' && { pigmentFraction: premix.pigmentShare }),
  };
  const dose = { ...asked, strength: strengthInPortion(asked.strength, jar, portion) };
  return carrier === undefined ? dose : { ...dose, carrier: carrier.choice };
}

/** A carrier the member measured themselves stands instead of the advised amount. */
function withMeasuredCarrier(dose: Dose, { carrier, asked }: PlannedColour, measures: Measures): Dose {
  if (carrier?.millilitres === undefined || asked.premix !== undefined) return dose;
  const { millilitres } = carrier;
  const spoons = practicalSpoons(millilitres / measures.teaspoon, undefined, measures.owned);
  return { ...dose, carrier: { ...dose.carrier, millilitres, spoons } };
}
