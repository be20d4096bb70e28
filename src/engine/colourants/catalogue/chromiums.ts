import type { Colourant } from '../colourant.ts';
import { namesIn } from './name-list.ts';
import { gettensStout, published, remembered, tradeCarrier, tradeDose, typicalBulk } from './origins.ts';

const chromium = {
  kind: 'chromium',
  dose: { fullTspPerCup: 0.25, ceilingTspPerCup: 0.5 },
  carriers: ['oil', 'water', 'glycerin'],
  dishTestDecides: true,
  alkali: { behaviour: 'stable' },
  light: 'holds',
  hints: ['wet-before-batter', 'coloured-lather-above-ceiling'],
} as const satisfies Partial<Colourant>;

/** The two chromium greens: dull olive oxide, and the brighter hydrated one. */
export const chromiums: readonly Colourant[] = [
  {
    ...chromium,
    id: 'chromium-oxide-green',
    names: { en: 'Chromium oxide green', es: 'Verde óxido de cromo' },
    synonyms:
      namesIn(`green oxide, oxide green, green chromium oxide, chrome oxide, chrome oxide green, chrome green oxide,
      chromium oxide, chromic oxide, chromium III oxide, matte green oxide, moss green oxide, olive green oxide,
      óxido verde, verde óxido, óxido de cromo, óxido de cromo verde, verde cromo, verde de cromo, óxido crómico,
      pigment green 17, oxyde de chrome vert, vert oxyde de chrome, chromoxidgrün, verde ossido di cromo, óxido de crômio verde`),
    ci: ['77288'],
    inci: 'Chromium Oxide Greens',
    density: { low: 5.1, typical: 5.15, high: 5.2 },
    bulkDensity: { low: 0.7, typical: 0.95, high: 1.2 },
    hex: '#5b7440',
    origins: {
      identity: published('21 CFR 73.2327; Regulation (EC) 1223/2009 Annex IV entry 129'),
      dose: tradeDose,
      carriers: tradeCarrier,
      density: remembered('handbook value of Cr2O3'),
      bulkDensity: typicalBulk,
      alkali: published(
        'Gettens and Stout, Painting Materials, p. 107: unaffected by heat, strong acids and alkalis',
      ),
      light: published('Gettens and Stout, Painting Materials, p. 107'),
    },
  },
  {
    ...chromium,
    id: 'chromium-hydroxide-green',
    names: { en: 'Hydrated chromium green', es: 'Verde óxido de cromo hidratado' },
    synonyms:
      namesIn(`chromium hydroxide green, hydrated chromium oxide, hydrated chromium oxide green, hydrated chrome oxide,
      hydrated chrome green, hydrated green oxide, chromium hydroxide, chrome hydroxide, viridian, viridian green, teal oxide,
      turquoise oxide, emerald oxide, guignet green, verde viridiana, viridiana, verde de cromo hidratado, verde esmeralda óxido, hidróxido de cromo,
      verde hidróxido de cromo, óxido de cromo hidratado, óxido turquesa, pigment green 18, vert émeraude, chromhydroxidgrün,
      verde idrossido di cromo`),
    ci: ['77289'],
    inci: 'Chromium Hydroxide Green',
    density: { low: 3.2, typical: 3.32, high: 3.45 },
    bulkDensity: { low: 0.35, typical: 0.47, high: 0.6 },
    hex: '#1f7a6c',
    origins: {
      identity: published('21 CFR 73.2326; Regulation (EC) 1223/2009 Annex IV entry 130'),
      dose: tradeDose,
      carriers: tradeCarrier,
      density: gettensStout,
      bulkDensity: typicalBulk,
      alkali: published('21 CFR 73.1326 limits chromium extracted by 2 % sodium hydroxide to 0.1 %'),
      light: remembered('pigment handbooks: viridian is light-fast'),
    },
  },
];
