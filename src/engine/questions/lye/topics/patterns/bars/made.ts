import { unbroken } from '../../../../../over-lines.ts';
import { ACID, LYE, MAY, near, SOAP, type TopicPatterns } from '../topic.ts';

const ZAP =
  '(?:zaps?|zapped|zapping|zap test|da corriente|da calambre|pica (?:en )?la lengua|pica al tocarlo con la lengua)';
const HEAVY =
  '(?:lye heavy|too much lye|excess lye|demasiada (?:sosa|lejia)|exceso de (?:sosa|lejia)|mucha sosa|pasado de sosa)';

/** Of lye water, batter and bars that are made already; plain text. */
export const MADE_PATTERNS: TopicPatterns = [
  [
    'acid-on-soap',
    [
      near(String.raw`neutrali[sz]\w*`, SOAP, 30),
      near(ACID, `${SOAP}\\b.{0,24}\\b(?:${HEAVY}|${ZAP})`, 40),
      near(`${HEAVY}|${ZAP}`, ACID, 40),
    ],
  ],
  [
    'lye-and-water-swapped',
    [
      near(
        String.raw`mixed up|swapped|switched|confused|wrong way round|al reves|confund\w*|intercambi\w*|invert\w*`,
        `${LYE}(?: \\w+){0,3} (?:water|agua)\\b|\\b(?:water|agua)(?: \\w+){0,3} ${LYE}`,
        24,
      ),
    ],
  ],
  [
    'scorched-milk',
    [
      new RegExp(
        `(?=.*\\b${LYE}\\b)(?=.*\\b(?:milk|leche)\\b)(?=.*\\b(?:orange|ammonia|burnt|burned|scorched|brown|naranja|amoniaco|quem\\w+|marron)\\b)`,
        'u',
      ),
    ],
  ],
  [
    'more-lye',
    [
      near(
        '(?:can|could|should|may|do) i|shall i|puedo|podria|debo|deberia|le',
        unbroken`
          (?:add|put|mix|stir|echar|echo|anadir|anado|agregar|agrego|poner|
          pongo)(?: in)?(?: some| a bit| un poco)?(?: of)? ?(?:more|extra|
          mas)?(?: de)? ${LYE}(?: \w+){0,3} (?:now|later|to (?:it|the|my|oily|soft)|ahora|despues|al jabon)
        `,
        8,
      ),
      near('add|put|mix|stir|echar|anadir|agregar|poner', `more ${LYE}|mas ${LYE}|extra ${LYE}`, 12),
    ],
  ],
  [
    'zap-use',
    [
      near(
        ZAP,
        `can i|could i|should i|is it (?:ok|okay|safe)|still use|just use|sell|puedo|se puede|lo uso|usarl[oa]`,
        60,
      ),
      near(`${MAY}\\b.{0,24}\\b(?:use|sell|wash|usar|vender)`, ZAP, 40),
    ],
  ],
  [
    'zap-test',
    [
      near(
        '(?:should|can|could|may|do|how do|how to|is it safe to|safe to|must|puedo|debo|como|hay que|se puede)(?: i| you| we| se| hago)?',
        '(?:zap test|tongue test)(?! fine| ok| passed)|(?:test|try|touch|lick|taste)(?: \\w+){0,5} tongue|(?:probar|tocar|prueba|pruebo)(?: \\w+){0,5} lengua',
        12,
      ),
    ],
  ],
  [
    'cure-lye-heavy',
    [
      near(
        `${HEAVY}|${ZAP}`,
        unbroken`
          (?:does|will|can|would)\b.{0,12}\b(?:cur(?:e|es|ing)|waiting|time)|cur(?:e|ing) (?:fix|help|out)|
          (?:se (?:quita|arregla|va)|arregla)\b.{0,16}\bcur\w+|el curado
        `,
        60,
      ),
    ],
  ],
  [
    'rebatch-lye-heavy',
    [
      near(String.raw`rebatch\w*|rescue|save|refund\w*|rebati\w*|salvar|rescatar`, HEAVY, 60),
      near(
        HEAVY,
        String.raw`rebatch\w*|rescue|be saved|save it|refund\w*|rebati\w*|salvarl?\w*|rescatar\w*`,
        60,
      ),
    ],
  ],
  [
    'baby',
    [
      near(
        `how long|when|can|could|is it|safe|cuando|cuanto|puedo|se puede`,
        unbroken`
          (?:giv\w+|us\w+|wash\w*|bath\w*|for|dar\w*|lavar\w*|banar\w*|para)(?: \w+){0,5} (?:baby|newborn|
          infant|bebe|recien nacid[oa])(?! (?:blue|pink|oil|shower|powder|azul))
        `,
        40,
      ),
    ],
  ],
  [
    'hot-loaf',
    [
      near(
        unbroken`
          (?:8[0-9]|9[0-9]|1[01][0-9]) ?(?:degrees |grados )?(?:c|celsius|centigrados?|degrees|grados)|
          (?:17[6-9]|1[89][0-9]|2[0-4][0-9]) ?(?:degrees )?(?:f|fahrenheit)
        `,
        String.raw`wrap\w*|insulat\w*|cover\w*|towels?|blankets?|oven|envolv\w*|tap(?:ar|o|arlo)|abrig\w*|aisl\w*|mantas?|horno`,
        60,
      ),
    ],
  ],
  [
    'soap-ph',
    [
      near(
        'what|which|how|can i|should|que|cual|como|puedo',
        String.raw`ph(?: \w+){0,6} (?:soaps?|bars?|jabon|pastilla|strips?|paper|tiras?)`,
        16,
      ),
      near(
        'can i|should i|how do i|puedo|como',
        'test(?: \\w+){0,5} (?:strips?|ph)|medir(?: \\w+){0,4} ph',
        16,
      ),
    ],
  ],
  [
    'lye-gone',
    [
      near(
        `(?:is|are|does|will|hay|queda|tiene|lleva)`,
        unbroken`
          ${LYE}\b.{0,24}\b(?:gone|left|remain\w*|stay\w*|still|used up|in|en|
          queda\w*)\b.{0,12}\b(?:finished|cured|the finished|my finished|el|un|terminado|
          curado)\b.{0,10}${SOAP}
        `,
        16,
      ),
      near('queda|hay|tiene', `${LYE} en el jabon (?:terminado|curado|ya hecho)`, 8),
    ],
  ],
  [
    'when-safe',
    [
      near(
        'how long|how soon|when|cuando|cuanto(?: tiempo)?',
        'safe to (?:touch|handle|use)|sin guantes|without gloves',
        40,
      ),
      near(
        '(?:how long|how soon|when|cuando|cuanto tiempo)(?: \\w+){0,2} (?:can|until|before|till|should|may|will|puedo|podre|hasta)',
        '(?:touch|handle|use|tocar|manejar|usar)(?: \\w+){0,2} (?:soap|bars?|it|jabon|pastillas?)',
        16,
      ),
    ],
  ],
];
