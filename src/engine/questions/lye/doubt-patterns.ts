import { CAUSTIC, HURT, OIL, PAST, said } from './care-words.ts';
import { near, type TopicPatterns } from './topic-patterns.ts';

const SPOON =
  '(?:(?:table|tea|soup )? ?spoons?(?:fuls?)?|tbsps?|tsps?|cucharad\\w+|cucharas?(?! de palo)|cucharillas?|vasos? de|tazas? de|glass(?:es)? of|cups? of|handfuls? of|punados? de|tapon(?:es)? de(?! la)|capfuls?(?: of)?)';
const MANY = '(?:more|extra|mas|de mas|excess|exceso|surplus|double|doble|sobra\\w*)';
const CLEAN =
  '(?:cleans?|cleaner|cleaning|wash\\w*|laundry|grease|degreas\\w*|stains?|limpi\\w+|lavar|ropa|manchas?|desengras\\w+)';
const MADE_SAFE =
  'vinegar|vinagre|acid|acido|lemon|limon|cur(?:e|es|ing|ado)|rebatch\\w*|rebati\\w+|rehac\\w+|sav(?:e|ed)|rescue|salv\\w+|rescat\\w+|zaps?|wait|months?|meses|harder|dur[oa]';
/** What lye is called where “soda” alone means it; behind words that weigh it only. */
const SODA = 'soda(?! ash| crystals| water| pop| bread)(?: caustica)?';
const BOOK =
  '(?:book|books|calc\\w*|chart|table|site|website|web|app|page|friend|teacher|film|libro|libros|calculador\\w*|tabla|pagina|amiga|profesora?|film)';
const LATER =
  '(?:tomorrow|later|next (?:day|week)|in an hour|in \\d+ (?:hours?|days?)|when (?:it|the)(?: \\w+)? comes|manana|luego|despues|mas tarde|otro dia|cuando (?:llegue|venga|la compre)|la semana que viene)';

