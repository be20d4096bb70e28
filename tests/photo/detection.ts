import { readPhoto } from '../../src/photo/read.ts';
import type { PhotoReading } from '../../src/photo/reading.ts';
import type { Flaw } from './render/flaws.ts';
import { type Shot, shoot } from './render/scene.ts';
import { type Camera, FLAW_DRAWINGS, shotOf, twoColours } from './render/shots.ts';

/** Everything drawn, and everything that may be seen. */
export const DRAWN = [...(Object.keys(FLAW_DRAWINGS) as Flaw['kind'][]), 'colour-bled'] as const;

export type Drawn = (typeof DRAWN)[number];

/** Seeds no detector was tuned on begin here; tuning used those below 8000. */
const HELD_OUT = 90_000;

const flawed = (kind: Drawn, seed: number): Partial<Shot> => {
  if (kind === 'colour-bled') return twoColours(seed, 0.075 + 0.012 * (seed % 5));
  const { flaw, colours } = FLAW_DRAWINGS[kind](seed);
  // A brown rim on a beige table cannot be told from it by anyone's rule: those bars lie on cloth or slate.
  const ground = kind === 'brown-outside-in' && {
    background: seed % 2 === 0 ? ('cloth' as const) : ('slate' as const),
  };
  return { flaws: [flaw], ...(colours && { colours }), ...ground };
};

/** A reading of the `index`th held-out bar with a flaw. */
export async function readFlawed(kind: Drawn, index: number, camera: Camera): Promise<PhotoReading> {
  const seed = HELD_OUT + index * 37;
  return readPhoto(await shoot(shotOf(seed, camera, flawed(kind, seed))));
}

/** A reading of the `index`th held-out bar without one: two thirds plain, the rest of two colours with crisp borders. */
export async function readClean(index: number, camera: Camera): Promise<PhotoReading> {
  const seed = HELD_OUT + 5000 + index * 41;
  const given: Partial<Shot> = index % 3 === 2 ? twoColours(seed) : index % 7 === 0 ? { paper: 'under' } : {};
  return readPhoto(await shoot(shotOf(seed, camera, given)));
}
