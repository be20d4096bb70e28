import { spaced } from '../../over-lines.ts';
import type { Colourant } from '../colourant.ts';
import { namesIn, toldApart } from './name-list.ts';
import { lessOf } from './origins.ts';
import { plant, strongPlant, toOlive } from './plant.ts';

/** Plants grown or dug for their dye. The colour in the jar is often not the colour in the bar. */
export const dyePlants: readonly Colourant[] = [
  {
    ...strongPlant,
    id: 'turmeric',
    names: { en: 'Turmeric', es: 'Cúrcuma' },
    synonyms: namesIn(
      spaced`
        turmeric powder, tumeric, curcuma, curcumin, curcuma longa, cúrcuma en polvo, curcumina, palillo,
        azafrán de raíz, haldi, e100, e 100, kurkuma, curcuma in polvere, açafrão da terra
      `,
    ),
    ci: ['75300'],
    inci: 'Curcuma Longa Root Powder',
    alkali: { behaviour: 'shifts', towards: 'peach-tan' },
    hex: '#d79a1e',
  },
  {
    ...strongPlant,
    id: 'annatto',
    names: { en: 'Annatto', es: 'Achiote' },
    synonyms: namesIn(
      spaced`
        annatto seed, annatto powder, annatto seed powder, anatto, bixa orellana, bixin, norbixin, roucou,
        onoto, urucum, urucú, achiote en polvo, achiote molido, onoto molido, ground annatto, bija,
        semillas de achiote, annato, e160b, e 160b, rocou
      `,
    ),
    ci: ['75120'],
    inci: 'Bixa Orellana Seed Powder',
    alkali: { behaviour: 'stable' },
    hex: '#d9691e',
  },
  {
    ...plant,
    id: 'alkanet',
    names: { en: 'Alkanet root', es: 'Raíz de alcana' },
    synonyms: namesIn(
      spaced`
        alkanet, alkanna, alkanet root powder, alkanna tinctoria, alkannin, ratanjot, alcana, orcaneta,
        orcanette, palomilla de tintes, onoquiles, alkannawurzel, anchusa, alkanet powder
      `,
    ),
    ci: ['75530'],
    inci: 'Alkanna Tinctoria Root Powder',
    carriers: ['oil'],
    alkali: { behaviour: 'conditional', towards: 'blue-violet-grey', on: 'how-alkaline' },
    hex: '#6b3b5c',
    hints: ['infuse-in-oil', ...plant.hints],
  },
  {
    ...plant,
    id: 'madder',
    names: { en: 'Madder root', es: 'Raíz de rubia' },
    synonyms: namesIn(
      spaced`
        madder, madder root powder, rubia tinctorum, rubia, rubia roja, alizarin, alizarina, granza,
        garance, krapp, robbia, madder powder, indian madder, manjistha
      `,
    ),
    ci: ['75330'],
    inci: 'Rubia Tinctorum Root Powder',
    alkali: { behaviour: 'conditional', towards: 'rose-or-purple', on: 'how-alkaline' },
    hex: '#a64b52',
    hints: ['infuse-in-oil', ...plant.hints],
  },
  {
    ...plant,
    id: 'indigo',
    names: { en: 'Indigo', es: 'Índigo' },
    synonyms: namesIn(
      spaced`
        indigo powder, natural indigo, indigofera, indigofera tinctoria, añil, azul añil, índigo natural,
        indigo en polvo, vat blue 1, pigment blue 66, índigo en polvo, indaco, anil
      `,
    ),
    ci: ['73000'],
    inci: 'Indigofera Tinctoria Leaf Powder',
    // “1/8 to 1/4 tsp to 500 g of oils”: more goes navy and stains (common practice, no source).
    dose: { fullTspPerCup: 0.25, ceilingTspPerCup: 0.5, usual: 'pastel' },
    alkali: { behaviour: 'stable' },
    light: 'fades-slowly',
    hex: '#2e3a5f',
    hints: ['start-small-strong', 'greyer-blue', 'botanical-varies'],
    origins: { ...plant.origins, dose: lessOf('a quarter', 'other plant powders') },
  },
  {
    ...plant,
    id: 'woad',
    names: { en: 'Woad', es: 'Glasto' },
    synonyms: namesIn(`woad powder, isatis tinctoria,hierba pastel, isatis, waid, guado, guède`),
    ci: ['73000'],
    inci: 'Isatis Tinctoria Leaf Powder',
    alkali: { behaviour: 'stable' },
    light: 'fades-slowly',
    hex: '#4a5f7d',
    gradeOf: 'indigo',
  },
  {
    ...plant,
    id: 'henna',
    ...toldApart({ en: 'Henna', es: 'Henna' }, { es: 'alheña' }),
    synonyms: namesIn(`henna powder, lawsonia inermis, lawsonia, alheña, jena, henné, henna leaf`),
    inci: 'Lawsonia Inermis Leaf Powder',
    alkali: toOlive,
    hex: '#6e5a2d',
  },
  {
    ...plant,
    id: 'red-sandalwood',
    names: { en: 'Red sandalwood', es: 'Sándalo rojo' },
    synonyms: namesIn(
      `red sandalwood powder, sandalwood powder, pterocarpus santalinus, sándalo, sándalo rojo en polvo, santal rouge`,
    ),
    inci: 'Pterocarpus Santalinus Wood Powder',
    alkali: { behaviour: 'conditional', towards: 'maroon-brown', on: 'how-alkaline' },
    light: 'fades-slowly',
    hex: '#7d3b35',
  },
  {
    ...plant,
    id: 'safflower',
    names: { en: 'Safflower petals', es: 'Pétalos de cártamo' },
    synonyms: namesIn(`safflower, carthamus tinctorius, carthamin, cártamo, alazor, carthame, färberdistel`),
    ci: ['75140'],
    inci: 'Carthamus Tinctorius Flower',
    alkali: { behaviour: 'conditional', towards: 'pale-yellow', on: 'how-alkaline' },
    hex: '#d9772b',
  },
];
