import { allClosest, byNearness } from '../spelling/closest-name.ts';
import { distance } from '../spelling/edit-distance.ts';

/* Names that people give to things of their own, and which of them is meant by what somebody types. */

/** Longest name, in UTF-16 units: it has to fit a button (80) and a suggestion (100). */
export const LONGEST_NAME = 80;

type Named = { readonly id: string; readonly name: string };

/**
 * A name as it is compared: capitals, accents, full or half width, hyphens and invisible characters do not
 * matter. Only the combining marks of U+0300-U+036F go (accents on Latin, Greek and Cyrillic): in other scripts
 * marks are vowels or voicing and make another word.
 */
export function foldName(name: string): string {
  return name
    .toWellFormed()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f\p{Default_Ignorable_Code_Point}]/gu, '')
    .toUpperCase()
    .toLowerCase()
    .normalize('NFKC')
    .replace(/[\s\p{Pd}_]+/gu, ' ')
    .trim();
}

/** A folded name by its words alone: quotes, brackets and signs are rarely typed again. Names without words stay as they are. */
const wordsAlone = (folded: string): string => folded.replace(/[^\p{L}\p{N}\p{M}]+/gu, ' ').trim() || folded;

/** What is typed for a name, folded; longer than any name it is like none, and comparing would take long. */
const foldTyped = (typed: string): string =>
  foldName(typed.slice(0, 2 * LONGEST_NAME)).slice(0, 2 * LONGEST_NAME);

/** The items whose name is the nearest to what was typed, best first. */
export function nearestNamed<Item extends Named>(items: readonly Item[], typed: string): readonly Item[] {
  const folded = wordsAlone(foldTyped(typed));
  const far = (item: Item) => {
    const name = wordsAlone(foldName(item.name));
    if (name.startsWith(folded)) return 0;
    if (name.includes(` ${folded}`)) return 1;
    // Compared with as much of the name as was typed: people type beginnings.
    return 2 + Math.min(distance(folded, name), 1 + distance(folded, name.slice(0, folded.length)));
  };
  const byName = items.toSorted((a, b) => a.name.localeCompare(b.name));
  return byNearness(byName.map(item => ({ thing: item, far: far(item) }))).map(({ thing }) => thing);
}

/** The item of that id or exactly that name, capitals and accents aside. */
export function exactlyNamed<Item extends Named>(items: readonly Item[], asked: string): Item | undefined {
  const folded = asked.length > 2 * LONGEST_NAME ? '' : foldName(asked);
  return items.find(({ id }) => id === asked) ?? items.find(({ name }) => foldName(name) === folded);
}

/** How many slips of the finger a word of this length is forgiven. */
const slips = (length: number) => (length < 4 ? 0 : Math.max(1, Math.floor(length / 4)));

/**
 * Those that may be meant, from the strictest reading that fits any: the start of the name, of a word in it, a close
 * spelling.
 */
export function maybeNamed<Item extends Named>(items: readonly Item[], asked: string): readonly Item[] {
  const folded = wordsAlone(foldTyped(asked));
  if (folded === '') return [];
  const names = items.map(({ name }) => wordsAlone(foldName(name)));
  const starting = items.filter((_, at) => names[at]!.startsWith(folded));
  if (starting.length > 0) return starting;
  const within = items.filter((_, at) => names[at]!.includes(` ${folded}`));
  if (within.length > 0) return within;
  const near = byNearness(items.map((thing, at) => ({ thing, far: distance(folded, names[at]!) })));
  return allClosest(near, slips(folded.length));
}
