/*
 * Recipes: plans under a name, a member's own and those shared to a group, and the plans a member was lately
 * answered with. A plan is kept as its own words and read anew each time.
 */

export { removeRecipe, saveRecipe, shareRecipe, unshareRecipe } from './mutations.ts';
export { findRecipe, findShared, listOwn, listRecipes, nearestRecipes } from './queries.ts';
export { keepRecentPlan, lastPlan, type RecentPlan, recentPlanOf, type Use } from './recent.ts';
export * from './recipe.ts';
