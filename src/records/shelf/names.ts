import { refuse } from '../../engine/refusal.ts';
import {
  exactlyNamed,
  foldName,
  LONGEST_NAME,
  maybeNamed,
  nearestNamed,
} from '../../engine/text/names/own-names.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'shelf-name-unfit': { readonly most: number };
    'shelf-item-unknown': { readonly asked: string; readonly nearest: readonly string[] };
    'shelf-item-ambiguous': { readonly asked: string; readonly candidates: readonly string[] };
  }
}

/** The most candidates or suggestions that a refusal names. */
const mostNamed = 5;

/** A name as it is kept and shown: no control or direction-turning characters, single spaces. */
export function tidyName(name: string): string {
  if (name.length > 10 * LONGEST_NAME) refuse('shelf-name-unfit', { most: LONGEST_NAME });
  const tidy = name
    .toWellFormed()
    .normalize('NFC')
    // The two joiners stay: several scripts are not written properly without them. White space goes next.
    .replace(/(?!\u200c|\u200d|\s)[\p{Cc}\p{Cf}]/gu, '')
    .replace(/\s+/gu, ' ')
    .trim();
  const folded = foldName(tidy);
  if (tidy.length > LONGEST_NAME || folded === '' || folded.length > 2 * LONGEST_NAME) {
    refuse('shelf-name-unfit', { most: LONGEST_NAME });
  }
  return tidy;
}

type Named = { readonly id: string; readonly name: string };

/**
 * The one item that is meant: by id or exact name, else by the start of the name or of a word in it, else by a
 * close spelling. Refuses when there is none, or more than one.
 */
export function pick<Item extends Named>(items: readonly Item[], asked: string): Item {
  const exact = exactlyNamed(items, asked);
  if (exact) return exact;
  const candidates = maybeNamed(items, asked);
  const [only] = candidates;
  if (only && candidates.length === 1) return only;
  if (only) {
    const named = nearestNamed(candidates, asked).slice(0, mostNamed);
    return refuse('shelf-item-ambiguous', { asked, candidates: named.map(({ name }) => name) });
  }
  return unknown(items, asked);
}

/** Refuses with the names that come nearest. */
export function unknown(items: readonly Named[], asked: string): never {
  const named = nearestNamed(items, asked).slice(0, 3);
  return refuse('shelf-item-unknown', { asked, nearest: named.map(({ name }) => name) });
}
