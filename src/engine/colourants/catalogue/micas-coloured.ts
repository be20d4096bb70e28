import type { Colourant } from '../colourant.ts';
import { mica } from './micas-mineral.ts';
import { namesIn, toldApart } from './name-list.ts';
import { published, remembered } from './origins.ts';

const alkaliFrom = (alkali: Colourant['origins']['alkali']): Colourant['origins'] => ({
  ...mica.origins,
  alkali,
});

const ironBlueDies = alkaliFrom(
  published(
    'Field and Salter, Chromatography; Terry, Pigments, Paint and Painting: alkali turns iron blue brown',
  ),
);
const carmineShifts: Colourant['origins'] = {
  ...alkaliFrom(
    remembered('JECFA specification of carmines, FNP 52 Add 8 (2000): violet once alkaline, and soluble'),
  ),
  light: remembered('food chemistry: carmine fades slowly'),
};
/** Micas whose colour is chromium, ultramarine, iron blue, carmine or manganese violet; and the pearl without mica. */
export const colouredMicas: readonly Colourant[] = [
  {
    ...mica,
    id: 'chromium-green-mica',
    ...toldApart({ en: 'Green mica', es: 'Mica verde' }, { en: 'chromium oxide', es: 'óxido de cromo' }),
    synonyms:
      namesIn(`chromium green mica, chromium oxide green mica, chromium oxide mica, chrome green mica, moss green mica, olive mica, olive green mica,
      forest green mica, mica verde cromo, mica verde musgo, mica verde oliva, mica oliva, mica de cromo`),
    ci: ['77019', '77891', '77288'],
    inci: 'Mica, Titanium Dioxide, Chromium Oxide Greens',
    hex: '#5a8a5e',
  },
  {
    ...mica,
    id: 'chromium-teal-mica',
    ...toldApart(
      { en: 'Teal mica', es: 'Mica turquesa' },
      { en: 'hydrated chromium', es: 'cromo hidratado' },
    ),
    synonyms:
      namesIn(`chromium hydroxide green mica, hydrated chromium mica, chromium teal mica, emerald mica, viridian mica, mica esmeralda,
      mica verde esmeralda, mica turquesa de cromo, mica cromo hidratado`),
    ci: ['77019', '77891', '77289'],
    inci: 'Mica, Titanium Dioxide, Chromium Hydroxide Green',
    hex: '#3f8f86',
  },
  {
    ...mica,
    id: 'ultramarine-blue-mica',
    ...toldApart({ en: 'Blue mica', es: 'Mica azul' }, { en: 'ultramarine', es: 'ultramar' }),
    synonyms: namesIn(
      `ultramarine blue mica, ultramarine mica, blue ultramarine mica, mica azul ultramar, mica ultramar, mica azul ultramarino`,
    ),
    ci: ['77019', '77891', '77007'],
    inci: 'Mica, Titanium Dioxide, Ultramarines',
    hex: '#4a5fb5',
    origins: alkaliFrom(
      published('Ullmann, as cited by Haz-Map: ultramarine resists alkali, acid destroys it'),
    ),
  },
  {
    ...mica,
    id: 'ultramarine-violet-mica',
    ...toldApart({ en: 'Violet mica', es: 'Mica violeta' }, { en: 'ultramarine', es: 'ultramar' }),
    synonyms: namesIn(
      `ultramarine violet mica, ultramarine purple mica, violet ultramarine mica, mica violeta ultramar, mica morada ultramar`,
    ),
    ci: ['77019', '77891', '77007'],
    inci: 'Mica, Titanium Dioxide, Ultramarine Violet',
    alkali: { behaviour: 'conditional', towards: 'bluer', on: 'hot-strong-lye' },
    hex: '#8a74b8',
    hints: ['test-violet-drift', ...mica.hints],
    origins: alkaliFrom(
      remembered('pigment handbooks (Kirk-Othmer, Buxbaum): oxidised ultramarines are weaker'),
    ),
  },
  {
    ...mica,
    id: 'ultramarine-pink-mica',
    ...toldApart({ en: 'Pink mica', es: 'Mica rosa' }, { en: 'ultramarine', es: 'ultramar' }),
    synonyms: namesIn(
      `ultramarine pink mica, ultramarine rose mica, pink ultramarine mica, mica rosa ultramar`,
    ),
    ci: ['77019', '77891', '77007'],
    inci: 'Mica, Titanium Dioxide, Ultramarine Pink',
    alkali: { behaviour: 'conditional', towards: 'bluer', on: 'hot-strong-lye' },
    hex: '#d2a3c6',
    hints: ['test-violet-drift', ...mica.hints],
    origins: alkaliFrom(
      remembered('pigment handbooks (Kirk-Othmer, Buxbaum): oxidised ultramarines are weaker'),
    ),
  },
  {
    ...mica,
    id: 'iron-blue-mica',
    ...toldApart({ en: 'Blue mica', es: 'Mica azul' }, { en: 'iron blue', es: 'azul de hierro' }),
    synonyms:
      namesIn(`iron blue mica, ferric ferrocyanide mica, prussian blue mica, ferrocyanide mica, milori blue mica, navy mica, peacock blue mica,
      mica azul de prusia, mica azul prusia, mica ferrocianuro, mica azul hierro, mica azul marino`),
    ci: ['77019', '77891', '77510'],
    inci: 'Mica, Titanium Dioxide, Ferric Ferrocyanide',
    alkali: { behaviour: 'destroyed', towards: 'rust' },
    hex: '#2e4a78',
    hints: ['choose-ultramarine-instead', ...mica.hints],
    origins: ironBlueDies,
  },
  {
    ...mica,
    id: 'iron-blue-green-mica',
    ...toldApart({ en: 'Green mica', es: 'Mica verde' }, { en: 'iron blue', es: 'azul de hierro' }),
    synonyms: namesIn(
      `iron blue green mica, ferric ferrocyanide green mica, prussian green mica, mica verde azul de hierro, mica verde prusia`,
    ),
    ci: ['77019', '77891', '77510', '77492'],
    inci: 'Mica, Titanium Dioxide, Ferric Ferrocyanide, Iron Oxides',
    alkali: { behaviour: 'destroyed', towards: 'rust' },
    hex: '#3d7a5a',
    hints: ['choose-chromium-instead', ...mica.hints],
    origins: ironBlueDies,
  },
  {
    ...mica,
    id: 'carmine-mica',
    ...toldApart({ en: 'Pink mica', es: 'Mica rosa' }, { en: 'carmine', es: 'carmín' }),
    synonyms: namesIn(
      `carmine mica, cochineal mica, carmine pink mica, carmine red mica, crimson mica, mica carmín, mica de carmín, mica cochinilla, mica carmesí`,
    ),
    ci: ['77019', '77891', '75470'],
    inci: 'Mica, Titanium Dioxide, Carmine',
    alkali: { behaviour: 'shifts', towards: 'purple-then-dull' },
    light: 'fades-slowly',
    hex: '#c4476b',
    origins: carmineShifts,
  },
  {
    ...mica,
    id: 'carmine-iron-blue-mica',
    ...toldApart(
      { en: 'Purple mica', es: 'Mica morada' },
      { en: 'carmine and iron blue', es: 'carmín y azul de hierro' },
    ),
    synonyms: namesIn(
      `carmine iron blue mica, carmine ferric ferrocyanide mica, plum mica, grape mica, mica carmín azul de hierro, mica ciruela, mica uva`,
    ),
    ci: ['77019', '77891', '75470', '77510'],
    inci: 'Mica, Titanium Dioxide, Carmine, Ferric Ferrocyanide',
    alkali: { behaviour: 'destroyed', towards: 'rust' },
    light: 'fades-slowly',
    hex: '#6d3f79',
    hints: ['choose-ultramarine-instead', ...mica.hints],
    origins: ironBlueDies,
  },
  {
    ...mica,
    id: 'manganese-violet-mica',
    ...toldApart(
      { en: 'Violet mica', es: 'Mica violeta' },
      { en: 'manganese violet', es: 'violeta de manganeso' },
    ),
    synonyms: namesIn(
      `manganese violet mica, manganese purple mica, manganese mica, mica violeta manganeso, mica de manganeso, mica manganeso`,
    ),
    ci: ['77019', '77891', '77742'],
    inci: 'Mica, Titanium Dioxide, Manganese Violet',
    alkali: { behaviour: 'destroyed', towards: 'beige' },
    hex: '#8c5ba6',
    hints: ['choose-ultramarine-instead', ...mica.hints],
    origins: alkaliFrom(
      remembered('pigment handbooks (Buxbaum): strong acids and alkalis destroy manganese violet'),
    ),
  },
  {
    ...mica,
    id: 'bismuth-pearl',
    names: { en: 'Bismuth pearl', es: 'Perla de bismuto' },
    synonyms: namesIn(
      `bismuth oxychloride, bismuth pearl white, pearl white bismuth, oxicloruro de bismuto, bismuto, bismuth, oxychlorure de bismuth, bismutoxychlorid`,
    ),
    ci: ['77163'],
    inci: 'Bismuth Oxychloride',
    density: { low: 7.6, typical: 7.7, high: 7.8 },
    bulkDensity: { low: 0.3, typical: 0.49, high: 0.7 },
    alkali: { behaviour: 'conditional', towards: 'greyer', on: 'pearl-lost' },
    light: 'fades-slowly',
    hex: '#eeeeee',
    origins: alkaliFrom(
      remembered('general inorganic chemistry: hydrolyses toward the oxide and loses its pearl'),
    ),
  },
];
