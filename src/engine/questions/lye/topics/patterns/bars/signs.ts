import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, said } from '../../care-words.ts';
import type { TopicPatterns } from '../topic.ts';

const LYE = `(?:${CAUSTIC}|soda|lejia)`;
const LYE_WATER = `(?:${CAUSTIC} ?(?:water|solution)|lye ?water|(?:agua|disolucion|solucion) (?:de|con) (?:la )?${LYE}|${LYE} (?:disuelta|con agua|en agua))`;
/** In this order it boils up: that is never told as usual. */
const WATER_ONTO_LYE = `(?:water|agua)(?: \\w+){0,2} (?:on|onto|on to|over|to|into|in|a|al?|sobre|encima de|en)(?: the| my| la)? ${LYE}`;
const OUT_OF_HAND = unbroken`
  shot (?:out|up(?! to))|over ?flow\w*|spit\w*|spat|foam\w*|froth\w*|bubbl\w*|fizz\w*|hiss\w*|volcan\w*|
  erupt\w*|explo\w*|melt\w*|crack\w*|boil\w*|smok\w*|out of|jump\w*|derrit\w*|rebos\w*|desbord\w*|salt\w*|
  escup\w*|espum\w*|burbuj\w*|hierv\w*|hirv\w*|humo|humea\w*|rev(?:ento|ienta)|raj\w*|romp\w*
`;
const SOMEBODY = unbroken`
  eyes?|skin|hands?|face|nose|throat|lungs?|breath\w*|inhal\w*|kids?|child\w*|baby|dogs?|cats?|ojos?|piel|
  manos?|cara|nariz|garganta|pulmon\w*|respir\w*|nin[oa]s?|bebe|perr[oa]s?|gat[oa]s?
`;
const PINK = '(?:pink|fuchsia|magenta|red|purple|rosa\\w*|fucsia|magenta|roj[oa]|morad[oa])';

const SILVER_BITS = unbroken`
  (?:silver\w*|metal(?:lic)?|alumini?um) (?:little |tiny |small )?(?:beads?|bits?|balls?|pellets?|specks?|
  chips?|granules?|pieces?|shavings)|(?:bolitas?|bolas|perlas|perlitas|trocitos|granos|granitos|virutas|
  pedacitos) (?:como )?(?:de metal|platead[oa]s?|metalic[oa]s?|de aluminio|de plata)
`;

