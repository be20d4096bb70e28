import type { Colourant } from '../../../engine/colourants/colourant.ts';
import { colourantsNamed } from '../../../engine/colourants/find.ts';
import { Refusal } from '../../../engine/refusal.ts';
import { fold, foldedWords } from '../../../engine/text/fold.ts';
import { findItem, listShelf } from '../queries.ts';
import type { Shelf, ShelfItem } from '../shelf.ts';

/** The item of exactly that id or name, as colours are compared. */
export const ownNamed = (own: readonly ShelfItem[], text: string): ShelfItem | undefined =>
  own.find(({ id, name }) => id === text || fold(name) === fold(text));

/**
 * The one jar that a name of the catalogue means on this shelf: of that colourant, and called by those words or by another
 * name of it, as "activated charcoal" is charcoal. Undefined where none is, or more than one.
 */
export function ownOfKind(
  own: readonly ShelfItem[],
  text: string,
  colourant: Pick<Colourant, 'id'>,
): ShelfItem | undefined {
  if (own.length === 0) return undefined;
  const asked = foldedWords(text);
  const fitting = own.filter(item => {
    if (item.colourant !== colourant.id) return false;
    const words = new Set(foldedWords(item.name));
    return (
      (asked.length > 0 && asked.every(word => words.has(word))) ||
      colourantsNamed(item.name).some(({ id }) => id === colourant.id)
    );
  });
  return fitting.length === 1 ? fitting[0] : undefined;
}

type Readings<Found> = {
  readonly byItem: (item: ShelfItem) => Found;
  /** By the catalogue; throws its Refusal. */
  readonly byText: (text: string) => Found & { readonly colourant?: Colourant | undefined };
  /** Ids of its refusals after which a close spelling on the shelf may still be meant. */
  readonly undecided: ReadonlySet<string>;
  /** Asked before a close spelling is looked for. */
  readonly beforeSpelling?: (text: string) => void;
};

/**
 * What somebody means by a name: their own item by its exact name, else what the catalogue makes of it (the one jar of that
 * colourant that is called so, where there is one), else their own item by a close spelling. Throws the catalogue's Refusal when nothing fits.
 */
export async function ownElseCatalogue<Found>(
  shelf: Shelf,
  text: string,
  { byItem, byText, undecided, beforeSpelling }: Readings<Found>,
): Promise<Found> {
  const shelved = await listShelf(shelf);
  const own = ownNamed(shelved, text);
  if (own) return byItem(own);
  try {
    const found = byText(text);
    const item = found.colourant && ownOfKind(shelved, text, found.colourant);
    return item ? byItem(item) : found;
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || !undecided.has(refusal.id)) throw refusal;
    beforeSpelling?.(text);
    const item = await findItem(shelf, text).catch((second: unknown) => {
      throw second instanceof Refusal ? refusal : second;
    });
    return byItem(item);
  }
}
