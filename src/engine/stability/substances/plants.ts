import { spaced } from '../../over-lines.ts';
import { carotenoids } from './carotenoids.ts';
import { lost, plant, shifts, stable, varies } from './plant.ts';
import { named, type Substance } from './substance.ts';

/** Plant colours. Names leave out the plant part: "root powder" is dropped before looking up. */
export const plants: readonly Substance[] = [
  {
    ...plant,
    id: 'cocoa',
    alkali: stable,
    light: 'holds',
    like: 'cocoa-powder',
    names: named(
      spaced`
        Theobroma Cacao Seed Powder; theobroma cacao; theobroma cacao cocoa; cocoa; cacao; cocoa powder;
        cacao en polvo; poudre de cacao; Kakaopulver; cacao in polvere; cacau em pó
      `,
    ),
  },
  {
    ...plant,
    id: 'turmeric',
    ci: ['75300'],
    e: ['100'],
    alkali: shifts('peach-tan'),
    confidence: 'high',
    like: 'turmeric',
    names: named(
      'Curcuma Longa Root Powder; curcuma longa; turmeric; curcumin; curcuma; cúrcuma; curcumina; Kurkuma; natural yellow 3; curcuma longa turmeric',
    ),
  },
  {
    ...plant,
    id: 'annatto',
    ci: ['75120'],
    e: ['160b'],
    us: ['73.2030'],
    alkali: stable,
    like: 'annatto',
    names: named(
      'Annatto; bixa orellana; annatto seed; bixin; norbixin; achiote; urucum; rocou; natural orange 4; bixa orellana annatto',
    ),
  },
  {
    ...plant,
    id: 'spirulina',
    alkali: lost('green-beige'),
    confidence: 'high',
    like: 'spirulina',
    names: named(
      spaced`
        Spirulina Platensis Powder; spirulina; spirulina platensis; arthrospira platensis; spirulina
        maxima; espirulina; spiruline; phycocyanin; ficocianina; spirulina extract; spirulina platensis
        extract
      `,
    ),
  },
  {
    ...plant,
    id: 'alkanet',
    ci: ['75530'],
    alkali: varies('blue-violet-grey'),
    confidence: 'high',
    like: 'alkanet',
    names: named(
      'Alkanna Tinctoria Root Powder; alkanna tinctoria; alkanet; alkanet root; alkannin; alcana; orcanette; natural red 20; alkanna tinctoria alkanet',
    ),
  },
  {
    ...plant,
    id: 'madder',
    ci: ['75330', '58000'],
    alkali: varies('rose-or-purple'),
    like: 'madder',
    names: named(
      spaced`
        Rubia Tinctorum Root Powder; rubia tinctorum; madder; madder root; rubia cordifolia; alizarin;
        alizarina; garance; Krapp; robbia; pigment red 83; natural red 8; rubia tinctorum madder
      `,
    ),
  },
  {
    ...plant,
    id: 'indigo',
    family: true,
    ci: ['73000'],
    alkali: stable,
    light: 'fades-slowly',
    like: 'indigo',
    names: named(
      spaced`
        Indigofera Tinctoria Leaf Powder; indigofera tinctoria; indigofera; indigo; índigo; añil; indigo
        naturel; indaco; vat blue 1; pigment blue 66; isatis tinctoria; woad; indigofera tinctoria indigo
      `,
    ),
  },
  {
    ...plant,
    id: 'paprika',
    e: ['160c'],
    alkali: stable,
    like: 'paprika',
    names: named(
      'Capsicum Annuum Fruit Powder; capsicum annuum; paprika; capsanthin; capsorubin; capsanthin/capsorubin; pimentón; capsantina; capsicum annuum paprika',
    ),
  },
  {
    ...plant,
    id: 'beetroot',
    e: ['162'],
    alkali: lost('yellow-brown'),
    confidence: 'high',
    like: 'beetroot',
    names: named(
      spaced`
        Beta Vulgaris Root Powder; beta vulgaris; beetroot red; beetroot; beet; betanin; remolacha; rojo de
        remolacha; betanina; betterave; Rote Bete; barbabietola; beta vulgaris beet
      `,
    ),
  },
  {
    ...plant,
    id: 'anthocyanins',
    family: true,
    e: ['163'],
    alkali: lost('yellow-brown'),
    confidence: 'high',
    like: 'butterfly-pea',
    names: named(
      spaced`
        Anthocyanins; anthocyanin; antocianinas; anthocyanes; Anthocyane; clitoria ternatea; butterfly pea;
        sambucus nigra; vaccinium myrtillus; cyanidin; grape skin; enocianina; clitoria ternatea butterfly
        pea
      `,
    ),
  },
  {
    ...plant,
    id: 'hibiscus',
    alkali: lost('grey-brown'),
    confidence: 'high',
    like: 'hibiscus',
    names: named('Hibiscus Sabdariffa Flower Powder; hibiscus sabdariffa; hibiscus; hibisco; roselle'),
  },
  {
    ...plant,
    id: 'nettle',
    alkali: shifts('olive-brown'),
    confidence: 'low',
    like: 'nettle',
    names: named(
      'Urtica Dioica Leaf Powder; urtica dioica; nettle; ortiga; ortie; Brennnessel; ortica; urtica dioica nettle',
    ),
  },
  {
    ...plant,
    id: 'leaf-green',
    family: true,
    alkali: shifts('olive-brown'),
    confidence: 'low',
    like: 'leaf-green-powder',
    names: named(
      spaced`
        Spinacia Oleracea Leaf Powder; green leaf powder; polvo de hoja verde; spinacia oleracea; spinach;
        moringa oleifera; moringa; petroselinum crispum; parsley; camellia sinensis; matcha; green tea;
        medicago sativa; alfalfa; triticum aestivum; wheatgrass; perejil; espinaca; té verde
      `,
    ),
  },
  {
    ...plant,
    id: 'henna',
    us: ['73.2190'],
    alkali: shifts('olive-brown'),
    confidence: 'low',
    like: 'henna',
    names: named('Lawsonia Inermis Leaf Powder; lawsonia inermis; henna; alheña; henné; lawsone'),
  },
  {
    ...plant,
    id: 'coffee',
    alkali: stable,
    light: 'holds',
    confidence: 'low',
    like: 'coffee',
    names: named('Coffea Arabica Seed Powder; coffea arabica; coffee; café; Kaffee; caffè'),
  },
  {
    ...plant,
    id: 'walnut-hull',
    alkali: stable,
    light: 'holds',
    confidence: 'low',
    like: 'walnut-hull',
    names: named(
      'Juglans Regia Shell Powder; juglans regia; juglans nigra; walnut hull; walnut; walnut shell; cáscara de nuez',
    ),
  },
  {
    ...plant,
    id: 'red-sandalwood',
    alkali: varies('maroon-brown'),
    light: 'fades-slowly',
    confidence: 'low',
    like: 'red-sandalwood',
    names: named(
      'Pterocarpus Santalinus Wood Powder; pterocarpus santalinus; red sandalwood; sandalwood; sándalo rojo',
    ),
  },
  ...carotenoids,
];
