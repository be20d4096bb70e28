import { type Lab, labResponse } from '../../engine/colour/spectra/cielab.ts';
import type { Pixels } from '../decode.ts';
import { AS_SEEN, LINEAR, type LightMatrix } from '../pixels/lab.ts';
import type { Mask } from '../pixels/plane.ts';
import { lampShare, withoutLamp } from './warm-light.ts';

/** Reflectance we take plain white office paper to have, alike at every wavelength. From memory: 0.84 to 0.92. */
const PAPER_REFLECTANCE = 0.87;
/** Above this a channel (0 to 255) is taken to be blown out. */
const BLOWN_OUT = 250;

/** How white paper looked, and how to see the picture as if it had been lit by D65. */
export type Balance = {
  readonly matrix: LightMatrix;
  readonly seen: Lab;
  readonly clipped: boolean;
};

/** Responses of the long, middle and short cones over X, Y, Z (Bradford; ICC.1:2022, annex E). */
const BRADFORD = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296] as const;
const BRADFORD_BACK = [
  0.9869929, -0.1470543, 0.1599627, 0.4323053, 0.5183603, 0.0492912, -0.0085287, 0.0400428, 0.9684867,
] as const;

const times = (matrix: readonly number[], [x, y, z]: readonly [number, number, number]) =>
  [0, 3, 6].map(row => matrix[row]! * x + matrix[row + 1]! * y + matrix[row + 2]! * z) as [
    number,
    number,
    number,
  ];

/**
 * The balance that makes the paper under `white` neutral and as bright as paper is: the linear Bradford adaptation of
 * ICC.1, with the paper as the light's white, and what that leaves of a lamp's light.
 */
export function balanceBy({ width, rgb }: Pixels, white: Mask): Balance {
  const sum: [number, number, number] = [0, 0, 0];
  let count = 0;
  let blown = 0;
  for (let i = 0; i < white.data.length; i++) {
    if (!white.data[i]) continue;
    const at = 3 * i;
    if (Math.max(rgb[at]!, rgb[at + 1]!, rgb[at + 2]!) >= BLOWN_OUT) blown++;
    for (let channel = 0; channel < 3; channel++) sum[channel]! += LINEAR[rgb[at + channel]!]!;
    count++;
  }
  if (count === 0 || width === 0) return { matrix: AS_SEEN, seen: { l: 0, a: 0, b: 0 }, clipped: true };
  const seen = times(AS_SEEN, sum.map(value => value / count) as [number, number, number]);
  const [fx, fy, fz] = seen.map(labResponse) as [number, number, number];
  return {
    matrix: adapting(seen),
    seen: { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) },
    clipped: blown > 0.2 * count,
  };
}

// Both sides are over D65's white point, and Bradford is defined on X, Y, Z: hence the white in and out.
const D65 = [0.95047, 1, 1.08883] as const;

function adapting(paper: readonly [number, number, number]): LightMatrix {
  const cones = times(BRADFORD, paper.map((value, i) => value * D65[i]!) as [number, number, number]);
  const wanted = times(BRADFORD, D65.map(value => value * PAPER_REFLECTANCE) as [number, number, number]);
  const gains = wanted.map((value, i) => value / Math.max(cones[i]!, 1e-4));
  const columns = [0, 1, 2].map(channel => {
    const xyz = [0, 3, 6].map((row, i) => AS_SEEN[row + channel]! * D65[i]!) as [number, number, number];
    const lms = times(BRADFORD, xyz).map((value, i) => value * gains[i]!) as [number, number, number];
    return times(BRADFORD_BACK, lms).map((value, i) => value / D65[i]!);
  });
  const lamp = withoutLamp(lampShare(paper));
  const corrected = columns.map(column => times(lamp, column as [number, number, number]));
  return [0, 1, 2].flatMap(row => corrected.map(column => column[row]!));
}
