import { refuse } from '../../engine/refusal.ts';
import { cut } from '../../engine/text/excerpt.ts';
import { foldName, nearestNamed } from '../../engine/text/names/own-names.ts';
import { recipes, sharedRecipes, under } from '../keys.ts';
import { readable } from '../record.ts';
import { everything, type Store } from '../store.ts';
import type { Found, RecipeShelf } from './recipe.ts';
import { recipeKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'recipe-unknown': { readonly asked: string; readonly nearest: readonly string[] };
    'recipe-ambiguous': { readonly asked: string; readonly candidates: readonly string[] };
  }
}

/** The most names that a refusal lists. */
const mostNamed = 5;
const byName = new Intl.Collator('en', { sensitivity: 'base', numeric: true });

async function readAll(store: Store, parent: string, shared: boolean): Promise<readonly Found[]> {
  const entries = await everything(store, under(parent));
  return readable(recipeKind, entries)
    .map(({ fields: { cause: _cause, ...recipe } }) => ({ ...recipe, shared }))
    .sort((a, b) => byName.compare(a.name, b.name));
}

/** The member's own recipes, in the order of their names. */
export const listOwn = ({ store, member }: RecipeShelf) => readAll(store, recipes(member), false);

/** The recipes shared to the group, in the order of their names. */
export const listShared = ({ store, group }: RecipeShelf) => readAll(store, sharedRecipes(group), true);

/** Own recipes first, then those of the group that the member did not share from an own one of that name. */
export async function listRecipes(shelf: RecipeShelf): Promise<readonly Found[]> {
  const [own, shared] = await Promise.all([listOwn(shelf), listShared(shelf)]);
  return [...own, ...shared];
}

/** The recipe of that name, the first where both the member and the group have one; else the only one it may mean. */
function pick(recipes: readonly Found[], asked: string): Found {
  const folded = foldName(asked);
  const exact = recipes.find(({ name }) => foldName(name) === folded);
  if (exact) return exact;
  const starting = folded === '' ? [] : recipes.filter(({ name }) => foldName(name).startsWith(folded));
  const [only, other] = starting;
  if (only && (!other || starting.every(({ name }) => foldName(name) === foldName(only.name)))) return only;
  const names = (list: readonly Found[]) => [...new Set(list.map(({ name }) => name))].slice(0, mostNamed);
  if (only) return refuse('recipe-ambiguous', { asked: shown(asked), candidates: names(starting) });
  const close = nearestNamed(
    recipes.map(recipe => ({ ...recipe, id: '' })),
    asked,
  );
  return refuse('recipe-unknown', { asked: shown(asked), nearest: names(close).slice(0, 3) });
}

const shown = (text: string) => cut(text, 60);

/** The recipe a member means: their own before the group's. Throws a Refusal `recipe-unknown` or `recipe-ambiguous`. */
export const findRecipe = async (shelf: RecipeShelf, asked: string) => pick(await listRecipes(shelf), asked);

/** One of the member's own recipes. Throws a Refusal `recipe-unknown` or `recipe-ambiguous`. */
export const findOwn = async (shelf: RecipeShelf, asked: string) => pick(await listOwn(shelf), asked);

/** A recipe shared to the group. Throws a Refusal `recipe-unknown` or `recipe-ambiguous`. */
export const findShared = async (shelf: RecipeShelf, asked: string) => pick(await listShared(shelf), asked);

/** At most so many names, nearest to what was typed first: suggestions while typing. */
export async function nearestRecipes(
  shelf: RecipeShelf,
  typed: string,
  most: number,
): Promise<readonly string[]> {
  const all = (await listRecipes(shelf)).map(recipe => ({ ...recipe, id: '' }));
  return [...new Set(nearestNamed(all, typed).map(({ name }) => name))].slice(0, most);
}
