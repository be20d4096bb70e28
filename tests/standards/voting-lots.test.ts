import { describe, expect, test } from 'vitest';
import { fingerprint, splitMix64, xoshiro128 } from '../../src/engine/challenges/voting/chance.ts';

const first = <Thing>(count: number, things: Iterator<Thing, never>) =>
  Array.from({ length: count }, () => things.next().value);

describe('the lots that break ties and draw palettes', () => {
  test('xoshiro128** gives the numbers of the reference code from the state 1, 2, 3, 4', () => {
    // Source: the rand_xoshiro package of the Rust project, test vector of Xoshiro128StarStar, made with the
    // authors' C code.
    expect(first(10, xoshiro128([1, 2, 3, 4]))).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ]);
  });

  test('SplitMix64 gives the known numbers from 1234567', () => {
    // From memory: the test values of Rosetta Code's task "Pseudo-random numbers/Splitmix64".
    expect(first(5, splitMix64(1234567n))).toEqual([
      6457827717110365317n,
      3203168211198807973n,
      9817491932198370423n,
      4593380528125082431n,
      16408922859458223821n,
    ]);
  });

  test('FNV-1a gives the known fingerprints of 64 bits', () => {
    // From memory: the test vectors of RFC 9923 and of the authors' own page.
    expect(fingerprint('')).toBe(0xcbf29ce484222325n);
    expect(fingerprint('a')).toBe(0xaf63dc4c8601ec8cn);
    expect(fingerprint('foobar')).toBe(0x85944171f73967e8n);
  });
});
