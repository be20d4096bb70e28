import { lost, plant, stable, varies } from './plant.ts';
import { named, type Substance } from './substance.ts';

/** Carotenoids and other yellows of flowers and roots. */
export const carotenoids: readonly Substance[] = [
  {
    ...plant,
    id: 'calendula',
    alkali: stable,
    confidence: 'low',
    like: 'calendula',
    names: named('Calendula Officinalis Flower; calendula officinalis; calendula; caléndula; marigold'),
  },
  {
    ...plant,
    id: 'safflower',
    ci: ['75140'],
    alkali: varies('pale-yellow'),
    confidence: 'low',
    like: 'safflower',
    names: named('Carthamus Tinctorius Flower; carthamus tinctorius; safflower; carthamin; cártamo'),
  },
  {
    ...plant,
    id: 'carrot',
    alkali: stable,
    confidence: 'low',
    like: 'carrot',
    names: named('Daucus Carota Sativa Root Powder; daucus carota sativa; daucus carota; carrot; zanahoria'),
  },
  {
    ...plant,
    id: 'lycopene',
    ci: ['75125'],
    e: ['160d'],
    alkali: stable,
    confidence: 'low',
    names: named('Lycopene; licopeno; solanum lycopersicum; tomato'),
  },
  {
    ...plant,
    id: 'riboflavin',
    ci: [],
    e: ['101'],
    alkali: lost('pale-yellow'),
    confidence: 'low',
    names: named('Riboflavin; lactoflavin; riboflavina; vitamin b2'),
  },
];
