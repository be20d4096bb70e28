import type { Item } from '../items/item.ts';
import { isMeasure, isOil } from './parts.ts';

/** Told of what whoever asks meant to do, and of no recipe on paper. */
const MEANT =
  /(?<!\p{L})(?:planned|intended|meant|wanted|going|supposed|should|iba|ibamos|pensab\p{L}+|queria\p{L}*|tenia\p{L}*|debi\p{L}+)(?!\p{L})/u;
/** Opens what was done instead, or why. */
const CONTRAST = /^(?:so|but|then|instead|only|now|pero|asi|entonces|final|mejor|ahora)(?!\p{L})/u;

const isTold = (items: readonly Item[]): boolean => items.some(isOil) && items.some(isMeasure);

/**
 * Whether a line tells oils that were meant to go in and then, behind "so" or "but", oils once more: "I was going to put 200 g of palm,
 * but it never came, so 500 g of olive". Whether the first are in the pot nobody here knows. Pure.
 */
export function isMeantThenTold(items: readonly Item[]): boolean {
  const meant = items.findIndex(({ is, text }) => is === 'planned' && MEANT.test(text));
  if (meant === -1) return false;
  return items.some(
    ({ text }, at) =>
      at > meant && CONTRAST.test(text) && isTold(items.slice(meant, at)) && isTold(items.slice(at)),
  );
}
