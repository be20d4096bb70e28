import { spaced } from '../../over-lines.ts';
import type { Colourant } from '../colourant.ts';
import { namesIn, toldApart } from './name-list.ts';
import { earthy, plant, strongPlant, toOlive } from './plant.ts';

/** Plant powders from the kitchen and the hedge. The colour in the jar is often not the colour in the bar. */
export const kitchenPlants: readonly Colourant[] = [
  {
    ...earthy,
    id: 'cocoa-powder',
    names: { en: 'Cocoa powder', es: 'Cacao en polvo' },
    synonyms: namesIn(
      spaced`
        cocoa, cacao, cacao powder, unsweetened cocoa, dutch cocoa, cocoa brown, chocolate powder,
        polvo de cacao, cacao amargo, cacao puro, theobroma cacao, poudre de cacao, kakao, kakaopulver,
        cacao in polvere, cacau em pó
      `,
    ),
    inci: 'Theobroma Cacao Seed Powder',
    hex: '#4d2f1f',
    hints: ['cocoa-for-brown', 'brown-lather-above-ceiling'],
  },
  {
    ...plant,
    id: 'spirulina',
    names: { en: 'Spirulina', es: 'Espirulina' },
    synonyms: namesIn(
      `spirulina powder, green spirulina, arthrospira, espirulina en polvo, alga espirulina, spiruline, spirulina platensis`,
    ),
    inci: 'Spirulina Platensis Powder',
    alkali: { behaviour: 'destroyed', towards: 'green-beige' },
    hex: '#2f5d4e',
  },
  {
    ...plant,
    id: 'blue-spirulina',
    ...toldApart({ en: 'Blue spirulina', es: 'Espirulina azul' }, { en: 'phycocyanin', es: 'ficocianina' }),
    synonyms: namesIn(
      `blue spirulina, phycocyanin, spirulina extract, blue spirulina extract, espirulina azul, ficocianina, extracto de espirulina, phycocyanine`,
    ),
    inci: 'Spirulina Platensis Extract',
    alkali: { behaviour: 'destroyed', towards: 'green-beige' },
    hex: '#2a6fc4',
  },
  {
    ...strongPlant,
    id: 'paprika',
    names: { en: 'Paprika', es: 'Pimentón' },
    synonyms: namesIn(
      spaced`
        paprika powder, sweet paprika, capsicum annuum, capsanthin, pimentón dulce, páprika, capsantina,
        e160c, e 160c, ají de color, color de pimentón, paprika oleoresin, pimentón en polvo
      `,
    ),
    inci: 'Capsicum Annuum Fruit Powder',
    alkali: { behaviour: 'stable' },
    hex: '#b5451f',
    hints: ['scratchy-above-ceiling', ...plant.hints],
  },
  {
    ...plant,
    id: 'beetroot',
    names: { en: 'Beetroot powder', es: 'Remolacha en polvo' },
    synonyms: namesIn(
      spaced`
        beetroot, beet, beet powder, beet root powder, red beet, beetroot red, betanin, beta vulgaris,
        remolacha, betabel, betarraga, betanina, rojo de remolacha, e162, e 162, betterave, rote bete,
        barbabietola, beterraba
      `,
    ),
    inci: 'Beta Vulgaris Root Powder',
    alkali: { behaviour: 'destroyed', towards: 'yellow-brown' },
    hex: '#8c1c4a',
  },
  {
    ...plant,
    id: 'hibiscus',
    names: { en: 'Hibiscus powder', es: 'Hibisco en polvo' },
    synonyms: namesIn(
      `hibiscus, hibiscus flower, hibiscus sabdariffa, hibisco, flor de jamaica, jamaica, rosa de jamaica, karkade, roselle`,
    ),
    inci: 'Hibiscus Sabdariffa Flower Powder',
    alkali: { behaviour: 'destroyed', towards: 'grey-brown' },
    hex: '#8e2a3f',
  },
  {
    ...plant,
    id: 'butterfly-pea',
    names: { en: 'Butterfly pea flower', es: 'Flor de guisante mariposa' },
    synonyms: namesIn(
      spaced`
        butterfly pea, butterfly pea powder, blue pea flower, clitoria ternatea, guisante mariposa,
        flor de chicharo mariposa, chicharo mariposa, flor de guisante mariposa, flor azul, pois bleu,
        anthocyanins, anthocyanin, antocianinas, e163, e 163, elderberry powder, blueberry powder
      `,
    ),
    inci: 'Clitoria Ternatea Flower Powder',
    alkali: { behaviour: 'destroyed', towards: 'yellow-brown' },
    hex: '#3a3f8f',
  },
  {
    ...plant,
    id: 'nettle',
    names: { en: 'Nettle leaf powder', es: 'Ortiga en polvo' },
    synonyms: namesIn(
      `nettle, nettle powder, stinging nettle, urtica dioica, ortiga, ortie, brennnessel, ortica, urtiga`,
    ),
    inci: 'Urtica Dioica Leaf Powder',
    alkali: toOlive,
    hex: '#56703f',
  },
  {
    ...plant,
    id: 'leaf-green-powder',
    names: { en: 'Green leaf powder', es: 'Polvo de hoja verde' },
    synonyms: namesIn(
      spaced`
        parsley powder, parsley, spinach powder, spinach, moringa, moringa powder, matcha,
        green tea powder, alfalfa powder, wheatgrass, perejil, espinaca, moringa en polvo,
        té verde en polvo, té matcha, alfalfa, barley grass
      `,
    ),
    inci: undefined,
    alkali: toOlive,
    hex: '#5f7f3a',
  },
  {
    ...earthy,
    id: 'walnut-hull',
    names: { en: 'Walnut hull powder', es: 'Cáscara de nuez en polvo' },
    synonyms: namesIn(
      `walnut hull, black walnut hull, walnut shell powder, walnut husk, cáscara de nuez, nogal, brou de noix, walnussschale`,
    ),
    inci: 'Juglans Regia Shell Powder',
    hex: '#5a4130',
    hints: ['scratchy-above-ceiling', ...earthy.hints],
  },
  {
    ...earthy,
    id: 'coffee',
    names: { en: 'Coffee', es: 'Café' },
    synonyms: namesIn(
      `coffee powder, coffee grounds, ground coffee, instant coffee, café molido, café soluble, café en polvo, coffea arabica, kaffee, caffè`,
    ),
    inci: 'Coffea Arabica Seed Powder',
    hex: '#4b3220',
    hints: ['scratchy-above-ceiling', ...earthy.hints],
  },
  {
    ...plant,
    id: 'calendula',
    names: { en: 'Calendula petals', es: 'Pétalos de caléndula' },
    synonyms: namesIn(
      `calendula, calendula powder, marigold, marigold petals, calendula officinalis, caléndula, maravilla, souci, ringelblume`,
    ),
    inci: 'Calendula Officinalis Flower',
    alkali: { behaviour: 'stable' },
    hex: '#e09a24',
  },
  {
    ...plant,
    id: 'carrot',
    names: { en: 'Carrot powder', es: 'Zanahoria en polvo' },
    synonyms: namesIn(
      `carrot, carrot puree, carrot root powder, daucus carota, zanahoria, puré de zanahoria, carotte, karotte, carota, cenoura`,
    ),
    inci: 'Daucus Carota Sativa Root Powder',
    alkali: { behaviour: 'stable' },
    hex: '#e08a3a',
  },
];
