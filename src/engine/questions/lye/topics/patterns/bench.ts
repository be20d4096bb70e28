import { unbroken } from '../../../../over-lines.ts';
import { HURT, said } from '../care-words.ts';
import { LYE, MAY, near, type TopicPatterns } from './topic.ts';
import { WEIGHED_PATTERNS } from './weights/weighed.ts';

const CAUSTIC = `(?:${LYE}|lye water|soap batter|batter|raw soap|jabon crudo|masa)`;
const TOOL = unbroken`
  (?:spoons?|spatulas?|whisk|sticks?|pots?|pans?|bowls?|jugs?|cans?|mou?lds?|trays?|flask|blender|
  cuchar(?:a|on)s?|espatulas?|varilla|palo|ollas?|cazos?|bol(?:es)?|jarras?|latas?|moldes?|termo|batidora)
`;
const STUFF = unbroken`
  (?:wood(?:en)?|bamboo|silicone|copper|brass|tin|cast iron|iron|non ?stick|enamel(?:led)?|ceramic|plastic|
  madera|bambu|silicona|cobre|laton|lata|hierro|antiadherente|esmaltad[oa]|ceramica|plastico)
`;

const POWDER =
  '(?:mica|titanium dioxide|oxides?|clay|charcoal|powders?|soap dust|dioxido de titanio|oxidos?|arcilla|carbon|polvos?)';

const DUSTY =
  '(?:(?:black |white |fine |colou?red )?dust|powders?|charcoal|micas?|clay|oxides?|titanium dioxide|polvos?|polvillo|carbon|arcilla|oxido|dioxido de titanio)';

