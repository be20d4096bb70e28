import { remembered } from '../../engine/remembered.ts';
import { alone, evidenceSharedBy, evidenceSharing, under } from '../keys.ts';
import { readable, written } from '../record.ts';
import { atHand, drop, everything, put } from '../store.ts';
import type { EvidenceScope } from './report.ts';
import { sharingKind } from './schema.ts';

const spanOf = remembered(group => alone(evidenceSharedBy(group)));

/** True where the group's stewards let other groups that also share count what it has seen. */
export async function shares({ store, group }: EvidenceScope): Promise<boolean> {
  const there = atHand(store, spanOf(group), 1);
  if (there) return there.length > 0;
  const [stored] = await store.get([evidenceSharedBy(group)]);
  return stored !== undefined;
}

/** Opts the group in or out; out again holds from the next question on, in both directions. */
export async function setSharing({ store, group }: EvidenceScope, on: boolean, since: Date): Promise<void> {
  const key = evidenceSharedBy(group);
  await store.commit([on ? put(key, written(sharingKind, { group, since })) : drop(key)]);
}

/** The other groups whose reports this one may count: none unless it shares itself. */
export async function sharedWith({ store, group }: EvidenceScope): Promise<readonly string[]> {
  if (!(await shares({ store, group }))) return [];
  const sharing = await everything(store, under(evidenceSharing()));
  return readable(sharingKind, sharing)
    .map(({ fields }) => fields.group)
    .filter(one => one !== group);
}
