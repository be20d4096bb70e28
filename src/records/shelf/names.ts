import { refuse } from '../../engine/refusal.ts';
import { distance } from '../../engine/text/edit-distance.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'shelf-name-unfit': { readonly most: number };
    'shelf-item-unknown': { readonly asked: string; readonly nearest: readonly string[] };
    'shelf-item-ambiguous': { readonly asked: string; readonly candidates: readonly string[] };
  }
}

/** Longest name of an item, in UTF-16 units: it has to fit a button (80) and a suggestion (100). */
export const longestName = 80;

/** The most candidates or suggestions that a refusal names. */
const mostNamed = 5;

/** A name as it is kept and shown: no control or direction-turning characters, single spaces. */
export function tidyName(name: string): string {
  if (name.length > 10 * longestName) refuse('shelf-name-unfit', { most: longestName });
  const tidy = name
    .toWellFormed()
    .normalize('NFC')
    // The two joiners stay: several scripts are not written properly without them. White space goes next.
    .replace(/(?!\u200c|\u200d|\s)[\p{Cc}\p{Cf}]/gu, '')
    .replace(/\s+/gu, ' ')
    .trim();
  const folded = foldName(tidy);
  if (tidy.length > longestName || folded === '' || folded.length > 2 * longestName) {
    refuse('shelf-name-unfit', { most: longestName });
  }
  return tidy;
}

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

type Named = { readonly id: string; readonly name: string };

/** What is typed for a name, folded; longer than any name it is like none, and comparing would take long. */
const foldTyped = (typed: string): string =>
  foldName(typed.slice(0, 2 * longestName)).slice(0, 2 * longestName);

/** The items whose name is the nearest to what was typed, best first. */
export function nearest<Item extends Named>(items: readonly Item[], typed: string): readonly Item[] {
  const folded = foldTyped(typed);
  const far = (item: Item) => {
    const name = foldName(item.name);
    if (name.startsWith(folded)) return 0;
    if (name.includes(` ${folded}`)) return 1;
    // Compared with as much of the name as was typed: people type beginnings.
    return 2 + Math.min(distance(folded, name), 1 + distance(folded, name.slice(0, folded.length)));
  };
  return items
    .map(item => ({ item, far: far(item) }))
    .sort((a, b) => a.far - b.far || a.item.name.localeCompare(b.item.name))
    .map(({ item }) => item);
}

/** The item of that id or exactly that name, capitals and accents aside. */
export function exactly<Item extends Named>(items: readonly Item[], asked: string): Item | undefined {
  const folded = asked.length > 2 * longestName ? '' : foldName(asked);
  return items.find(({ id }) => id === asked) ?? items.find(({ name }) => foldName(name) === folded);
}

/** How many slips of the finger a word of this length is forgiven. */
const slips = (length: number) => (length < 4 ? 0 : Math.max(1, Math.floor(length / 4)));

/** Those that may be meant, from the strictest reading that fits any. */
function meant<Item extends Named>(items: readonly Item[], folded: string): readonly Item[] {
  const starting = items.filter(({ name }) => foldName(name).startsWith(folded));
  if (starting.length > 0) return starting;
  const within = items.filter(({ name }) => foldName(name).includes(` ${folded}`));
  if (within.length > 0) return within;
  const far = items.map(({ name }) => distance(folded, foldName(name)));
  const closest = Math.min(...far);
  return closest > slips(folded.length) ? [] : items.filter((_, index) => far[index] === closest);
}

/**
 * The one item that is meant: by id or exact name, else by the start of the name or of a word in it, else by a
 * close spelling. Refuses when there is none, or more than one.
 */
export function pick<Item extends Named>(items: readonly Item[], asked: string): Item {
  const exact = exactly(items, asked);
  if (exact) return exact;
  const folded = foldTyped(asked);
  const candidates = folded === '' ? [] : meant(items, folded);
  const [only] = candidates;
  if (only && candidates.length === 1) return only;
  if (only) {
    const named = nearest(candidates, asked).slice(0, mostNamed);
    return refuse('shelf-item-ambiguous', { asked, candidates: named.map(({ name }) => name) });
  }
  return unknown(items, asked);
}

/** Refuses with the names that come nearest. */
export function unknown(items: readonly Named[], asked: string): never {
  const named = nearest(items, asked).slice(0, 3);
  return refuse('shelf-item-unknown', { asked, nearest: named.map(({ name }) => name) });
}
