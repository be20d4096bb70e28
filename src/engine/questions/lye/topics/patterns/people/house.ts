import { unbroken } from '../../../../../over-lines.ts';
import { RAW_BATTER } from '../../things.ts';
import { LYE, near, SOAP, type TopicPatterns } from '../topic.ts';

/** Lye by a name that is no bleach's: "lejía" is both. */
const CAUSTIC = '(?:lye|naoh|caustic soda|sodium hydroxide|sosa(?: caustica)?|soda caustica)';
const CLEANER = unbroken`
  (?:bleach|chlorine|hypochlorite|ammonia|toilet cleaner|descaler|limescale remover|drain (?:opener|
  cleaner)|peroxide|oven cleaner|lejia|cloro|lavandina|amoniaco|agua oxigenada|desatascador|antical|
  limpiahornos|salfuman|acido muriatico|muriatic acid)
`;
const MIX = '(?:mix|combine|use|put|add|pour|together|mezclar|mezclo|juntar|combinar|usar|echar|poner)';
const HOT = '(?:hot|heating up|warm|boiling|caliente|ardiendo|calentando)';
const COLOURS = String.raw`(?:titanium|mica|oxide|ultramarine|dioxido|ultramar|pigment\w*|oils?|olive|coconut|aceites?|plan)`;

const SWEET = '(?:honey|sugar|milk|beer|miel|azucar|leche|cerveza)';

