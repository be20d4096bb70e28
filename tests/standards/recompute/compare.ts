import { planNumbers } from '../../../src/engine/batch/planning/plan.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { disagreements } from './agreement.ts';
import { asPlan } from './as-written.ts';
import * as again from './recompute.ts';

type Outcome = { readonly refused: string } | { readonly wrong: ReturnType<typeof disagreements> };

/** A request through the reading and the arithmetic of `/plan`; anything thrown but a Refusal is a fault. */
function outcome(q: again.BatchRequest): Outcome {
  try {
    return { wrong: disagreements(q, planNumbers(asPlan(q))) };
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.id };
    throw error;
  }
}

function tally(ids: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
}

/** Compares a run of requests; a plan that differs anywhere is shown with what differs. */
export function compare(kind: 'plausible' | 'nasty', first: number, count: number) {
  // Reading a plan tries and refuses much; stacks that nobody reads are half of its time.
  const { stackTraceLimit } = Error;
  Error.stackTraceLimit = 0;
  const all = again.requests(kind, first, count).map(q => ({ q, out: outcome(q) }));
  Error.stackTraceLimit = stackTraceLimit;
  const wrong = all.flatMap(({ q, out }) =>
    'wrong' in out && out.wrong.length > 0 ? [{ id: q.id, faults: q.faults, wrong: out.wrong }] : [],
  );
  const refused = tally(all.flatMap(({ out }) => ('refused' in out ? [out.refused] : [])));
  const planned = all.filter(({ out }) => 'wrong' in out).length;
  return { wrong, refused, planned };
}
