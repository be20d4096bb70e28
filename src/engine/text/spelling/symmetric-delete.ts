/** Words by everything that is left of each where letters are left out. */
export type DeleteIndex = ReadonlyMap<string, readonly string[]>;

/** Every string that is `word` with up to `most` letters left out, itself included. */
export function shortened(word: string, most: number): ReadonlySet<string> {
  const all = new Set([word]);
  let edge = [word];
  for (let round = 0; round < most; round += 1) {
    const next: string[] = [];
    for (const text of edge)
      for (let at = 0; at < text.length; at += 1) {
        const shorter = text.slice(0, at) + text.slice(at + 1);
        if (!all.has(shorter)) next.push(shorter);
        all.add(shorter);
      }
    edge = next;
  }
  return all;
}

/**
 * Symmetric-delete index (Garbe 2012) of different words: a look-up of `shortened` costs the same however many words are known.
 * `most`: how many letters may be left out of a word of so many.
 */
export function deleteIndex(words: Iterable<string>, most: (length: number) => number): DeleteIndex {
  const index = new Map<string, string[]>();
  for (const word of words)
    for (const key of shortened(word, most(word.length))) {
      const bucket = index.get(key);
      if (bucket) bucket.push(word);
      else index.set(key, [word]);
    }
  return index;
}
