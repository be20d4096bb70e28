import type { Context } from '../../src/conversation/context.ts';
import type { ShadeShare } from '../../src/engine/colour/mixing/base-soap.ts';
import { parseBase, USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import { parsePortion } from '../../src/engine/quantities/told/portion.ts';
import { saidAmount } from '../../src/engine/quantities/told/said-amount.ts';
import { type Measures, US_CUP_ML } from '../../src/engine/quantities/units.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';

/** The soap and the size of portion a palette is worked out for. */
export type Soap = {
  readonly measures: Measures;
  /** The spoons there are to measure with; every one where it is undefined. */
  readonly owned: Measures['owned'];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  readonly portion: { readonly cups: number; readonly grams: number };
  /** The portion as it is said. */
  readonly written: string;
};

export type SoapAsked = {
  readonly portion?: string | undefined;
  readonly base?: string | undefined;
  readonly gel?: boolean | undefined;
};

export async function soapAsked(
  { portion, base, gel }: SoapAsked,
  { store, asker, say }: Context,
): Promise<Soap> {
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const typed = portion?.trim() ?? say.match.oneCup;
  const millilitres = portionMillilitres(parsePortion(typed, measures), TYPICAL_BATTER);
  const { shades } = base === undefined ? USUAL_BASE : parseBase(base);
  return {
    measures,
    owned: measures.owned,
    shades,
    gelled: gel ?? false,
    portion: { cups: millilitres / US_CUP_ML, grams: millilitres * TYPICAL_BATTER.gramsPerMillilitre },
    written: say.quantities.said(saidAmount(typed)),
  };
}
