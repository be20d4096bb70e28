import { parseAdditives } from '../../../src/engine/batch/additives.ts';
import { parseSize } from '../../../src/engine/batch/batch-size.ts';
import { oilGramsFor } from '../../../src/engine/batch/fit.ts';
import { parseFragrance, parseLye } from '../../../src/engine/batch/lye-choice.ts';
import type { Oil, OilMass } from '../../../src/engine/batch/oil.ts';
import { parseOils } from '../../../src/engine/batch/oil-list.ts';
import { parsePortions } from '../../../src/engine/batch/portion-list.ts';
import { type Filled, fillPortions } from '../../../src/engine/batch/portions.ts';
import { makeRecipe, type Recipe } from '../../../src/engine/batch/recipe.ts';
import type { PlannedPortion, PlanRequest, Swirl } from '../../../src/engine/batch/request.ts';
import { parseWater } from '../../../src/engine/batch/water.ts';
import { findColourant } from '../../../src/engine/colourants/find.ts';
import { type HeatSetting, USUAL_HEAT } from '../../../src/engine/heat/setting.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

/** A plan as a member writes it; what is left out is the usual. */
export type Written = {
  readonly oils?: string;
  readonly size?: string;
  readonly superfat?: number;
  readonly lye?: string;
  readonly water?: string;
  readonly portions?: string;
  readonly additives?: string;
  readonly fragrance?: string;
  readonly scale?: number;
  readonly reserve?: number;
  readonly swirl?: Swirl;
  readonly heat?: Partial<HeatSetting>;
};

/** The one-line plan that the trade would recognise. */
export const ONE_LINE: Written = {
  oils: 'coconut 30%, olive 50%, palm 20%',
  size: '1000 g oils',
  superfat: 5,
  lye: 'NaOH',
  water: '33% lye',
  portions:
    '2 cups ultramarine blue full in 1 Tbsp olive; 500 ml titanium dioxide medium + gold mica pastel in water; rest plain unscented',
};

function portionsOf(text: string): readonly PlannedPortion[] {
  return parsePortions(text).map(({ name, share, scented, colours }, at) => ({
    name: name ?? `portion ${at + 1}`,
    share,
    scented,
    colours: colours.map(({ text: colour, strength, carrier }) => ({
      asked: { colourant: findColourant(colour), strength },
      carrier,
    })),
  }));
}

/** What the engine is asked when a member writes that. */
export function asked(written: Written = {}): PlanRequest {
  const all = { ...ONE_LINE, portions: '', ...written };
  return {
    oils: parseOils(all.oils!),
    size: parseSize(all.size!),
    superfatPercent: all.superfat!,
    lye: parseLye(all.lye!),
    water: parseWater(all.water!),
    portions: portionsOf(all.portions),
    additives: parseAdditives(all.additives ?? ''),
    fragrance: all.fragrance === undefined ? undefined : parseFragrance(all.fragrance),
    scaleStepGrams: all.scale ?? 0.1,
    reservePercent: all.reserve ?? 2,
    swirl: all.swirl ?? 'in-the-pot',
    heat: { ...USUAL_HEAT, ...all.heat },
    measures: MEASURES.us,
  };
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
