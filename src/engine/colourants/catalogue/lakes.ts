import { spaced } from '../../over-lines.ts';
import type { Colourant } from '../colourant.ts';
import { namesIn, toldApart } from './name-list.ts';
import { practice, published, remembered, tradeDose, typicalBulk } from './origins.ts';

const lake = {
  kind: 'lake',
  density: { low: 1.7, typical: 1.9, high: 2.1 },
  bulkDensity: { low: 0.3, typical: 0.42, high: 0.55 },
  dose: { fullTspPerCup: 0.25, ceilingTspPerCup: 0.5 },
  carriers: ['oil', 'glycerin'],
  dishTestDecides: false,
  alkali: { behaviour: 'conditional', on: 'bleeds-from-lake' },
  light: 'fades-slowly',
  hints: ['never-in-water', 'lake-bleeds'],
  origins: {
    identity: published('21 CFR 82.51 and 82.1051 (lakes); parts 73 and 74'),
    dose: practice('lakes other than the true red bleed and stain: start far lower; figure from memory'),
    carriers: practice('lakes: oil or glycerin only'),
    density: remembered('handbook value of aluminium lakes'),
    bulkDensity: typicalBulk,
    alkali: published(
      'Pharmaceutical Research 1993;10:1458: lakes let go of their dye as the alumina dissolves',
    ),
    light: remembered('dye chemistry'),
  },
} as const satisfies Partial<Colourant>;

/** An insoluble organic pigment is dosed and wetted like the true red, so it stands among the lakes. */
const insoluble = {
  ...lake,
  density: { low: 1.5, typical: 1.55, high: 1.6 },
  bulkDensity: { low: 0.2, typical: 0.3, high: 0.4 },
  alkali: { behaviour: 'stable' },
  light: 'holds',
  hints: ['never-in-water'],
  origins: {
    ...lake.origins,
    density: remembered('handbook value of organic pigments'),
    alkali: remembered('organic pigment handbooks'),
  },
} as const satisfies Partial<Colourant>;

/** Id, English, Spanish, further synonyms, CI, INCI, colour it drifts to, hex. */
const bleeding = [
  [
    'red-40-lake',
    'Red 40 lake',
    'Laca Rojo 40',
    'fd&c red 40 lake, fd&c red no. 40 aluminum lake, red no 40 lake, red 40 al lake, allura laca de rojo 40, laca rojo allura',
    '16035',
    'Red 40 Lake',
    'duller-brown',
    '#c4182c',
  ],
  [
    'red-7-lake',
    'Red 7 lake',
    'Laca Rojo 7',
    'd&c red 7 lake, d&c red no. 7 calcium lake, red 7 calcium lake, red no 7 lake,rubine lake, laca de rojo 7, pigment red 57:1, red 7, d&c red 7',
    '15850:1',
    'Red 7 Lake',
    'yellower',
    '#b0123b',
  ],
  [
    'red-6-lake',
    'Red 6 lake',
    'Laca Rojo 6',
    'd&c red 6 lake, d&c red no. 6 barium lake, red 6 barium lake, red no 6 lake, laca de rojo 6, red 6, d&c red 6',
    '15850',
    'Red 6 Lake',
    'yellower',
    '#cd2b2e',
  ],
  [
    'red-27-lake',
    'Red 27 lake',
    'Laca Rojo 27',
    spaced`
      d&c red 27 lake, d&c red no. 27 aluminum lake, red 27 aluminium lake, red 28 lake, d&c red 28 lake,
      phloxine lake, hot pink lake, laca de rojo 27, laca rojo 28
    `,
    '45410',
    'Red 27 Lake',
    'bright-pink',
    '#d92a82',
  ],
  [
    'red-33-lake',
    'Red 33 lake',
    'Laca Rojo 33',
    'd&c red 33 lake, d&c red no. 33 zirconium lake, fuchsia lake, laca de rojo 33',
    '17200',
    'Red 33 Lake',
    'pink-that-bleeds',
    '#a3195b',
  ],
  [
    'yellow-5-lake',
    'Yellow 5 lake',
    'Laca Amarillo 5',
    'fd&c yellow 5 lake, fd&c yellow no. 5 aluminum lake, yellow 5 aluminium lake, tartrazine lake, lemon lake, laca de amarillo 5, laca tartrazina',
    '19140',
    'Yellow 5 Lake',
    'redder',
    '#f2c200',
  ],
  [
    'yellow-6-lake',
    'Yellow 6 lake',
    'Laca Amarillo 6',
    'fd&c yellow 6 lake, fd&c yellow no. 6 aluminum lake, sunset yellow lake, orange lake, laca de amarillo 6, laca amarillo ocaso',
    '15985',
    'Yellow 6 Lake',
    'redder',
    '#f08a00',
  ],
  [
    'yellow-10-lake',
    'Yellow 10 lake',
    'Laca Amarillo 10',
    'd&c yellow 10 lake, d&c yellow no. 10 aluminum lake, quinoline yellow lake, laca de amarillo 10',
    '47005',
    'Yellow 10 Lake',
    'yellow-that-bleeds',
    '#e8dc00',
  ],
  [
    'blue-1-lake',
    'Blue 1 lake',
    'Laca Azul 1',
    'fd&c blue 1 lake, fd&c blue no. 1 aluminum lake, blue 1 aluminium lake, brilliant blue lake, laca de azul 1, laca azul brillante',
    '42090',
    'Blue 1 Lake',
    'violet-or-teal',
    '#0b69bf',
  ],
] as const;

