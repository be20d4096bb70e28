import { unbroken } from '../../../../../over-lines.ts';
import { CAUSTIC, HURT, said } from '../../care-words.ts';
import { OIL } from '../../things.ts';
import type { TopicPatterns } from '../topic.ts';

/** The soap is made: what stayed out of it is missing. */
const MADE = unbroken`
  (?:(?:in|into) (?:the|my|its) mou?lds?|mou?lded|poured|(?:the|my) (?:soap|loaf|batch)|batter|(?:at|to|hit|
  reached) trace|en (?:el|los) moldes?|vert[ií]\w*|(?:el|mi) jabon|la masa|la tanda|traza)
`;
const NOTICED = unbroken`
  (?:already|realis\w+|realiz\w+|notic\w+|found|find|still|oops|whoops|oh no|damn|shoot|supposed to|
  should have|meant to|just saw|ya|me di cuenta|darme cuenta|acabo de|todavia|aun|sigue|ay|uy|mierda|
  tenia que|debia)
`;
const THE_OIL = `(?:the |my |all the |any of the |all my |el |la |los |las |mi )?(?:\\w+ )?(?:aceite (?:de )?)?${OIL}`;
const PUT = '(?:put|add|added|pour|poured|mix|stir|stirred|weigh|get|got|include)(?: in)?';
const PUSE = '(?:eche|he echado|puse|he puesto|anadi|he anadido|agregue|meti|echamos|pusimos)';
const PLACE = unbroken`
  (?:on|in|en|sobre)(?: \w+)? (?:stove|hob|counter|worktop|bowl|pan|pot|jug|microwave|scales?|bench|table|
  cup|fridge|oven|cupboard|hornilla|cazo|cazuela|olla|cocina|encimera|meson|mesa|bol|taza|microondas|nevera|
  bascula|balanza|horno|fuego|vitro)
`;
/** Planned so, asked ahead, or of a scent. */
const NOT_MEANT = unbroken`
  fragrance|fragance|scent|essential|esencial\w*|aroma|fragancia|recipe without|receta sin|what if|
  que pasa si|if i|si (?:dejo|quito|no)|yet|overnight|toda la noche|soften|before the lye|antes de la sosa|
  ${HURT}
`;
const OF_LYE = `${NOT_MEANT}|too much|twice|double|enough|demasiad[oa]|dos veces|el doble|bastante`;

/** An oil, or the lye itself, that never went into soap that is made; plain text. */
export const NEVER_WENT_IN_PATTERNS: TopicPatterns = [
  [
    'oil-forgotten',
    [
      said([`left ${THE_OIL}(?: oil| butter)? (?:out|behind)(?! (?:of|on|to|in the sun))`, MADE], NOT_MEANT),
      said([`(?:skipped|missed(?: out)?|left out) ${THE_OIL}`, MADE], NOT_MEANT),
      said(
        [
          `(?:never|didn ?t|did not|hadn ?t|haven ?t|have not) ${PUT} ${THE_OIL}|no (?:le |la |lo |se |les )*${PUSE} ${THE_OIL}`,
          MADE,
          NOTICED,
        ],
        NOT_MEANT,
      ),
      said([`${OIL}(?: \\w+){0,2} never (?:went|got|made it) in`], NOT_MEANT),
      said(
        [
          `${OIL}(?: oil| butter)?(?: \\w+){0,3} (?:still|sitting|sat|sigue|esta|todavia|se (?:me )?quedo|quedo)(?: \\w+){0,4} ${PLACE}`,
          `${MADE}`,
          NOTICED,
        ],
        `${NOT_MEANT}|need\\w*|before|antes|melting|derritiendo`,
      ),
      said(
        [
          unbroken`
            (?:se me (?:quedo|ha quedado)|quedo|me deje|deje) (?:fuera|afuera|sin (?:echar|
            poner)) ${THE_OIL}|se me (?:paso|ha pasado)(?: de)? (?:echar|poner|anadir|
            agregar)(?:le)? ${THE_OIL}
          `,
          MADE,
        ],
        NOT_MEANT,
      ),
    ],
  ],
  [
    'lye-forgotten',
    [
      said(
        [
          unbroken`
            (?:did|have) i(?: even| ever| actually| really)? (?:put|add|added|pour|poured|forget|forgot|use|
            used)(?: \w+){0,2} ${CAUSTIC}|(?:if|whether) i(?: even| ever| actually)? (?:put|added|poured|
            forgot)(?: \w+){0,2} ${CAUSTIC}|i (?:don ?t )?think i (?:never |didn ?t )?(?:forgot|put|add|
            added|poured|pour)(?: \w+){0,2} ${CAUSTIC}|(?:creo que|me parece que) no (?:le |
            la )?${PUSE}(?: \w+){0,2} ${CAUSTIC}|(?:no (?:se|recuerdo|me acuerdo)(?: de)? si|acaso) (?:le |
            la |ya )*${PUSE}(?: \w+){0,2} ${CAUSTIC}
          `,
          unbroken`
            remember|sure|know|recall|even|soup\w*|liquid|runny|thicken\w*|trace|hour|distracted|acuerdo|
            recuerdo|segur[oa]|se si|liquid[oa]|espesa|traza|hora|despist\w+|distraj\w+
          `,
        ],
        OF_LYE,
      ),
    ],
  ],
];
