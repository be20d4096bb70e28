import type { Colourant } from '../colourants/colourant.ts';
import { checkIngredients } from './check.ts';
import type { IngredientReport } from './report.ts';

const listedAs = new WeakMap<Colourant['names'], IngredientReport>();

/** A catalogue entry's name read as a list, once: an entry whose dose was held under the law keeps its names. */
function listedUnder(names: Colourant['names']): IngredientReport {
  const known = listedAs.get(names) ?? checkIngredients(names.en);
  listedAs.set(names, known);
  return known;
}

/**
 * What the catalogue says of one of its entries, in the form of a checked list: its own behaviour, dose and carriers
 * win over what its ingredients alone would tell (a purple neon pales sooner than "neon" says).
 */
export function checkColourant(colourant: Colourant): IngredientReport {
  const { towards: _listed, ...listed } = listedUnder(colourant.names);
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
