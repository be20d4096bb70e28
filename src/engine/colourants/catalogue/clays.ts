import { spaced } from '../../over-lines.ts';
import type { Colourant } from '../colourant.ts';
import { namesIn } from './name-list.ts';
import { gettensStout, lessOf, practice, published, remembered, typicalBulk } from './origins.ts';

const clay = {
  kind: 'clay',
  ci: ['77004'],
  density: { low: 2.5, typical: 2.6, high: 2.75 },
  bulkDensity: { low: 0.3, typical: 0.42, high: 0.55 },
  dose: { fullTspPerCup: 1, ceilingTspPerCup: 2 },
  carriers: ['water', 'oil', 'glycerin'],
  dishTestDecides: false,
  alkali: { behaviour: 'stable' },
  light: 'holds',
  hints: ['clay-drinks-water'],
  origins: {
    identity: published('Regulation (EC) 1223/2009 Annex IV entry 119'),
    dose: remembered('makers use about a tablespoon of clay a pound of oils'),
    carriers: practice('wet clay in water first, else it takes water from the batter'),
    density: gettensStout,
    bulkDensity: typicalBulk,
    alkali: remembered('pigment handbooks: attacked slowly, no change in cold-process time'),
    light: remembered('earth colours do not fade'),
  },
} as const satisfies Partial<Colourant>;

const earth = {
  ...clay,
  ci: ['77492'],
  inci: 'Iron Oxides',
  dose: { fullTspPerCup: 0.5, ceilingTspPerCup: 1 },
  density: { low: 2.7, typical: 3.2, high: 4 },
  gradeOf: 'yellow-iron-oxide',
  origins: {
    ...clay.origins,
    identity: remembered('earth pigments: iron oxides with clay and silica'),
    dose: lessOf('half', 'clays'),
    density: remembered('earths between clay and iron oxide'),
  },
} as const satisfies Partial<Colourant>;

/** Clays and earths: soft colours that are also a texture. */
export const clays: readonly Colourant[] = [
  {
    ...clay,
    id: 'kaolin',
    names: { en: 'Kaolin clay', es: 'Caolín' },
    synonyms: namesIn(
      spaced`
        kaolin, white clay, china clay, white kaolin, kaolin white,arcilla blanca, caolín blanco,
        arcilla caolín, kaolin clay powder, argile blanche, porzellanerde, weiße tonerde, caolino, caulim
      `,
    ),
    inci: 'Kaolin',
    hex: '#efebe2',
  },
  {
    ...clay,
    id: 'bentonite',
    names: { en: 'Bentonite clay', es: 'Bentonita' },
    synonyms: namesIn(
      `bentonite, montmorillonite, sodium bentonite, calcium bentonite, bentonita, arcilla bentonita, montmorillonita, bentonit`,
    ),
    inci: 'Bentonite',
    hex: '#d8d0bd',
  },
  {
    ...clay,
    id: 'french-green-clay',
    names: { en: 'French green clay', es: 'Arcilla verde' },
    synonyms: namesIn(
      spaced`
        green clay, illite, illite clay, sea clay, green illite, arcilla verde francesa,
        arcilla verde illita, illita, argile verte, grüne tonerde, argilla verde, argila verde
      `,
    ),
    inci: 'Illite',
    ci: [],
    hex: '#b3b596',
  },
  {
    ...clay,
    id: 'rose-clay',
    names: { en: 'Rose clay', es: 'Arcilla rosa' },
    synonyms: namesIn(
      `pink clay, rose kaolin, french pink clay, australian pink clay, arcilla rosada, caolín rosa, argile rose, rosa tonerde, argilla rosa`,
    ),
    inci: 'Kaolin, Iron Oxides',
    ci: ['77004', '77491'],
    hex: '#cf9d8a',
  },
  {
    ...clay,
    id: 'red-clay',
    names: { en: 'Red clay', es: 'Arcilla roja' },
    synonyms: namesIn(
      spaced`
        red kaolin, red kaolin clay, caolín rojo, moroccan red clay, french red clay, australian red clay,
        brick clay, arcilla roja marroquí, argile rouge, rote tonerde, argilla rossa, argila vermelha
      `,
    ),
    inci: 'Kaolin, Iron Oxides',
    ci: ['77004', '77491'],
    hex: '#9c4a33',
  },
  {
    ...clay,
    id: 'purple-clay',
    names: { en: 'Purple clay', es: 'Arcilla morada' },
    synonyms: namesIn(
      `brazilian purple clay, purple brazilian clay, violet clay, purple kaolin, arcilla violeta, arcilla lila, arcilla morada brasileña`,
    ),
    inci: 'Kaolin, Iron Oxides',
    ci: ['77004', '77491'],
    hex: '#8f7580',
  },
  {
    ...clay,
    id: 'yellow-clay',
    names: { en: 'Yellow clay', es: 'Arcilla amarilla' },
    synonyms: namesIn(
      `french yellow clay, yellow kaolin, caolín amarillo, argile jaune, gelbe tonerde, argilla gialla, argila amarela`,
    ),
    inci: 'Kaolin, Iron Oxides',
    ci: ['77004', '77492'],
    hex: '#cfae6a',
  },
  {
    ...clay,
    id: 'rhassoul-clay',
    names: { en: 'Rhassoul clay', es: 'Arcilla rhassoul' },
    synonyms: namesIn(
      `rhassoul, ghassoul, moroccan lava clay, moroccan lava clay, arcilla ghassoul, arcilla de marruecos, rasul, ghassoul clay`,
    ),
    inci: 'Moroccan Lava Clay',
    ci: [],
    hex: '#8a7462',
  },
  {
    ...clay,
    id: 'fullers-earth',
    names: { en: "Fuller's earth", es: 'Tierra de batán' },
    synonyms: namesIn(`fullers earth, multani mitti, tierra de fuller, tierra batán, terre de sommières`),
    inci: "Fuller's Earth",
    ci: [],
    hex: '#c2b69a',
  },
  {
    ...earth,
    id: 'yellow-ochre',
    names: { en: 'Yellow ochre', es: 'Ocre amarillo' },
    synonyms: namesIn(
      `ochre, ocher, yellow ocher, raw sienna, sienna, ocre, tierra de siena, siena natural, ocre jaune, gelber ocker, ocra gialla, pigment yellow 43`,
    ),
    hex: '#c28f3d',
  },
  {
    ...earth,
    id: 'red-ochre',
    names: { en: 'Red ochre', es: 'Ocre rojo' },
    ci: ['77491'],
    synonyms: namesIn(
      `red ocher, burnt sienna, red earth, almagre, siena tostada, tierra roja, ocre rouge, roter ocker, ocra rossa, pigment red 102`,
    ),
    hex: '#9a4a2e',
    gradeOf: 'red-iron-oxide',
  },
  {
    ...earth,
    id: 'burnt-umber',
    names: { en: 'Burnt umber', es: 'Sombra tostada' },
    ci: ['77491', '77499'],
    synonyms: namesIn(
      `umber, raw umber, sombra, tierra de sombra, sombra natural, sombra quemada, terre d'ombre, umbra, pigment brown 7`,
    ),
    hex: '#5e3f2a',
    gradeOf: 'brown-iron-oxide',
  },
];
