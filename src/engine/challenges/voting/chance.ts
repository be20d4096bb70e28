const MASK_64 = (1n << 64n) - 1n;

/** FNV-1a, 64 bits, of the UTF-8 bytes of a text. Source: RFC 9923. */
export function fingerprint(text: string): bigint {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text))
    hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) & MASK_64;
  return hash;
}

/**
 * The numbers of SplitMix64 from a state, 64 bits each. Source: Steele, Lea and Flood, "Fast splittable
 * pseudorandom number generators", OOPSLA 2014; used here to fill the state of the generator below, as its
 * authors advise.
 */
export function* splitMix64(state: bigint): Generator<bigint, never> {
  let at = state;
  while (true) {
    at = (at + 0x9e3779b97f4a7c15n) & MASK_64;
    let mixed = at;
    mixed = ((mixed ^ (mixed >> 30n)) * 0xbf58476d1ce4e5b9n) & MASK_64;
    mixed = ((mixed ^ (mixed >> 27n)) * 0x94d049bb133111ebn) & MASK_64;
    yield mixed ^ (mixed >> 31n);
  }
}

type State = readonly [number, number, number, number];

const turned = (x: number, by: number) => (x << by) | (x >>> (32 - by));

/**
 * The numbers of xoshiro128** 1.1 from a state, 0 to 2^32 - 1. Source: Blackman and Vigna, "Scrambled linear
 * pseudorandom number generators", ACM Transactions on Mathematical Software 47 (2021).
 */
export function* xoshiro128(state: State): Generator<number, never> {
  let [a, b, c, d] = state;
  while (true) {
    yield Math.imul(turned(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = turned(d, 11);
  }
}

/** Draws that anyone can repeat who knows the seed. */
export type Chance = {
  /** A whole number from 0 up to but not including `bound`, each as likely; `bound` from 1 to 2^53. */
  below(bound: number): number;
  /** A number from 0 up to but not including 1. */
  fraction(): number;
};

/** The draws of a seed: FNV-1a of its text, spread by SplitMix64, run through xoshiro128**. */
export function chanceFrom(seed: string): Chance {
  const spread = splitMix64(fingerprint(seed));
  const [first, second] = [spread.next().value, spread.next().value];
  const word = (from: bigint, shift: bigint) => Number((from >> shift) & 0xffffffffn);
  const numbers = xoshiro128([word(first, 0n), word(first, 32n), word(second, 0n), word(second, 32n)]);
  const bits53 = () => (numbers.next().value >>> 11) * 2 ** 32 + numbers.next().value;
  return {
    fraction: () => bits53() / 2 ** 53,
    below(bound) {
      // Numbers beyond the last whole multiple of the bound are drawn again, else the low ones come more often.
      const usable = 2 ** 53 - (2 ** 53 % bound);
      let drawn = bits53();
      while (drawn >= usable) drawn = bits53();
      return drawn % bound;
    },
  };
}
