import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, OIL, said } from '../../care-words.ts';
import { near, type TopicPatterns } from '../topic.ts';

const SPOON = unbroken`
  (?:(?:table|tea|soup )? ?spoons?(?:fuls?)?|tbsps?|tsps?|cucharad\w+|cucharas?(?! de palo)|cucharillas?|
  vasos? de|tazas? de|glass(?:es)? of|cups? of|handfuls? of|punados? de|tapon(?:es)? de(?! la)|
  capfuls?(?: of)?)
`;
const BOOK =
  '(?:book|books|calc\\w*|chart|table|site|website|web|app|page|friend|teacher|film|libro|libros|calculador\\w*|tabla|pagina|amiga|profesora?|film)';
const LATER = unbroken`
  (?:tomorrow|later|next (?:day|week)|in an hour|in \d+ (?:hours?|days?)|when (?:it|the)(?: \w+)? comes|
  manana|luego|despues|mas tarde|otro dia|cuando (?:llegue|venga|la compre)|la semana que viene)
`;

/** Of lye that is dosed by guess or by space, and of figures that were lost or differ; plain text. */
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
          unbroken`
            (?:can ?(?:no|')?t|cannot|can t|don ?t|not|no|forgot|olvide)(?: \w+){0,2} (?:remember|recall|
            sure|know|recuerdo|acuerdo|seguro|se|si|if)|forgot (?:if|whether)|no me acuerdo
          `,
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
          unbroken`
            (?:don ?t|do not|didn ?t|no|ni|not)(?: \w+){0,2} (?:know|knew|se|sabe|sure|remember|recuerdo|
            acuerdo|idea)|ni idea|forgot how much|lost (?:the )?count|perdi la cuenta
          `,
          'how (?:much|many)|cuant[oa]s?|amount|cantidad|put all|all of (?:it|the)|everything|toda|lost (?:the )?count|perdi la cuenta',
        ],
        'oils?|aceites?|who|is it lye|es sosa',
      ),
      said(
        [
          `${CAUSTIC}|jug|jarra`,
          unbroken`
            without (?:a |the )?tar(?:e|ing)|no tare|(?:forgot|didn ?t)(?: to)? tare|forgot the tare|
            sin tarar|sin (?:la )?tara|no tare|no (?:puse|di|hice) (?:la )?tara|olvide (?:la tara|tarar)
          `,
        ],
        'tare weight|of which',
      ),
      said([
        CAUSTIC,
        'scales?|bascula|balanza',
        unbroken`
          died|dead|battery|went (?:off|blank|dead)|broke|stopped working|switched itself off|se (?:apago|
          paro|murio|rompio|quedo sin)|turned itself off|sin pila|pila
        `,
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
          unbroken`
            (?:spill(?:ed|t)?|spilt|knocked over|lost|dropped|tipped over|wasted)(?: \w+){0,4} ${OIL}|
            ${OIL}(?: \w+){0,6} (?:spill(?:ed|t)?|spilt|got (?:lost|spilled)|se (?:me |nos )?(?:derram\w+|
            cay\w+|volc\w+)|derram\w+)|(?:se (?:me |nos )?(?:derram\w+|cay\w+|volc\w+)|derrame|perdi|
            tire)(?: \w+){0,4} ${OIL}
          `,
          `${CAUSTIC}|recipe|receta|minus|menos|weigh\\w*|measur\\w*|pes[eo]|pesad\\w+`,
        ],
        unbroken`
          (?:spill(?:ed|t)?|spilt|dropped|knocked over)(?: (?:some|the|my|a|of|bit|little|all|hot|
          over))* ${CAUSTIC}|(?:derram\w+|cay\w+)(?: (?:un|poco|algo|de|la|el|mi|agua|con))* ${CAUSTIC}|
          ${CAUSTIC} (?:water )?(?:spill\w*|spilt|on the)|floor and|suelo y|${HURT}|fragrance|essential|
          esencial
        `,
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
          unbroken`
            (?:other|second|2nd|second half of(?: the| my)?|rest of(?: the| my)?|remaining|extra|additional|
            segunda|resto (?:del|de la)|otra|demas)(?: \w+)? ?(?:water|agua)
          `,
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
        unbroken`
          mica|oxide|oxido|colou?r\w*|tsp|tbsp|scent|fragrance|aroma|temperature|degrees|grados|ultramar\w*|
          clay|arcilla|charcoal|carbon|water|agua|fluid|liquid\w+|cure|weeks?|semanas?|salt|honey|miel|sal|
          instead|but (?:i|im|ive|we|were) \w+|pero (?:yo )?(?:uso|usare|voy|tengo|estoy|quiero)|en (?:vez|
          lugar)|using
        `,
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
];
