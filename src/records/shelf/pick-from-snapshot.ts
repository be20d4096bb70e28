import { pick } from './names.ts';
import type { ItemSnapshot } from './snapshot.ts';

/** What is held of the one item that is meant; see {@link pick} for what is understood and refused. */
export function pickFromSnapshot(all: readonly ItemSnapshot[], asked: string): ItemSnapshot {
  const item = pick(
    all.map(snapshot => snapshot.item),
    asked,
  );
  return all.find(snapshot => snapshot.item === item)!;
}
