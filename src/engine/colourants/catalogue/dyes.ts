import { spaced } from '../../over-lines.ts';
import type { Colourant } from '../colourant.ts';
import { namesIn, toldApart } from './name-list.ts';
import { practice, published, remembered, typicalBulk } from './origins.ts';

const dye = {
  kind: 'dye',
  density: { low: 1.4, typical: 1.5, high: 1.7 },
  bulkDensity: { low: 0.4, typical: 0.6, high: 0.85 },
  dose: { fullTspPerCup: 0.0625, ceilingTspPerCup: 0.125 },
  carriers: ['water', 'glycerin'],
  dishTestDecides: false,
  alkali: { behaviour: 'conditional', on: 'dye-migrates' },
  light: 'fades-slowly',
  hints: ['dye-migrates-and-stains'],
  origins: {
    identity: published('21 CFR part 74; Regulation (EC) 1223/2009 Annex IV'),
    dose: remembered('no trade rule known: dye powder is strong, start at a sixteenth of a teaspoon a cup'),
    carriers: practice('water-soluble dyes go in water'),
    density: remembered('organic dye powders'),
    bulkDensity: typicalBulk,
    alkali: remembered('dye chemistry; see the behaviour of each dye'),
    light: remembered('dye chemistry: these dyes fade in daylight'),
  },
} as const satisfies Partial<Colourant>;

/** Id, English, Spanish, further synonyms, CI, colour it drifts to, hex. INCI is the US name. */
const watery = [
  [
    'red-40-dye',
    'Red 40 dye',
    'Colorante Rojo 40',
    'fd&c red 40, fd&c red no. 40, red no 40, red 40, allura red, allura red ac, rojo 40, rojo allura, e129, e 129',
    '16035',
    'duller-brown',
    '#c4182c',
  ],
  [
    'red-33-dye',
    'Red 33 dye',
    'Colorante Rojo 33',
    'd&c red 33, d&c red no. 33, red no 33, red 33, acid red 33, fuchsin acid, rojo 33',
    '17200',
    'pink-that-bleeds',
    '#a3195b',
  ],
  [
    'red-28-dye',
    ['Red 28 dye', 'or Red 27, its acid'],
    ['Colorante Rojo 28', 'o Rojo 27, su ácido'],
    spaced`
      red 28 dye, colorante rojo 28, red 27 dye, colorante rojo 27, d&c red 28, d&c red no. 28, red no 28,
      red 28, phloxine b, floxina, acid red 92, rojo 28, red 27, d&c red 27, d&c red no. 27, rojo 27
    `,
    '45410',
    'bright-pink',
    '#d92a82',
  ],
  [
    'red-22-dye',
    'Red 22 dye',
    'Colorante Rojo 22',
    'd&c red 22, d&c red no. 22, red no 22, red 22, eosin, eosin y, eosina, acid red 87, rojo 22, red 21, d&c red 21, d&c red no. 21, rojo 21',
    '45380',
    'bright-pink',
    '#e2474b',
  ],
  [
    'yellow-5-dye',
    'Yellow 5 dye',
    'Colorante Amarillo 5',
    'fd&c yellow 5, fd&c yellow no. 5, yellow no 5, yellow 5, tartrazine, tartrazina, acid yellow 23, amarillo 5, e102, e 102',
    '19140',
    'redder',
    '#f2c200',
  ],
  [
    'yellow-6-dye',
    'Yellow 6 dye',
    'Colorante Amarillo 6',
    'fd&c yellow 6, fd&c yellow no. 6, yellow no 6, yellow 6, sunset yellow, amarillo 6, amarillo ocaso, amarillo crepúsculo, e110, e 110',
    '15985',
    'redder',
    '#f08a00',
  ],
  [
    'yellow-10-dye',
    'Yellow 10 dye',
    'Colorante Amarillo 10',
    'd&c yellow 10, d&c yellow no. 10, yellow no 10, yellow 10, quinoline yellow, amarillo 10, amarillo de quinoleína, e104, e 104',
    '47005',
    'yellow-that-bleeds',
    '#e8dc00',
  ],
  [
    'blue-1-dye',
    'Blue 1 dye',
    'Colorante Azul 1',
    'fd&c blue 1, fd&c blue no. 1, blue no 1, blue 1, brilliant blue, brilliant blue fcf, acid blue 9, azul 1, azul brillante, e133, e 133',
    '42090',
    'violet-or-teal',
    '#0b69bf',
  ],
  [
    'green-3-dye',
    'Green 3 dye',
    'Colorante Verde 3',
    'fd&c green 3, fd&c green no. 3, green no 3, green 3, fast green, fast green fcf, verde 3, verde rápido',
    '42053',
    'violet-blue',
    '#00806b',
  ],
] as const;

/** A name, or a name with what tells it apart. */
type Written = string | readonly [called: string, apart: string];
const namesOf = (en: Written, es: Written): Pick<Colourant, 'names' | 'called'> =>
  typeof en === 'string' || typeof es === 'string'
    ? { names: { en: String(en), es: String(es) } }
    : toldApart({ en: en[0], es: es[0] }, { en: en[1], es: es[1] });

