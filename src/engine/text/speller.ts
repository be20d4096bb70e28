import { distance, slipsIn } from './edit-distance.ts';

/** Finds the word of a fixed list that a misspelling was meant for; the list is indexed once. */
export type Speller = (word: string) => string | undefined;

/** Every string that is `word` with up to `most` letters left out, itself included. */
function shortened(word: string, most: number): Set<string> {
  const all = new Set([word]);
  let edge = [word];
  for (let round = 0; round < most; round += 1) {
    const next: string[] = [];
    for (const text of edge)
      for (let i = 0; i < text.length; i += 1) {
        const shorter = text.slice(0, i) + text.slice(i + 1);
        if (!all.has(shorter)) next.push(shorter);
        all.add(shorter);
      }
    edge = next;
  }
  return all;
}

/** The words by what is left of each with as many letters left out as it may have slips. */
function indexed(words: Iterable<string>): ReadonlyMap<string, readonly string[]> {
  const index = new Map<string, string[]>();
  for (const word of new Set(words)) {
    for (const key of shortened(word, slipsIn(word.length))) {
      const bucket = index.get(key);
      if (bucket) bucket.push(word);
      else index.set(key, [word]);
    }
  }
  return index;
}

/**
 * A speller over `known` words that leaves `untouched` words alone. Symmetric-delete index (Garbe 2012):
 * a look-up costs the same however many words are known. It is made for the first word that is neither: half of what a
 * program would do before its first answer.
 */
export function speller(known: Iterable<string>, untouched: ReadonlySet<string>): Speller {
  let index: ReturnType<typeof indexed> | undefined;
  const seen = new Map<string, string | undefined>();
  const nearest = (word: string): string | undefined => {
    const most = slipsIn(word.length);
    let best: string | undefined;
    let least = most + 1;
    index ??= indexed(known);
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
