/** How often each feature of a text stands in it, by 24-bit hash. */
export type Counts = ReadonlyMap<number, number>;

// FNV-1a: offset basis and prime of 32 bits (RFC 9923); each kind of feature starts from a basis of its own.
const BASIS = 0x81_1c_9d_c5;
const PRIME = 0x01_00_01_93;
const PAIR = 1;
const PIECE = 2;
const IDEA = 3;
const SHORTEST = 3;
const LONGEST = 5;
const EDGE = 32;

const mixed = (hash: number, code: number) => Math.imul(hash ^ code, PRIME);
/** Folds 32 bits into 24, as the authors of the hash advise. */
const short = (hash: number) => ((hash >>> 24) ^ hash) & 0xff_ff_ff;

function hashOf(text: string): number {
  let hash = BASIS;
  for (let at = 0; at < text.length; at += 1) hash = mixed(hash, text.charCodeAt(at));
  return hash;
}

const count = (counts: Map<number, number>, hash: number) => {
  const key = short(hash);
  counts.set(key, (counts.get(key) ?? 0) + 1);
};

/** Each word and each pair of neighbours. */
export function wordCounts(words: readonly string[]): Counts {
  const counts = new Map<number, number>();
  let before: number | undefined;
  for (const word of words) {
    const hash = hashOf(word);
    count(counts, hash);
    if (before !== undefined) count(counts, mixed(mixed(before, PAIR), hash));
    before = hash;
  }
  return counts;
}

/** Each run of three to five letters of each word, with the word's ends. */
export function pieceCounts(words: readonly string[]): Counts {
  const counts = new Map<number, number>();
  for (const word of words) {
    const codeAt = (at: number) => (at === 0 || at > word.length ? EDGE : word.charCodeAt(at - 1));
    for (let from = 0; from + SHORTEST <= word.length + 2; from += 1) {
      let hash = mixed(BASIS, PIECE);
      for (let size = 1; size <= LONGEST && from + size <= word.length + 2; size += 1) {
        hash = mixed(hash, codeAt(from + size - 1));
        if (size >= SHORTEST) count(counts, hash);
      }
    }
  }
  return counts;
}

/** Each idea, by its name. */
export function ideaCounts(ideas: readonly string[]): Counts {
  const counts = new Map<number, number>();
  for (const idea of ideas) count(counts, mixed(hashOf(idea), IDEA));
  return counts;
}
