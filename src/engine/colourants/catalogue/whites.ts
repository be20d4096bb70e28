import type { Colourant } from '../colourant.ts';
import { namesIn } from './name-list.ts';
import { gettensStout, practice, published, remembered, tradeDose, typicalBulk } from './origins.ts';

const titanium = {
  kind: 'white',
  ci: ['77891'],
  inci: 'Titanium Dioxide',
  density: { low: 3.9, typical: 4.1, high: 4.25 },
  bulkDensity: { low: 0.45, typical: 0.68, high: 0.85 },
  dose: { fullTspPerCup: 0.5, ceilingTspPerCup: 1 },
  alkali: { behaviour: 'stable' },
  light: 'holds',
  hex: '#f7f6f2',
  hints: ['white-least-that-does', 'white-brittle', 'white-crackles-when-hot'],
  origins: {
    identity: published('21 CFR 73.2575; Regulation (EC) 1223/2009 Annex IV entry 143'),
    dose: tradeDose,
    carriers: practice('sold water- or oil-dispersible: the label or a dish test says which'),
    density: gettensStout,
    bulkDensity: typicalBulk,
    alkali: remembered('pigment handbooks: insoluble in dilute alkali'),
    light: remembered('pigment handbooks: titanium dioxide does not fade'),
  },
} as const satisfies Partial<Colourant>;

/** White pigments; all of them in one portion count together against the ceiling. */
export const whites: readonly Colourant[] = [
  {
    ...titanium,
    id: 'titanium-dioxide',
    names: { en: 'Titanium dioxide', es: 'Dióxido de titanio' },
    synonyms:
      namesIn(`td, tio2, ti o2, titanium, titanium white, white pigment, white, white colourant, pigment white 6, titanium oxide,
      titania, anatase, anatase titanium dioxide, rutile, rutile titanium dioxide, e171, e 171, titanio, blanco de titanio, blanco, pigmento blanco,
      óxido de titanio, bióxido de titanio, anatasa, rutilo, dioxyde de titane, titandioxid, biossido di titanio, dióxido de titânio`),
    carriers: ['water', 'oil', 'glycerin'],
    dishTestDecides: true,
  },
  {
    ...titanium,
    id: 'titanium-dioxide-water-dispersible',
    names: { en: 'Titanium dioxide, water-dispersible', es: 'Dióxido de titanio hidrodispersable' },
    synonyms:
      namesIn(`water dispersible titanium dioxide, water soluble titanium dioxide, water dispersible td, titanium dioxide water,
      hydrophilic titanium dioxide, titanium dioxide water soluble, water dispersible white, td water, dióxido de titanio hidrosoluble,
      dióxido de titanio soluble en agua, dióxido de titanio dispersable en agua, dióxido de titanio para agua, titanio hidrosoluble,
      dióxido de titanio hidrófilo`),
    carriers: ['water', 'glycerin'],
    dishTestDecides: false,
    hints: [...titanium.hints, 'stick-blend-white', 'keeps-as-slurry'],
    gradeOf: 'titanium-dioxide',
  },
  {
    ...titanium,
    id: 'titanium-dioxide-oil-dispersible',
    names: { en: 'Titanium dioxide, oil-dispersible', es: 'Dióxido de titanio oleodispersable' },
    synonyms:
      namesIn(`oil dispersible titanium dioxide, oil soluble titanium dioxide, oil dispersible td, titanium dioxide oil, coated titanium dioxide,
      hydrophobic titanium dioxide, titanium dioxide oil soluble, oil dispersible white, td oil, dióxido de titanio liposoluble,
      dióxido de titanio soluble en aceite, dióxido de titanio dispersable en aceite, dióxido de titanio para aceite, titanio liposoluble,
      dióxido de titanio hidrófobo`),
    carriers: ['oil', 'glycerin'],
    dishTestDecides: false,
    gradeOf: 'titanium-dioxide',
  },
  {
    ...titanium,
    id: 'zinc-oxide',
    names: { en: 'Zinc oxide', es: 'Óxido de zinc' },
    synonyms:
      namesIn(`zno, zinc white, chinese white, pigment white 4, non nano zinc oxide, óxido de cinc, blanco de zinc, blanco de cinc,
      oxyde de zinc, zinkoxid, ossido di zinco, óxido de zinco`),
    ci: ['77947'],
    inci: 'Zinc Oxide',
    density: { low: 5.6, typical: 5.65, high: 5.7 },
    bulkDensity: { low: 0.4, typical: 0.52, high: 0.65 },
    carriers: ['oil', 'water', 'glycerin'],
    dishTestDecides: false,
    alkali: { behaviour: 'conditional', on: 'dissolves-partly' },
    hints: [...titanium.hints, 'zinc-thickens'],
    origins: {
      ...titanium.origins,
      identity: published('21 CFR 73.2991; Regulation (EC) 1223/2009 Annex IV entry 144'),
      carriers: practice('oil first: zinc oxide clumps in water'),
      alkali: remembered(
        'general inorganic chemistry: amphoteric, part dissolves as zincate; forms zinc soap',
      ),
      light: remembered('pigment handbooks: zinc white does not fade'),
    },
  },
];
