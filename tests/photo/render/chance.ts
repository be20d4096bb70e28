/** Seeded chance: the same seed draws the same bar on every machine (mulberry32, public domain). */
export type Chance = {
  /** A number from `low` to `high`. */
  between(low: number, high: number): number;
  /** One of the given things. */
  pick<T>(from: readonly T[]): T;
  /** Standard normal (Box and Muller 1958). */
  normal(): number;
};

export function chance(seed: number): Chance {
  let state = (seed * 2654435761) >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    between: (low, high) => low + (high - low) * next(),
    pick: from => from[Math.floor(next() * from.length)]!,
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  };
}

/** Smooth noise between -1 and 1 on a lattice of spacing 1: mottling, wood grain, wavy edges. */
export function smoothNoise(seed: number): (x: number, y: number) => number {
  const corner = (x: number, y: number) => {
    let h = Math.imul(x, 374761393) ^ Math.imul(y, 668265263) ^ Math.imul(seed, 1274126177);
    h = Math.imul(h ^ (h >>> 13), 1274126177);
    return ((h ^ (h >>> 16)) >>> 0) / 2147483648 - 1;
  };
  const ease = (t: number) => t * t * (3 - 2 * t);
  return (x, y) => {
    const x0 = Math.floor(x);
    const y0 = Math.floor(y);
    const fx = ease(x - x0);
    const fy = ease(y - y0);
    const top = corner(x0, y0) + (corner(x0 + 1, y0) - corner(x0, y0)) * fx;
    const bottom = corner(x0, y0 + 1) + (corner(x0 + 1, y0 + 1) - corner(x0, y0 + 1)) * fx;
    return top + (bottom - top) * fy;
  };
}
