const pairs = (first: string, second: string): string =>
  first
    .split(', ')
    .flatMap(one => second.split(', ').map(other => `${one} ${other}`))
    .join(', ');

const SCORCHED =
  'milk, goat milk, goats milk, coconut milk, buttermilk, cream, sugar, honey, puree, beer, tea, coffee, juice, oats, petals, flowers, fragrance';
const QUEMADO =
  'leche, leche de cabra, leche de coco, nata, crema, miel, azucar, cerveza, avena, fragancia, esencia';

/** Phrases of the bench that hold harm and mean none; they shut out what their words mean alone, and weigh nothing. */
export const QUIET_WORDS = {
  noharm: [
    pairs(pairs('lye, soda', 'burned, burnt, burns, scorched, will burn, may burn'), SCORCHED),
    pairs(
      pairs(pairs('lye, soda', 'burned, burnt, burns, scorched, will burn, may burn'), 'the, my, our'),
      SCORCHED,
    ),
    pairs(pairs('sosa, lejia', 'quemo, quema, ha quemado'), pairs('la, el, mi', QUEMADO)),
    pairs(
      pairs('dog, cat, puppy, paw, duck, bunny, horse', 'bone, shaped, shape, face, print'),
      'mould, moulds, cutter, stamp, soap, soaps, bar, bars',
    ),
    pairs('dog, cat, paw, duck, bunny, rabbit, horse', 'mould, moulds'),
    pairs(
      pairs('molde, moldes, jabon, sello', 'de, con forma de'),
      'perro, gato, hueso de perro, huella, huellas, pata, patas, pato, conejo, caballo',
    ),
  ].join(', '),
} as const;

/** What comes after the name of a bought product, and never after a verb in the past. */
export const GOODS =
  /^(crystals?|flakes?|beads?|granules?|micropearls?|prills?|cleaners?|openers?|unblockers?|cristales|escamas|perlas|granulos)$/;
