import { refusePoisonIn } from '../../../engine/hazards/index.ts';
import { refuse } from '../../../engine/refusal.ts';
import { checkIngredients } from '../../../engine/stability/check.ts';
import { permittedSummary } from '../../../engine/stability/permitted-summary.ts';
import type { IngredientReport } from '../../../engine/stability/report.ts';
import { cut } from '../../../engine/text/excerpt.ts';
import { written } from '../../record.ts';
import { ingredientsKind } from '../schema.ts';
import type { Ingredients } from '../shelf.ts';

/**
 * An ingredient list as an item keeps it, and what the chemistry makes of it. Refuses a list with a metal that must
 * not meet lye, certain or not, one with a poison, and one of which nothing is recognised.
 */
export function readIngredients(text: string): {
  readonly kept: Ingredients;
  readonly report: IngredientReport;
} {
  refusePoisonIn(text);
  const report = checkIngredients(text);
  const { components, kind, verdict, verdictIfPresent } = report;
  const metal = components.find(({ alkali }) => alkali === 'never');
  if (metal !== undefined || verdictIfPresent === 'never')
    refuse('metal-never-in-lye', { text: metal?.as ?? '', metal: 'unnamed' });
  if (components.length === 0) refuse('list-nothing-recognised', { text: cut(text, 80) });
  const { us, eu } = permittedSummary(components);
  const kept: Ingredients = {
    text,
    kind,
    components: components.map(({ id }) => id),
    verdict,
    permitted: { us: us.standing, eu: eu.standing },
  };
  return { kept, report };
}

/** The list as it is stored. */
export const ingredientsRecord = ({ text, kind, components, verdict, permitted }: Ingredients): unknown =>
  written(ingredientsKind, {
    text,
    kind,
    components: components && [...components],
    verdict,
    permitted: permitted && { ...permitted },
  });
