/** Every string that is `word` with up to `most` letters left out, itself included. */
function shortened(word: string, most: number): ReadonlySet<string> {
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
 * Which of some different words lie near a word, and some that lie farther: symmetric-delete index (Garbe 2012), made at the first
 * look-up, which costs the same however many words are known. `most`: how many letters may be left out of a word of so many.
 */
export function wordsAround(
  words: () => Iterable<string>,
  most: (length: number) => number,
): (word: string) => ReadonlySet<string> {
  let index: Map<string, string[]> | undefined;
  const indexed = () => {
    const made = new Map<string, string[]>();
    for (const word of words())
      for (const key of shortened(word, most(word.length))) {
        const bucket = made.get(key);
        if (bucket) bucket.push(word);
        else made.set(key, [word]);
      }
    return made;
  };
  return word => {
    index ??= indexed();
    const around = new Set<string>();
    for (const key of shortened(word, most(word.length)))
      for (const other of index.get(key) ?? []) around.add(other);
    return around;
  };
}
