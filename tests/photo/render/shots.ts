import { chance } from './chance.ts';
import type { Flaw } from './flaws.ts';
import type { Shot } from './scene.ts';

const SOAP = [
  '#b9a2d8',
  '#7f5fa8',
  '#e3b7b0',
  '#c96a5a',
  '#8fb8a2',
  '#4f8a6a',
  '#6f9fc8',
  '#3f6fa8',
  '#d9c48a',
  '#ece4d2',
];
const PAIRS = [
  ['#f0e8d8', '#7f5fa8'],
  ['#ece4d2', '#c2453d'],
  ['#efe6d6', '#2f6f8f'],
  ['#d8c8e8', '#5a3f8a'],
  ['#f0e6d0', '#4f8a4a'],
] as const;

/** How poor the camera is: blur in thousandths of the bar's width, noise in 8-bit steps. */
export type Camera = { readonly blur: number; readonly noise: number; readonly quality: number };

/** A shot with chance geometry, light, background and bar; what is given stands. */
export function shotOf(seed: number, camera: Camera, given: Partial<Shot> = {}): Shot {
  const dice = chance(seed * 31 + 7);
  const paper = given.paper ?? dice.pick(['beside', 'none', 'none'] as const);
  return {
    seed,
    design: { pattern: 'plain', edge: 0.004 },
    colours: [dice.pick(SOAP)],
    flaws: [],
    background: dice.pick(['table', 'wood', 'cloth', 'slate'] as const),
    paper,
    angle: dice.between(-12, 12),
    perspective: dice.between(0, 0.1),
    fill: paper === 'beside' ? dice.between(0.45, 0.56) : dice.between(0.5, 0.68),
    falloff: dice.between(0, 0.25),
    cast: [dice.between(0.95, 1.1), 1, dice.between(0.8, 1.05)],
    width: 960,
    height: 720,
    ...camera,
    ...given,
  };
}

/** A bar of two colours with crisp borders, or with borders `edge` wide. */
export function twoColours(seed: number, edge = 0.004): Pick<Shot, 'colours' | 'design'> {
  const dice = chance(seed * 13 + 3);
  return {
    colours: dice.pick(PAIRS),
    design: { pattern: dice.pick(['halves', 'layers', 'swirl'] as const), edge },
  };
}

/** Each flaw as it is drawn, from slight to plain, by chance. `bled` is a matter of the design: see {@link twoColours}. */
export const FLAW_DRAWINGS: Readonly<
  Record<Flaw['kind'], (seed: number) => { flaw: Flaw; colours?: string[] }>
> = {
  'coloured-specks': seed => {
    const dice = chance(seed);
    return {
      flaw: {
        kind: 'coloured-specks',
        colour: dice.pick(['#2f2a8f', '#8f1f2a', '#1f5f3a', '#3a2418']),
        count: Math.round(dice.between(12, 60)),
        radius: dice.between(0.004, 0.011),
      },
      colours: [dice.pick(['#b9a2d8', '#e3b7b0', '#8fb8a2', '#d9c48a', '#ece4d2'])],
    };
  },
  'white-specks': seed => {
    const dice = chance(seed);
    return {
      flaw: {
        kind: 'white-specks',
        count: Math.round(dice.between(12, 60)),
        radius: dice.between(0.004, 0.011),
      },
      colours: [dice.pick(['#b9a2d8', '#7f5fa8', '#c96a5a', '#4f8a6a', '#6f9fc8', '#3f6fa8'])],
    };
  },
  'orange-spots': seed => {
    const dice = chance(seed);
    return {
      flaw: {
        kind: 'orange-spots',
        count: Math.round(dice.between(5, 14)),
        radius: dice.between(0.012, 0.028),
        opacity: dice.between(0.45, 0.8),
      },
      colours: [dice.pick(['#ece4d2', '#e3d7c0', '#b9a2d8', '#8fb8a2', '#d8c8e8'])],
    };
  },
  pinholes: seed => {
    const dice = chance(seed);
    return {
      flaw: {
        kind: 'pinholes',
        count: Math.round(dice.between(12, 45)),
        radius: dice.between(0.0095, 0.016),
      },
    };
  },
  'translucent-veins': seed => {
    const dice = chance(seed);
    return {
      flaw: {
        kind: 'translucent-veins',
        count: Math.round(dice.between(3, 7)),
        width: dice.between(0.006, 0.014),
        light: dice.pick([dice.between(0.65, 0.8), dice.between(1.2, 1.35)]),
      },
      colours: [dice.pick(['#b9a2d8', '#7f5fa8', '#e3b7b0', '#8fb8a2', '#6f9fc8', '#d9c48a'])],
    };
  },
  'crackle-network': seed => {
    const dice = chance(seed);
    return {
      flaw: {
        kind: 'crackle-network',
        cell: dice.between(0.06, 0.11),
        width: dice.between(0.004, 0.008),
        light: dice.between(0.68, 0.82),
      },
      colours: [dice.pick(['#ece4d2', '#f0ead8', '#d8c8e8', '#e3b7b0', '#b9a2d8'])],
    };
  },
  'crack-on-top': seed => ({ flaw: { kind: 'crack-on-top', width: chance(seed).between(0.01, 0.022) } }),
  'powdery-film': seed => {
    const dice = chance(seed);
    return {
      flaw: {
        kind: 'powdery-film',
        where: dice.pick(['top', 'face'] as const),
        opacity: dice.between(0.4, 0.75),
      },
      colours: [dice.pick(['#b9a2d8', '#7f5fa8', '#c96a5a', '#4f8a6a', '#6f9fc8', '#3f6fa8', '#8fb8a2'])],
    };
  },
  'dark-centre-ring': seed => {
    const dice = chance(seed);
    return {
      flaw: { kind: 'dark-centre-ring', light: dice.between(0.68, 0.84), edge: dice.between(0.01, 0.035) },
    };
  },
  'light-centre-ring': seed => {
    const dice = chance(seed);
    return {
      flaw: { kind: 'light-centre-ring', light: dice.between(1.18, 1.35), edge: dice.between(0.01, 0.035) },
      colours: [dice.pick(['#7f5fa8', '#c96a5a', '#4f8a6a', '#6f9fc8', '#3f6fa8'])],
    };
  },
  'brown-outside-in': seed => {
    const dice = chance(seed);
    return {
      flaw: { kind: 'brown-outside-in', reach: dice.between(0.16, 0.26), opacity: dice.between(0.5, 0.75) },
      colours: [dice.pick(['#ece4d2', '#e3d7c0', '#e3b7b0', '#d8c8e8', '#efe6d6'])],
    };
  },
};
