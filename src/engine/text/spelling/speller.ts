import { distance, slipsIn } from './edit-distance.ts';
import { type DeleteIndex, deleteIndex, shortened } from './symmetric-delete.ts';

/** Finds the word of a fixed list that a misspelling was meant for; the list is indexed once. */
export type Speller = (word: string) => string | undefined;

/**
 * A speller over `known` words that leaves `untouched` words alone. Its index is made for the first word that is neither.
 */
export function speller(known: Iterable<string>, untouched: ReadonlySet<string>): Speller {
  let index: DeleteIndex | undefined;
  const seen = new Map<string, string | undefined>();
  const nearest = (word: string): string | undefined => {
    const most = slipsIn(word.length);
    let best: string | undefined;
    let least = most + 1;
    index ??= deleteIndex(new Set(known), slipsIn);
    for (const key of shortened(word, most))
      for (const candidate of index.get(key) ?? []) {
        if (Math.abs(candidate.length - word.length) > most) continue;
        const far = distance(word, candidate) + (candidate[0] === word[0] ? 0 : 0.5);
        if (far < least || (far === least && best !== undefined && candidate < best))
          [best, least] = [candidate, far];
      }
    return best;
  };
  return word => {
    if (slipsIn(word.length) === 0 || word.length > 20 || untouched.has(word)) return undefined;
    if (!seen.has(word)) {
      if (seen.size > 5000) seen.clear();
      seen.set(word, nearest(word));
    }
    return seen.get(word);
  };
}
