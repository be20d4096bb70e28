import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, KID, MAKING, PET, said } from '../../care-words.ts';
import { near, type TopicPatterns } from '../topic.ts';

const SOAP = '(?:soaps?|bars?|jabon(?:es)?|pastillas?)';
const SOAPY = `(?:${SOAP}|batter|masa|${CAUSTIC}|jabon)`;
const ACID = '(?:vinegar|vinagre|lemon|limon|acid|acido)';

/** Of who and what else of the house comes near soap, and what is worn; plain text. */
export const LATER_PATTERNS: TopicPatterns = [
  [
    'children',
    [
      said(
        [
          `(?:with|con)(?: my| mis?| the| los| las| our)?(?: \\w+)? ${KID}`,
          `(?:make|making|do|hacer|haciendo|hago)(?: \\w+)? (?:soap|jabon(?:es)?)|soap ?making|soaping`,
        ],
        `melt and pour|glicerina|without lye|sin sosa|colou?r\\w*|colores|${HURT}|how much|cuant[oa]`,
      ),
      said(
        [
          unbroken`
            ${KID}(?: \w+){0,3} (?:\d{1,2}|five|six|seven|eight|nine|ten|seis|siete|ocho|nueve|
            diez)(?: years?| anos| and| y|$)|\d{1,2} (?:year old|years old|anos)
          `,
          '(?:wants?|can|could|may|quiere|puede|me)(?: \\w+){0,3} (?:stir|mix|help|pour|make|remov\\w+|mezcl\\w+|ayud\\w+|echar|hacer)',
          `${SOAPY}|trace|traza`,
        ],
        `melt and pour|adults?|mayores|${HURT}|soap from|old soap|grandm\\w+`,
      ),
      said(
        [
          `${PET}`,
          '(?:kitchen|room|near|beside|next to|cocina|cuarto|habitacion|al lado|cerca|esta|is)',
          MAKING,
        ],
        `${HURT}|ate|eats|eating|drinks?|drinking|vomit\\w*|shak\\w*|limp\\w*|walked|stepped|ran|piso|comio|bebe|tiembl\\w*|cojea|paws?|patas?|wash|shampoo`,
      ),
    ],
  ],
  [
    'no-window',
    [
      said(
        [
          'bathroom|bano|toilet|shower room|closet|cupboard|pantry|trastero|garage|garaje',
          '(?:door|doors) (?:closed|shut)|closed door|puerta cerrada|cerrad[oa]|locked',
          'soap|jabon|mix\\w*|mezcl\\w+',
        ],
        HURT,
      ),
      said(
        [
          '(?:cooker |extractor |kitchen )?hood|extractor(?: fan)?|campana(?: extractora)?',
          'enough|ok|okay|instead of|will do|sirve|vale|basta|suficiente|ventilacion|ventilation',
          'soap|jabon|lye|sosa|ventil\\w+|extractora',
        ],
        `${HURT}|alumini\\w+|fire|fuego|grease|grasa|smok\\w*`,
      ),
    ],
  ],
  [
    'asthma',
    [
      said(
        [
          '(?:i have|tengo) (?:asthma|asma|copd|epoc)',
          'windows?|ventanas?|kitchen|cocina|room|air|ventil\\w+',
        ],
        `attack|ataque|${HURT}|wheez\\w*|can ?t breathe|no puedo respirar|now|ahora`,
      ),
    ],
  ],
  [
    'acid-on-soap',
    [
      said([
        ACID,
        `excess ${CAUSTIC}|${CAUSTIC} heavy|too much ${CAUSTIC}|exceso de ${CAUSTIC}|${CAUSTIC} de mas`,
        'fix\\w*|mends?|removes?|takes?|drops?|quita\\w*|arregla\\w*|elimina\\w*|gotas',
      ]),
    ],
  ],
  ['pets-washed', [said(['tea tree|arbol de te', PET, 'soap|jabon'], HURT)]],
  [
    'scorched-milk',
    [
      said(
        [
          'milk|leche',
          '(?:smells?|stinks?|reeks?)(?: \\w+)? (?:of|like) ammonia|(?:huele|apesta|olor) a amoniaco',
        ],
        `bleach|lejia|cloro|clean\\w*|limpi\\w+|${HURT}`,
      ),
    ],
  ],
  [
    'gear',
    [
      said(
        [
          unbroken`
            (?:hair dye|latex|vinyl|garden|cotton|wool(?:len)?|leather|disposable|washing up|kitchen|
            food) gloves|guantes de (?:tinte|lana|latex|vinilo|jardin|algodon|cocina|fregar|cuero)|(?:ski|
            swimming|swim|diving|cycling|reading) (?:goggles|glasses)|gafas de (?:buceo|nadar|natacion|
            piscina|esqui|leer|bici)
          `,
          'ok|okay|enough|fine|for|safe|wear|lye|soap|vale\\w*|sirve\\w*|para|jabon|sosa',
        ],
        HURT,
      ),
      said(
        [
          unbroken`
            (?:mask|mascarilla|respirator)(?: \w+)? (?:needed|necessary|hace falta|necesari\w+|
            obligatori\w+)|(?:do i need|need|necesito|hace falta)(?: \w+)? (?:mask|mascarilla|respirator)
          `,
        ],
        `${HURT}|powders?|mica|dust|polvos?|pigment\\w*|oxides?|clays?|arcillas?`,
      ),
    ],
  ],
  [
    'weak-gear',
    [
      said(
        [
          'barefoot|bare feet|wear shorts|in shorts|short sleeves|en pantalon corto|descalz[oa]|in socks|en calcetines',
          'can i|may i|ok|puedo|do it|soap|jabon|lye|sosa|hacerlo',
        ],
        HURT,
      ),
    ],
  ],
  [
    'back-to-food',
    [
      said(
        [
          '(?:blender|beaker|batidora|vaso de la batidora|minipimer|food processor|robot de cocina|robot de cocina)',
          'mayonnaise|mayonesa|smoothies?|food|soup|sopa|pures?|comida|gazpacho',
          'can i|ok|use|puedo|usar|vale|sirve',
        ],
        HURT,
      ),
      near(
        '(?:eat|cook|comer|cocinar|guisar)',
        '(?:from|with|in|out of|con|en|de)(?: the| my| same| la| el| mi| misma)* (?:pot|pan|bowl|olla|cazo|cazuela|plato)\\b.{0,40}\\b(?:soap|jabon|sosa|lye)',
        4,
      ),
    ],
  ],
  [
    'other-alkali',
    [
      said(
        [
          unbroken`
            (?:wood|hardwood|fireplace|stove|oak|beech) ash(?:es)?|(?:from|of) (?:wood )?ashes|ashes|
            cenizas?(?: de (?:madera|lena|chimenea|roble|encina|haya))?|potash (?:from|water)|
            floats? an egg|flota (?:un|el) huevo
          `,
          'lye|potash|soap|egg|lejia|jabon|huevo|potasa|sosa|strong',
        ],
        'soda ash|ceniza de sosa|or ash|o ceniza|white|blanc[oa]|on top|encima|barbecue|bbq|barbacoa|colou?r\\w*|color|volcanic|swirl',
      ),
    ],
  ],
  [
    'hot-oven',
    [
      said(
        ['oven|horno', 'honey|milk|sugar|beer|miel|leche|azucar|cerveza', 'soap|jabon|loaf|molde|mou?ld'],
        'clean|frozen|melt',
      ),
      said([
        '(?:soap|loaf|jabon|molde)',
        '(?:oven|horno)(?: \\w+){0,3} (?:1[5-7]\\d ?(?:f|fahrenheit)|(?:6[5-9]|7\\d) ?(?:c|grados|degrees))',
      ]),
    ],
  ],
  [
    'microwave',
    [
      said(
        ['microwave|microondas', 'soap|jabon|batter|masa|gel'],
        `clean|limpi\\w+|melt and pour|glicerina|base|water|agua|oils?|aceites?|milk|leche|exploded|${HURT}|fire`,
      ),
    ],
  ],
  [
    'vanillin',
    [
      said(
        [
          'vanilla|vainilla',
          'brown\\w*|marron|dark|oscur\\w+',
          'lye|sosa|burn(?:ed|t)?|quemad\\w+',
          'soap|jabon|fragrance|fragancia|aroma',
        ],
        'skin|piel|hands?|manos?|spots?',
      ),
    ],
  ],
  [
    'old-oil',
    [
      said(
        [
          'aceite (?:usado|rancio|de freir|frito|caducado)|used (?:\\w+ )?oil|rancid oil|old oil',
          'se puede|vale|sirve|puedo|can i|ok|okay|good',
        ],
        'how much|cuanta|cuanto|\\d+ ?(?:g|kg|kilos?|l|litros?)',
      ),
    ],
  ],
];
