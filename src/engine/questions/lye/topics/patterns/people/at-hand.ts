import { unbroken } from '../../../../../over-lines.ts';
import { CHILD } from '../../things.ts';
import { LYE, near, SOAP, type TopicPatterns } from '../topic.ts';

const BABY = '(?:baby|babies|newborn|infant|bebes?|recien nacid[oa])';
const BIRD =
  '(?:parrots?|budgies?|canar(?:y|ies)|birds?|parakeets?|loros?|periquitos?|canarios?|pajaros?|cotorras?)';
const NO_AIR =
  '(?:(?:no|without(?: any)?|with no) windows?|windowless|sin (?:ventanas?|ventilacion)|(?:no|without) ventilation|no tiene ventanas?)';
const MAKING = unbroken`
  (?:(?:make|making|mak|do|doing) soap|soap ?making|soaping|(?:mix\w*|dissolv\w*)(?: the| my)? lye|(?:haga|
  hago|hacer|haciendo)(?: el| mi)? jabon(?:es)?|mezcl\w+ (?:la )?sosa)
`;
const WEAK_MASK =
  '(?:(?:paper|cloth|fabric|surgical|dust) masks?|(?<!sin )mascarilla(?: de tela| de papel| quirurgica)?)';
const MIST = '(?:fumes?|vapou?rs?|vapores|steam|mist|hood|campana)';
const BARE_FEET =
  '(?:flip flops|sandals|shorts|barefoot|chanclas|sandalias|pantalon(?:es)? cortos?|descalz[oa])';
/** What a bar did that is made already is for whoever reads flaws. */
const NOT_TOLD =
  '(?!.*\\b(?:i put|le puse|puse|usamos|used|stayed|floated|quedo|quedaron|went|wrong|salio|mancha|stains|shaved)\\b)';
const CRAFT =
  '(?:resin(?: craft| art| casting)?|epoxy|artists?|art (?:shop|store)|nail art|nails|polymer clay|resina|epoxi|bellas artes|manualidades|unas)';
const SCRAP = unbroken`
  (?:rust (?:powder|off|from|of)|rusty nails?|brick (?:dust|powder)|(?:ground|crushed) bricks?|
  polvo de ladrillos?|ladrillos? (?:molid|machacad|picad)[oa]s?|(?:bronze|brass) powder|iron filings|
  oxido de clavos?|herrumbre|polvo de (?:bronce|laton)|(?:bbq|barbecue|grill) (?:charcoal|coal|ash)|
  charcoal (?:from|of) (?:the )?(?:barbecue|bbq|grill)|carbon de (?:la )?barbacoa)
`;
const GROUND =
  '(?:soaps?|jabon(?:es)?|colou?r|color|masa|batter|molid[oa]|machacad[oa]|crushed|ground|gold|brown|red|black|puedo|can i)';
const COLOUR_STUFF = unbroken`
  (?:micas?|pigments?|powders?|colou?rs?|dyes?|oxides?|chrom\w+(?: \w+)? green|green|blue|red|yellow|
  ultramarine|pigmentos?|polvos?|colorantes?|tintes?|oxidos?|cromo)
`;
const IN_SOAP = `(?:${SOAP}|cp|batter|masa|colou?r|violet|purple|swirl|color)`;

