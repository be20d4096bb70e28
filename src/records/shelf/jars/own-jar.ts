import { Refusal } from '../../../engine/refusal.ts';
import { fold } from '../../../engine/text/fold.ts';
import { findItem, listShelf } from '../queries.ts';
import type { Shelf, ShelfItem } from '../shelf.ts';

/** The item of exactly that id or name, as colours are compared. */
export const ownNamed = (own: readonly ShelfItem[], text: string): ShelfItem | undefined =>
  own.find(({ id, name }) => id === text || fold(name) === fold(text));

type Readings<Found> = {
  readonly byItem: (item: ShelfItem) => Found;
  /** By the catalogue; throws its Refusal. */
  readonly byText: (text: string) => Found;
  /** Ids of its refusals after which a close spelling on the shelf may still be meant. */
  readonly undecided: ReadonlySet<string>;
  /** Asked before a close spelling is looked for. */
  readonly beforeSpelling?: (text: string) => void;
};

/**
 * What somebody means by a name: their own item by its exact name, else what the catalogue makes of it, else their own
 * item by a close spelling. Throws the catalogue's Refusal when nothing fits.
 */
export async function ownElseCatalogue<Found>(
  shelf: Shelf,
  text: string,
  { byItem, byText, undecided, beforeSpelling }: Readings<Found>,
): Promise<Found> {
  const own = ownNamed(await listShelf(shelf), text);
  if (own) return byItem(own);
  try {
    return byText(text);
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || !undecided.has(refusal.id)) throw refusal;
    beforeSpelling?.(text);
    const item = await findItem(shelf, text).catch((second: unknown) => {
      throw second instanceof Refusal ? refusal : second;
    });
    return byItem(item);
  }
}
