import { key, serial } from './key.ts';

// Recipes and plans.
/** A member's own recipes lie under this key: theirs in every group. */
export const recipes = (member: string) => key('recipe', member);
/** One of a member's recipes, by its folded name. */
export const recipe = (member: string, foldedName: string) => key('recipe', member, foldedName);
/** The recipes shared to a group lie under this key. */
export const sharedRecipes = (group: string) => key('shared-recipe', group);
/** One recipe shared to a group, by its folded name. */
export const sharedRecipe = (group: string, foldedName: string) => key('shared-recipe', group, foldedName);
/** That a recipe was taken away for an interaction, so that its second delivery takes nothing. */
export const recipeIdempotency = (member: string, cause: string) => key('recipe-once', member, cause);
/** The plans a member was lately answered with lie under this key. */
export const recentPlans = (member: string) => key('late-plan', member);
/** One plan a member was lately answered with: what its buttons go on with. */
export const recentPlan = (member: string, id: string) => key('late-plan', member, id);

// Batches that were really made. A batch's id is the interaction that noted it.
/** A member's batches lie under this key: theirs in every group. */
export const batches = (member: string) => key('batch', member);
/** What was poured. */
export const batch = (member: string, id: string) => key('batch', member, id);
/** What became of a member's batches lies under this key. */
export const allBatchEvents = (member: string) => key('batch-event', member);
/** What became of one batch lies under this key. */
export const batchEvents = (member: string, id: string) => key('batch-event', member, id);
/** One thing that happened to a batch, by when it happened. */
export const batchEvent = (member: string, id: string, at: number, cause: string) =>
  key('batch-event', member, id, String(at).padStart(14, '0'), cause);
/** The photos of a batch lie under this key. */
export const batchPhotos = (member: string, id: string) => key('batch-photo', member, id);
/** A small photo of a batch, as the event that brought it is called. */
export const batchPhoto = (member: string, id: string, cause: string) =>
  key('batch-photo', member, id, cause);
/** The batches that members show to a group lie under this key. */
export const sharedBatches = (group: string) => key('shared-batch', group);
/** That a member shows a batch to a group. */
export const sharedBatch = (group: string, member: string, id: string) =>
  key('shared-batch', group, member, id);
/** Whose batch it is that reminders in a group's span are about. */
export const batchReminder = (group: string, id: string) => key('batch-reminder', group, id);
/** What a member's cured bars said of their jars lies under this key. */
export const lessons = (member: string) => key('lesson', member);
/** One reading of a cured bar, or that one no longer counts, in the order they came. */
export const lesson = (member: string, line: number) => key('lesson', member, serial(line));

// Test bars that members of a group share, by the product in the jar.
/** What members of a group found of one product lies under this key. */
export const calibrationsOf = (group: string, colourant: string, product: string) =>
  key('calibration', group, colourant, product);
/** What a member found with one of their jars of it. */
export const calibrationBy = (
  group: string,
  product: { readonly colourant: string; readonly product: string },
  jar: { readonly member: string; readonly item: string },
) => key('calibration', group, product.colourant, product.product, jar.member, jar.item);
