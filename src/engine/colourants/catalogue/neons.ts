import { spaced } from '../../over-lines.ts';
import type { Colourant } from '../colourant.ts';
import { namesIn } from './name-list.ts';
import { practice, remembered, tradeDose, typicalBulk } from './origins.ts';

const neon = {
  kind: 'neon',
  ci: [],
  inci: 'Polyester-3',
  density: { low: 1.35, typical: 1.37, high: 1.4 },
  bulkDensity: { low: 0.3, typical: 0.45, high: 0.6 },
  dose: { fullTspPerCup: 0.5, ceilingTspPerCup: 0.5 },
  carriers: ['oil', 'glycerin'],
  dishTestDecides: false,
  light: 'fades',
  hints: ['never-in-water', 'less-gives-clean-pastels', 'not-listed-fluorescent'],
  origins: {
    identity: practice('the ingredient list names the resin: polyester, polyamide or melamine'),
    dose: tradeDose,
    carriers: practice('never disperses in water'),
    density: remembered('handbook value of dyed resin'),
    bulkDensity: typicalBulk,
    alkali: remembered('pigment handbooks on daylight-fluorescent resins'),
    light: remembered('pigment handbooks: fluorescent dyes fade in daylight'),
  },
} as const satisfies Partial<Colourant>;

/** Shade, id word, Spanish, synonyms, hex, whether the dye is one of those that drift. */
const shades = [
  [
    'Pink',
    'rosa',
    spaced`
      hot pink neon, neon hot pink, fluorescent pink, fluorescent hot pink, fluo pink,neon magenta,
      magenta neon, rosa fluorescente, rosa flúor, rosa neon, rosa fosforito, fucsia neón, neon fuchsia,
      rosado neón, rosa fluo
    `,
    '#ff4fa3',
    true,
  ],
  [
    'Red',
    'rojo',
    'fluorescent red, fluo red, neon coral, rojo fluorescente, rojo flúor, coral neón, rojo neon',
    '#ff4038',
    false,
  ],
  [
    'Orange',
    'naranja',
    'fluorescent orange, fluo orange,naranja fluorescente, naranja flúor, naranja neon, naranja fosforito, anaranjado neón, neon tangerine',
    '#ff7a1f',
    false,
  ],
  [
    'Yellow',
    'amarillo',
    'fluorescent yellow, fluo yellow,highlighter yellow, neon lemon, amarillo fluorescente, amarillo flúor, amarillo neon, amarillo fosforito',
    '#efff2e',
    false,
  ],
  [
    'Green',
    'verde',
    'fluorescent green, fluo green,neon lime, lime neon, verde fluorescente, verde flúor, verde neon, verde fosforito, verde lima neón',
    '#4dff4a',
    false,
  ],
  [
    'Blue',
    'azul',
    'fluorescent blue, fluo blue, electric blue neon, azul fluorescente, azul flúor, azul neon, azul eléctrico neón',
    '#2f8fff',
    true,
  ],
  [
    'Purple',
    'morado',
    spaced`
      neon violet, violet neon, fluorescent purple, fluorescent violet, fluo purple, violeta neón,
      violeta fluorescente, morado fluorescente, morado flúor, púrpura neón, morado neon, lila neón
    `,
    '#a53fff',
    true,
  ],
] as const;

/** Fluorescent dyes held in a resin. */
export const neons: readonly Colourant[] = shades.map(([en, es, synonyms, hex, drifts]) => ({
  ...neon,
  id: `neon-${en.toLowerCase()}`,
  names: { en: `Neon ${en.toLowerCase()}`, es: `${es.charAt(0).toUpperCase()}${es.slice(1)} neón` },
  synonyms: [`${en.toLowerCase()} neon`, `neón ${es}`, `neon ${es}`, ...namesIn(synonyms)],
  alkali: drifts
    ? ({ behaviour: 'conditional', towards: 'paler', on: 'shade-of-neon' } as const)
    : ({ behaviour: 'conditional', on: 'shade-of-neon' } as const),
  hex,
}));