/** Of the rest of a house: its cleaners, its sink, its scents, and how a loaf behaves; plain text. */
export const HOUSE_PATTERNS: TopicPatterns = [
  [
    'hot-loaf',
    [
      near(
        `${SWEET} (?:soap|loaf|bar)|(?:soap|loaf|bar) with ${SWEET}|jabon (?:de|con) ${SWEET}`,
        'towels?|blankets?|wrap\\w*|insulat\\w*|cover\\w*|mantas?|toallas?|tap\\w+|envolver|abrigar',
        40,
      ),
      near(
        'towels?|blankets?|wrap\\w*|insulat\\w*|cover\\w*|mantas?|toallas?|tap\\w+|envolver|abrigar',
        `${SWEET} (?:soap|loaf|bar)|jabon (?:de|con) ${SWEET}`,
        40,
      ),
      near(
        '(?:soap|loaf|mou?ld|jabon|molde)',
        unbroken`
          (?:8[0-9]|9[0-9]|1[01][0-9]) ?(?:degrees |grados )?(?:c|celsius|centigrados?|degrees|
          grados)\b.{0,30}\b(?:what now|normal|ok|okay|too hot|bad|que hago|es normal|demasiado)
        `,
        40,
      ),
    ],
  ],
  [
    'lye-with-cleaner',
    [
      near(MIX, `${CAUSTIC}\\b.{0,16}\\b(?:with|and|plus|con|y|mas)\\b.{0,12}\\b${CLEANER}`, 16),
      near(MIX, `${CLEANER}\\b.{0,16}\\b(?:with|and|to|into|plus|con|y|a|en)\\b.{0,12}\\b${CAUSTIC}`, 16),
      near(`${CAUSTIC} (?:and|y) ${CLEANER}`, 'together|mix|safe|ok|juntos|junto|mezcl\\w*|segur\\w+', 24),
    ],
  ],
  [
    'hot-crack',
    [
      new RegExp(
        unbroken`
          ^(?!.*\b(?:jug|jarra|lye|sosa|pot|olla|erupt\w*|volcan\w*)\b)(?=.*\b(?:loaf|soap|bar|mou?ld|jabon|
          barra|pan|molde)\b)(?=.*\b(?:cracks?|cracked|cracking|split(?:ting)?|grietas?|agrietad[oa]|
          agrieto|se (?:abrio|parte|raja|rajo))\b)(?=.*\b(?:(?:is|its|feels|still|very|so|really|esta|muy|
          sigue)\b.{0,16}\b${HOT})\b)
        `,
        'u',
      ),
    ],
  ],
  [
    'batter-away',
    [
      near(
        `left ?over|extra|excess|sobrante|sobr[oa]\\w*|pour|throw|tip|put|tirar|tiro|echar|verter`,
        `${RAW_BATTER}\\b.{0,24}\\b(?:sink|drain|toilet|bin|trash|garbage|away|out|fregadero|desague|inodoro|basura)`,
        16,
      ),
      near(
        `wash|rinse|clean|lavar|limpiar|fregar`,
        `${RAW_BATTER}\\b.{0,24}\\b(?:sink|drain|dishwasher|fregadero|desague|lavavajillas)`,
        24,
      ),
    ],
  ],
  [
    'safe-test',
    [
      near(
        'how|ways?|what test|como|forma de',
        unbroken`
          (?:test|check|know|tell|be sure|make sure|saber|comprobar|probar|ver)\b.{0,16}\b(?:if|whether|
          that|when|si|que)?\b.{0,16}\b${SOAP}\b.{0,24}\b(?:safe|ready|good to use|okay to use|ok to use|
          segur[oa]|listo|lista)
        `,
        24,
      ),
    ],
  ],
  [
    'soap-ph',
    [
      /\bph\b(?: \w+){0,4} (?:says|is|reads|shows|reading|of|at|marca|dice|da|sale|es|de)(?: \w+){0,2} (?:8|9|1[0-4])\b/u,
    ],
  ],
  [
    'no-superfat',
    [
      near(
        '(?:superfat|sf|sobre ?engrasado|sobregrasa)(?: (?:of|at|is|de|del|al|es))?',
        '(?:0|zero|cero)\\b(?! [1-9]).{0,60}\\b(?:safe|ok|okay|harsh|fine|segur[oa]|bien|reseca)',
        6,
      ),
      near(
        '(?:0|zero|no|cero|sin)(?: (?:percent|por ciento|de))? (?:superfat|sf|sobre ?engrasado|sobregrasa)',
        'safe|ok|okay|harsh|fine|segur[oa]|bien|reseca',
        60,
      ),
    ],
  ],
  [
    'vanillin',
    [
      new RegExp(
        unbroken`
          ^(?!.*\b${COLOURS}\b)(?=.*\b(?:vanillin|vainillina)\b)(?=.*\b(?:\d+|much|how|what|brown|dark|will|
          turn\w*|cuanto|cuanta|que|marron|oscur\w+)\b)
        `,
        'u',
      ),
    ],
  ],
  [
    'aluminium',
    [
      near(
        'alumini?um (?:pot|pan|bowl|saucepan|mou?ld|tray)|(?:olla|cazo|sarten|molde|bandeja) de aluminio',
        `${SOAP}|batter|oils|aceites|masa|ok|okay|safe|vale|sirve`,
        40,
      ),
    ],
  ],
  [
    'clumped',
    [
      near(
        LYE,
        'lumpy|clump\\w*|gone hard|caked|wet|sticky|con grumos|apelmaz\\w+|endurecid\\w+|humed\\w+',
        40,
      ),
    ],
  ],
  [
    'scorched-milk',
    [
      new RegExp(
        unbroken`
          (?=.*\b(?:water|agua|liquid|liquido)\b)(?=.*\b(?:milk|leche)\b)(?=.*\b(?:turned|went|is|goes|
          smells?|stinks?|puso|huele|volvio|esta)\b)(?=.*\b(?:orange|ammonia|burnt|burned|scorched|naranja|
          amoniaco|quemad\w+)\b)
        `,
        'u',
      ),
    ],
  ],
  [
    'baby',
    [
      near(
        'sell|make|making|gift|vender|hacer|regalar',
        `${SOAP}\\b.{0,12}\\b(?:for|para)\\b.{0,12}\\b(?:baby|babies|newborns?|infants?|toddlers?|bebes?|recien nacid[oa]s?)`,
        12,
      ),
    ],
  ],
  [
    'scale-batch',
    [
      near(
        'mou?ld|batch|recipe|molde|lote|receta',
        `(?:twice|double|two times|three times|triple|half|bigger|larger|smaller|doble|triple|mitad|mas grande|mas pequen[oa])\\b.{0,40}\\b(?:${LYE})`,
        24,
      ),
      near(
        `${LYE}`,
        '(?:for|para) (?:a |an )?(?:half|double|twice|triple|medi[oa]|la mitad|el doble)(?: (?:a|an|the|of|de|del))* ?(?:batch|recipe|lote|receta|masa)',
        40,
      ),
    ],
  ],
];
