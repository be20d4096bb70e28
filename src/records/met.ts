/* Which standing cautions a member has been given in full. */

import { remembered } from '../engine/remembered.ts';
import { valuesOn } from '../engine/values-on.ts';
import { met, mets, under } from './keys.ts';
import { moment, recordKind, written } from './record.ts';
import { atHand, type Entry, put, type Store } from './store.ts';

const kind = recordKind('met', { at: moment });

type Member = { readonly store: Store; readonly member: string };

const spanOf = remembered(member => under(mets(member)));
/** As many as may be at hand; there are some dozens of cautions. */
const MOST_MET = 1_000;

/** The keys of the same entries: a question asks for what its store has read once. */
const keysOf = valuesOn<readonly Entry[], ReadonlySet<string>>();

function keysIn(entries: readonly Entry[]): ReadonlySet<string> {
  const keys = keysOf.get(entries) ?? new Set(entries.map(({ key }) => key));
  keysOf.set(entries, keys);
  return keys;
}

/** Those of the cautions that the member has met before. */
export async function metBefore(
  { store, member }: Member,
  cautions: readonly string[],
): Promise<ReadonlySet<string>> {
  const there = atHand(store, spanOf(member), MOST_MET);
  if (there && there.length < MOST_MET) {
    const keys = keysIn(there);
    return new Set(cautions.filter(caution => keys.has(met(member, caution))));
  }
  const stored = await store.get(cautions.map(caution => met(member, caution)));
  return new Set(cautions.filter((_, at) => stored[at] !== undefined));
}

/** Notes that the member was given these cautions in full. */
export async function meet({ store, member }: Member, cautions: readonly string[], at: Date): Promise<void> {
  await store.commit(cautions.map(caution => put(met(member, caution), written(kind, { at }))));
}
