import { unbroken } from '../../../../../over-lines.ts';
import { LYE, near, SOAP, type TopicPatterns } from '../topic.ts';

const INSTEAD =
  '(?:instead of|insted of|in place of|for|as|en (?:vez|lugar) de|como|por)(?: the| el| la)? ?(?:water|agua|liquid|liquido)';
const ODD_WATER = unbroken`
  (?:sea ?water|salt water|pool water|rain ?water|cola|lemonade|tonic(?: water)?|fizzy \w+|sparkling water|
  soda water|energy drink|(?:chicken |beef |bone |fish )?(?:broth|stock)|hydrogen peroxide|peroxide|
  agua de (?:mar|piscina|lluvia)|agua salada|agua con gas|refresco|gaseosa|caldo(?: de \w+)?|agua oxigenada)
`;
const DRINK =
  '(?:milk|beer|wine|cider|tea|coffee|juice|leche(?: de \\w+)?|cerveza|vino|sidra|te|cafe|(?:zumo|jugo)(?: de \\w+)?|vinagre|vinegar)';
const PUT =
  '(?:put|pour|add|dissolve|mix|stir|melt|echar?|echo|eche|hecho|pongo|poner|disolver|disuelvo|mezclar|mezclo|anadir|echarle|ponerle|le pongo|le echo)';
const MORE_PUT =
  '(?:echar(?:le)?|eche|pon(?:er(?:le)?|go)|anad(?:ir(?:le)?|o)|agreg(?:ar(?:le)?|o)|meter(?:le)?|add|put|stir in)';
/** No amount of grams, ounces or percent. */
const DEGREES =
  '\\d{2,3}(?!\\d)(?! ?(?:g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|ml|percent|por ciento)\\b) ?(?:degrees|grados|c|f)?';

