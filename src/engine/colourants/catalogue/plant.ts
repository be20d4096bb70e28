import type { Colourant } from '../colourant.ts';
import { lessOf, practice, remembered } from './origins.ts';

/** What plant powders share. */
export const plant = {
  kind: 'botanical',
  ci: [],
  density: { low: 1.3, typical: 1.4, high: 1.5 },
  bulkDensity: { low: 0.3, typical: 0.45, high: 0.6 },
  // “About 1 tsp to 500 g of oils”, where full colour is three (common practice, no source).
  dose: { fullTspPerCup: 1, ceilingTspPerCup: 2, usual: 'medium' },
  carriers: ['oil', 'water', 'glycerin'],
  dishTestDecides: false,
  light: 'fades',
  hints: ['botanical-varies', 'keep-from-light'],
  origins: {
    identity: remembered('botanical name and INCI'),
    dose: remembered('makers use about a tablespoon of plant powder a pound of oils'),
    carriers: practice('plant powders go in oil or water; roots are better infused in oil'),
    density: remembered('dry plant matter'),
    bulkDensity: remembered('dry plant powders; weigh one level spoon of yours'),
    alkali: remembered('food chemistry and indicator tables'),
    light: remembered('plant colours fade in daylight'),
  },
} as const satisfies Partial<Colourant>;

/** The strong ones among them: half of the dose. */
export const strongPlant = {
  ...plant,
  dose: { fullTspPerCup: 0.5, ceilingTspPerCup: 1 },
  origins: { ...plant.origins, dose: lessOf('half', 'other plant powders') },
} as const satisfies Partial<Colourant>;

/** Browns that neither lye nor light moves. */
export const earthy = {
  ...plant,
  light: 'holds',
  alkali: { behaviour: 'stable' },
  hints: ['botanical-varies'],
} as const;
/** What leaf greens do. */
export const toOlive = { behaviour: 'shifts', towards: 'olive-brown' } as const;