/** Soluble dyes: they colour at once, then walk into the next swirl and onto the flannel. */
export const dyes: readonly Colourant[] = [
  ...watery.map(([id, en, es, synonyms, ci, towards, hex]): Colourant => {
    const told = namesOf(en, es);
    const inci = told.names.en.replace(' dye', '');
    const alkali = { ...dye.alkali, towards };
    return { ...dye, id, ...told, synonyms: namesIn(synonyms), ci: [ci], inci, alkali, hex };
  }),
  {
    ...dye,
    id: 'blue-2-dye',
    ...toldApart(
      { en: 'Blue 2 dye', es: 'Colorante Azul 2' },
      { en: 'indigo carmine', es: 'carmín de índigo' },
    ),
    synonyms: namesIn(
      `fd&c blue 2, fd&c blue no. 2, blue no 2, blue 2, indigo carmine, indigotine, azul 2, carmín de índigo, indigotina, acid blue 74, e132, e 132`,
    ),
    ci: ['73015'],
    inci: 'CI 73015',
    alkali: { behaviour: 'shifts', towards: 'green-then-yellow' },
    light: 'fades',
    hex: '#33418c',
    origins: { ...dye.origins, alkali: remembered('indicator tables: blue to yellow at pH 11.4 to 13') },
  },
  {
    ...dye,
    id: 'green-5-dye',
    names: { en: 'Green 5 dye', es: 'Colorante Verde 5' },
    synonyms: namesIn(
      `d&c green 5, d&c green no. 5, green no 5, green 5, acid green 25, alizarin cyanine green, verde 5`,
    ),
    ci: ['61570'],
    inci: 'Green 5',
    alkali: { behaviour: 'stable' },
    hex: '#0d6f5c',
  },
  {
    ...dye,
    id: 'violet-2-dye',
    ...toldApart({ en: 'Violet 2 dye', es: 'Colorante Violeta 2' }, { en: 'oil-soluble', es: 'liposoluble' }),
    synonyms: namesIn(`d&c violet 2, d&c violet no. 2, violet no 2, violet 2, solvent violet 13, violeta 2`),
    ci: ['60725'],
    inci: 'Violet 2',
    carriers: ['oil'],
    alkali: { behaviour: 'stable' },
    hex: '#5a3a8f',
    origins: { ...dye.origins, carriers: practice('oil-soluble dyes go in oil') },
  },
  {
    ...dye,
    id: 'green-6-dye',
    ...toldApart({ en: 'Green 6 dye', es: 'Colorante Verde 6' }, { en: 'oil-soluble', es: 'liposoluble' }),
    synonyms: namesIn(`d&c green 6, d&c green no. 6, green no 6, green 6, solvent green 3, verde 6`),
    ci: ['61565'],
    inci: 'Green 6',
    carriers: ['oil'],
    alkali: { behaviour: 'stable' },
    hex: '#0f6858',
    origins: { ...dye.origins, carriers: practice('oil-soluble dyes go in oil') },
  },
  {
    ...dye,
    id: 'copper-chlorophyllin',
    names: { en: 'Copper chlorophyllin', es: 'Clorofilina cúprica' },
    synonyms:
      namesIn(`chlorophyllin, chlorophyllin copper complex, sodium copper chlorophyllin, chlorophyll, liquid chlorophyll, clorofila, clorofilina,
      clorofilina de cobre, clorofilina sódica de cobre, clorofila líquida, e141, e 141, chlorophylline, chlorophyll powder`),
    ci: ['75810'],
    inci: 'Chlorophyllin-Copper Complex',
    alkali: { behaviour: 'stable' },
    light: 'fades',
    hex: '#2f6b2f',
    hints: ['dye-migrates-and-stains', 'keep-from-light'],
    origins: {
      ...dye.origins,
      alkali: remembered('food chemistry: copper chelate, ester already hydrolysed'),
    },
  },
  {
    ...dye,
    id: 'caramel',
    names: { en: 'Caramel colour', es: 'Color caramelo' },
    synonyms: namesIn(
      `caramel, caramelo, caramel powder, burnt sugar, azúcar quemada, azúcar quemado, colorante caramelo, e150, e 150, e150a, e150d, zuckerkulör, caramello`,
    ),
    ci: [],
    inci: 'Caramel',
    dose: { fullTspPerCup: 0.5, ceilingTspPerCup: 1 },
    alkali: { behaviour: 'stable' },
    light: 'holds',
    hex: '#6a3a17',
    hints: ['sugar-heats'],
    origins: {
      ...dye.origins,
      identity: published('21 CFR 73.2085; Annex IV entry 146'),
      dose: remembered('no trade rule known: weaker than other dyes, start at half a teaspoon a cup'),
      alkali: remembered('food chemistry: brown stays brown'),
    },
  },
  {
    ...dye,
    id: 'beta-carotene',
    names: { en: 'Beta-carotene', es: 'Betacaroteno' },
    synonyms: namesIn(
      `carotene, beta carotene, b-carotene, provitamin a, beta caroteno, caroteno, betacarotene, e160a, e 160a, bêta-carotène, carotin, carrot oil colour`,
    ),
    ci: ['40800', '75130'],
    inci: 'Beta-Carotene',
    carriers: ['oil'],
    alkali: { behaviour: 'stable' },
    light: 'fades',
    hex: '#e8821e',
    hints: ['keep-from-light'],
    origins: {
      ...dye.origins,
      identity: published('21 CFR 73.2095; Annex IV entries 55 and 111'),
      carriers: practice('oil-soluble dyes go in oil'),
      alkali: remembered('food chemistry: no group that alkali attacks'),
    },
  },
];
