import { CAUSTIC, HURT, said } from '../../care-words.ts';
import { near, type TopicPatterns } from '../topic.ts';
import { MAKERS_PATTERNS } from './makers.ts';

const SOAP = '(?:soaps?|bars?|jabon(?:es)?|pastillas?)';

const ACID = '(?:vinegar|vinagre|lemon|limon|acid|acido)';

/** Of who makes soap, and what stands and happens around; plain text. */
export const AROUND_PATTERNS: TopicPatterns = [
  [
    'batter-in-hair',
    [
      near(
        `(?:batter|raw soap|${CAUSTIC}(?: water)?|masa|jabon crudo)`,
        '(?:in|into|on|en|por)(?: the| my| her| his| our| el| mi| su| todo el)* (?:\\w+ )?(?:hair|pelo|cabello|beard|barba|scalp|cabeza)',
        16,
      ),
      near(
        '(?:hair|beard|pelo|barba)',
        `(?:is )?(?:full of|has|got|covered in|lleno de|con|tiene)(?: \\w+)? (?:batter|raw soap|masa|${CAUSTIC})`,
        8,
      ),
    ],
  ],
  [
    'soap-in-eye',
    [
      near(
        `(?:${SOAP}|lather|suds|espuma)`,
        '(?:in|into|en)(?: the| my| her| his| one| mi| el| los| un| su)* (?:eyes?|ojos?)',
        20,
      ),
    ],
  ],
  [
    'red-skin',
    [
      said(
        [
          SOAP,
          '(?:wash\\w*|bath\\w*|used|lav\\w+|ban\\w+|us[eo])',
          'skin|piel|face|bottom|arms?|hands?|cara|culito|brazos?|manos?',
          'red|rash|sore|itch\\w*|dry and red|roj[oa]s?|irritad[oa]s?|enrojec\\w+|granitos|picor',
        ],
        'colou?r\\w*|dye\\w*|mica|stain\\w*|mancha\\w*|tin[et]\\w*|pigment\\w*|clay|oxide',
      ),
    ],
  ],
  [
    'blocked-sink',
    [
      said(
        [
          'sink|drain|pipes?|toilet|wc|shower tray|fregadero|desague|tuberias?|lavabo|sifon',
          'block\\w*|clog\\w*|stuck|won ?t drain|backed up|atasc\\w+|taponad\\w+|tapad[oa]|obstruid\\w+|no traga',
          'soap|batter|masa|jabon',
        ],
        'drain (?:cleaner|opener)|desatascador|to make soap|para hacer jabon',
      ),
    ],
  ],
  [
    'bleach-went-in',
    [
      said(
        [
          `(?:i (?:have )?(?:mixed|put|added|poured)|mezcle|eche|puse|anadi|he (?:mezclado|echado|puesto))(?: \\w+){0,5} (?:bleach|lejia|lavandina|cloro)`,
          '(?:lye|naoh|sosa|caustic soda|soap|batter|jabon|masa)',
        ],
        `${ACID}|ammonia|amoniaco|alcohol|pot|olla|floor|suelo|${HURT}`,
      ),
    ],
  ],
  [
    'lye-with-cleaner',
    [
      said(
        ['ammonia|amoniaco', `${CAUSTIC}`, 'soap|jabon|mix\\w*|mezcl\\w+|with|con|y|and'],
        `milk|leche|smell\\w*|huele|olor|orange|naranja|${HURT}|mixed|mezcle`,
      ),
    ],
  ],
  [
    'bleach',
    [
      near(
        'lejia|bleach|cloro|lavandina',
        '(?:en (?:vez|lugar) de|instead of|in place of|por)(?: la| the)? (?:sosa|lye|naoh|caustic soda)',
        2,
      ),
    ],
  ],
  [
    'no-lye-in-it',
    [
      near(
        '(?:salt|sugar|flour|sal|azucar|harina)',
        `(?:instead of|in place of|rather than|en (?:vez|lugar) de)(?: the| my| la| mi)? ${CAUSTIC}`,
        4,
      ),
    ],
  ],
  [
    'blender-smokes',
    [
      said(
        [
          '(?:(?:stick |hand )?blender|mixer|batidora|minipimer|licuadora)',
          'smok(?:es|ing|ed)|smoke|humo|humea\\w*|(?:smells?|huele a?) (?:burnt|burned|quemad[oa])|overheat\\w*|se (?:quema|calienta mucho)',
        ],
        `shock|spark\\w*|chispas?|calambre|batter is|pot (?:is )?(?:boil|smok)\\w*|fire|fuego|llamas?|flames?`,
      ),
    ],
  ],
  ...MAKERS_PATTERNS,
];
