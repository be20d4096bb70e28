import type { Held } from './held.ts';
import { pick } from './names.ts';

/** What is held of the one item that is meant; see {@link pick} for what is understood and refused. */
export function pickHeld(all: readonly Held[], asked: string): Held {
  const item = pick(
    all.map(held => held.item),
    asked,
  );
  return all.find(held => held.item === item)!;
}
