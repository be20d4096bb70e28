import type { Grounds } from '../grounds.ts';

/**
 * How often each word and pair of words, each run of three to five letters of a word with its ends, and each idea of the
 * lexicon, meant or denied, stands in a text; by 24-bit hashes.
 */
export type Features = {
  readonly words: ReadonlyMap<number, number>;
  readonly pieces: ReadonlyMap<number, number>;
  readonly ideas: ReadonlyMap<number, number>;
};

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

function countPieces(pieces: Map<number, number>, word: string): void {
  const codeAt = (at: number) => (at === 0 || at > word.length ? EDGE : word.charCodeAt(at - 1));
  for (let from = 0; from + SHORTEST <= word.length + 2; from += 1) {
    let hash = mixed(BASIS, PIECE);
    for (let size = 1; size <= LONGEST && from + size <= word.length + 2; size += 1) {
      hash = mixed(hash, codeAt(from + size - 1));
      if (size >= SHORTEST) count(pieces, hash);
    }
  }
}

function ideasIn({ mentions, reading, isPast }: Told): Map<number, number> {
  const ideas = new Map<number, number>();
  for (const { concept, from, to } of mentions) {
    if (isPast[from]) continue;
    const isMeant = reading.standing[to - 1] === 'yes';
    count(ideas, mixed(hashOf(isMeant ? concept : `not ${concept}`), IDEA));
  }
  return ideas;
}

type Told = Pick<Grounds, 'tokens' | 'mentions' | 'reading' | 'isPast'>;

/** The features of what a text tells, but for what is long past; marks say nothing. */
export function featuresOf(told: Told): Features {
  const words = new Map<number, number>();
  const pieces = new Map<number, number>();
  let before: number | undefined;
  told.tokens.forEach(({ kind, text }, at) => {
    if (kind === 'mark' || told.isPast[at]) return;
    const hash = hashOf(text);
    count(words, hash);
    if (before !== undefined) count(words, mixed(mixed(before, PAIR), hash));
    before = hash;
    countPieces(pieces, text);
  });
  return { words, pieces, ideas: ideasIn(told) };
}
