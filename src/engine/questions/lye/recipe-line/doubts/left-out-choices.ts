import type { Name, Way } from '../items/item.ts';
import type { Fixed } from '../settling/fixed-figures.ts';
import type { IngredientsTold } from '../settling/ingredients-told.ts';
import { same } from '../state.ts';
import { written } from '../written.ts';

/** Of so many oils in doubt each may be left out alone; of more there would be too many buttons. */
const MOST_APART = 2;

/**
 * The recipes that a question whether oils are in the pot may be answered with: all of them in, each of them left out, none of them in.
 * With no oil in doubt the recipe as it stands. Those that do not make a whole without an oil (percents, parts of a weight) are not among them. Pure.
 */
export function waysOf(told: IngredientsTold, fixed: Fixed, names: readonly Name[]): readonly Way[] {
  const apart = names.length > 1 && names.length <= MOST_APART ? names.map(name => [name]) : [];
  const sets = [[], ...apart, ...(names.length > 0 && names.length <= MOST_APART ? [names] : [])];
  return sets.flatMap(out => wayWithout(told, fixed, out) ?? []);
}

/** The recipe without those oils; undefined where what is left makes no whole. Pure. */
export function wayWithout(told: IngredientsTold, fixed: Fixed, out: readonly Name[]): Way | undefined {
  const isIn = (name: Name) => out.every(one => !same(one, name));
  const line = written(
    {
      ...told,
      pairs: told.pairs.filter(({ name }) => isIn(name)),
      even: told.even.filter(isIn),
    },
    fixed,
  );
  return typeof line === 'string' ? { without: out.map(({ text }) => text), line } : undefined;
}
