import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, said } from '../../care-words.ts';
import { near, type TopicPatterns } from '../topic.ts';

const WITHSTANDS = unbroken`
  (?:silicone|polystyrene|polystyrene foam|enamel(?:led)?|copper|ceramic|terracotta|clay|non ?stick|wooden|
  paper|cardboard|vacuum flask|melamine|porcelain|esmaltad[oa]|cobre|ceramica|barro|antiadherente|madera|
  melamina|porcelana|carton|silicona|poliestireno|poliespan)
`;
const POT = unbroken`
  (?:cups?|mugs?|pots?|pans?|bowls?|buckets?|jugs?|kettles?|saucepans?|spoons?|beakers?|vasos?|tazas?|
  ollas?|perol(?:es)?|cazos?|bol(?:es)?|cubos?|jarras?|cucharas?|calderos?)
`;
const FOOD_JAR = unbroken`
  (?:(?:pickles?|jam|mason|kilner|canning|marmalade|preserving|honey|mayonnaise|olive|coffee|sauce|
  jelly) jars?|(?:tarros?|botes?|frascos?) de (?:mermelada|garbanzos|miel|conservas?|cristal|vidrio|cafe|
  aceitunas|pepinillos|mayonesa|tomate))
`;
const METAL_POT = unbroken`
  (?:(?:alumini?um|zinc|tin|galvani[sz]ed) (?:\w+ )?(?:pots?|pans?|bowls?|buckets?|tubs?|tins?|trays?|
  mou?lds?|pails?|baths?)|(?:ollas?|cubos?|baldes?|cazos?|moldes?|bandejas?|barrenos?|tinas?|perol(?:es)?|
  palanganas?|cacerolas?)(?: es| son)? (?:de (?:aluminio|zinc|cinc|hojalata)|galvanizad[oa]s?))
`;

/** Of what lye stands in, and where it goes afterwards; plain text. */
export const VESSEL_PATTERNS: TopicPatterns = [
  [
    'rusty-lid',
    [
      said(
        [
          `${CAUSTIC}`,
          '(?:lid|cap|tin|can|hood|tapa|tapon|lata|campana)',
          'rust\\w*|corrod\\w*|oxid(?:o|ad[oa]|a)',
        ],
        `mica|colou?r|pot|olla|fizz\\w*|bubbl\\w*|burbuj\\w*|foam\\w*|espuma|${HURT}`,
      ),
      said(
        [
          `(?:bottle|tub|jar|botella|bote|garrafa)(?: \\w+){0,2} (?:of|de|con|with) ${CAUSTIC}|${CAUSTIC} (?:bottle|tub)`,
          'swollen|bulg\\w+|swelled|inflad[oa]|hinchad[oa]|abombad[oa]',
        ],
        HURT,
      ),
    ],
  ],
  [
    'glass-jug',
    [
      said(
        [
          'oven ?glass|pirex|borosilicate|borosilicato',
          `${CAUSTIC}|jugs?|jarras?|mix\\w*|mezcl\\w+|soap|jabon|why|por que|ok|safe`,
        ],
        `oven at|${HURT}|mou?ld|broke|shatter\\w*|rompio|crack\\w*|mica|burst`,
      ),
      said([FOOD_JAR, `(?:mix|dissolve|make|mezclar|disolver|hacer)(?: \\w+)? ${CAUSTIC}`], HURT),
      new RegExp(
        `^(?:(?:an?|my|old|use|un|el|en|in|puedo usar) )*${FOOD_JAR}(?: ok| okay| vale| sirve)?$`,
        'u',
      ),
      said(['why|por que', '(?:no|not|never|sin|nunca) (?:en )?(?:glass|vidrio|cristal)'], HURT),
    ],
  ],
  [
    'aluminium',
    [
      said(
        [
          METAL_POT,
          `soap|jabon|lye|sosa|ok|fine|okay|puedo|sirve|vale|can i|safe|only have|solo tengo|antiadherente|coat\\w*|non ?stick|abuela|pan`,
        ],
        unbroken`
          ${HURT}|fizz\w*|bubbl\w*|foam\w*|smok\w*|hiss\w*|hot|poured|burbuj\w*|espuma|humea\w*|hierve|
          caliente|eche|puse|i put|mixed|used|black now|gr[ae]y
        `,
      ),
      new RegExp(
        `^(?:(?:an?|my|soap in|jabon en|in|en) )*(?!tin (?:can|mou))${METAL_POT}(?: de \\w+)?(?: for soap| para jabon)?$`,
        'u',
      ),
    ],
  ],
  [
    'vessel',
    [
      said(
        [
          `${WITHSTANDS}(?: \\w+)? ${POT}|${POT}(?: de)? ${WITHSTANDS}`,
          `${CAUSTIC}|mix\\w*|mezcl\\w+|jabon|for soap`,
        ],
        `${HURT}|mou?lds?|moldes?|microwave|microondas|eat|food|comer|cortar|swirl`,
      ),
      new RegExp(
        unbroken`
          ^(?:(?:an?|the|my|una?|la|el) )*(?:(?:${WITHSTANDS}) (?:${POT})|
          (?:${POT})(?: de)? (?:${WITHSTANDS})|pressure cookers?|ollas? (?:a presion|express?|rapidas?)|
          vacuum flask|hot[ -]drink flask|termo)(?: \w+){0,3}$
        `,
        'u',
      ),
      // “Soda” alone is lye where a bucket is to stand it.
      said(
        [
          '(?:baldes?|cubos?|cubetas?|potes?|tarros?|tachos?|envases?|botes?|tarrinas?)(?: (?:de|los|el))+ helados?',
          `${CAUSTIC}|soda`,
        ],
        HURT,
      ),
      said(['stainless|inoxidable', 'magnet\\w*|iman\\w*', POT]),
      said(
        [
          'paint (?:bucket|tub|pot)|cubo de pintura|vacuum flask|food (?:box|tub)|fiambrera\\w*|yogh?urt (?:pot|cup)|ice cream tub|tarrina',
          CAUSTIC,
        ],
        HURT,
      ),
    ],
  ],
  [
    'disposal',
    [
      near(
        `${CAUSTIC}(?: water)?`,
        unbroken`
          (?:(?:la|lo|it|can i|puedo) )?(?:tiro|tirar|flush|tip (?:it )?away|pour (?:it )?(?:away|out|
          down))\b.{0,20}\b(?:wc|toilet|sink|drain|inodoro|desague|fregadero|garden|jardin|calle|street|bin|
          basura)|down the (?:wc|toilet|drain|sink)|septic tank|fosa septica
        `,
        24,
      ),
      near('(?:septic tank|fosa septica|compost)', CAUSTIC, 24),
    ],
  ],
  [
    'too-little-water',
    [
      said(
        ['(?:very little|as little|poca|muy poca|minimum|minima) (?:water|agua)', `${CAUSTIC}|1 1`],
        `forgot\\w*|olvid\\w+|${HURT}`,
      ),
    ],
  ],
];
