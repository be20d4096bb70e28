import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, OIL, said } from '../../care-words.ts';
import type { TopicPatterns } from '../topic.ts';

const WEIGHT = '\\d+ ?(?:g|gr|grams?|gramos?|oz|ounces?|onzas?)';
/** Where lye stands before it is weighed, or what it has become. */
const STORED = unbroken`
  tubs?|bags?|bolsas?|bote|packets?|paquete|container|envase|shed|damp|humed\w+|open|abiert[oa]|old|
  viej[oa]|bars?|barras?|jabon|soap|batter|masa|milk|leche|floor|suelo|piso
`;
const SURFACE = unbroken`
  (?:work ?tops?|counter ?tops?|counters?|bench|tables?|floors?|tiles?|carpet|kitchen|encimera|mesa|mesada|
  meson|tope|mostrador|banco|suelo|piso|baldosas?|alfombra|cocina)
`;
/** Bare "soda" is lye where it has run over a bench and is to be cleaned up. */
const SPILT_LYE = `(?:${CAUSTIC}|soda|lejia)`;
const SPILT = unbroken`
  (?:spill\w*|spilt|dropped|tipped|knocked|(?:fell|went|ran|got) (?:all )?(?:over|on|onto)|se (?:me|nos|
  le) (?:ha |han )?(?:reg|bot|derram|ca|volc|chorre|vir|tir)\w+|(?:regue|bote|derrame|volque|chorree|tire|
  vire)|(?:regad|derramad|botad|volcad|chorread)[oa])
`;
const CLEANS =
  '(?:clean\\w*|wipe\\w*|mop\\w*|get (?:it|that) (?:up|off)|limpi\\w+|recoj\\w+|recog\\w+|quit\\w+|sac\\w+|que hago|what do i do)';
const ASKS_LEAVE =
  '(?:can|could|may|should|shall|do|must) (?:i|we)(?: \\w+)? (?:put|add|use|give)|puedo|podemos|debo|hay que|conviene';

