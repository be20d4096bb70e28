import { refuse } from '../../engine/refusal.ts';
import { latePlan, latePlans, under } from '../keys.ts';
import { read, written } from '../record.ts';
import { drop, put, type Store } from '../store.ts';
import { latePlanKind } from './kinds.ts';
import type { KeptPlan } from './recipe.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'plan-forgotten': Record<never, never>;
  }
}

/** What one press takes off the shelf: an item by its id, whole milligrams. */
export type Use = { readonly item: string; readonly milligrams: number };
export type LatePlan = KeptPlan & { readonly uses: readonly Use[] };
type Member = { readonly store: Store; readonly member: string };

/** As many plans of a member are remembered, the newest. */
const remembered = 20;
/** And no longer than this: their buttons are dead by then, milliseconds. */
const lifetime = 48 * 3_600_000;

async function readLate({ store, member }: Member) {
  const { from, to } = under(latePlans(member));
  const entries = await store.range(from, to, 10 * remembered);
  return entries
    .map(({ key, value }) => ({ key, plan: read(latePlanKind, key, value) }))
    .sort((a, b) => b.plan.at.getTime() - a.plan.at.getTime());
}

/** Remembers a plan under the id of the answer that showed it, and forgets those too old to go on with. */
export async function keepLatePlan(whose: Member, id: string, plan: LatePlan, at: Date): Promise<void> {
  const { store, member } = whose;
  const before = await readLate(whose);
  const old = before.filter(
    (one, place) => place >= remembered - 1 || at.getTime() - one.plan.at.getTime() > lifetime,
  );
  const key = latePlan(member, id);
  const { written: words, spoons, times, colours, uses } = plan;
  const record = { written: words, spoons, times, colours: [...colours], uses: [...uses], at };
  await store.commit([
    put(key, written(latePlanKind, record)),
    ...old.filter(one => one.key !== key).map(one => drop(one.key)),
  ]);
}

/** The plan an answer showed. Throws a Refusal `plan-forgotten` once newer ones have taken its place. */
export async function latePlanOf({ store, member }: Member, id: string): Promise<LatePlan> {
  const key = latePlan(member, id);
  const [value] = await store.get([key]);
  return value === undefined ? refuse('plan-forgotten', {}) : read(latePlanKind, key, value);
}

/** The plan the member was answered with last. Throws a Refusal `plan-forgotten` when there is none. */
export async function lastPlan(whose: Member): Promise<LatePlan> {
  return (await readLate(whose))[0]?.plan ?? refuse('plan-forgotten', {});
}