/** The true red, organic pigments that hold, and laked dyes that bleed. */
export const lakes: readonly Colourant[] = [
  {
    ...insoluble,
    id: 'red-30-lake',
    ...toldApart({ en: 'Red 30 lake', es: 'Laca Rojo 30' }, { en: 'true red', es: 'rojo puro' }),
    synonyms:
      namesIn(`red 30 lake, laca rojo 30, d&c red 30, d&c red 30 lake, d&c red no. 30, d&c red no. 30 aluminum lake, d&c red no. 30 talc lake, red no 30,
      red no. 30 lake, red 30, red 30 aluminium lake, red 30 talc lake, true red, red lake of d&c red 30,thioindigo,
      laca de rojo 30, rojo 30, rojo puro, rojo verdadero, rojo d&c 30, laca rojo d&c 30, vat red 1, pigment red 181, laque rouge 30`),
    ci: ['73360'],
    inci: 'Red 30 Lake',
    dose: { fullTspPerCup: 1, ceilingTspPerCup: 1 },
    hex: '#b8232f',
    hints: ['never-in-water', 'deepen-red-with-red-mica'],
    origins: {
      ...insoluble.origins,
      identity: published('21 CFR 74.2330; Regulation (EC) 1223/2009 Annex IV'),
      dose: tradeDose,
      alkali: remembered('organic pigment handbooks: only a reducing agent with alkali dissolves thioindigo'),
    },
  },
  ...bleeding.map(
    ([id, en, es, synonyms, ci, inci, towards, hex]): Colourant => ({
      ...lake,
      id,
      names: { en, es },
      synonyms: namesIn(synonyms),
      ci: [ci],
      inci,
      alkali: { ...lake.alkali, towards },
      hex,
    }),
  ),
  {
    ...lake,
    id: 'green-lake-blend',
    ...toldApart(
      { en: 'Green lake', es: 'Laca verde' },
      { en: 'Yellow 5 and Blue 1', es: 'Amarillo 5 y Azul 1' },
    ),
    synonyms: namesIn(
      `green lake, lime lake, green lake blend, yellow 5 blue 1 lake, laca verde, laca verde lima`,
    ),
    ci: ['19140', '42090'],
    inci: 'Yellow 5 Lake, Blue 1 Lake',
    hex: '#3fa535',
  },
  {
    ...lake,
    id: 'carmine',
    names: { en: 'Carmine', es: 'Carmín' },
    synonyms:
      namesIn(`cochineal, cochineal lake, carmine lake, carmine powder, natural red 4, crimson lake, cochinilla, carmín de cochinilla, grana cochinilla,
      laca de cochinilla, laca carmín, e120, e 120, carmin, karmin, carminio, carmim, carmines, carminic acid, ácido carmínico`),
    ci: ['75470'],
    inci: 'Carmine',
    alkali: { behaviour: 'shifts', towards: 'purple-then-dull' },
    hex: '#9b1b3c',
    hints: ['never-in-water', 'true-red-instead'],
    origins: {
      ...lake.origins,
      identity: published('21 CFR 73.2087; Regulation (EC) 1223/2009 Annex IV entry 115'),
      alkali: remembered(
        'JECFA specification of carmines, FNP 52 Add 8 (2000): violet once alkaline, and soluble',
      ),
    },
  },
  {
    ...insoluble,
    id: 'phthalocyanine-blue',
    names: { en: 'Phthalocyanine blue', es: 'Azul de ftalocianina' },
    synonyms:
      namesIn(`phthalo blue, copper phthalocyanine, copper phthalocyanine blue, pigment blue 15, azul ftalo, azul ftalocianina, ftalocianina de cobre,
      ftalocianina azul, bleu phtalo, phthaloblau`),
    ci: ['74160'],
    inci: 'CI 74160',
    hex: '#0f3f9c',
    hints: ['never-in-water', 'not-listed-us'],
    origins: {
      ...insoluble.origins,
      identity: published('Regulation (EC) 1223/2009 Annex IV entry 105; not a listed US cosmetic colour'),
    },
  },
  {
    ...insoluble,
    id: 'phthalocyanine-green',
    names: { en: 'Phthalocyanine green', es: 'Verde de ftalocianina' },
    synonyms: namesIn(
      `phthalo green, copper phthalocyanine green, pigment green 7, verde ftalo, verde ftalocianina, ftalocianina verde, phthalogrün`,
    ),
    ci: ['74260'],
    inci: 'CI 74260',
    hex: '#0c6a50',
    hints: ['never-in-water', 'not-listed-us'],
    origins: {
      ...insoluble.origins,
      identity: published('Regulation (EC) 1223/2009 Annex IV entry 107; not a listed US cosmetic colour'),
    },
  },
];