/** Weights that went in wrong and lye that is not ready, told in few words; plain text. These stand before all other matters of care. */
export const TOLD_SHORT_PATTERNS: TopicPatterns = [
  // On a bench, and on nobody: acid heats it there, too.
  [
    'clean-up',
    [said([CAUSTIC, SURFACE, 'vinegar|vinagre'], HURT), said([SPILT_LYE, SPILT, SURFACE, CLEANS], HURT)],
  ],
  // Spoonfuls over: how much that was nobody knows.
  [
    'too-much-in',
    [
      said(
        [
          unbroken`
            (?:extra|more|de mas|mas)(?: \w+){0,2} (?:table ?spoons?|tea ?spoons?|tbsps?|spoonfuls?|
            cucharad\w+|cucharas?)\b.{0,12}\b${CAUSTIC}|(?:table ?spoons?|tea ?spoons?|tbsps?|spoonfuls?|
            cucharad\w+|cucharas?)(?: \w+){0,2} (?:extra|more|de mas|mas)\b.{0,12}\b${CAUSTIC}
          `,
          'fell|put|added|poured|went in|in the (?:pot|batter|oils)|cay\\w+|puse|eche|anadi|en la (?:olla|masa)',
        ],
        HURT,
      ),
    ],
  ],
  [
    'too-little-in',
    [
      said(
        [
          `(?:doubl\\w+|tripl\\w+|duplic?q?u?\\w+)(?: \\w+){0,3} ${OIL}`,
          `(?:forgot|not|didn ?t|without|no|olvid\\w+|sin|but)(?: \\w+){0,4} ${CAUSTIC}|${CAUSTIC} (?:no|not|stayed|se quedo)`,
        ],
        `if i|si (?:duplico|doblo)|${HURT}`,
      ),
    ],
  ],
  [
    'too-much-in',
    [
      said(
        [
          unbroken`
            ${WEIGHT} (?:more|extra|too much|over)(?: of)?(?: the)? ${CAUSTIC}|${WEIGHT} (?:de )?(?:mas|
            exceso)(?: de)?(?: la)? ${CAUSTIC}|${WEIGHT} de ${CAUSTIC} de mas|${CAUSTIC} ${WEIGHT} de mas
          `,
          '(?:put|added|used|poured|weighed|went)|puse|eche|use|pese|anadi|agregue|se me fue|me pase',
        ],
        `${ASKS_LEAVE}|if i|si (?:pongo|echo|uso)|water|agua|just in case|por si acaso|${HURT}`,
      ),
    ],
  ],
  [
    'oil-forgotten',
    [
      said(
        [
          unbroken`
            ${WEIGHT}(?: (?:of|de))?(?: aceite(?: de)?)? ${OIL}(?: oil)? (?:less|short|too few|too little|
            de menos|menos)|${WEIGHT} (?:less|menos)(?: de| of)? ${OIL}
          `,
          `${CAUSTIC}`,
          '(?:put|added|used|poured|weighed)|puse|eche|use|pese|anadi|agregue',
        ],
        `${ASKS_LEAVE}|if i|si (?:pongo|echo|uso)|${HURT}`,
      ),
    ],
  ],
  [
    'undissolved-lye',
    [
      // In the jug, and not in its tub: it was stirred in just now.
      said(
        [
          CAUSTIC,
          'still|sigue|todavia|aun|yet|won ?t|does ?n ?t|not|no se',
          'cloudy|murky|milky|clump\\w*|lump\\w*|turbi[oa]|grumos\\w*|terron\\w*',
          `jug|jarra|water|agua|bottom|fondo|stir\\w*|remov\\w+|revuelv\\w+`,
        ],
        `${STORED}|cold|cool\\w*|fri[oa]|clear(?:ed)?|good|too little|poca agua|${HURT}`,
      ),
      said(
        [
          CAUSTIC,
          'clump\\w*|lump\\w*|grumos\\w*|terron\\w*',
          'jug|jarra|bottom|fondo|dissolv\\w*|disuelv\\w*',
        ],
        `${STORED}|good|too little|poca agua|${HURT}`,
      ),
      said(
        [
          CAUSTIC,
          unbroken`
            (?:gran(?:os|itos)|cristal(?:es|itos)|bolitas|perlas|crystals?|grains|beads|
            bits)(?: \w+){0,4} (?:sin disolver|undissolved|not dissolved)|(?:quedaron|quedan|left|
            still)(?: \w+){0,2} (?:granos|granitos|cristales|crystals?|grains|beads)(?: \w+){0,6} (?:fondo|
            bottom)
          `,
        ],
        `jabon|pastilla|barra|bar|soap|floor|suelo|piso|${HURT}`,
      ),
    ],
  ],
  [
    'mixing-temperature',
    [
      said(
        [
          `${CAUSTIC}(?: (?:water|solution|con agua|y el agua))?|agua de ${CAUSTIC}`,
          '(?:is|esta|at|a|still|sigue)(?: \\w+)? [6-9]\\d ?(?:c|f|degrees|grados)|(?:6|7|8|9)\\dc',
          unbroken`
            (?:pour|put|add|mix)(?: \w+){0,3} (?:oils?|now)|in ?to (?:the |my )?oils?|(?:echo|echar|vierto|
            verter|pongo)(?: \w+){0,2} (?:aceites?|ya)|ya la echo
          `,
        ],
        // Where the oils are what is hot, that is another matter.
        `${OIL}(?: \\w+){0,4} (?:at|are|a|estan) (?:\\w+ )?[6-9]\\d|${HURT}`,
      ),
    ],
  ],
  [
    'cooling-lye',
    [
      said(
        [
          CAUSTIC,
          unbroken`
            (?:water|agua)(?: \w+){0,4} (?:boiling|hot|warm|heated|caliente|hirviendo|tibia)|(?:heat|warm|
            boil|calentar|caliento|hervir)(?: \w+)? (?:water|agua)
          `,
          '(?:dissolve|melt|disolver|derretir)\\w*',
          '(?:does|do|should|must|need|needs|hay que|debo|tiene que|hace falta|es necesario)',
        ],
        HURT,
      ),
    ],
  ],
];