/** What is seen and means less, or more, than it seems; plain text. */
export const SIGN_PATTERNS: TopicPatterns = [
  // Aluminium stands in drain openers as beads and chips, and gives off hydrogen in lye water.
  [
    'drain-cleaner',
    [
      said(
        [LYE, SILVER_BITS],
        `soaps?|bars?|loaf|batter|jabon|pastillas?|masa|mica|swirl|glitter|purpurina|spoon|cuchara|${HURT}`,
      ),
    ],
  ],
  [
    'indicator-pink',
    [
      said(
        [
          `(?:phenol ?phthalein|phenolphtalein|phenolthalein|fenolftaleina|fenoftaleina|fenoltaleina)`,
          `${PINK}|colou?r\\w*|turn\\w*|went|pon\\w+|puso|color`,
        ],
        HURT,
      ),
      said(
        [
          unbroken`
            (?:ph|indicator|tester) (?:drops?|liquid|solution)|(?:drops?|liquid) of (?:ph )?indicator|
            gotas (?:de|del|para el) (?:ph|indicador)|indicador (?:de ph|liquido)
          `,
          PINK,
          'soap|bars?|it|loaf|jabon|pastillas?|barra|lo|la',
        ],
        HURT,
      ),
    ],
  ],
  [
    'puddle-on-top',
    [
      said(
        [
          'puddles?|pools?|wet (?:patch|layer|spot)|liquid|wet|charc[oa]s?|charquit[oa]s?|liquido|mojad[oa]|encharcad[oa]',
          'on top|on the (?:top|surface)|over the top|encima|por arriba|arriba|en la superficie',
          unbroken`
            (?:is|s|if|es|si)(?: \w+){0,3} (?:oil|lye|water|glycerin\w*|aceite|sosa|lejia|agua|glicerina)|
            (?:oil|lye|water|aceite|sosa|agua) or (?:what|lye|oil|water|glycerin\w*)|(?:aceite|sosa|
            agua) o (?:que|sosa|aceite|agua|glicerina)
          `,
        ],
        `counter|floor|table|worktop|lye water|jug|cup|pot|suelo|piso|mesa|encimera|jarra|vaso|olla|${HURT}`,
      ),
    ],
  ],
  [
    'lye-heats',
    [
      said(
        [
          LYE,
          'water|agua',
          'hot|steam\\w*|\\d{2,3} ?(?:degrees|grados|c|f)|caliente|calent\\w+|vapor',
          unbroken`
            normal|is (?:that|this|it) (?:right|ok|okay|fine)|(?:supposed|meant) to|la embarre|esta bien|
            pasa algo|hice mal|did i (?:mess|do)|worr\w+|preocup\w+
          `,
        ],
        `${OUT_OF_HAND}|${SOMEBODY}|${WATER_ONTO_LYE}|alumin\\w*|zinc|tin|milk|leche|oils?|aceites?|mou?ld|molde|batter|masa|${HURT}`,
      ),
    ],
  ],
  [
    'lye-water-in-cold',
    [
      said(
        [
          LYE_WATER,
          'freez(?:e|es|ing)|froze|congel\\w+|helar\\w*|helad[oa]|hiel\\w+',
          'cool\\w*|outside|porch|step|balcony|garage|shed|yard|below|minus|cold|enfri\\w+|fuera|afuera|terraza|balcon|garaje|patio|bajo cero|menos|frio',
          'can|could|will|does|do|should|puede|debo|tengo que|hay que|se',
        ],
        `${OUT_OF_HAND}|${SOMEBODY}|spill\\w*|spilt|derram\\w*|${HURT}`,
      ),
    ],
  ],
  [
    'cold-room',
    [
      said(
        [
          'garage|shed|basement|cellar|porch|workshop|room|kitchen|outside|garaje|sotano|cobertizo|taller|terraza|cuarto|cocina|habitacion|casa|fuera',
          unbroken`
            (?:is|at|hits?|its|it s|down to|only|about|around|estamos a|esta a|hay|hace|a) (?:only |about |
            around |just |barely |unos? |solo )?(?:(?:[1-9]|1[0-4]) ?(?:c|celsius|grados|degrees c|oc)|
            (?:[2-4]\d|5[0-5]) ?(?:f|fahrenheit|degrees)|freezing|freezing cold|very cold|so cold|
            bajo cero)(?! celsius| c\b)
          `,
          'soap|make|pour|swirl|batch|jabon|hacer|verter',
          'can|could|should|may|ok|okay|too cold|safe|puedo|se puede|podria|vale|demasiado fri[oa]|pasa algo',
        ],
        `lye water|solution|agua de|${OUT_OF_HAND}|${HURT}|store|keep|cure|curing|rack|guardar|curar|curado`,
      ),
    ],
  ],
  [
    'mixing-temperature',
    [
      said(
        [
          unbroken`
            ${LYE}(?: (?:water|solution))?(?: (?:is|s|at|esta|a))? (?:\w+ )?\d{2,3}(?! (?:g|grams?|gramos|
            oz|ounces|onzas))|(?:agua de ${LYE}) (?:esta )?a \d{2,3}
          `,
          '(?:oils?|aceites?)(?: (?:are|is|at|estan|a|re))+ (?:\\w+ )?\\d{2,3}(?! (?:g|grams?|gramos|oz|ounces|onzas))',
          'wait|go|pour|mix|ready|ok|okay|fine|good|close|too (?:hot|cold)|combine|now|espero|echo|vierto|mezclo|junto|listo|bien|ya|cerca',
        ],
        `how much|cuant[oa]|superfat|sobreengrasado|lye for|sosa para|${HURT}`,
      ),
    ],
  ],
];
