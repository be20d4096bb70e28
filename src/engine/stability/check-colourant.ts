import type { Colourant } from '../colourants/colourant.ts';
import { checkIngredients } from './check.ts';
import type { IngredientReport } from './report.ts';

/**
 * What the catalogue says of one of its entries, in the form of a checked list: its own behaviour, dose and carriers
 * win over what its ingredients alone would tell (a purple neon pales sooner than "neon" says).
 */
export function checkColourant(colourant: Colourant): IngredientReport {
  const { towards: _listed, ...listed } = checkIngredients(colourant.names.en);
  const { behaviour, towards } = colourant.alkali;
  return {
    ...listed,
    kind: colourant.kind,
    verdict: behaviour,
    verdictIfPresent: behaviour,
    ...(towards === undefined ? {} : { towards }),
    carriers: colourant.carriers,
    dose: colourant.dose,
    light: colourant.light,
    like: colourant.id,
  };
}
