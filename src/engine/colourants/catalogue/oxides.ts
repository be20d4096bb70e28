import type { Colourant } from '../colourant.ts';
import { namesIn } from './name-list.ts';
import { published, remembered, tradeCarrier, tradeDose, typicalBulk } from './origins.ts';

const ironOxide = {
  kind: 'oxide',
  inci: 'Iron Oxides',
  dose: { fullTspPerCup: 0.25, ceilingTspPerCup: 0.5 },
  carriers: ['oil', 'water', 'glycerin'],
  dishTestDecides: true,
  alkali: { behaviour: 'stable' },
  light: 'holds',
  hints: ['wet-before-batter', 'coloured-lather-above-ceiling'],
  origins: {
    identity: published('21 CFR 73.2250; Regulation (EC) 1223/2009 Annex IV entries 135 to 137'),
    dose: tradeDose,
    carriers: tradeCarrier,
    density: remembered('handbook values of haematite, goethite and magnetite'),
    bulkDensity: typicalBulk,
    alkali: remembered('pigment handbooks: synthetic iron oxides are inert to alkali'),
    light: remembered('pigment handbooks: iron oxides are light-fast'),
  },
} as const satisfies Partial<Colourant>;

/** Synthetic iron oxides, single and blended. */
export const oxides: readonly Colourant[] = [
  {
    ...ironOxide,
    id: 'red-iron-oxide',
    names: { en: 'Red iron oxide', es: 'Óxido de hierro rojo' },
    synonyms:
      namesIn(`red oxide, oxide red, iron oxide red, óxido rojo, rojo óxido, ferric oxide, óxido férrico,
      hematite, haematite, hematita, brick red, brick red oxide, rojo ladrillo, rust red, rojo teja,
      pigment red 101, red ochre synthetic, oxyde de fer rouge, eisenoxid rot, ossido di ferro rosso,
      óxido de ferro vermelho, mars red, rojo marte, rojo de marte, indian red, rojo indio, rojo de la india,
      venetian red, rojo veneciano, rojo de venecia, english red, rojo inglés, light red oxide`),
    ci: ['77491'],
    density: { low: 5, typical: 5.1, high: 5.2 },
    bulkDensity: { low: 0.5, typical: 0.72, high: 0.95 },
    hex: '#8e3b2e',
  },
  {
    ...ironOxide,
    id: 'yellow-iron-oxide',
    names: { en: 'Yellow iron oxide', es: 'Óxido de hierro amarillo' },
    synonyms:
      namesIn(`yellow oxide, oxide yellow, iron oxide yellow, óxido amarillo, amarillo óxido, goethite,
      goethita, mustard yellow oxide, amarillo ocre, ocre amarillo sintético, pigment yellow 42,
      mustard oxide, oxyde de fer jaune, eisenoxid gelb, ossido di ferro giallo,
      óxido de ferro amarelo, mars yellow, amarillo marte, amarillo de marte`),
    ci: ['77492'],
    density: { low: 4, typical: 4.15, high: 4.3 },
    bulkDensity: { low: 0.3, typical: 0.42, high: 0.55 },
    hex: '#c9952f',
  },
  {
    ...ironOxide,
    id: 'black-iron-oxide',
    names: { en: 'Black iron oxide', es: 'Óxido de hierro negro' },
    synonyms:
      namesIn(`black oxide, oxide black, iron oxide black, óxido negro, negro óxido, magnetite, magnetita,
      pigment black 11, oxyde de fer noir, eisenoxid schwarz, ossido di ferro nero,
      óxido de ferro preto, ferrous ferric oxide, mars black, negro marte, negro de marte`),
    ci: ['77499'],
    density: { low: 4.6, typical: 4.8, high: 5 },
    bulkDensity: { low: 0.5, typical: 0.75, high: 1 },
    hex: '#2b2a2c',
  },
  {
    ...ironOxide,
    id: 'brown-iron-oxide',
    names: { en: 'Brown iron oxide', es: 'Óxido de hierro marrón' },
    synonyms:
      namesIn(`brown oxide, oxide brown, iron oxide brown, óxido marrón, óxido café, óxido de hierro café,
      marrón óxido, pigment brown 6, chocolate brown oxide, oxyde de fer brun, eisenoxid braun,
      ossido di ferro marrone, óxido de ferro marrom, mars brown, marrón marte, pardo de marte`),
    ci: ['77491', '77492', '77499'],
    density: { low: 4.5, typical: 4.7, high: 4.9 },
    bulkDensity: { low: 0.45, typical: 0.65, high: 0.85 },
    hex: '#5b3a26',
    hints: [...ironOxide.hints, 'cocoa-for-brown'],
  },
  {
    ...ironOxide,
    id: 'orange-iron-oxide',
    names: { en: 'Orange iron oxide', es: 'Óxido de hierro naranja' },
    synonyms:
      namesIn(`orange oxide, oxide orange, iron oxide orange, óxido naranja, naranja óxido, terracotta oxide,
      terracota, óxido terracota, burnt orange oxide, oxyde de fer orange, eisenoxid orange, mars orange, naranja marte, naranja de marte`),
    ci: ['77491', '77492'],
    density: { low: 4.2, typical: 4.5, high: 5 },
    bulkDensity: { low: 0.35, typical: 0.55, high: 0.85 },
    hex: '#b8622f',
  },
  {
    ...ironOxide,
    id: 'violet-iron-oxide',
    names: { en: 'Violet iron oxide', es: 'Óxido de hierro violeta' },
    synonyms:
      namesIn(`violet oxide, purple oxide, iron oxide violet, iron oxide purple, óxido violeta, óxido morado,
      óxido de hierro morado, caput mortuum, maroon oxide, burgundy oxide, wine red oxide, mars violet,
      violeta de marte, violeta marte, óxido granate`),
    ci: ['77491'],
    density: { low: 5, typical: 5.1, high: 5.2 },
    bulkDensity: { low: 0.6, typical: 0.85, high: 1.1 },
    hex: '#5d2f3a',
    gradeOf: 'red-iron-oxide',
  },
  {
    ...ironOxide,
    id: 'tan-iron-oxide',
    names: { en: 'Tan iron oxide blend', es: 'Mezcla de óxidos beige' },
    synonyms:
      namesIn(`tan oxide, beige oxide, skin tone oxide, flesh oxide, óxido beige, óxido tono piel, óxido carne,
      sand oxide, óxido arena`),
    ci: ['77492', '77491', '77499'],
    density: { low: 4.2, typical: 4.5, high: 4.9 },
    bulkDensity: { low: 0.4, typical: 0.55, high: 0.8 },
    hex: '#b28a62',
  },
];
