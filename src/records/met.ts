/* Which standing cautions a member has been given in full. */

import { met } from './keys.ts';
import { moment, recordKind, written } from './record.ts';
import { put, type Store } from './store.ts';

const kind = recordKind('met', { at: moment });

type Member = { readonly store: Store; readonly member: string };

/** Those of the cautions that the member has met before. */
export async function metBefore(
  { store, member }: Member,
  cautions: readonly string[],
): Promise<ReadonlySet<string>> {
  const stored = await store.get(cautions.map(caution => met(member, caution)));
  return new Set(cautions.filter((_, at) => stored[at] !== undefined));
}

/** Notes that the member was given these cautions in full. */
export async function meet({ store, member }: Member, cautions: readonly string[], at: Date): Promise<void> {
  await store.commit(cautions.map(caution => put(met(member, caution), written(kind, { at }))));
}
