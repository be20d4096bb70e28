import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import type { Use } from '../../src/records/recipes/index.ts';
import type { PlanRead } from '../../src/records/recipes/kept-plan.ts';
import type { ShelfItem } from '../../src/records/shelf/index.ts';
import type { Words } from '../../src/words/index.ts';

/** What the plan needs of one jar on the shelf, grams, over all portions. */
export type Need = { readonly item: ShelfItem; readonly grams: number };

/** What the plan needs of the member's own jars, each jar once; of a class what all its stations need. */
export function needsOf({ portions }: PlanAnswer, { jars }: PlanRead, stations = 1): readonly Need[] {
  const needs = new Map<string, Need>();
  portions.forEach(({ doses }, at) => {
    doses.forEach((dose, which) => {
      const item = jars[at]?.[which]?.item;
      if (!item) return;
      const grams = (dose.premix?.grams ?? dose.grams).typical * stations;
      needs.set(item.id, { item, grams: grams + (needs.get(item.id)?.grams ?? 0) });
    });
  });
  return [...needs.values()];
}

/** What stands on the shelf for it, what is short, what runs low. */
export const stockRows = (needs: readonly Need[], { plan }: Words): readonly string[] =>
  needs.map(({ item: { name, stock }, grams }) => {
    const left = stock.grams;
    if (left === undefined) return plan.uncounted({ name, grams });
    if (left < grams) return plan.short({ name, grams, left });
    const after = left - grams;
    return after <= stock.lowAt
      ? plan.runsLow({ name, grams, left, after })
      : plan.enough({ name, grams, left });
  });

/** The same for programs. */
export const stockData = (needs: readonly Need[]) =>
  needs.map(({ item: { id, name, stock }, grams }) => ({
    item: id,
    name,
    grams,
    left: stock.grams,
    enough: stock.grams !== undefined && stock.grams >= grams,
    low: stock.grams !== undefined && stock.grams - grams <= stock.lowAt,
  }));

/** What one press takes off; nothing at all unless there is enough of every jar. */
export function usesOf(needs: readonly Need[]): readonly Use[] {
  const enough = needs.every(({ item, grams }) => (item.stock.grams ?? 0) >= grams);
  if (!enough) return [];
  return needs.map(({ item, grams }) => ({
    item: item.id,
    milligrams: Math.max(1, Math.round(grams * 1000)),
  }));
}
