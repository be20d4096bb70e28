import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, KID, said } from '../../care-words.ts';
import type { TopicPatterns } from '../topic.ts';

const SOAP = '(?:soaps?|bars?|jabon(?:es)?|pastillas?)';
const YOUNG = unbroken`
  (?:(?:[1-9]|1\d|2[0-7]|one|two|three|a few|un|dos|tres|pocos) (?:days?|dias?)|(?:[1-3]|one|two|three|a|
  una|dos|tres) (?:weeks?|semanas?)|(?:24|48|72|12) ?(?:h|hours?|horas?))
`;
const ACID = '(?:vinegar|vinagre|lemon|limon|acid|acido)';

/** Of when a bar is touched, used or given, and how a young or an old one is told; plain text. */
export const YOUNG_BAR_PATTERNS: TopicPatterns = [
  [
    'used-early',
    [
      said(
        [
          unbroken`
            (?:gave|given|sold|used|posted|regale|regalado|vendi|vendido|di)(?: \w+){0,6} ${YOUNG}|
            ${YOUNG} old(?: \w+){0,4} (?:soap|bars?)(?: \w+){0,4} (?:to|gave|sold)|(?:gave|
            sold)(?: \w+){0,3} ${YOUNG}|(?:regale|vendi|di)(?: \w+){0,4} de ${YOUNG}
          `,
          `${SOAP}|it|them|lo|los`,
        ],
        `zap\\w*|${HURT}|rash|red|roj\\w+|colou?r\\w*|cracks?|shelf|estante|g|gr|blend\\w*|bati\\w*|mica|wax|oils?|aceites?`,
      ),
      said(
        [
          `(?:(?:lo|los|la) puedo|puedo|can i|may i) (?:usar\\w*|use|wash with|give|regalar\\w*)(?: \\w+){0,4} (?:a l[oa]s?|after|at|con|tras|en) ${YOUNG}`,
        ],
        `zap\\w*|gloves|guantes|${HURT}|oils?|${CAUSTIC}|colou?r\\w*`,
      ),
    ],
  ],
  [
    'bare-hands',
    [
      said(
        [
          '(?:cut|cutting|unmou?ld\\w*|cort\\w+|desmold\\w+)(?: \\w+){0,3} (?:with|con) (?:my |the |las |mis )?(?:bare )?(?:hands|manos)',
        ],
        'gloves|guantes|gloved',
      ),
      said(
        [
          '(?:without|no|sin) (?:gloves|guantes)',
          `${YOUNG}`,
          'use|touch|cut|hold|usar\\w*|tocar\\w*|cortar\\w*|coger\\w*',
        ],
        `how long|when|cuando|cuanto|${HURT}`,
      ),
    ],
  ],
  [
    'old-bar',
    [
      said(
        [
          `${SOAP}`,
          '(?:[5-9]|[1-9]\\d) (?:years?|anos)(?: old| ago)?|attic|desvan|trastero|very old|muy viej[oa]|antigu[oa]|decades',
          `(?:can i|could i|may i|shall i|still|is it|safe|ok|good|use it|uso|usar\\w*|sirve|vale|puedo|caduca\\w*|found|encontr\\w+)`,
        ],
        `${KID}|oils?|aceites?|make|hacer|recipe|receta|class|taller|workshop|residencia|lye|sosa|wants?|quiere|put|store|keep|guard\\w+|${HURT}`,
      ),
    ],
  ],
  [
    'no-vinegar',
    [
      said([
        'why|por que|how come',
        `(?:no|not|never|sin|nunca|don ?t)(?: \\w+){0,2} ${ACID}`,
        `skin|burns?|piel|quemaduras?|${CAUSTIC}|spill\\w*|neutral\\w*`,
      ]),
    ],
  ],
  [
    'zap-young',
    [
      said(
        [
          'zaps?|zapp\\w+|da (?:corriente|calambre)|zap test|tongue test|prueba de la lengua|pica (?:en )?la lengua',
          unbroken`
            day (?:1|one|2|two)|(?:1|one|2|two|3|three) days?|24 ?h\w*|48 ?h\w*|(?:un|dos|tres|1|2|3) dias?|
            al dia siguiente|next day|first day|yesterday|24 horas|48 horas|ayer
          `,
        ],
        `${KID}|baby|bebe|weeks?|semanas?|months?|meses|lye heavy|too much|every bar|chalky|red|roj\\w+|${HURT}|vinegar|vinagre`,
      ),
    ],
  ],
];
