import type { Colourant } from '../../src/engine/colourants/colourant.ts';
import type { Batter } from '../../src/engine/dispersion/batter.ts';
import { usualStrength } from '../../src/engine/dosing/amount-in-portion.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import type { Dose } from '../../src/engine/dosing/request.ts';
import type { Portion } from '../../src/engine/quantities/amount.ts';
import { hasFigure } from '../../src/engine/quantities/number.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import { STRENGTH_SHARES, type StrengthName, splitStrength } from '../../src/engine/quantities/strength.ts';
import { tellsKind } from '../../src/engine/quantities/told/kind-told.ts';
import { saidAmount } from '../../src/engine/quantities/told/said-amount.ts';
import { rough } from '../../src/presenting/dose.ts';
import type { Words } from '../../src/words/index.ts';
import type { DoseOptions } from './asked.ts';

/** What a dose was reckoned from. */
type Reckoned = {
  readonly colourant: Colourant;
  readonly dose: Dose;
  readonly portion: Portion;
  readonly batter: Batter;
};

/**
 * The figures that a dose stands beside where what was asked leaves them open: grams and full colour, where no strength was told and the usual
 * one of that colourant is weaker, and the dose of as much oils, where a weight tells neither oils nor batter. Empty where nothing is open, or
 * more than one colour is dosed. Doses grow with the share of full colour and with the batter, so both are a factor.
 */
export function otherFigures(asked: DoseOptions, reckoned: Reckoned, say: Words): string {
  const { dose, portion, batter } = reckoned;
  if (asked.with.length > 0 || dose.premix !== undefined || dose.askedTeaspoons !== undefined) return '';
  const times = (factor: number) => say.quantities.measure(practicalSpoons(dose.teaspoons * factor));
  const strength = untoldStrength(asked, reckoned.colourant) ?? 'full';
  const toFull = strength === 'full' ? undefined : 1 / STRENGTH_SHARES[strength];
  const isOpen = portion.measure === 'mass' && portion.of === 'batter' && !tellsKind(asked.portion);
  const asOils = isOpen
    ? portionMillilitres({ ...portion, of: 'oils' }, batter) / portionMillilitres(portion, batter)
    : undefined;
  const typed = say.quantities.said(saidAmount(asked.portion.trim()));
  return [
    toFull === undefined
      ? ''
      : say.dosing.usually({ grams: rough(dose.grams.typical), strength, full: times(toFull) }),
    asOils === undefined ? '' : say.dosing.takenAsBatter({ portion: typed, spoons: times(asOils) }),
  ].join('');
}

/** The usual strength that is taken where a dose says neither how deep its colour is to be nor how much goes in; undefined where it does. */
export const untoldStrength = (
  { strength, colourant: typed }: Pick<DoseOptions, 'strength' | 'colourant'>,
  colourant: Colourant,
): StrengthName | undefined =>
  strength === undefined && splitStrength(typed).strength === undefined && !hasFigure(typed)
    ? usualStrength(colourant)
    : undefined;
