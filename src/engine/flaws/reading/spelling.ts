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

/**
 * Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours, each 1
 * (Damerau 1964 as restricted by Wagner and Lowrance 1975).
 */
export function distance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, before[j - 2]! + 1);
      row.push(best);
    }
    before = above;
    above = row;
  }
  return above[b.length]!;
}

/** Slips allowed in a word of that many letters: short words differ too little from one another. */
function slips(length: number): number {
  return length < 5 ? 0 : length < 8 ? 1 : 2;
}

/**
 * A speller over `known` words that leaves `untouched` words alone. Symmetric-delete index (Garbe 2012):
 * a look-up costs the same however many words are known.
 */
export function speller(known: Iterable<string>, untouched: ReadonlySet<string>): Speller {
  const index = new Map<string, string[]>();
  for (const word of new Set(known)) {
    for (const key of shortened(word, slips(word.length))) {
      const bucket = index.get(key);
      if (bucket) bucket.push(word);
      else index.set(key, [word]);
    }
  }
  const seen = new Map<string, string | undefined>();
  const nearest = (word: string): string | undefined => {
    const most = slips(word.length);
    let best: string | undefined;
    let least = most + 1;
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
    if (slips(word.length) === 0 || word.length > 20 || untouched.has(word)) return undefined;
    if (!seen.has(word)) {
      if (seen.size > 5000) seen.clear();
      seen.set(word, nearest(word));
    }
    return seen.get(word);
  };
}