/** Of the bench: what is worn, what stirs and holds, how lye is cooled and left, what is weighed; plain text. */
export const BENCH_PATTERNS: TopicPatterns = [
  [
    'gear',
    [
      near(
        'dish ?washing|latex|vinyl|nitrile|rubber|kitchen|household|cotton|latex|nitrilo|goma|cocina|fregar|algodon',
        'gloves|guantes',
        12,
      ),
      near('respirator|face mask|mask|gas mask|mascarilla|respirador', LYE, 40),
    ],
  ],
  [
    'no-goggles',
    [
      /\b(?:glasses|spectacles|reading glasses|gafas de (?:ver|leer|vista)|lentes)\b.{0,30}\b(?:enough|ok|okay|fine|instead|bastan|sirven|valen)\b/u,
    ],
  ],
  [
    'dust',
    [
      near('mask|respirator|mascarilla|cubrebocas', POWDER, 30),
      near(
        POWDER,
        'mask|respirator|mascarilla|broom|sweep|vacuum|dangerous|lungs|inhale|escoba|barrer|aspirar|peligros\\w+',
        40,
      ),
      near('sweep|vacuum|brush up|barrer|aspirar', POWDER, 20),
      said(
        [
          DUSTY,
          'breath(?:e|ing|ed)|lungs?|inhal\\w*|respir\\w+|pulmon\\w*|aspir\\w+',
          'problem|bad|safe|danger\\w*|harm\\w*|ok|okay|worr\\w+|toxic\\w*|should i|is (?:it|that)|malo|peligros\\w*|segur[oa]|pasa algo|problema|dano',
        ],
        `${LYE}|soda|${HURT}`,
      ),
      said(
        [
          DUSTY,
          unbroken`
            poof\w*|puff(?:s|ing|ed)?|(?:fl(?:y|ies|ying|ew)|goes|went|gets|
            blows) (?:\w+ ){0,2}(?:everywhere|all over|up|around|off)|clouds? of|vuela\w*|volando|
            se levanta|nube de
          `,
        ],
        `${LYE}|soda|how much|cuant[oa]|wet\\w*|moj\\w*|humed\\w*|dispers\\w*|oil or water|water or oil|agua o aceite|aceite o agua|${HURT}`,
      ),
    ],
  ],
  [
    'cooling-lye',
    [
      near(
        LYE,
        unbroken`
          (?:in ?to|in|with|to|en|con|a)\b.{0,12}\b(?:hot|boiling|warm|caliente|hirviendo|
          tibia)\b(?: \w+)? ?(?:water|agua)|(?:water|agua) (?:caliente|hirviendo|tibia)
        `,
        24,
      ),
      near('hot|boiling|warm', `water\\b.{0,24}\\b(?:dissolv\\w*|for|melt|with)\\b.{0,16}\\b${LYE}`, 6),
      near(
        'ice|hielo|cold water|agua fria',
        `(?:to|in ?to|in|a|al|en)\\b.{0,12}\\b(?:hot )?(?:${LYE})\\b`,
        12,
      ),
      near(
        MAY,
        `${LYE}\\b.{0,20}\\b(?:freezer|fridge|refrigerator|ice bath|congelador|nevera|refrigerador|heladera|frigorifico)`,
        30,
      ),
    ],
  ],
  [
    'unattended',
    [
      near(
        'leave|leaving|left|dejar|dejo',
        `${LYE}\\b.{0,40}\\b(?:over ?night|unattended|alone|uncovered|open|hours?|sol[oa]|noche|sin tapar|destapad[oa]|horas?)`,
        16,
      ),
    ],
  ],
  [
    'zap-test',
    [
      new RegExp(
        unbroken`
          ^(?:(?:ok|so|and|y|pero|hey|the|a|la) )*(?:(?:what ?s|what is|how (?:do i|to)(?: do)?|
          que es(?: eso de)?|como (?:se hace|hago)|en que consiste) (?:an? |the |la |el )?(?:(?:zap|
          tongue) ?test|(?:prueba|test) (?:de|en|con) la lengua)|(?:zap|
          tongue) ?test(?: what ?s| what is| how)(?: (?:that|it|is|do i do it))*|(?:prueba|test) (?:de|
          con) la lengua (?:que es|como se hace)(?: eso)?)[ ?!.]*$
        `,
        'u',
      ),
    ],
  ],
  [
    'zap-test',
    [near('lick|taste|tongue|lamer|lengua|saborear', 'spoon|batter|raw|trace|cuchara|masa|crudo|traza', 30)],
  ],
  ...WEIGHED_PATTERNS,
  [
    'hot-oven',
    [
      near(
        'soap|loaf|mou?ld|jabon|molde',
        'radiator|heating pad|electric blanket|hair dryer|heater|radiador|manta electrica|estufa',
        30,
      ),
    ],
  ],
  [
    'microwave',
    [
      near(
        `${MAY}\\b.{0,30}\\b(?:soap|loaf|bars?|jabon)`,
        '(?:in|en)(?: the| a| el| un)? (?:microwave|microondas)',
        16,
      ),
    ],
  ],
  [
    'when-safe',
    [
      near(
        'raw soap|fresh soap|new soap|uncured soap|jabon (?:fresco|crudo|nuevo|sin curar)',
        'safe|wash|use|give|gift|present|segur[oa]|lavar\\w*|usar|regalar',
        30,
      ),
      near(
        '(?:can|could|may) i (?:use|give|gift|sell)|puedo (?:usar|regalar|vender)',
        String.raw`(?:fresh|raw|new|uncured) soap|soap (?:after|in) \d+ (?:hours?|days?)|jabon (?:fresco|crudo|a los \d+ dias)`,
        12,
      ),
    ],
  ],
  [
    'children',
    [
      near(
        'how (?:far|close)|can|could|may|should|puede|pueden|debo',
        unbroken`
          (?:dogs?|cats?|pets?|puppy|kitten|perr[oa]s?|gat[oa]s?|mascotas?)\b.{0,40}\b(?:mix|near|next to|
          room|while|around|cerca|cuarto|mientras|lado)\b.{0,24}\b(?:lye|soap|batter|curing|sosa|jabon|
          curando|curado)
        `,
        30,
      ),
      near(
        'how (?:far|close)|where',
        String.raw`(?:dog|cat|pet|perro|gato|mascota)s?\b.{0,24}\b(?:when|while|cuando|mientras)\b.{0,24}\b(?:lye|soap|sosa|jabon)`,
        30,
      ),
    ],
  ],
  [
    'vessel',
    [
      near(`${STUFF} ${TOOL}|${TOOL} de ${STUFF}`, `${CAUSTIC}|soap|jabon|mou?ld|molde`, 50),
      near(`${CAUSTIC}|soap|jabon`, `${STUFF} ${TOOL}|${TOOL} de ${STUFF}`, 50),
      near(CAUSTIC, 'flask|termo', 24),
      near(
        'soap pot|soap pan|lye jug|lye pot|soap blender|olla de(?:l)? jabon',
        'cook\\w*|food|eat\\w*|kitchen|cocinar|comida',
        40,
      ),
      near(
        'blender|pot|pan|bowl|batidora|olla',
        'also (?:use )?for food|for cooking|tambien para (?:comida|cocinar)',
        24,
      ),
    ],
  ],
  [
    'vessel',
    [
      near(
        '(?:can|could|should|may) (?:i|we)|is it (?:ok|okay|safe) to|puedo|se puede',
        unbroken`
          ${LYE}\b.{0,16}\b(?:in|with|en|con)\b.{0,24}\b(?:jugs?|bowls?|pots?|pans?|buckets?|containers?|
          cups?|stainless(?: steel)?|plastic|jarras?|ollas?|cubos?|recipientes?|acero(?: inoxidable)?|
          plastico)
        `,
        20,
      ),
    ],
  ],
];
