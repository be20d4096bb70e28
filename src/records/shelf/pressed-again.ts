import { shelfIdempotency, undone } from '../keys.ts';
import { read } from '../record.ts';
import { idempotencyKind } from './schema.ts';
import type { Change, Shelf } from './shelf.ts';
import { UNDO_CAUSE } from './snapshot.ts';

/** Takes and undoes of one button that are looked through: nobody presses it so often within its hours. */
const MOST_ROUNDS = 200;

/**
 * The cause for a press of a button whose change may have been made before: that of the change itself while it stands, or
 * where this very press made it and is delivered again; a new one once it was taken back, since whoever then presses means
 * it anew.
 */
export async function pressedAgain(
  { store, member }: Shelf,
  { cause, press }: Pick<Change, 'cause'> & { readonly press: string },
): Promise<string> {
  for (let round = 1; round <= MOST_ROUNDS; round += 1) {
    const made = round === 1 ? cause : `${cause}_${round}`;
    const once = (one: string) => shelfIdempotency(member, one);
    const [alone, first, backAlone, backFirst, removedBack] = await store.get([
      once(made),
      once(`${made}-1`),
      once(`${UNDO_CAUSE}${made}`),
      once(`${UNDO_CAUSE}${made}-1`),
      undone(member, made),
    ]);
    const done = alone ?? first;
    if (done === undefined) return made;
    const isBack = [backAlone, backFirst, removedBack].some(one => one !== undefined);
    if (!isBack || read(idempotencyKind, once(made), done).press === press) return made;
  }
  return cause;
}
