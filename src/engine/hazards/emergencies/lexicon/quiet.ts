import { spaced } from '../../../over-lines.ts';
import { pairs } from './pairs.ts';

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
      pairs('dog, cat, puppy, paw, duck, bunny, horse', 'bone, bowl, shaped, shape, face, print'),
      'mould, moulds, cutter, stamp, soap, soaps, bar, bars',
    ),
    pairs('dog, cat, paw, duck, bunny, rabbit, horse', 'mould, moulds'),
    // What soap does to things, what lye does while it cures, and eyes that only look.
    pairs(
      'ate, eats, ate up, has eaten, ate into, ate through',
      pairs(
        'the, my, our',
        'towel, hand towel, tea towel, varnish, finish, liner, paint, lining, label, table, mould',
      ),
    ),
    pairs(
      'comio, comido, come, comiendo',
      'el barniz, la pintura, el molde, el forro, el color, la etiqueta, el esmalte, la madera, el cristal, el vidrio, el envase, la botella, la jarra',
    ),
    pairs('lye, soda, alcohol', 'burns off, burn off, burned off, burnt off, cooks off, cooks out'),
    pairs(
      'eye, eyes',
      'popped, popping, literally popped, nearly popped, almost popped, shaped, level, roll, test',
    ),
    pairs('easy on, feast for, sight for sore, hit, hits, please, pleases', 'the eye, the eyes, eye, eyes'),
    pairs(
      'faint',
      spaced`
        diagonal, parallel, vertical, horizontal,
        straight, wavy, thin,
        grooves, groove, streak, streaks,
        mark, marks, ring, rings,
        halo, haze, swirl, swirls,
        veins, specks, dots, white,
        grey, yellow, brown, orange,
        purple, red, shadow, edge,
        band, bands, crackle, bloom,
        film, odour, scratches, ridges
      `,
    ),
    pairs('red, blue, green, white, yellow, pink, black, purple, dark, light, coloured, orange', 'bit, bits'),
    // Of a loaf, what runs out is what did not stay in.
    pairs(
      'oil, oils, yellow oil, orange oil, clear liquid, glycerin, juice, brine',
      'ran out, runs out, oozed out, seeped out, leaked out, weeps out',
    ),
    pairs('aceite, liquido, glicerina, jugo', 'se salio, salio, sale, escurrio'),
    // An oil, and not a hand's.
    pairs(
      'shea and, coconut and, olive and, lard and, tallow and, butter and, oil and, coco and, babassu and, rbd, red, no, sustainable',
      'palm',
    ),
    pairs(
      'palm and',
      'shea, coconut, olive, lard, tallow, butter, coco, babassu, canola, sunflower, soy, castor',
    ),
    // Colours that are named after animals.
    spaced`
      duck egg, robins egg, dove grey, dove gray,
      mouse grey, elephant grey, flamingo pink, salmon pink,
      canary yellow, peacock blue, oxblood, teal duck,
      camel brown, fawn brown, gris raton, gris elefante,
      rosa flamenco, azul pavo, amarillo canario, amarillo pollito,
      color camello, color salmon
    `,
    spaced`
      caught my eye,
      catches my eye, catch my eye, catches the eye,
      caught the eye, evil eye, googly eyes, mal de ojo,
      ojo turco, entra por los ojos, entran por los ojos
    `,
    'whiff of ammonia, smell of ammonia from the milk, olorcito a amoniaco, olor a amoniaco de la leche',
    // Turns of phrase: supplies that are used up, restlessness, laughter, a look that strays.
    pairs(
      pairs(
        'burned through, burnt through, burning through',
        'my, our, the, all my, my whole, our whole, half my',
      ),
      'stock, supply, stash, budget, coconut oil, olive oil, oils, shea, stash of',
    ),
    'itchy feet, itching to try, itching to make, itching to start, burning question',
    'wheezing with laughter, wheezing laughing, choking with laughter, crying with laughter, dying with laughter, died laughing',
    spaced`
      se me fue el ojo, se me va el ojo, se me fueron los ojos, se me van los ojos,
      ojo con, ojo al color, muerta de risa, muerto de risa,
      llorando de risa, ahogada de risa
    `,
    // Tears of joy.
    spaced`
      eyes watered with joy, eyes watered it was so pretty, eyes watered it was so beautiful,
      happy tears, tears of joy, lagrimas de alegria, lagrimas de emocion
    `,
    // Too much of something was put in; rain that pours.
    pairs(
      'se me paso, se me fue, se nos paso, se nos fue, se le paso, se le fue',
      'la mano, la mano con, la mano de, la mano en la, la mano al',
    ),
    'llueve a mares, lloviendo a mares, llovio a mares',
    'en medio, en el medio, por el medio, al medio, por en medio, en medio de',
    pairs(
      pairs('molde, moldes, jabon, sello', 'de, con forma de'),
      'perro, gato, hueso de perro, huella, huellas, pata, patas, pato, conejo, caballo',
    ),
  ].join(', '),
} as const;

/** What comes after the name of a bought product, and never after a verb in the past. */
export const GOODS =
  /^(crystals?|flakes?|beads?|granules?|micropearls?|prills?|cleaners?|openers?|unblockers?|cristales|escamas|perlas|granulos)$/;
