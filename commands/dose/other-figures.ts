import type { Batter } from '../../src/engine/dispersion/batter.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import type { Dose } from '../../src/engine/dosing/request.ts';
import type { Portion } from '../../src/engine/quantities/amount.ts';
import { tellsKind } from '../../src/engine/quantities/kind-told.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import { STRENGTH_SHARES, splitStrength } from '../../src/engine/quantities/strength.ts';
import type { Words } from '../../src/words/index.ts';
import type { DoseOptions } from './asked.ts';

/**
 * Micas are mostly put in at half of their full colour, about a teaspoon to 500 g of oils, up to two for a strong one (common practice, no
 * source); of stronger powders the full dose is already so little.
 */
const BEGUN_WEAKER: ReadonlySet<string> = new Set(['mica']);

/** What a dose was reckoned from. */
type Reckoned = { readonly dose: Dose; readonly portion: Portion; readonly batter: Batter };

/**
 * The figures that a dose stands beside where what was asked leaves them open: the usual strength of a kind that is mostly put in weaker
 * than full, where no strength was told, and the dose of as much oils, where a weight tells neither oils nor batter. Empty where nothing is
 * open, or more than one colour is dosed. Doses grow with the share of full colour and with the batter, so both are a factor.
 */
export function otherFigures(asked: DoseOptions, { dose, portion, batter }: Reckoned, say: Words): string {
  if (asked.with.length > 0 || dose.premix !== undefined || dose.askedTeaspoons !== undefined) return '';
  const times = (factor: number) => say.quantities.measure(practicalSpoons(dose.teaspoons * factor));
  const { strength } = dose;
  const isSaid = asked.strength !== undefined || splitStrength(asked.colourant).strength !== undefined;
  const isFull = strength.by === 'name' && strength.name === 'full' && !isSaid;
  const usual = isFull && BEGUN_WEAKER.has(dose.colourant.kind) ? STRENGTH_SHARES.medium : undefined;
  const isOpen = portion.measure === 'mass' && portion.of === 'batter' && !tellsKind(asked.portion);
  const asOils = isOpen
    ? portionMillilitres({ ...portion, of: 'oils' }, batter) / portionMillilitres(portion, batter)
    : undefined;
  const typed = say.quantities.typed(asked.portion.trim());
  return [
    usual === undefined ? '' : say.dosing.usually({ spoons: times(usual) }),
    asOils === undefined
      ? ''
      : say.dosing.takenAsBatter({
          portion: typed,
          spoons: times(asOils),
          usual: usual === undefined ? undefined : times(asOils * usual),
        }),
  ].join('');
}
