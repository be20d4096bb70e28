import { LYE, near, type TopicPatterns } from './topic-patterns.ts';

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
        `^(?=.*\\b${ANY_LYE}\\b)(?=.*\\b(?:jug|jar|bowl|cup|jarra|bol|vaso|taza) (?:weighs|weighed|pesa|pesaba) \\d)(?!.*\\b(?:oils?|aceites?)\\b).*\\b(?:how much lye|real lye|cuanta (?:sosa|soda))\\b`,
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
  ['gear', [/\bmiedo\b.{0,12}\b(?:polvo|sosa|soda|lejia)\b.*\bque me pongo\b/u]],
  [
    'baby',
    [new RegExp(`^(?:puedo|podemos|can i|could i)\\b.{0,20}\\b${BABY}\\b.{0,12}\\b(?:jabon|soap)\\b`, 'u')],
  ],
  [
    'hair-on-bars',
    [
      /\b(?:gat[oa]|perr[oa]|cat|dog)\b.{0,20}\b(?:acosto|echo|sento|durmio|sat|slept|lay)\b.{0,16}\b(?:jabon\w*|soaps?|bars?|rack)\b.*\b(?:pelos?|hairs?|fur|dust)\b/u,
    ],
  ],
];
