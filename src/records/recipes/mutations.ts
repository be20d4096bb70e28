import { refuse } from '../../engine/refusal.ts';
import { foldName } from '../../engine/text/names/own-names.ts';
import {
  recipeIdempotency,
  recipe as recipeKey,
  recipes,
  sharedRecipe as sharedKey,
  sharedRecipes,
  under,
} from '../keys.ts';
import { type RecordOf, read, written } from '../record.ts';
import { tidyName } from '../shelf/names.ts';
import type { Change } from '../shelf/shelf.ts';
import { add, drop, type Store } from '../store.ts';
import { dropOutlivedUndoables, type UndoableWhat, undoable } from '../undo/index.ts';
import { findOwn, findShared } from './queries.ts';
import { type Found, type KeptPlan, mostRecipes, type Recipe, type RecipeShelf } from './recipe.ts';
import { recipeKind, removalKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'recipe-name-taken': { readonly name: string };
    'recipe-shared-already': { readonly name: string };
    'recipe-shared-name-taken': { readonly name: string; readonly by: string };
    'recipe-not-yours': { readonly name: string; readonly by: string };
    'recipes-full': { readonly most: number };
  }
}

type RecipeOutcome = { readonly name: string; readonly repeated: boolean };
type Maker = { readonly byName: string };

/** Writes a recipe under a key that must be free, once for its cause; `taken` is told who holds the name already. */
async function keep(
  store: Store,
  key: string,
  recipe: RecordOf<typeof recipeKind>,
  taken: (holder: Recipe) => never,
): Promise<RecipeOutcome> {
  const result = await store.commit([add(key, written(recipeKind, recipe))]);
  if (result.done) return { name: recipe.name, repeated: false };
  const [held] = await store.get([key]);
  if (held === undefined) return keep(store, key, recipe, taken);
  const holder = read(recipeKind, key, held);
  return holder.cause === recipe.cause ? { name: holder.name, repeated: true } : taken(holder);
}

async function checkRoom(store: Store, parent: string): Promise<void> {
  const { from, to } = under(parent);
  if ((await store.range(from, to, mostRecipes)).length >= mostRecipes)
    refuse('recipes-full', { most: mostRecipes });
}

const plain = ({ written: words, spoons, times, colours }: KeptPlan) => ({
  written: words,
  spoons,
  times,
  colours: [...colours],
});

/**
 * Saves a plan as one of the member's own recipes. Throws a Refusal: `recipe-name-taken` (capitals and accents do not
 * make another name), `recipes-full`, `shelf-name-unfit`.
 */
export async function saveRecipe(
  { store, member }: RecipeShelf,
  asked: string,
  plan: KeptPlan,
  { cause, at, byName }: Change & Maker,
): Promise<RecipeOutcome> {
  const name = tidyName(asked);
  await checkRoom(store, recipes(member));
  const record = { name, ...plain(plan), by: member, byName, at, cause };
  return keep(store, recipeKey(member, foldName(name)), record, holder =>
    refuse('recipe-name-taken', { name: holder.name }),
  );
}

/**
 * Shows a copy of one of the member's own recipes to the group, as it is now. Throws a Refusal: `recipe-unknown`,
 * `recipe-shared-already`, `recipe-shared-name-taken`, `recipes-full`.
 */
export async function shareRecipe(
  shelf: RecipeShelf,
  asked: string,
  { cause, at, byName }: Change & Maker,
): Promise<RecipeOutcome> {
  const { store, member, group } = shelf;
  const recipe = await findOwn(shelf, asked);
  await checkRoom(store, sharedRecipes(group));
  const record = { name: recipe.name, ...plain(recipe), by: member, byName, at, cause };
  return keep(store, sharedKey(group, foldName(recipe.name)), record, holder =>
    holder.by === member
      ? refuse('recipe-shared-already', { name: holder.name })
      : refuse('recipe-shared-name-taken', { name: holder.name, by: holder.byName }),
  );
}

/** Drops a recipe, once for its cause: a second delivery does not touch a recipe that came under the name since. */
async function take(
  store: Store,
  { key, what, name }: { readonly key: string; readonly what: UndoableWhat; readonly name: string },
  member: string,
  change: Change,
) {
  await dropOutlivedUndoables({ store, member }, change.at);
  const once = recipeIdempotency(member, change.cause);
  const removal = written(removalKind, { name, at: change.at });
  const [value] = await store.get([key]);
  const back = value === undefined ? [] : [{ key, value }];
  const { done } = await store.commit([
    add(once, removal),
    undoable(member, change, { what, name, back }),
    drop(key),
  ]);
  return { name, repeated: !done };
}

async function doneBefore(
  store: Store,
  member: string,
  { cause }: Change,
): Promise<RecipeOutcome | undefined> {
  const key = recipeIdempotency(member, cause);
  const [done] = await store.get([key]);
  return done === undefined ? undefined : { name: read(removalKind, key, done).name, repeated: true };
}

/** Removes one of the member's own recipes; a copy shared to a group stays there. Throws a Refusal `recipe-unknown`. */
export async function removeRecipe(
  shelf: RecipeShelf,
  asked: string,
  change: Change,
): Promise<RecipeOutcome> {
  const { store, member } = shelf;
  const before = await doneBefore(store, member, change);
  if (before) return before;
  const recipe = await findOwn(shelf, asked);
  const key = recipeKey(member, foldName(recipe.name));
  return take(store, { key, what: 'recipe-removed', name: recipe.name }, member, change);
}

/**
 * Takes a recipe back from the group: its own maker may, and a steward. Throws a Refusal `recipe-unknown`, or
 * `recipe-not-yours`.
 */
export async function unshareRecipe(
  shelf: RecipeShelf,
  asked: string,
  change: Change & { readonly steward: boolean },
): Promise<RecipeOutcome> {
  const { store, member, group } = shelf;
  const before = await doneBefore(store, member, change);
  if (before) return before;
  const recipe: Found = await findShared(shelf, asked);
  if (recipe.by !== member && !change.steward)
    refuse('recipe-not-yours', { name: recipe.name, by: recipe.byName });
  const key = sharedKey(group, foldName(recipe.name));
  return take(store, { key, what: 'recipe-unshared', name: recipe.name }, member, change);
}
