import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, OIL, PAST, said } from '../../care-words.ts';
import type { TopicPatterns } from '../topic.ts';

const MANY = '(?:more|extra|mas|de mas|excess|exceso|surplus|double|doble|sobra\\w*)';
const CLEAN =
  '(?:cleans?|cleaner|cleaning|wash\\w*|laundry|grease|degreas\\w*|stains?|limpi\\w+|lavar|ropa|manchas?|desengras\\w+)';
const MADE_SAFE = unbroken`
  vinegar|vinagre|acid|acido|lemon|limon|cur(?:e|es|ing|ado)|rebatch\w*|rebati\w+|rehac\w+|sav(?:e|ed)|
  rescue|salv\w+|rescat\w+|zaps?|wait|months?|meses|harder|dur[oa]
`;
/** What lye is called where “soda” alone means it; behind words that weigh it only. */
const SODA = 'soda(?! ash| crystals| water| pop| bread)(?: caustica)?';

/** Of too much lye or too little, of another than was meant, and of what a scale or a tin does not tell; plain text. */
export const TOO_MUCH_PATTERNS: TopicPatterns = [
  [
    'extra-lye',
    [
      said(
        [
          `just in case|por si acaso|to be (?:sure|safe)|por si las moscas|para asegurar\\w*`,
          `(?:\\d+(?: \\d+)? ?(?:g|gr|grams?|gramos?) (?:more|mas|extra|de mas))|${CAUSTIC}`,
          'add|put|more|extra|mas|pongo|echo|anad\\w+|poner|echar',
        ],
        `water|agua|${OIL}|salt|sal|fragrance|aroma|mica|gloves|guantes|goggles|gafas|vinegar|vinagre`,
      ),
      new RegExp(
        unbroken`
          \b(?:round(?:ing)?(?: it| up| down| off| the| my| lye| naoh| amount)*|
          redond\w+(?: la| el| lo)?(?: sosa| peso)?)(?: from)?(?: a| to| at)? \d+(?: \d+)? ?(?:g|gr|grams?|
          gramos?|a|to|up|da|no|ok|is|$)(?!.*\b(?:mou?ld|molde|cm|inch\w*|pvc)\b)
        `,
        'u',
      ),
      said(['round\\w*|redond\\w+', CAUSTIC, '\\d|up|down|arriba|abajo'], 'mou?lds?|moldes?|cm|bars?'),
      said(
        [`${MANY}(?: \\w+)? ${CAUSTIC}|${CAUSTIC} (?:\\w+ )?(?:excess|extra|de mas|de sobra)`, CLEAN],
        'spill\\w*|derram\\w+|floor|counter|carpet|suelo|encimera|jug|jarra|pot|olla|clean up|vinegar|vinagre',
      ),
    ],
  ],
  [
    'too-much-in',
    [
      said(
        [
          unbroken`
            (?:me pas(?:e|o|amos)|se (?:me|nos) fue la mano|nos pas(?:o|amos)|heavy handed with|(?:go|went|
            going) over (?:on|with))(?: \w+){0,4} (?:${CAUSTIC}|${SODA})
          `,
        ],
        MADE_SAFE,
      ),
      said(
        [
          `que pas\\w+(?: \\w+){0,4} (?:demasiada|mucha|mas) (?:${CAUSTIC}|${SODA})(?: de la (?:cuenta|receta))?`,
        ],
        `${MADE_SAFE}|limpi\\w+|agua`,
      ),
      said(
        [
          `${PAST}(?: \\w+){0,2} (?:too much|way too much|demasiada|mucha|mas)(?: de)? ${CAUSTIC}|${PAST} (?:la )?${CAUSTIC} de mas|${CAUSTIC} de mas`,
        ],
        `${MADE_SAFE}|limpi\\w+`,
      ),
      said(
        [
          `too much ${CAUSTIC}|demasiada ${CAUSTIC}`,
          'already|in the (?:mou?ld|batter|pot|oils?)|what now|what do i do|ya|en (?:el molde|la masa|la olla)|que hago|by mistake|sin querer|por error',
        ],
        MADE_SAFE,
      ),
    ],
  ],
  [
    'too-little-in',
    [
      said([
        `(?:(?:me|nos) qued(?:e|o|amos) cort[oa]s?)(?: \\w+){0,3} ${CAUSTIC}|(?:falta|faltaba) ${CAUSTIC} y ya`,
      ]),
      said(
        [
          `(?:too little|not enough|too few|less|poca|muy poca|menos|de menos)(?: of)?(?: de)? (?:the |la )?${CAUSTIC}|${CAUSTIC} de menos`,
          `${PAST}|already|ya|what now|what do i do|que hago|by mistake|sin querer|in the (?:mou?ld|batter|pot)|en (?:el molde|la masa)`,
        ],
        'gentl\\w*|mild\\w*|soft\\w*|suav\\w+|than|que la|afraid|scared|miedo|want|quiero|can i|puedo',
      ),
    ],
  ],
  [
    'less-lye',
    [
      said(
        [
          'afraid|scared|fear|frightened|nervous|miedo|asusta\\w*|respeto',
          `${CAUSTIC}`,
          'less|half|smaller|lower|reduc\\w*|menos|mitad|rebaj\\w+',
        ],
        HURT,
      ),
      said([
        unbroken`
          (?:can|may|could|should) i (?:\w+ )?(?:put|use|add)(?: in)? (?:less|half(?: the)?|
          a bit less) ${CAUSTIC}|puedo (?:poner|echar|usar) (?:menos|la mitad de(?: la)?) ${CAUSTIC}
        `,
      ]),
    ],
  ],
  [
    'koh-for-naoh',
    [
      said(
        [
          'koh|potassium hydroxide|potasa|hidroxido de potasio|caustic potash',
          'by mistake|by accident|accidentally|wrong one|sin querer|por error|me equivoque|por equivocacion|confund\\w+',
        ],
        'mixed|mezcl\\w+|both|las dos',
      ),
    ],
  ],
  [
    'scale',
    [
      said(
        [
          'scales?|bascula|balanza|peso de cocina',
          unbroken`
            steps? of \d|jumps? (?:by|in)|\d+ en \d+|only (?:shows|weighs|reads|does)|whole grams?|
            solo (?:marca|pesa|muestra)|gramos enteros|no decimals|sin decimales
          `,
        ],
        'died|broke\\w*|battery',
      ),
    ],
  ],
  [
    'purity-unknown',
    [
      said(
        [
          `${CAUSTIC}|tin|tub|bote|label|etiqueta`,
          unbroken`
            no purity|without (?:a |any )?purity|purity (?:is )?(?:unknown|missing|not)|unknown purity|
            doesn ?t (?:say|state|tell) (?:the )?purity|sin (?:la |indicar )?pureza|no (?:pone|dice|trae|
            indica) (?:la )?pureza|pureza desconocida|que pureza tiene
          `,
        ],
        'how much|cuanta',
      ),
      said([
        CAUSTIC,
        '(?:says?|label|dice|pone|etiqueta)(?: \\w+){0,3} 9\\d(?: \\d)?(?: (?:to|a|y|and|or|o|percent|por ciento))* 9\\d',
      ]),
    ],
  ],
  [
    'cure-lye-heavy',
    [
      said(
        [
          `${CAUSTIC}`,
          'wait\\w*|months?|longer|dej\\w+|esper\\w+|meses|con el tiempo|with time',
          'go(?:es)? away|gone|disappear\\w*|vanish\\w*|se (?:va|ira|quita|pierde)|desaparec\\w+',
        ],
        'water|agua|smell|fumes|jug',
      ),
    ],
  ],
];
