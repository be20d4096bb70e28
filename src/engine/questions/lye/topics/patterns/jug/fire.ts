import { unbroken } from '../../../../../over-lines.ts';
import { LYE, near, SOAP, type TopicPatterns } from '../topic.ts';

/** Beside water, soda alone is the caustic one in much of America. */
const LYE_OR_SODA = `(?:${LYE}|soda(?! (?:ash|crystals|water|bicarb|bread)))`;

const SPIRIT =
  '(?:alcohol|ethanol|isopropyl|isopropanol|methylated spirits?|rubbing alcohol|surgical spirit|vodka|etanol|isopropilico|aguardiente)';
const FIRE = unbroken`
  (?:gas (?:stove|hob|cooker|ring|burner|flame|oven|fire)|stove|hob|cooker|candles?|open fire|(?:naked |
  open )?flames?|burner|fireplace|cigarettes?|smoking|lighter|hot ?plate|velas?|llamas?|fuego|hornillos?|
  cocina de gas|(?:a|al) gas|gas (?:encendido|prendido|abierto)|fogon(?:es)?|estufas?|mechero|cigarrillos?|
  chimenea|vitro\w*)
`;
const HOT_LIQUID = unbroken`
  (?:(?:hot|boiling|freshly (?:brewed|boiled|made)|just boiled|steaming) (?:\w+ )?(?:coffee|tea|milk|broth|
  stock|juice|beer|wine|cream)|(?:cafe|te|leche|caldo|zumo|jugo|cerveza|vino|nata|
  infusion)(?: de \w+)? (?:bien |muy |recien )?(?:calientes?|hirviendo|hervid[oa]|hech[oa]))
`;
const HEAT =
  '(?:heat|reheat|re heat|warm|warm up|boil|reboil|cook|calent\\w+|recalent\\w+|hervir\\w*|hiervo|cocer)';
const BLEACH = '(?:bleach|hypochlorite|lejia|cloro|lavandina|hipoclorito)';
const MIXED_WITH = unbroken`
  (?:alcohol|vinegar|ammonia|(?:citric |muriatic |hydrochloric )?acid|lemon|toilet cleaner|peroxide|vinagre|
  amoniaco|acido|limon|salfuman|agua fuerte|agua oxigenada)
`;
const POOL = unbroken`
  (?:(?:swimming )?pool (?:chlorine|shock|granules|tablets|cleaner)|chlorine (?:granules|tablets)|
  calcium hypochlorite|cloro (?:de|para)(?: la)? piscinas?|pastillas de cloro)
`;
const ULTRAMARINE = '(?:ultramarines?|ultramar(?:ino)?)';
const IRON_BLUE =
  '(?:prussian blue|milori blue|iron blue|azul (?:de )?prusia|(?:ferric )?ferrocyanide|ferrocianuro)';
const ACID = unbroken`
  (?:vinegar|(?:citric|lactic|acetic|tartaric|ascorbic|fruit) acid|(?<!(?:stearic|palmitic|lauric|myristic|
  oleic|fatty|hyaluronic) )acids?(?! (?:green|yellow|verde|amarillo))|lemon juice|lemon (?=on|over|to|
  and rub)|squeezed lemon|vinagre|acidos?(?: citrico| lactico)?(?! (?:verde|hialuronico|estearico|palmitico|
  laurico|oleico|grasos?))|(?:zumo|jugo) de limon|limon (?=sobre|en|al|encima|con))
`;
/** What is said not to be there. */
const NONE = '(?:no|not|without|not adding|not using|isn t|sin|no uso|ni)';
const POUR =
  '(?:put|add|pour|goes?|tip|sprinkle|mix|echa\\w*|echo|poner|pongo|va|cae|vierto|verter|anad\\w+|primero)';
const THE = '(?:the |my |el |la |al )?';

