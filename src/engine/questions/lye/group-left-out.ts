import { refuse, unlessRefused } from '../../refusal.ts';
import { readOnce } from '../../remembered.ts';
import { prepared } from './amounts/prepared.ts';
import { plainWords } from './amounts/words.ts';
import { readLyeQuestion } from './question.ts';
import { type GroupTold, groupTold } from './recipe-line/doubts/left-out-as-group.ts';
import { wayWithout } from './recipe-line/doubts/left-out-choices.ts';
import { beyondIn } from './recipe-line/items/beyond-reading.ts';
import type { Name, Way } from './recipe-line/items/item.ts';
import { itemsOf } from './recipe-line/items/items.ts';
import { weighedOils } from './recipe-line/items/weighed-oils.ts';
import { recipeLine } from './recipe-line/recipe-line.ts';
import { fixedIn } from './recipe-line/settling/fixed-figures.ts';
import { toldIn } from './recipe-line/settling/ingredients-told.ts';
import { isOil } from './recipe-line/settling/parts.ts';
import { same } from './recipe-line/state.ts';
import { readyLyeNamed } from './sums/ready-solution.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** Oils that are left out by their place or kind; `names` where it is sure which, and the recipe without them. */
    'oils-left-out': { text: string; names: readonly string[]; ways?: readonly Way[] };
  }
}

/** Of fewer oils none is left out by its place or kind. */
const A_LIST = 2;

/**
 * Throws the Refusal `oils-left-out` where a question leaves oils of its recipe out by their place in it or by their kind, or leaves it
 * open whether they are in: with the recipe without exactly those, where it is sure which they are. `sure`: only where they are surely
 * out. Pure.
 */
export function refuseGroupLeftOut(question: string, { sure }: { readonly sure: boolean }): void {
  const group = groupIn(question);
  if (!group || (sure && !group.isOut)) return;
  const ways = waysWithout(group, plainWords(question, { clauses: true }));
  const out = ways.at(-1)?.without ?? [];
  refuse('oils-left-out', { text: group.text, names: out, ...(ways.length > 0 && { ways }) });
}

/** What a question leaves out as a group; looked for before and behind other doubts, and read once. */
const groupIn = readOnce((question: string): GroupTold | undefined => {
  const plain = plainWords(question, { clauses: true });
  const named = oilsNamed(plain);
  return named.length < A_LIST || !/\d/u.test(plain) ? undefined : groupTold(plain, named);
});

/** The weighed oils of a line, each once, as they are named. */
function oilsNamed(plain: string): readonly string[] {
  const names = weighedOils(itemsOf(plain)).map(({ name }) => name);
  return names.filter((one, at) => names.findIndex(other => same(one, other)) === at).map(({ text }) => text);
}

/** Where the group is surely out the recipe without it; else all of it as well. None where it is not sure which oils they are. */
function waysWithout({ rest, outOf, isOut }: GroupTold, plain: string): readonly Way[] {
  if (rest === undefined || beyondIn(rest) !== undefined || readyLyeNamed(plain) !== undefined) return [];
  const line = prepared(rest);
  if (!('line' in recipeLine(line, rest))) return [];
  const fixed = fixedIn(line);
  const told = toldIn(fixed.rest);
  if ('unclear' in told) return [];
  const oils = told.pairs
    .map(({ name }) => name)
    .filter(isOil)
    .toSorted((one, other) => one.from - other.from);
  const out = outOf(oils.map(({ text }) => text));
  if (out === undefined) return [];
  const sets: readonly (readonly Name[])[] = [...(isOut ? [] : [[]]), out.map(at => oils[at]!)];
  return sets.flatMap(names => {
    const way = wayWithout(told, fixed, names);
    return way && unlessRefused(() => readLyeQuestion(way.line)) ? [way] : [];
  });
}
