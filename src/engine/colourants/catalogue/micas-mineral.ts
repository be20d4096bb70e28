import { spaced } from '../../over-lines.ts';
import type { Colourant } from '../colourant.ts';
import { namesIn, toldApart } from './name-list.ts';
import { practice, remembered, tradeCarrier, tradeDose, typicalBulk } from './origins.ts';

/** What every pearl powder on mica shares; what coats it decides the rest. */
export const mica = {
  kind: 'mica',
  density: { low: 2.8, typical: 3.1, high: 3.4 },
  bulkDensity: { low: 0.2, typical: 0.32, high: 0.45 },
  // A teaspoon and a half to 500 g of oils where makers say “about 1 tsp, 2 for a strong colour” (common practice, no source).
  dose: { fullTspPerCup: 1, ceilingTspPerCup: 1, usual: 'medium' },
  carriers: ['oil', 'water', 'glycerin'],
  dishTestDecides: false,
  alkali: { behaviour: 'stable' },
  light: 'holds',
  hints: ['pearl-hides-in-soap'],
  origins: {
    identity: practice('ingredient lists of pearl powders; read your own label'),
    dose: tradeDose,
    carriers: tradeCarrier,
    density: remembered('mica plus its oxide coat'),
    bulkDensity: typicalBulk,
    alkali: remembered('pigment handbooks: mica and oxide coats resist alkali'),
    light: remembered('pigment handbooks: oxide coats are light-fast'),
  },
} as const satisfies Partial<Colourant>;