/** Of lye that is dosed by guess or by space, too much or too little of it, and doubts just after an answer; plain text. */
export const DOUBT_PATTERNS: TopicPatterns = [
  [
    'fluid-ounces',
    [
      said(
        ['fl oz|floz|fluid (?:oz|ounces?)|onzas? (?:liquidas?|fluidas?)', CAUSTIC],
        `(?:fl oz|floz|fluid (?:oz|ounces?)|onzas? (?:liquidas?|fluidas?))(?: of| de)?(?: \\w+)? ${OIL}`,
      ),
      said([
        '(?:is|are|does|or|es|son|o) (?:\\w+ ){0,4}(?:fluid (?:oz|ounces?)|onzas? (?:liquidas?|fluidas?))|fluid ounces? or not',
      ]),
      said([
        'oz|ounces?|onzas?',
        'by volume|volume or weight|weight or volume|weighed or measured|peso o (?:de )?volumen|volumen o (?:de )?peso|por volumen',
      ]),
    ],
  ],
  [
    'spooned-lye',
    [
      near(
        SPOON,
        `(?:(?:of|de|son|is|are|the|la) )*(?:\\d+(?: \\d+)? ?(?:g|gr|grams?|gramos?) )?(?:of |de )?${CAUSTIC}(?! (?:water|solution))`,
        1,
      ),
      near(
        CAUSTIC,
        `(?:\\d+ |in |en |with |con |a |by )*${SPOON}(?! (?:sugar|honey|salt|water|azucar|miel|sal|agua))`,
        2,
      ),
    ],
  ],
  [
    'rest-later',
    [
      said(
        [
          CAUSTIC,
          'rest|resto|remaining|other half|half is in|otra mitad|(?:lo|la)? ?que falta|missing',
          LATER,
        ],
        'what|clean|stored?|guardar|guardo',
      ),
      said([CAUSTIC, 'half (?:now|today)|mitad (?:hoy|ahora)', LATER]),
    ],
  ],
  [
    'lye-guessed',
    [
      // "145 g or 154 g": nobody knows which went in.
      said(
        [
          CAUSTIC,
          "(?:can ?(?:no|')?t|cannot|can t|don ?t|not|no|forgot|olvide)(?: \\w+){0,2} (?:remember|recall|sure|know|recuerdo|acuerdo|seguro|se|si|if)|forgot (?:if|whether)|no me acuerdo",
          '\\d[\\d ]*(?:g|gr|grams?|gramos|oz|ounces?)? (?:or|o|u) \\d+',
        ],
        HURT,
      ),
      said(
        [
          CAUSTIC,
          'no (?:me acuerdo|recuerdo|se) si (?:la )?(?:tar\\w+|puse la tara)|(?:can ?t|don ?t|cannot|can t|don t) remember (?:if|whether) i tared',
        ],
        HURT,
      ),
      said(
        [
          CAUSTIC,
          '(?:don ?t|do not|didn ?t|no|ni|not)(?: \\w+){0,2} (?:know|knew|se|sabe|sure|remember|recuerdo|acuerdo|idea)|ni idea|forgot how much|lost (?:the )?count|perdi la cuenta',
          'how (?:much|many)|cuant[oa]s?|amount|cantidad|put all|all of (?:it|the)|everything|toda|lost (?:the )?count|perdi la cuenta',
        ],
        'oils?|aceites?|who|is it lye|es sosa',
      ),
      said(
        [
          `${CAUSTIC}|jug|jarra`,
          'without (?:a |the )?tar(?:e|ing)|no tare|(?:forgot|didn ?t)(?: to)? tare|forgot the tare|sin tarar|sin (?:la )?tara|no tare|no (?:puse|di|hice) (?:la )?tara|olvide (?:la tara|tarar)',
        ],
        'tare weight|of which',
      ),
      said([
        CAUSTIC,
        'scales?|bascula|balanza',
        'died|dead|battery|went (?:off|blank|dead)|broke|stopped working|switched itself off|se (?:apago|paro|murio|rompio|quedo sin)|turned itself off|sin pila|pila',
        'guess|how much|middle|half ?way|mitad|medias|cuant[oa]|a ojo|don ?t know|no se|while|pouring|mientras|echando|pesando',
      ]),
      near(`${CAUSTIC}`, 'by eye|eyeball\\w*|by guess\\w*|a ojo|al tanteo|a bulto', 24),
      near('(?:eyeball\\w*|guess|measure by eye|estimate|calculo a ojo|pongo a ojo|echo a ojo)', CAUSTIC, 16),
    ],
  ],
  [
    'oil-spilled',
    [
      said(
        [
          `(?:spill(?:ed|t)?|spilt|knocked over|lost|dropped|tipped over|wasted)(?: \\w+){0,4} ${OIL}|${OIL}(?: \\w+){0,6} (?:spill(?:ed|t)?|spilt|got (?:lost|spilled)|se (?:me |nos )?(?:derram\\w+|cay\\w+|volc\\w+)|derram\\w+)|(?:se (?:me |nos )?(?:derram\\w+|cay\\w+|volc\\w+)|derrame|perdi|tire)(?: \\w+){0,4} ${OIL}`,
          `${CAUSTIC}|recipe|receta|minus|menos|weigh\\w*|measur\\w*|pes[eo]|pesad\\w+`,
        ],
        `(?:spill(?:ed|t)?|spilt|dropped|knocked over)(?: (?:some|the|my|a|of|bit|little|all|hot|over))* ${CAUSTIC}|(?:derram\\w+|cay\\w+)(?: (?:un|poco|algo|de|la|el|mi|agua|con))* ${CAUSTIC}|${CAUSTIC} (?:water )?(?:spill\\w*|spilt|on the)|floor and|suelo y|${HURT}|fragrance|essential|esencial`,
      ),
      said([`${OIL}.{0,20}\\d.{0,12}(?:minus|menos|less) \\d+ ?g?`, 'spill\\w*|spilt|lost|derram\\w+|perdi']),
    ],
  ],
  [
    'second-water',
    [
      said(
        [
          'forgot\\w*|forget|never went in|missed|left out|never added|didn ?t add|olvid\\w+|no (?:puse|eche|anadi)|falto',
          '(?:other|second|2nd|second half of(?: the| my)?|rest of(?: the| my)?|remaining|extra|additional|segunda|resto (?:del|de la)|otra|demas)(?: \\w+)? ?(?:water|agua)',
        ],
        'write|wrote|written|escrib\\w+|escrit\\w+',
      ),
    ],
  ],
  [
    'water-unwritten',
    [
      said(
        [
          'forgot\\w*|didn ?t|doesn ?t|without|not|never|olvid\\w+|no|sin',
          'writ(?:e|ten)|wrote|note(?: down)?|noted|escrib\\w+|escrit\\w+|apunt\\w+|anot\\w+',
          'water|agua',
          'recipe|receta|book|libro|formula|notes?|cuaderno|paper|papel',
        ],
        'name|label|etiqueta',
      ),
    ],
  ],
  [
    'two-figures',
    [
      said(
        [
          `${BOOK}`,
          'says?|said|told|tells|gives?|shows|dice|decia|pone|da|sale',
          '\\d+(?: \\d+)? ?(?:g|gr|grams?|gramos?|oz)\\b|\\d+ (?:who|quien|why|por que)',
        ],
        'mica|oxide|oxido|colou?r\\w*|tsp|tbsp|scent|fragrance|aroma|temperature|degrees|grados|ultramar\\w*|clay|arcilla|charcoal|carbon|water|agua|fluid|liquid\\w+|cure|weeks?|semanas?|salt|honey|miel|sal',
      ),
      said(
        [
          'why|por que|how come',
          'different|differ\\w*|not the same|distint\\w+|diferent\\w+|no coincid\\w+',
          `${CAUSTIC}`,
          'calc\\w*|recipe|receta|figures?|numbers?|cifras?|amounts?|cantidad\\w*|say|dice\\w*|gives?|da',
        ],
        'koh and naoh|naoh and koh|flakes|beads|escamas|perlas',
      ),
    ],
  ],
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
      /\b(?:round(?:ing)?(?: it| up| down| off| the| my| lye| naoh| amount)*|redond\w+(?: la| el| lo)?(?: sosa| peso)?)(?: from)?(?: a| to| at)? \d+(?: \d+)? ?(?:g|gr|grams?|gramos?|a|to|up|da|no|ok|is|$)(?!.*\b(?:mou?ld|molde|cm|inch\w*|pvc)\b)/u,
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
          `(?:me pas(?:e|o|amos)|se (?:me|nos) fue la mano|nos pas(?:o|amos)|heavy handed with|(?:go|went|going) over (?:on|with))(?: \\w+){0,4} (?:${CAUSTIC}|${SODA})`,
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
        `(?:can|may|could|should) i (?:\\w+ )?(?:put|use|add)(?: in)? (?:less|half(?: the)?|a bit less) ${CAUSTIC}|puedo (?:poner|echar|usar) (?:menos|la mitad de(?: la)?) ${CAUSTIC}`,
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
          'steps? of \\d|jumps? (?:by|in)|\\d+ en \\d+|only (?:shows|weighs|reads|does)|whole grams?|solo (?:marca|pesa|muestra)|gramos enteros|no decimals|sin decimales',
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
          'no purity|without (?:a |any )?purity|purity (?:is )?(?:unknown|missing|not)|unknown purity|doesn ?t (?:say|state|tell) (?:the )?purity|sin (?:la |indicar )?pureza|no (?:pone|dice|trae|indica) (?:la )?pureza|pureza desconocida|que pureza tiene',
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
