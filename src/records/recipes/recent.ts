import { refuse } from '../../engine/refusal.ts';
import { recentPlan, recentPlans, under } from '../keys.ts';
import { read, readable, written } from '../record.ts';
import { drop, put, type Store } from '../store.ts';
import type { KeptPlan } from './recipe.ts';
import { recentPlanKind } from './schema.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'plan-forgotten': Record<never, never>;
  }
}

/** What one press takes off the shelf: an item by its id, whole milligrams. */
export type Use = { readonly item: string; readonly milligrams: number };
export type RecentPlan = KeptPlan & { readonly uses: readonly Use[] };
type Member = { readonly store: Store; readonly member: string };

/** As many plans of a member are remembered, the newest. */
const remembered = 20;
/** And no longer than this: their buttons are dead by then, milliseconds. */
const lifetime = 48 * 3_600_000;

async function readRecent({ store, member }: Member) {
  const { from, to } = under(recentPlans(member));
  const entries = await store.range(from, to, 10 * remembered);
  return readable(recentPlanKind, entries)
    .map(({ key, fields }) => ({ key, plan: fields }))
    .sort((a, b) => b.plan.at.getTime() - a.plan.at.getTime());
}

/** Remembers a plan under the id of the answer that showed it, and forgets those too old to go on with. */
export async function keepRecentPlan(whose: Member, id: string, plan: RecentPlan, at: Date): Promise<void> {
  const { store, member } = whose;
  const before = await readRecent(whose);
  const old = before.filter(
    (one, place) => place >= remembered - 1 || at.getTime() - one.plan.at.getTime() > lifetime,
  );
  const key = recentPlan(member, id);
  const { written: words, spoons, times, colours, uses } = plan;
  const record = { written: words, spoons, times, colours: [...colours], uses: [...uses], at };
  await store.commit([
    put(key, written(recentPlanKind, record)),
    ...old.filter(one => one.key !== key).map(one => drop(one.key)),
  ]);
}

/** The plan an answer showed. Throws a Refusal `plan-forgotten` once newer ones have taken its place. */
export async function recentPlanOf({ store, member }: Member, id: string): Promise<RecentPlan> {
  const key = recentPlan(member, id);
  const [value] = await store.get([key]);
  return value === undefined ? refuse('plan-forgotten', {}) : read(recentPlanKind, key, value);
}

/** The plan the member was answered with last. Throws a Refusal `plan-forgotten` when there is none. */
export async function lastPlan(whose: Member): Promise<RecentPlan> {
  return (await readRecent(whose))[0]?.plan ?? refuse('plan-forgotten', {});
}
