import type { Outbox } from '../conversation/unasked/outbox.ts';
import { HOUSE } from '../records/dues/dues.ts';
import { sweepDue } from '../records/privacy/retention.ts';
import type { Store } from '../records/store.ts';

/** Sets of a commit at a start. */
const AT_ONCE = 200;

/**
 * Sets the next look through every group that is spoken to, and, by the process that leads, the night of what lies in
 * none. `now` in ms since 1970 UTC. Safe to repeat: a look that is set already is the same due.
 */
export async function setLooks(store: Store, outbox: Outbox, now: number): Promise<void> {
  const groups = [...(outbox.leads?.() === false ? [] : [HOUSE]), ...(outbox.groups?.() ?? [])];
  for (let from = 0; from < groups.length; from += AT_ONCE)
    await store.commit(groups.slice(from, from + AT_ONCE).map(group => sweepDue(group, new Date(now))));
}
