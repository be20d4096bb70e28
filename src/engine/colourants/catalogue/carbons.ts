import type { Colourant } from '../colourant.ts';
import { namesIn } from './name-list.ts';
import { gettensStout, lessOf, practice, published, remembered, typicalBulk } from './origins.ts';

const carbon = {
  kind: 'carbon',
  density: { low: 1.8, typical: 1.95, high: 2.1 },
  bulkDensity: { low: 0.15, typical: 0.3, high: 0.45 },
  carriers: ['oil', 'water', 'glycerin'],
  dishTestDecides: false,
  alkali: { behaviour: 'stable' },
  light: 'holds',
  hints: ['dust-flies', 'grey-lather-above-ceiling'],
  origins: {
    identity: published('Regulation (EC) 1223/2009 Annex IV entries 126 to 128; 21 CFR 74.2052 and 74.2053'),
    dose: remembered('makers use one to two teaspoons of charcoal a pound of oils'),
    carriers: practice('carbon wets in oil; water takes patience'),
    density: remembered('handbook value of carbon black'),
    bulkDensity: typicalBulk,
    alkali: published('Encyclopaedia Britannica 1911, pigments: carbon is not liable to change'),
    light: published('Encyclopaedia Britannica 1911, pigments: carbon is not liable to change'),
  },
} as const satisfies Partial<Colourant>;

/** Blacks made of carbon. */
export const carbons: readonly Colourant[] = [
  {
    ...carbon,
    id: 'activated-charcoal',
    names: { en: 'Activated charcoal', es: 'Carbón activado' },
    synonyms:
      namesIn(`charcoal, charcoal powder, activated carbon, bamboo charcoal, coconut charcoal, ac charcoal, vegetable carbon, vegetable charcoal, carbón,
      carbón vegetal, carbón activo, carbón de bambú, carbón de coco, carboncillo, e153, e 153,
      charbon actif, charbon végétal, aktivkohle, carbone attivo, carbone vegetale, carvão ativado`),
    ci: ['77268:1'],
    inci: 'Charcoal Powder',
    dose: { fullTspPerCup: 0.5, ceilingTspPerCup: 1 },
    hex: '#1e1e20',
    hints: [...carbon.hints, 'not-listed-us'],
  },
  {
    ...carbon,
    id: 'carbon-black',
    names: { en: 'Carbon black', es: 'Negro de humo' },
    synonyms:
      namesIn(`black 2, d&c black 2, d&c black no. 2, lamp black, lampblack, furnace black, pigment black 7, soot black, negro de carbón, negro carbón, negro 2,
      negro humo, noir de carbone, ruß, nero carbone, negro de fumo`),
    ci: ['77266'],
    inci: 'Carbon Black',
    dose: { fullTspPerCup: 0.125, ceilingTspPerCup: 0.25 },
    hex: '#121214',
    origins: { ...carbon.origins, dose: lessOf('a quarter', 'charcoal') },
  },
  {
    ...carbon,
    id: 'bone-black',
    names: { en: 'Bone black', es: 'Negro de hueso' },
    synonyms: namesIn(
      `black 3, d&c black 3, d&c black no. 3, ivory black, bone char, bone charcoal, negro de marfil, negro marfil, negro 3, carbón de hueso, pigment black 9`,
    ),
    ci: ['77267'],
    inci: 'Black 3',
    density: { low: 2.2, typical: 2.29, high: 2.4 },
    dose: { fullTspPerCup: 0.25, ceilingTspPerCup: 0.5 },
    hex: '#211c1a',
    origins: { ...carbon.origins, density: gettensStout, dose: lessOf('half', 'charcoal') },
  },
];
