import { unbroken } from '../../../../over-lines.ts';
import { CAUSTIC, HURT, said } from '../care-words.ts';
import { near, type TopicPatterns } from './topic.ts';

const LYE_WATER = `(?:${CAUSTIC}(?: water| solution| mix)?|lejia|(?:agua|disolucion|solucion) de ${CAUSTIC}|my jug|the jug|la jarra)`;
const BAR =
  'soap (?:is|has|got|turned)|bars?|loaf|batter|masa|jabon|pastillas?|swirl|mica|mou?ld|molde|pigment\\w*';
const SPIRIT =
  '(?:vodka|gin|rum|whisk(?:e?y)|tequila|brandy|rubbing alcohol|isopropyl(?: alcohol)?|ethanol|alcohol|aguardiente|ginebra|ron|orujo)';
const FLAME =
  'flames?|stove|candles?|hob|gas|fire|lighter|llamas?|vela|fuego|cigar\\w+|fum\\w+|hornillo|cocina';
const SWEET = '(?:honey|sugar|syrup|molasses|salt|miel|azucar|panela|melaza|sal)';
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

/** Of what goes on in the jug, what it is made of, and what is put into lye water; plain text. */
export const JUG_PATTERNS: TopicPatterns = [
  [
    'metal-in-lye',
    [
      said(
        [
          LYE_WATER,
          'gr[ae]y(?:ish)?|gris(?:acea)?|black(?:ish)?|negr[oa]|dark',
          'bubbl\\w*|fizz\\w*|foam\\w*|hiss\\w*|gas|smell\\w*|stinks?|burbuj\\w*|espuma|huele|chisporrote\\w+',
        ],
        `${BAR}|charcoal|carbon|mica|oxide`,
      ),
    ],
  ],
  [
    'cloudy-lye',
    [
      said(
        [
          LYE_WATER,
          unbroken`
            cloudy|milky|murky|white (?:flakes?|bits|specks|stuff|film|layer|skin)|flakes (?:at|on|
            floating)|sediment|turbi[oa]|lechos[oa]|blanquecin[oa]|copos|posos?|sedimento|nube|
            escamas? blancas? (?:en|al|abajo)
          `,
        ],
        `${BAR}|goats?|leche|milk (?!y)|spill\\w*|carpet|floor|jar without|unlabel\\w+|sin etiqueta|how much|vision|sight|vista|ojos?|eyes?`,
      ),
    ],
  ],
  [
    'undissolved-lye',
    [
      said(
        [
          LYE_WATER,
          unbroken`
            (?:not|doesn ?t|does not|won ?t|isn ?t|never|no se|no esta|no)(?: \w+){0,2} (?:dissolv\w+|
            disuelv\w+|disolv\w+|disuelt\w+)|undissolved|(?:crystals?|cristales|grains?|granos|granit\w+|
            grumit\w+|little bits|specks|bolitas|terron\w*|lumps?|clumps?)(?: \w+){0,4} (?:bottom|jug|water|
            cold|fondo|jarra|agua|frio)|(?:cold|fri[oa]|enfrio)(?: \w+){0,4} (?:crystals?|cristales)|
            salieron cristales|bolitas|froze\w*|frozen solid|freez\w+|set solid|solidif\w+|
            se (?:me )?congelo|congelad[oa]|helad[oa]
          `,
        ],
        unbroken`
          ${BAR}|tub|bag|bolsa|humed\w+|wet|damp|hot water|boiling|faster|quicker|better|mejor|mas rapido|
          caliente|milk|leche|juice|zumo|beer|cerveza|wine|vino|ice cubes|oils?|aceites?|freezer|congelador|
          how do i|should i|too little|poca agua|not enough|${HURT}
        `,
      ),
    ],
  ],
  // Grains in a jug, in which lye stands wherever soap is made, unless a colour is named.
  [
    'undissolved-lye',
    [
      said(
        ['granit\\w+|grumit\\w+|grains|granos|little bits|undissolved', 'jug|jarra|pitcher|jarro'],
        unbroken`
          ${BAR}|mica\w*|pigment\w*|colou?r\w*|oxide|oxido|clay|arcilla|coffee|cafe|milk|leche|honey|miel|
          sugar|azucar|salt|sal|oils?|aceites?|masa|batter|${HURT}
        `,
      ),
    ],
  ],
  [
    'water-was-put-on',
    [
      said(
        [
          unbroken`
            (?:added|poured|put|tipped|eche|puse|anadi|verti|eche)(?: \w+){0,2} (?:water|
            agua)(?: \w+){0,2} (?:to|on|onto|over|into|a|sobre|encima de|en)(?: the| la| my| mi)? ${CAUSTIC}
          `,
          unbroken`
            nothing happened|ok(?:ay)? to use|can i (?:still )?use|still (?:good|ok|okay|usable)|usable|
            is it (?:ok|okay|fine|usable)|no paso nada|lo puedo usar|la puedo usar|sirve|vale|se puede usar
          `,
        ],
        `volcan\\w*|erupt\\w*|boil\\w*|foam\\w*|spat|hirvi\\w+|espuma|${HURT}`,
      ),
    ],
  ],
  [
    'honey-in-lye',
    [
      near(
        SWEET,
        unbroken`
          (?:in ?to|in|to|on|with|en|a|al|con)(?: the| my| la| el| mi)? (?:hot |warm |dissolved |
          cold )?(?:agua (?:de|con|antes de)(?: la)? |water before (?:the )?)?${CAUSTIC}
        `,
        10,
      ),
      near(
        '(?:dissolve|put|add|stir|disolver|disuelvo|echar|echo|pongo|poner|anadir)',
        `${SWEET}\\b.{0,12}\\b(?:in|en)(?: the| my| el)? (?:lye water|water (?:before|with) (?:the )?lye|agua (?:antes|con|de)(?: de)?(?: la)? sosa)`,
        8,
      ),
    ],
  ],
  [
    'sugars',
    [
      new RegExp(
        unbroken`
          ^(?:(?:is|can|es|puedo|echar|put|add) )*(?:honey|sugar|miel|azucar) \d+(?: \d+)? ?(?:tablespoons?|
          tbsps?|teaspoons?|tsps?|spoons?|cucharad\w+|g|gr|grams?|gramos?|cups?|tazas?)\b.{0,24}\b(?:in|for|
          per|to|en|por|para|a)\b.{0,8}\b\d
        `,
        'u',
      ),
    ],
  ],
  [
    'alcohol-in-lye',
    [
      said(
        [
          `${SPIRIT}(?: \\w+){0,5} (?:in|into|to|on|en|a|al|con)(?: the| my| hot| la| el| agua de)* ${CAUSTIC}|${CAUSTIC}(?: water)?(?: \\w+){0,4} ${SPIRIT}`,
        ],
        `${FLAME}|bleach|lejia|clean\\w*|disinfect\\w*|desinfect\\w+|spray\\w*|soluble|wine|beer|vino|cerveza|${HURT}`,
      ),
    ],
  ],
  [
    'cooling-lye',
    [
      near(
        '(?:add|put|throw|drop|pour|echar?|echo|poner|pongo|meter|anad\\w+)(?: \\w+)? (?:ice(?: cubes)?|hielos?|cubitos?)',
        `(?:(?:hot|ready|made|the|my|la|al|a|en|in|into|to) )*(?:agua de )?${CAUSTIC}`,
        16,
      ),
      near(
        '(?:ice(?: cubes)?|hielo|cubitos)',
        `(?:in ?to|on ?to|on|to|a|en|sobre)(?: the| la| my| mi)? (?:hot |very hot )?(?:agua de )?${CAUSTIC}(?: water)?(?: \\w+)? ?(?:hot|caliente)?`,
        4,
      ),
    ],
  ],
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
