import { oilGramsFor } from '../../../src/engine/batch/fit.ts';
import type { Oil, OilMass } from '../../../src/engine/batch/oils/oil.ts';
import { readPlan, type WrittenPlan, withColours } from '../../../src/engine/batch/planning/written-plan.ts';
import { type Filled, fillPortions } from '../../../src/engine/batch/portions/portions.ts';
import { makeRecipe, type Recipe } from '../../../src/engine/batch/recipe.ts';
import type { PlanRequest } from '../../../src/engine/batch/request.ts';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import type { HeatSetting } from '../../../src/engine/heat/setting.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

/** A plan as a member writes it; what is left out is the usual. */
export type Written = Partial<WrittenPlan> & { readonly heat?: Partial<HeatSetting> };

/** The one-line plan that the trade would recognise. */
export const ONE_LINE = {
  oils: 'coconut 30%, olive 50%, palm 20%',
  size: '1000 g oils',
  superfat: 5,
  lye: 'NaOH',
  water: '33% lye',
  portions:
    '2 cups ultramarine blue full in 1 Tbsp olive; 500 ml titanium dioxide medium + gold mica pastel in water; rest plain unscented',
} as const;

/** What the engine is asked when a member writes that; a kilogram of oils and no portions unless said. */
export function asked({ heat, ...written }: Written = {}): PlanRequest {
  const { oils, size } = ONE_LINE;
  const read = readPlan({ oils, size, ...written });
  const request = withColours(read, text => ({ colourant: findColourant(text) }));
  return { ...request, heat: { ...request.heat, ...heat } };
}

/** The recipe and its portions, without the heat: quick enough for many runs. */
export function filled(request: PlanRequest): { readonly recipe: Recipe; readonly filled: Filled } {
  const recipe = makeRecipe(request, oilGramsFor(request));
  return { recipe, filled: fillPortions(recipe, request) };
}

/** An oil of exactly that saponification value, for arithmetic by hand. */
export function oilOf(id: string, saponification: number, density = 0.91, atCelsius = 20): Oil {
  const exact = (value: number) => ({ low: value, typical: value, high: value });
  const origin = { trust: 'computed', source: 'made up for arithmetic' } as const;
  return {
    id,
    names: { en: id, es: id },
    inci: id,
    oilClass: 'oil',
    synonyms: [],
    saponification: exact(saponification),
    density: { ...exact(density), atCelsius },
    iodine: undefined,
    profile: undefined,
    yellowness: 'white',
    origins: {
      saponification: origin,
      typical: origin,
      density: origin,
      profile: origin,
      yellowness: origin,
    },
  };
}

/** What an act is refused for; throws when it is not refused. */
export function refusalOf(act: () => unknown): Refusal {
  try {
    act();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error('was not refused');
}

export const gramsOf = (masses: readonly OilMass[]): number =>
  masses.reduce((sum, { grams }) => sum + grams, 0);
