/*
 * Recipes: plans under a name, a member's own and those shared to a group, and the plans a member was lately
 * answered with. A plan is kept as its own words and read anew each time.
 */

export { removeRecipe, saveRecipe, shareRecipe, unshareRecipe } from './change.ts';
export { keepLatePlan, type LatePlan, lastPlan, latePlanOf, type Use } from './late.ts';
export { findRecipe, findShared, listRecipes, nearestRecipes } from './look.ts';
export * from './recipe.ts';
