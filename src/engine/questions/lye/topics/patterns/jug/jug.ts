import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, said } from '../../care-words.ts';
import { near, type TopicPatterns } from '../topic.ts';
import { VESSEL_PATTERNS } from './vessel.ts';

const LYE_WATER = `(?:${CAUSTIC}(?: water| solution| mix)?|lejia|(?:agua|disolucion|solucion) de ${CAUSTIC}|my jug|the jug|la jarra)`;
const BAR =
  'soap (?:is|has|got|turned)|bars?|loaf|batter|masa|jabon|pastillas?|swirl|mica|mou?ld|molde|pigment\\w*';
const SPIRIT =
  '(?:vodka|gin|rum|whisk(?:e?y)|tequila|brandy|rubbing alcohol|isopropyl(?: alcohol)?|ethanol|alcohol|aguardiente|ginebra|ron|orujo)';
const FLAME =
  'flames?|stove|candles?|hob|gas|fire|lighter|llamas?|vela|fuego|cigar\\w+|fum\\w+|hornillo|cocina';
const SWEET = '(?:honey|sugar|syrup|molasses|salt|miel|azucar|panela|melaza|sal)';

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
        unbroken`
          ${BAR}|goats?|leche|milk (?!y)|spill\w*|carpet|floor|jar without|unlabel\w+|sin etiqueta|
          how much|(?:used|old|frying|fried|strained) oil|aceite (?:usado|viejo|de freir|reciclado)|
          vision|sight|vista|ojos?|eyes?
        `,
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
  ...VESSEL_PATTERNS,
];