/** Of what burns, boils over or gives off gas: spirits, hot oil and liquids, cleaners, acids, and which goes into which; plain text. */
export const FIRE_PATTERNS: TopicPatterns = [
  ['alcohol-and-fire', [near(SPIRIT, FIRE, 60), near(FIRE, SPIRIT, 60)]],
  [
    'smoking-oil',
    [
      near(
        '(?<!(?:towel|rag|cloth|trapo|toalla|pano) (?:with|con) (?:\\w+ )?)(?:oils?|fats?|aceites?|grasas?)',
        unbroken`
          (?:(?:is|are|has|started|starts|esta|empieza a|ha empezado a) )?(?:smok(?:e|es|ing|ed)|humea\w*|
          humear|ech(?:a|ando) humo|saca humo)(?! (?:scent|fragrance|bar))
        `,
        12,
      ),
      near('smoking|humeante|humeando', 'oils?|fats?|aceites?|grasas?', 8),
    ],
  ],
  [
    'hot-liquid',
    [
      near(LYE, HOT_LIQUID, 40),
      near(HOT_LIQUID, LYE, 40),
      near(HOT_LIQUID, '(?:instead of|in place of|en (?:vez|lugar) de)(?: the| el)? (?:water|agua)', 8),
    ],
  ],
  [
    'heating-lye',
    [
      near(
        `(?:can i|could i|should i|may i|do i|how do i|puedo|se puede|debo|hay que|como)(?: \\w+)? ${HEAT}|^${HEAT}`,
        `${LYE}(?! (?:soap|bar))`,
        10,
      ),
      near(
        `${LYE}(?: (?:water|solution))?`,
        unbroken`
          (?:can i|could i|should i|puedo|se puede|debo|hay que)?(?: \w+)? ?(?:la |it |
          to )?${HEAT}(?: it)?\b(?! (?:water|agua|milk))\b.{0,30}\b(?:fuego|microwave|microondas|stove|hob|
          again|up|flame|de nuevo|otra vez)
        `,
        40,
      ),
    ],
  ],
  [
    'lye-into-water',
    [
      near(
        `${LYE}`,
        `(?:in ?to|to|in|over|on ?to|on|al|a la|sobre|en)(?: el| the)? (?:water|agua)\\b.{0,12}\\b(?:or|o)\\b.{0,12}\\b(?:water|agua)`,
        6,
      ),
      near(
        '(?:water|agua)',
        `(?:in ?to|to|over|on ?to|on|in|a|sobre|en)(?: the| la)? ${LYE}\\b.{0,12}\\b(?:or|o)\\b.{0,12}\\b${LYE}\\b.{0,16}\\b(?:water|agua)`,
        6,
      ),
      near(
        `(?:first|primero|goes first|va primero|va antes)`,
        `(?:${THE}water|${THE}agua)\\b.{0,16}\\b(?:or|o|then|and|y luego|luego|y)\\b.{0,12}\\b${LYE_OR_SODA}`,
        16,
      ),
      near(
        `(?:first|primero|goes first|va primero|va antes)`,
        `${LYE_OR_SODA}\\b.{0,16}\\b(?:or|o|then|and|y luego|luego|y)\\b.{0,12}\\b(?:water|agua)`,
        16,
      ),
      near('snow|nieve|la nieve', `(?:lake|lago)\\b.{0,30}\\b${LYE}`, 30),
      near(
        `(?:how|como|what happens|que pasa|does|is it|when)(?: \\w+){0,4} ${POUR}`,
        `${LYE}(?: \\w+)? (?:in|into|to|al|en el|en)(?: the| cold)? (?:water|agua)(?! (?:bottle|jar))`,
        16,
      ),
    ],
  ],
  [
    'lye-with-cleaner',
    [
      near(POOL, `${LYE}|${SOAP}|batter|masa|mou?lds?|moldes?`, 40),
      near(`${LYE}|${SOAP}|batter|masa`, POOL, 40),
    ],
  ],
  [
    'bleach-mixed',
    [
      near(BLEACH, `(?:with|and|plus|con|y|mas)(?: \\w+)? ${MIXED_WITH}`, 6),
      near(MIXED_WITH, `(?:with|and|plus|con|y|mas)(?: \\w+)? ${BLEACH}`, 6),
    ],
  ],
  [
    'ultramarine-acid',
    [
      new RegExp(
        `^(?!.*\\b${NONE} (?:\\w+ )?${ACID})(?:.*\\b${ULTRAMARINE}\\b.{0,60}\\b${ACID}|.*\\b${ACID}.{0,60}\\b${ULTRAMARINE}\\b)`,
        'u',
      ),
    ],
  ],
  ['prussian-acid', [near(IRON_BLUE, ACID, 60), near(ACID, IRON_BLUE, 60)]],
  [
    'aluminium',
    [
      near(LYE, '(?:tin ?)?foil|papel de (?:aluminio|plata)', 40),
      near('(?:tin ?)?foil|papel de (?:aluminio|plata)', `(?<!not in )${LYE}`, 40),
    ],
  ],
];
