import { unbroken } from '../../../../over-lines.ts';
import { LYE, near, type TopicPatterns } from './topic.ts';

const ANY_LYE = `(?:${LYE}|soda)`;
const MUST = '(?:need|have|must|should|does|do|hay que|tengo que|debo|debe|hace falta)';
const HEATED = '(?:boil\\w*|hot|heat\\w*|warm\\w*|calentar|caliente|hervi\\w*|hirviendo)';
const BABY = '(?:beba|bebe|bebita|bebito|baby|toddler)';

/** Asked calmly and ahead, in words that an accident has too; plain text. Nothing in them says that it has happened. */
export const CALM_PATTERNS: TopicPatterns = [
  [
    'sugars',
    [
      new RegExp(
        `^(?=.*\\b(?:sugar|honey|azucar|miel)\\b)(?=.*\\b${ANY_LYE}\\b).*\\b(?:before or after|after or before|antes o despues|despues o antes)\\b`,
        'u',
      ),
    ],
  ],
  [
    'tared',
    [
      new RegExp(
        unbroken`
          ^(?=.*\b${ANY_LYE}\b)(?=.*\b(?:jug|jar|bowl|cup|jarra|bol|vaso|taza) (?:weighs|weighed|pesa|
          pesaba) \d)(?!.*\b(?:oils?|aceites?)\b).*\b(?:how much lye|real lye|cuanta (?:sosa|soda))\b
        `,
        'u',
      ),
    ],
  ],
  [
    'cooling-lye',
    [
      new RegExp(
        `^(?!.*\\b(?:oils?|aceites?|already|ya)\\b)${MUST}\\b.{0,20}\\b(?:water|agua)\\b.{0,20}\\b(?:for|to)\\b.{0,12}\\b${ANY_LYE}\\b.{0,16}\\b${HEATED}`,
        'u',
      ),
      new RegExp(
        `^(?:${MUST} )+${HEATED} (?:el |the )?(?:agua|water) (?:para|to|for)\\b.{0,16}\\b${ANY_LYE}$`,
        'u',
      ),
    ],
  ],
  [
    'never-taste',
    [
      near(
        '(?:no recuerdo|no se|dont (?:know|remember)|don t (?:know|remember))',
        `${ANY_LYE}\\b.*\\b(?:la pruebo|lo pruebo|taste (?:it|the))`,
        40,
      ),
      near('(?:can|could|should|may) (?:i|we) (?:taste|lick)', ANY_LYE, 40),
    ],
  ],
  [
    'clumped',
    [
      near(
        `${ANY_LYE}`,
        '(?:hecha (?:una )?piedra|hecho (?:un )?bloque|dura como piedra|hard as rock)\\b.*\\b(?:sirve|vale|use|good|ok)',
        24,
      ),
    ],
  ],
  [
    'disposal',
    [
      near(
        `que hago con (?:la|el) ${ANY_LYE}`,
        '(?:sobro|sobra)\\b.*\\b(?:tiro|tirar|fregadero|desague)',
        12,
      ),
    ],
  ],
  // Clumps, a bar that is slimy, white on top: told of the stuff alone, with nobody in it.
  [
    'clumped',
    [
      new RegExp(
        `\\b${ANY_LYE}\\b.{0,24}\\b(?:clump\\w*|lump\\w*|apelmaz\\w*|grumos)\\b.{0,40}\\b(?:good|use(?:able)?|ok|weaker|sirve|vale|uso)\\b`,
        'u',
      ),
    ],
  ],
  [
    'slimy',
    [
      new RegExp(
        unbroken`
          ^(?:why|how come|por que|my|mi|el)\b.{0,30}\b(?:castile|olive|oliva|castilla|soap|
          jabon)\b.{0,20}\b(?:slim\w+|goo(?:ey)?|snotty|babos\w+|baba|viscos\w+)\b
        `,
        'u',
      ),
    ],
  ],
  [
    'ash-or-lye',
    [
      /\b(?:nata|capa|pelicula|polvo|film|layer)\b.{0,12}\b(?:blanc[oa]|white)\b.{0,24}\bjabon\b.{0,24}\b(?:falto|sobro|falta|sobra)\b/u,
    ],
  ],
  // Asked of a vessel, a place and a remedy: nobody drank from it, touched it or stands in it.
  [
    'storing',
    [
      new RegExp(
        unbroken`
          ^(?:donde|como|where|how)\b.{0,16}\b(?:guard\w+|store|keep|put away)\b.{0,12}\b${ANY_LYE}\b(?! (?:ya )?
          (?:water|solution|mix|disuelt|mezclad|preparad|hech))
        `,
        'u',
      ),
    ],
  ],
  [
    'drink-bottle',
    [
      new RegExp(
        `^(?:use|puse|guarde|i used|i put|i keep|i kept|tengo|is it ok|can i)\\b.{0,24}\\b(?:botella|bottle|frasco|jar|termo|flask)\\b.{0,44}\\b${ANY_LYE}\\b`,
        'u',
      ),
    ],
  ],
  [
    'acid-on-soap',
    [
      new RegExp(
        unbroken`
          ^(?:can|could|puedo|may|should)\b.{0,20}\b(?:vinegar|vinagre|lemon|limon|acid|
          acido)\b.{0,24}\b(?:lye heavy|caustic|caustico)\b.{0,12}\b(?:soap|bars?|jabon)?\b
        `,
        'u',
      ),
      /^(?:can|could|puedo|may|should)\b.{0,20}\b(?:vinegar|vinagre|lemon|limon|acid|acido)\b.{0,24}\bjabon caustico\b/u,
    ],
  ],
  [
    'clean-up',
    [
      new RegExp(
        unbroken`
          \b${ANY_LYE}\b.{0,40}\b(?:counter|bench|worktop|table|floor|tiles|mesada|encimera|mesa|piso|
          suelo)\b.{0,24}\b(?:clean|wipe|limpi\w+|recoj\w+|quit\w+)\b
        `,
        'u',
      ),
      new RegExp(
        unbroken`
          ^(?:\w+ )?(?:con que|with what|what|how|como)(?: \w+){0,3} (?:limpi\w+|clean|wipe|mop|recoj\w+)\b.{0,20}\b${ANY_LYE}\b.{0,40}
          \b(?:counter|bench|worktop|table|floor|tiles|meson|mesada|encimera|mesa|piso|suelo)\b(?!.{0,12}(?:marmol|marble|granito|granite))
        `,
        'u',
      ),
    ],
  ],
  [
    'gear',
    [
      new RegExp(
        `\\b(?:polvo|dust)\\b.{0,16}\\b${ANY_LYE}\\b.{0,40}\\b(?:me pongo|what do i wear|mascarilla|mask)\\b`,
        'u',
      ),
    ],
  ],
  [
    'liquid-instead',
    [new RegExp(`^(?:se puede|puedo)\\b.{0,24}\\bleche\\b.{0,24}\\b${ANY_LYE}\\b o se quema$`, 'u')],
  ],
  [
    'liquid-amount',
    [
      /\b(?:take off|leave out|subtract|less|quito|resto|menos)\b.{0,16}\b(?:water|agua)\b.{0,16}\b(?:beer|stout|ale|wine|milk|cerveza|vino|leche)\b/u,
    ],
  ],
  // Afraid of lye, and nothing has happened.
  [
    'gear',
    [
      new RegExp(
        unbroken`
          ^(?=.*\b(?:scared|afraid|nervous|terrified|frightened|anxious)\b.{0,24}\b(?:lye|
          caustic)\b)(?=.*\b(?:tips?|advice|help me start|how do i start|where do i start|
          what should i know|first time)\b)
        `,
        'u',
      ),
      new RegExp(
        unbroken`
          ^(?=.*\b(?:miedo|susto|respeto|panico|nervios\w*)\b.{0,24}\b(?:sosa|soda caustica|soda|lejia|
          caustica)\b)(?=.*\b(?:consejos?|tips?|recomienda\w*|por donde empiezo|como empiezo|primera vez)\b)
        `,
        'u',
      ),
    ],
  ],
  ['gear', [/\bmiedo\b.{0,12}\b(?:polvo|sosa|soda|lejia)\b.*\bque me pongo\b/u]],
  [
    'baby',
    [new RegExp(`^(?:puedo|podemos|can i|could i)\\b.{0,20}\\b${BABY}\\b.{0,12}\\b(?:jabon|soap)\\b`, 'u')],
  ],
  [
    'hair-on-bars',
    [
      new RegExp(
        unbroken`
          \b(?:gat[oa]|perr[oa]|cat|dog)\b.{0,20}\b(?:acosto|echo|sento|durmio|sat|slept|
          lay)\b.{0,16}\b(?:jabon\w*|soaps?|bars?|rack)\b.*\b(?:pelos?|hairs?|fur|dust)\b
        `,
        'u',
      ),
    ],
  ],
];
