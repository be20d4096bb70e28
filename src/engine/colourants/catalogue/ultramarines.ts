import type { Colourant } from '../colourant.ts';
import { namesIn } from './name-list.ts';
import { gettensStout, published, remembered, tradeCarrier, tradeDose, typicalBulk } from './origins.ts';

const ultramarine = {
  kind: 'ultramarine',
  inci: 'Ultramarines',
  ci: ['77007'],
  density: { low: 2.3, typical: 2.34, high: 2.4 },
  bulkDensity: { low: 0.4, typical: 0.52, high: 0.65 },
  dose: { fullTspPerCup: 0.25, ceilingTspPerCup: 0.5 },
  carriers: ['water', 'oil', 'glycerin'],
  dishTestDecides: true,
  light: 'holds',
  origins: {
    identity: published('21 CFR 73.2725; Regulation (EC) 1223/2009 Annex IV entry 120'),
    dose: tradeDose,
    carriers: tradeCarrier,
    density: gettensStout,
    bulkDensity: typicalBulk,
    alkali: published(
      'Ullmann, as cited by Haz-Map: acid destroys it with hydrogen sulphide; fairly resistant to alkali',
    ),
    light: remembered('pigment handbooks: ultramarines are light-fast'),
  },
} as const satisfies Partial<Colourant>;

/** The violet, pink and red grades are oxidised; strong hot alkali may pull them back toward the blue. */
const oxidised = {
  alkali: { behaviour: 'conditional', towards: 'bluer', on: 'hot-strong-lye' },
  origins: {
    ...ultramarine.origins,
    density: remembered('as ultramarine blue'),
    alkali: remembered('pigment handbooks (Kirk-Othmer, Buxbaum): oxidised grades are weaker than the blue'),
  },
} as const satisfies Partial<Colourant>;

const usual = ['wet-before-batter', 'coloured-lather-above-ceiling', 'never-with-acid'] as const;

/** The five shades that share CI 77007. */
export const ultramarines: readonly Colourant[] = [
  {
    ...ultramarine,
    id: 'ultramarine-blue',
    names: { en: 'Ultramarine blue', es: 'Azul ultramar' },
    synonyms: namesIn(`blue ultramarine, azul ultramarino, ultramarino azul, ultramar azul, ultra blue,
      marine blue ultramarine, pigment blue 29, lazurite, lazurita, synthetic lapis lazuli,
      french ultramarine, bleu outremer, outremer bleu, ultramarinblau, blu oltremare,
      azul ultramarinho, um blue`),
    alkali: { behaviour: 'stable' },
    hex: '#2b3fa8',
    hints: usual,
  },
  {
    ...ultramarine,
    ...oxidised,
    id: 'ultramarine-violet',
    names: { en: 'Ultramarine violet', es: 'Violeta ultramar' },
    synonyms: namesIn(`violet ultramarine, ultramarine purple, purple ultramarine, violeta ultramarino,
      ultramarino violeta, ultramar violeta, morado ultramar, ultramar morado, púrpura ultramar,
      lila ultramar, pigment violet 15, violet outremer, outremer violet, ultramarinviolett,
      viola oltremare, um violet, um purple`),
    hex: '#6a4f9c',
    hints: [...usual, 'deepen-violet-with-blue', 'test-violet-drift'],
  },
  {
    ...ultramarine,
    ...oxidised,
    id: 'ultramarine-pink',
    names: { en: 'Ultramarine pink', es: 'Rosa ultramar' },
    synonyms: namesIn(`pink ultramarine, rosa ultramarino, ultramarino rosa, ultramar rosa, ultramarine rose,
      rosado ultramar, pigment red 259, outremer rose, rose outremer, ultramarinrosa, rosa oltremare,
      um pink`),
    hex: '#c07fae',
    hints: [...usual, 'test-violet-drift'],
  },
  {
    ...ultramarine,
    ...oxidised,
    id: 'ultramarine-red',
    names: { en: 'Ultramarine red', es: 'Rojo ultramar' },
    synonyms: namesIn(
      `red ultramarine, rojo ultramarino, ultramar rojo, ultramarinrot, outremer rouge, um red`,
    ),
    hex: '#a3587f',
    hints: [...usual, 'test-violet-drift'],
  },
  {
    ...ultramarine,
    id: 'ultramarine-green',
    names: { en: 'Ultramarine green', es: 'Verde ultramar' },
    synonyms: namesIn(`green ultramarine, verde ultramarino, ultramar verde, ultramaringrün, outremer vert,
      pigment green 24, um green`),
    alkali: { behaviour: 'stable' },
    hex: '#3f7f78',
    hints: usual,
  },
];