/** Micas coated with iron oxides, titania or carbon only. */
export const mineralMicas: readonly Colourant[] = [
  {
    ...mica,
    id: 'gold-mica',
    ...toldApart({ en: 'Gold mica', es: 'Mica dorada' }, { en: 'iron oxide', es: 'óxido de hierro' }),
    synonyms: namesIn(
      spaced`
        gold mica, gold, golden mica, antique gold mica, yellow gold mica, gold pearl,
        gold-colour mica,      mica dorada, mica oro, dorado, oro, mica color oro, mica de oro,
        mica dorado, perla dorada, mica doré, mica or, goldglimmer, mica dourada
      `,
    ),
    ci: ['77019', '77891', '77491'],
    inci: 'Mica, Titanium Dioxide, Iron Oxides',
    hex: '#b8923f',
  },
  {
    ...mica,
    id: 'bronze-mica',
    ...toldApart({ en: 'Bronze mica', es: 'Mica bronce' }, { en: 'iron oxide', es: 'óxido de hierro' }),
    synonyms:
      namesIn(`bronze mica, bronze-colour mica, bronze coloured mica, bronze pearl mica, antique bronze mica, mica bronce, mica color bronce,
      mica bronceada, mica de bronce, mica bronzo, bronzeglimmer`),
    ci: ['77019', '77491'],
    inci: 'Mica, Iron Oxides',
    hex: '#8a5a33',
  },
  {
    ...mica,
    id: 'copper-mica',
    ...toldApart({ en: 'Copper mica', es: 'Mica cobre' }, { en: 'iron oxide', es: 'óxido de hierro' }),
    synonyms:
      namesIn(`copper mica, copper-colour mica, copper coloured mica, copper pearl mica,mica cobre, mica color cobre,
      mica cobriza, mica de cobre, mica cuivre, kupferglimmer, mica rame, rose gold mica, mica oro rosa`),
    ci: ['77019', '77491'],
    inci: 'Mica, Iron Oxides',
    hex: '#a9552f',
  },
  {
    ...mica,
    id: 'red-iron-mica',
    ...toldApart({ en: 'Red mica', es: 'Mica roja' }, { en: 'iron oxide', es: 'óxido de hierro' }),
    synonyms:
      namesIn(`iron oxide red mica, red iron oxide mica, russet mica, wine red mica, brick red mica, burgundy mica, garnet mica, maroon mica,
      mica rojo vino, mica vino, mica burdeos, mica granate, mica roja de hierro, mica rojiza`),
    ci: ['77019', '77491'],
    inci: 'Mica, Iron Oxides',
    hex: '#8f2f2a',
    hints: [...mica.hints, 'deepens-true-red'],
  },
  {
    ...mica,
    id: 'brown-mica',
    ...toldApart({ en: 'Brown mica', es: 'Mica marrón' }, { en: 'iron oxide', es: 'óxido de hierro' }),
    synonyms: namesIn(
      `brown mica, brown iron oxide mica, chocolate mica, coffee mica,mica marrón, mica café, mica chocolate, mica castaña`,
    ),
    ci: ['77019', '77891', '77491', '77499'],
    inci: 'Mica, Titanium Dioxide, Iron Oxides',
    hex: '#6b4630',
  },
  {
    ...mica,
    id: 'beige-mica',
    ...toldApart({ en: 'Beige mica', es: 'Mica beige' }, { en: 'iron oxide', es: 'óxido de hierro' }),
    synonyms: namesIn(
      `beige mica, champagne mica, tan mica, cream mica, sand mica, nude mica, vanilla mica, mica champán, mica champaña, mica arena, mica crema`,
    ),
    ci: ['77019', '77891', '77492'],
    inci: 'Mica, Titanium Dioxide, Iron Oxides',
    hex: '#d9c09a',
  },
  {
    ...mica,
    id: 'yellow-iron-mica',
    ...toldApart({ en: 'Yellow mica', es: 'Mica amarilla' }, { en: 'iron oxide', es: 'óxido de hierro' }),
    synonyms: namesIn(
      `iron oxide yellow mica, yellow iron oxide mica, mustard mica, ochre mica, mica mostaza, mica ocre, mica amarilla de hierro`,
    ),
    ci: ['77019', '77492'],
    inci: 'Mica, Iron Oxides',
    hex: '#c39a3c',
  },
  {
    ...mica,
    id: 'black-iron-mica',
    ...toldApart({ en: 'Black mica', es: 'Mica negra' }, { en: 'iron oxide', es: 'óxido de hierro' }),
    synonyms:
      namesIn(`iron oxide black mica, black iron oxide mica, black pearl mica, graphite mica, gunmetal mica, charcoal grey mica, onyx mica,
      mica grafito, mica negra de hierro, mica negra perlada`),
    ci: ['77019', '77499'],
    inci: 'Mica, Iron Oxides',
    hex: '#2f2f33',
  },
  {
    ...mica,
    id: 'carbon-black-mica',
    ...toldApart({ en: 'Black mica', es: 'Mica negra' }, { en: 'carbon black', es: 'negro de humo' }),
    synonyms: namesIn(
      `carbon black mica, black 2 mica, d&c black 2 mica, jet black mica, mica negro carbón, mica negro de humo, mica carbón`,
    ),
    ci: ['77019', '77266'],
    inci: 'Mica, Carbon Black',
    hex: '#262628',
  },
  {
    ...mica,
    id: 'silver-mica',
    names: { en: 'Silver mica', es: 'Mica plateada' },
    synonyms:
      namesIn(`silver, silver pearl mica, silver-colour mica, silver white mica,platinum mica, grey mica, mica plata, plata, plateado,
      mica color plata, mica gris, mica argent, silberglimmer, mica prateada`),
    ci: ['77019', '77891', '77499'],
    inci: 'Mica, Titanium Dioxide, Iron Oxides',
    hex: '#b5b5b8',
  },
  {
    ...mica,
    id: 'pearl-white-mica',
    ...toldApart({ en: 'Pearl white mica', es: 'Mica blanca perla' }, { en: 'titania', es: 'titanio' }),
    synonyms:
      namesIn(`white mica, pearl mica, pearl white mica, white pearl mica, pearl white, satin white mica, snow white mica, mica blanca, mica perla,
      mica nácar, nácar, mother of pearl, madreperla, mica nacarada, blanco perla, mica blanca perlada, mica blanche, weißer glimmer`),
    ci: ['77019', '77891'],
    inci: 'Mica, Titanium Dioxide',
    hex: '#f1efe9',
  },
  ...(
    [
      ['gold', 'oro', '#f2ead0'],
      ['red', 'roja', '#f2dcdc'],
      ['violet', 'violeta', '#e6dff0'],
      ['blue', 'azul', '#dde6f2'],
      ['green', 'verde', '#dff0e2'],
    ] as const
  ).map(
    ([en, es, hex]): Colourant => ({
      ...mica,
      id: `interference-${en}-mica`,
      ...toldApart(
        { en: `Interference ${en} mica`, es: `Mica interferencia ${es}` },
        { en: 'titania', es: 'titanio' },
      ),
      synonyms:
        namesIn(`interference ${en}, ${en} interference mica, interference ${en} mica, ${en} interference, ${en} shimmer mica,
      interferencia ${es}, mica interferencia ${es}, mica tornasol ${es}, mica de interferencia ${es}`),
      ci: ['77019', '77891'],
      inci: 'Mica, Titanium Dioxide',
      hex,
      hints: ['interference-needs-dark-base', ...mica.hints],
    }),
  ),
  {
    ...mica,
    id: 'mica-unknown-coat',
    ...toldApart({ en: 'Mica', es: 'Mica' }, { en: 'coat not stated', es: 'recubrimiento sin indicar' }),
    synonyms:
      namesIn(`mica, mica powder, mica pigment, mica colourant, coloured mica, pearl powder, pearlescent pigment, pearlescent mica, mica en polvo,
      polvo de mica, mica de color, mica coloreada, pigmento perlado, perlado, glimmer, sericite`),
    ci: ['77019'],
    inci: 'Mica',
    alkali: { behaviour: 'unknown' },
    hex: '#c9c3b8',
    hints: ['read-what-coats-the-mica', ...mica.hints],
  },
];