/** Of who stands near and what is worn, and of what else is at hand to colour or fill soap; plain text. */
export const AT_HAND_PATTERNS: TopicPatterns = [
  [
    'zap-child',
    [
      near('zap ?test|tongue test|(?:prueba|test) de la lengua|lick(?:ing)? test', CHILD, 30),
      near(
        CHILD,
        '(?:do|does|doing|try|hac\\w+|haga\\w*)\\b.{0,16}\\b(?:zap ?test|tongue test|(?:prueba|test) de la lengua)',
        20,
      ),
    ],
  ],
  [
    'hands-full',
    [
      near(
        LYE,
        unbroken`
          (?:on the phone|phone in|hablo por telefono|telefono en|movil en|kid on my|(?:${BABY}|
          ${CHILD}) (?:on|in) my (?:arms?|hip|back|lap)|(?:${BABY}|${CHILD}) en (?:brazos|el brazo|
          la espalda)|cigarette|cigarrillo|fumando|drunk|after (?:a )?wine)
        `,
        40,
      ),
      near(
        unbroken`
          on the phone|hablo por telefono|${BABY} (?:on|in) my (?:arms?|hip|back|lap)|${BABY} en (?:brazos|
          el brazo|la espalda)|cigarette|cigarrillos?|fumar|fumando|smoke a
        `,
        LYE,
        40,
      ),
    ],
  ],
  [
    'bare-hands',
    [
      near(
        'bare ?hand(?:s|ed)?|manos desnudas|mano descubierta|sin guantes',
        'wash\\w*|bowls?|pots?|clean\\w*|cut\\w*|unmou?ld\\w*|batter|mix|stir|raw|soap|lav\\w+|fregar|friego|cort\\w+|desmold\\w+|masa|cuenco|olla|crudo|jabon',
        40,
      ),
      near(
        unbroken`
          ^(?!.*\b(?:how long|how soon|when|cuando|cuanto tiempo|until|hasta)\b).*\b(?:wash\w*|clean\w*|cut|
          unmou?ld\w*|touch|lav\w+|fregar|friego|cort\w+|desmold\w+|tocar)
        `,
        'bare ?hand(?:s|ed)?|manos desnudas|mano descubierta|sin guantes',
        50,
      ),
    ],
  ],
  ['birds', [near(BIRD, `${LYE}|${MAKING}`, 40), near(`${LYE}|${MAKING}`, BIRD, 50)]],
  [
    'no-window',
    [
      near(NO_AIR, `${MAKING}|jabon|soap|class|clase|taller|${LYE}`, 50),
      near(`${MAKING}|soap|jabon|class|clase|taller|${LYE}`, NO_AIR, 50),
      near(`${MAKING}|${LYE}`, '(?:in|en) (?:a|the|my|our|el|un|mi) (?:cellar|basement|sotano)', 30),
    ],
  ],
  [
    'weak-gear',
    [
      near(WEAK_MASK, MIST, 50),
      near(MIST, WEAK_MASK, 50),
      near(BARE_FEET, `${MAKING}|${LYE}`, 40),
      near(`${MAKING}|${LYE}`, BARE_FEET, 40),
      near('sun ?glasses|gafas de sol', `${LYE}|soap|jabon`, 40),
    ],
  ],
  [
    'craft-colour',
    [
      new RegExp(
        `^${NOT_TOLD}(?=.*\\b${IN_SOAP}\\b).*\\b${COLOUR_STUFF}\\b.{0,12}\\b(?:for|from|meant for|sold for|para|de)(?: the| my| a| la| el)? ${CRAFT}\\b`,
        'u',
      ),
      near(COLOUR_STUFF, 'artists? (?:grade|quality)|(?:grado|calidad) (?:artist\\w+|bellas artes)', 20),
      new RegExp(
        `^${NOT_TOLD}.*\\b(?:(?:clothes|clothing) dye(?: powder)?|hair dye powder|nail (?:varnish|polish)|(?:esmalte|laca) de unas)\\b.{0,20}\\b${IN_SOAP}\\b`,
        'u',
      ),
      near('henna', 'black|negra|stall|mercadillo|puesto', 30),
      near('black|negra', 'henna', 4),
    ],
  ],
  [
    'ground-stuff',
    [
      new RegExp(
        `^${NOT_TOLD}(?:.*\\b${SCRAP}\\b.{0,40}\\b${GROUND}\\b|.*\\b${GROUND}\\b.{0,24}\\b${SCRAP}\\b|${SCRAP}$)`,
        'u',
      ),
    ],
  ],
  [
    'filler',
    [
      near(
        'plaster(?: of paris)?|gypsum|yeso|escayola|talc(?:um)?(?: powder)?|baby powder|talco(?: de bebe)?|polvos de talco',
        `${SOAP}|batter|masa|hard|dur[oa]`,
        40,
      ),
      near(`${SOAP}|batter|masa`, 'plaster of paris|gypsum|yeso|escayola|talc(?:um)?|baby powder|talco', 30),
    ],
  ],
  [
    'microwave',
    [
      near(
        'rebatch\\w*|refund\\w*|melt\\w*|derret\\w+|recocer',
        '(?:in |en )?(?:the |a |el )?(?:microwave|microondas)',
        30,
      ),
      near('microwave|microondas', 'rebatch\\w*|refund\\w*|scraps|restos', 30),
    ],
  ],
  [
    'lye-by-food',
    [
      near(
        `${LYE}`,
        '(?:fridge|refrigerator|pantry|larder|nevera|frigorifico|heladera|despensa)\\b.{0,40}\\b(?:milk|food|flour|next to|leche|comida|harina|al lado|junto)',
        40,
      ),
      near(
        LYE,
        '(?:beside|next to|with|al lado de|junto a)(?: the| la| el)? (?:food|flour|sugar|salt|milk|comida|harina|azucar|sal|leche)\\b',
        20,
      ),
    ],
  ],
];