/** Of lye and its water, how they are mixed, weighed and cooled, by whoever does it for the first time; plain text. */
export const MIXING_PATTERNS: TopicPatterns = [
  [
    'no-trace',
    [
      near(
        '(?:batter|mix|mixture|it|soap|trace|pot|masa|mezcla|jabon|traza)',
        unbroken`
          (?:won ?t|wont|doesn ?t|doesnt|does not|didn ?t|never|not|isn ?t|isnt|is not|still (?:not|thin|
          liquid|runny|like water)|no|nunca) ?(?:\w+ ){0,3}?(?:thick\w*|trac\w+|come together|set|espes\w+|
          traza|cuaj\w+|lig[ao]\w*)\b.{0,60}\b(?:hours?|minutes?|mins?|blend\w*|stir\w*|whisk\w*|horas?|
          minutos?|bat\w+|remov\w+)
        `,
        30,
      ),
      near(
        '(?:hours?|hrs?|minutes?|mins?|ages|forever|blend\\w*|stir\\w*|whisk\\w*|horas?|rato|minutos?|batiendo|removiendo)',
        unbroken`
          (?:won ?t|wont|doesn ?t|doesnt|does not|never|not|isn ?t|still (?:not|thin|liquid|runny|
          like water)|no|sigue) ?(?:\w+ ){0,3}?(?:thick\w*|trac\w+|espes\w+|traza|cuaj\w+|liquid[ao]|
          lig[ao]\w*)
        `,
        40,
      ),
      new RegExp(
        unbroken`
          \b(?:not|isn ?t|still not|nada) (?:thick|espes[oa]|thickening|espesando)\b.{0,30}\b(?:stir\w*|
          blend\w*|mixing|whisk\w*|removiendo|batiendo|remover|batir)\b
        `,
        'u',
      ),
      /\b(?:no|never) (?:llega a |reach\w* |comes? to |came to |llego a )(?:la )?(?:trace|traza)\b/u,
      /\b(?:will not|won ?t|wont|does not|doesn ?t|doesnt|no) (?:trace|espesa|traza)\b/u,
    ],
  ],
  [
    'bleach-in-soap',
    [
      near(
        '(?:lejia|cloro|bleach|lavandina)',
        '(?:al|en el|to the|to my|in the|into the|in my) (?:jabon|soap)',
        12,
      ),
      near(
        '(?:lejia|cloro|bleach|lavandina)',
        'jabon\\b.{0,24}\\b(?:blanco|blanque\\w+)|soap\\b.{0,24}\\bwhite',
        24,
      ),
    ],
  ],
  [
    'drink-bottle',
    [
      near(
        '(?:bottles?|botellas?|garrafas?|flask|termo|lunch ?box|fiambrera|jam jar|bote de mermelada)',
        `(?:${LYE})`,
        50,
      ),
      near(
        `(?:store|keep|guardar|guardo|conservar)\\b.{0,16}\\b${LYE}`,
        '(?:bottles?|botellas?|garrafas?|flask|termo|lunch ?box|fiambrera)',
        40,
      ),
    ],
  ],
  [
    'other-water',
    [
      near(ODD_WATER, `${INSTEAD}|${LYE}|${SOAP}`, 30),
      near(
        '(?:can|could|may|should) i|puedo|se puede|en (?:vez|lugar) de agua|instead of water',
        ODD_WATER,
        24,
      ),
    ],
  ],
  [
    'liquid-instead',
    [
      near(DRINK, INSTEAD, 24),
      near('(?:instead|in place) of(?: the)? water|en (?:vez|lugar) del? agua', DRINK, 24),
    ],
  ],
  [
    'cooling-lye',
    [
      near('(?:hot|boiling|warm|kettle)(?: tap)? water', `(?:${LYE})`, 30),
      near(
        'agua (?:muy |bien )?(?:caliente|hirviendo|hervida|tibia)|agua del (?:hervidor|grifo caliente)',
        `(?:${LYE})`,
        30,
      ),
    ],
  ],
  [
    'lye-in-oil',
    [
      near(
        `${PUT}(?: the| my| la| mi)? (?:dry )?(?:${LYE})`,
        '(?:straight |directly |directamente )?(?:in ?to|in|en|al|a los|with)(?: the| my| el| los)? (?:oils?|fats?|aceites?|grasas?|olive oil)',
        16,
      ),
    ],
  ],
  [
    'water-forgotten',
    [
      near(LYE, '(?:forgot|without|no|olvid\\w+|sin)(?: \\w+){0,3} (?:water|agua)', 60),
      /\b(?:forgot|olvid\w+)(?: \w+){0,3} (?:water|agua)\b/u,
    ],
  ],
  [
    'lye-forgotten',
    [
      near(
        '(?:forgot|forget|not sure|no se|no recuerdo|olvide)',
        `(?:did i|if i|whether i|si)(?: \\w+)? ?(?:put|add|added|eche|puse|anadi)(?: the| la| in the)? (?:${LYE})`,
        12,
      ),
    ],
  ],
  [
    'lye-and-water-swapped',
    [
      new RegExp(
        unbroken`
          (?=.*\b(?:${LYE})\b)(?=.*\b(?:water|agua)\b)(?=.*\b(?:swapped|switched|the wrong way round|
          back to front|al reves|intercambi\w+|cambiad[oa]s)\b)
        `,
        'u',
      ),
    ],
  ],
  [
    'wrong-unit',
    [
      near(
        `(?:${LYE})`,
        '(?:in )?(?:ounces|oz)\\b.{0,12}\\b(?:not|instead of)(?: in)? (?:grams|g)|(?:en )?onzas\\b.{0,12}\\b(?:no|en (?:vez|lugar) de)(?: en)? gramos',
        16,
      ),
    ],
  ],
  [
    'spooned-lye',
    [
      near(
        '(?:use|used|put|usé|puse|eche|uso|pongo|usar)(?: \\w+){0,2}',
        `(?:cups?|spoons?|tablespoons?|teaspoons?|tazas?|vasos?|cucharad\\w+|cucharas?|punados?|handfuls?)(?: of| de| full of)? (?:${LYE})`,
        12,
      ),
      near(
        '(?:cups?|spoons?|tablespoons?|teaspoons?|cucharad\\w+|cucharas?|tazas?)',
        `(?:is|for|es|son|de)(?: \\d+ ?g?(?:r|ramos|rams)?)? ?(?:of |de )?(?:${LYE})`,
        16,
      ),
    ],
  ],
  [
    'more-lye',
    [near(MORE_PUT, `(?:mas|more|otro poco de|un poco (?:mas )?de|some more|extra) (?:${LYE})`, 16)],
  ],
  [
    'clumped',
    [
      near(LYE, 'piedra|terron|bloque|rock|stone|lump|brick|hard', 30),
      near('hammer|martillo|smash|chisel|romper|machacar', LYE, 30),
      near(LYE, 'hammer|martillo|smash|chisel|machacar', 50),
    ],
  ],
  [
    'drain-cleaner',
    [
      near(LYE, 'desatascar|desatascador|desagues?|tuberias|unblock\\w*|drains?|plumbing|sinks? opener', 40),
      near('(?:drain|sink|pipe)s?', '(?:opener|crystals|granules|unblocker)', 8),
    ],
  ],
  [
    'mixing-temperature',
    [
      near('how (?:hot|warm|cool)', 'oils?|fats?|lye|batter', 24),
      near(
        '(?:a )?que temperatura|what temperature',
        `(?:disolucion|solucion|solution)(?: of| de)? ?(?:${LYE})?`,
        40,
      ),
      near(
        '(?:what|which|how hot|how warm|a que|que|cuantos)',
        '(?:temperatures?|temp|hot|warm|temperatura|grados)\\b.{0,30}\\b(?:mix|oils?|lye|soap|pour|combine|mezcl\\w+|aceites?|sosa|verter|juntar|junto)',
        8,
      ),
      near(
        `(?:${LYE})(?: water)?(?: \\w+){0,2}`,
        `${DEGREES}\\b.{0,24}\\b(?:oils?|fats?|aceites?|grasas?)(?: \\w+){0,4} ${DEGREES}`,
        8,
      ),
      near(
        '(?:oils?|aceites?)(?: \\w+){0,4}',
        `${DEGREES}\\b.{0,24}\\b(?:${LYE})(?: \\w+){0,4} ${DEGREES}`,
        4,
      ),
      near(
        `(?:${LYE})(?: water| solution)?`,
        '(?:is |still |esta |sigue )?(?:too hot|demasiado caliente|muy caliente)',
        10,
      ),
    ],
  ],
];
