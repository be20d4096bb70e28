import { unbroken } from '../../over-lines.ts';
import { type Rewriting, rewritten } from '../patterns/fitting.ts';

/** A word of chat between spaces: what stands before and after it is no letter, sign or apostrophe. */
const word = (spelt: string, after = '') =>
  new RegExp(String.raw`(?<=^|[\s(¿¡,.!?])(?:${spelt})(?=[\s,.!?;:)]|$)${after}`, 'giu');

/** What Spanish "x" for "por" stands before; elsewhere it is a times sign or a letter: "12 x 8 cm". */
const AFTER_POR = unbroken`
  (?=\s(?:que|eso|esto|el|la|los|las|lo|mi|un|una|libra|kilo|taza|cada|todos?|todas?|partes?|ciento|dentro|
  fuera|arriba|abajo|atras|encima|debajo|favor|aqui|alla|ahi|culpa|q|k)\b)
`;

/**
 * Spellings of phones and chats, in both languages, as they are meant. From memory of how makers write; words that are
 * others in the other language are taken only beside words that tell which is meant.
 */
const SPELLINGS: readonly Rewriting[] = [
  // "qede", "saqe", "chiqito": no word of either language has a q before e or i.
  [/q(?=[eéií])/giu, 'qu'],
  [word('d', '(?=\\s*[\\p{L}\\d])(?!\\s+(?:&|and|n|y)\\s+c\\b)'), 'de'],
  // It asks at the start or the end; between it tells a reason, and stays.
  [/^((?:\S+ )?)(?:xq|x q|xke|xk|pq|porq)(?= )/giu, '$1por que'],
  [word('xq|x q|xke|xk|pq|porq', '(?=\\s*(?:\\?|$|sera|será|fue|paso|pasó))'), 'por que'],
  [word('xfa|xfis|xfavor|x favor|porfis|porfa|pf|plis'), 'por favor'],
  // "My pal", "500 g of pal oil": the English word, or a slip for palm.
  [
    new RegExp(
      unbroken`
        (?<!(?:^|[^\p{L}])(?:my|a|the|his|her|our|your|hi|hey|hiya|ta|thanks|thx|cheers|old|of|g|gr|grams|
        oz|lb|pen)\s)(?<![\p{L}\d])(?:pal|pa'l|pa l)(?![\p{L}\d])(?!\s+(?:oil|butter|kernel|says|said|has|
        gave))
      `,
      'giu',
    ),
    'para el',
  ],
  [word('pa|xa', '(?=\\s)'), 'para'],
  // "Lite green" is a light one.
  [/(?<!\p{L})lite(?= (?:blue|green|pink|purple|yellow|orange|brown|gr[ea]y|red|teal)(?!\p{L}))/giu, 'light'],
  [word('q'), 'que'],
  [word('x', AFTER_POR), 'por'],
  // "1 de polvo x 2 de aceite"
  [/(?<=\bde \p{L}{2,20}\s)x(?=\s\d+ de\s)/giu, 'por'],
  [word('tmb|tb|tmbn|tambn'), 'también'],
  [word('sossa|soza|zosa|ssoa'), 'sosa'],
  [/(?<=\bcu[aá]nta )sos\b/giu, 'sosa'],
  [word('pl+[sz]{2,}|plea+[sz]e{2,}|ple+a?se{2,}'), 'please'],
  // A slip in the very word that asks: it stands before what is counted.
  [
    word(
      'canta|cuata|cunta|cuanat|kuanta|kanta|quanta|qanta|cnta',
      String.raw`(?=\s(?:de\s)?(?:sosa|soda|agua|potasa|lej[ií]a|mica|arcilla|cantidad|masa|cucharad\w*|espirulina|c[uú]rcuma)(?![\p{L}]))`,
    ),
    'cuánta',
  ],
  [
    word(
      'canto|cuato|cunto|cuanot|kuanto|kanto|quanto|qanto|cnto',
      unbroken`
        (?=\s(?:de\s)?(?:[oó]xido|carb[oó]n|hidr[oó]xido|pigmento|ultramar|colorante|polvo|di[oó]xido|color|
        le|pongo|echo|uso|necesito|lleva)(?![\p{L}]))
      `,
    ),
    'cuánto',
  ],
  [
    word('(?:how|hwo|hw|ho|hoow|haw) ?(?:mcuh|muhc|mich|mcih|mutch|muc|mush|moch|mucg|mcu|mch|muchh|much)'),
    'how much',
  ],
  [/\b(?<=how much )(?:ley|yle|lyee|lyle)\b/giu, 'lye'],
  [word('calcualte|calulate|claculate|calcuate|caluclate'), 'calculate'],
  [/\bsodium (?:hydroxyde|hidroxide|hydrixide|hydoxide|hydroxid|hydrox|hidroxyde)\b/giu, 'sodium hydroxide'],
  [word('cmo|komo'), 'como'],
  [word('fierro'), 'hierro'],
  [word('bioxido|bióxido'), 'dioxido'],
  [word('jabn|javon|jbon'), 'jabon'],
  [word('aser|acer', '(?=\\s\\p{L})'), 'hacer'],
  [/\blo (?:demas|demás|que (?:falta|sobra)|restante)(?=\s\p{L})/giu, 'el resto'],
  [word('w/o'), 'without'],
  [/(?<=^|\s)w\/\s?(?=\p{L})/giu, 'with '],
  [word('w', '(?=\\s\\p{L})'), 'with'],
  [word('b4'), 'before'],
  [word('cuz|coz|bc'), 'because'],
  [word('wat|wut'), 'what'],
  [word('gunna|gona'), 'gonna'],
  [word('lol|lmao|haha+|jaja(?:ja)*|jeje|omg'), ''],
  // Scots, as it is typed.
  [word('haufa'), 'half a'],
  [word('hauf|haulf|hlaf|hafl|halff|haalf|hallf'), 'half'],
  [word('perr|pre', '(?=\\s(?:lb|pound|kilo|kg|cup|litre|liter)s?(?!\\p{L}))'), 'per'],
  [word('watter|wather|watr|waater'), 'water'],
  [word('botom|bottem|bottum|botton', '(?=[\\s,.:;]|$)'), 'bottom'],
  [word('aboot|bout'), 'about'],
  [word("twixt|'tween|tween|atween|btwn|btw(?=\\s\\d)"), 'between'],
  [/(?<=[\s,])na['’]? ?ma['’]?(?=[\s.,]*$)/giu, 'nada mas'],
  [word('hunner|hunnert|hundert'), 'hundred'],
  [word('tree', '(?=\\s(?:quarters?|hundred|cups?|pounds?|spoons?)(?!\\p{L}))'), 'three'],
  [word('grms?|gms'), 'g'],
  [/(?<=\d\s?)(?:gramiños|gramitos|graminos)(?!\p{L})/giu, 'g'],
  [/(?<=(?:^|\s)(?:\d+|one|two|three|four)\s)an(?=\s(?:an? )?(?:half|quarter|third)(?!\p{L}))/giu, 'and'],
  [
    new RegExp(
      unbroken`
        (?<=\b(?:tsps?|teaspoons?|tablespoons?|tbsps?|spoons?|g|grams?|pounds?|lbs?|oz)\s)(?:ay|
        a)(?=\s(?:the |di )?(?:oils?|charcoal|clay|mica|oxide|powder|batter|soap|lard|tallow)(?!\p{L}))
      `,
      'giu',
    ),
    'of',
  ],
  // No article stands before a consonant so: "pink an cream". "An" is how some write "and".
  [
    new RegExp(
      unbroken`
        (?<=\p{L}{3,}\s)an(?=\s(?:red|blue|green|yellow|pink|purple|violet|black|white|brown|gr[ea]y|cream|
        gold|silver|teal|turquoise|lilac|lavender|navy|peach|coral|mint)(?!\p{L}))
      `,
      'giu',
    ),
    'and',
  ],
  [word('purpel|purpul|purlpe|pruple'), 'purple'],
  [/(?<=\b(?:kilo|pound|litre|liter|pint)\s)o'?(?=\s\p{L}{3,} oil(?!\p{L}))/giu, 'of'],
  [word('fi', '(?=\\s(?:every|each|one|di|the)\\s)'), 'for'],
  [
    new RegExp(
      unbroken`
        (?<=\b(?:pounds?|kilos?|grams?|cups?|pints?|lbs?|oz|ounces?|kg|g|ml|tsps?|tbsps?|
        spoons?)\s)o'?(?=\s(?:(?:my|the|raw|melted|soap) )?(?:oils?|batter|soap|lye|clay|mica|water|milk|
        butter|tallow|lard|powder|oxide|cocoa|salt)\b)
      `,
      'giu',
    ),
    'of',
  ],
  [word('fur', '(?=\\s(?:the|a|an|my|\\d))'), 'for'],
  [word('hoo', '(?=\\s(?:much|many))'), 'how'],
  [word('whit'), 'what'],
  [word('dae'), 'do'],
  [word('mak'), 'make'],
  [word('fae'), 'from'],
  [word('duble|dubble|doubel|dobule'), 'double'],
  [word('eql|eqal|equl'), 'equal'],
  [word('layrs|laers|leyers|layars|layeres'), 'layers'],
  [word('fr', '(?=\\s\\d)'), 'for'],
  [word('afore'), 'before'],
  // Figures that sound like words: "lye 4 1000 g lard", "4 a 1 lb batch". "4 500 g bars" counts, and stays.
  [word('4', '(?=\\s(?:an?|the|my|me|this|these|half|quarter)\\s)'), 'for'],
  [
    word(
      'oc?xid[oa]s?|ocsido|oxsido|ocsid|oxio',
      '(?=\\s(?:de\\s)?(?:hierro|zinc|cromo|roj|negr|amarill|verde|marr|caf|naranj|caoba|violet))',
    ),
    'oxido',
  ],
  // Written in one word: "oxidoamarillo", "micadorada".
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(oxido|óxido|mica|arcilla|ultramar|carb[oó]n|dioxido)(?=(?:roj|negr|amarill|verde|azul|
        rosa|blanc|dorad|plat|morad|activ|de)[\p{L}]{0,7}(?!\p{L}))(?!de(?!l|titanio))
      `,
      'giu',
    ),
    '$1 ',
  ],
  // Chile's word for clay.
  [word('gredas?'), 'arcilla'],
  [
    new RegExp(
      unbroken`
        (?<=\b(?:lye|naoh|koh|much|many|needed?|water)\s)4(?=\s\d+(?:[.,]\d+)?\s?(?:g|gr|grams?|kg|kilos?|
        oz|ounces?|lbs?|pounds?|cups?|ml)\b)(?![^;,?]*\b(?:bars?|loaves|soaps|moulds?|molds?|batches|
        layers)\b)
      `,
      'giu',
    ),
    'for',
  ],
  [word('2', '(?=\\s(?:make|do|use|get|put|add|know|go|be|colou?r|mix)\\b)'), 'to'],
  [/(?<=\d)\s?n(?=\s(?:an? )?(?:half|quarter|third)\b)/giu, ' and'],
  // Dictated words that sound like those of the trade.
  [word('micah'), 'mica'],
  [
    new RegExp(
      unbroken`
        (?<=^|\b(?:much|in|to|up to|with|for|of|and|the|survive|calculate|add|more|less)\s)lie(?=\s+(?:for|
        and|n|do|to (?:go|use)|solution|water|is|heavy|soap|the label|i (?:need|use|have|got))\b|\s*[?.,!]|
        $)
      `,
      'giu',
    ),
    'lye',
  ],
  [/\b(candle|food|fabric|cloth|egg|hair|easter egg)s? dies?(?=\s|$)/giu, '$1 dye'],
];

const NO_NOUN = 'to|in|into|for|with|of|and|n|or|about|around|like|the|my|have|got|makes?|is|at|than';
/** Where a sentence lacks its joining word, and the hundreds stand glued to their unit. */
const HEARD: readonly Rewriting[] = [
  [
    new RegExp(
      unbroken`
        (?<=\b(?:add|put|stir|mix|chuck|throw|dump|tip|
        blend)\b[^.;?]{0,40}\d[^.;?]{0,40}\p{L}\s)(?<!\b(?:${NO_NOUN})\s)2(?=\s\d{3}(?:g|gr|
        ml)\b)(?!\s\S+\s(?:bars|loaves|batches|moulds|molds)\b)
      `,
      'giu',
    ),
    'to',
  ],
  [
    new RegExp(
      unbroken`
        (?<=\bhow (?:much|many)\b[^.;?]{1,40}[\p{L}\d]\s)(?<!\b(?:${NO_NOUN})\s)(?<!\b\d+\s)4(?=\s\d{3}(?:g|
        gr|ml)\b)(?!\s\S+\s(?:bars|loaves|batches|moulds|molds)\b)
      `,
      'giu',
    ),
    'for',
  ],
];

/**
 * Figures that were heard for the words "to" and "for" before hundreds of their own: "add 1 tsp red oxide 2 500g batter". For text whose
 * figures still stand as they were typed: "2 500 g" is two and a half thousand.
 */
export const figuresHeard = (text: string): string => rewritten(text, HEARD);

/**
 * A text as it is meant where a chat or a dictating phone spelt it: "medio kilo d masa" is "medio kilo de masa", "how much
 * lie" is "how much lye". Names and figures stay as they are.
 * @example chatSpelt('qiero un kilo d sebo xfa') // 'quiero un kilo de sebo por favor'
 */
export const chatSpelt = (text: string): string => rewritten(text, SPELLINGS);
