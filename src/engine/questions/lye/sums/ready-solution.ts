import { unbroken } from '../../../over-lines.ts';
import { amountText } from '../../../quantities/for-readers.ts';
import { COUNT, decimal, gramsOf, LYE, MASS, PERCENT } from '../amounts/words.ts';

/** Lye that comes dissolved, as makers name it: "lye masterbatch", "sosa líquida", "la sosa ya disuelta". */
const READY = unbroken`
  (?:(?:my |the |a |mi |la |una? )?(?:${LYE} )?master ?batch(?:ed|ing)?(?: (?:my |the |of |de )*${LYE})?|
  ${LYE} (?:liquida|(?:que )?(?:ya )?(?:esta )?(?:disuelta|hecha|preparada|mezclada|en solucion)|
  (?:already |all |pre ?)?(?:dissolved|pre ?mixed|mixed up|made up))|(?:ready ?made|pre ?made|pre ?mixed|
  pre ?dissolved|liquid|dissolved) ${LYE})
`;
const HALF = unbroken`
  (?:50 ?/ ?50|1 ?: ?1|(?:in |of )?equal (?:weights?|parts?|amounts?)(?: of)?(?: ${LYE})?(?: (?:and|y|
  &) (?:water|agua))?|(?:a |en )?partes iguales(?: de)?(?: ${LYE})?(?: y agua)?|half and half|mitad y mitad)
`;
const STRENGTH = unbroken`
  (?: ?[,;:])?(?: (?:which|that|que|it|its|it's|is|es|viene|esta|comes|at|al|a|de|del|of|
  made))* (?:${PERCENT}|${HALF})(?: (?:strength|strong|concentration|de fuerza|de concentracion))?
`;
/** Of oils a masterbatch is a blend. */
const OF_OILS = '(?<!(?:oils?|fats?|aceites?) )';
const TOLD = new RegExp(`(?<!\\p{L})${OF_OILS}${READY}${STRENGTH}(?!\\p{L})`, 'gu');
const NAMED = new RegExp(
  `(?<!\\p{L})${OF_OILS}${READY}(?! (?:of|de) (?:${COUNT}|oils?|fats?|aceites?))(?!\\p{L})`,
  'u',
);
const ASKED = new RegExp(
  unbroken`
    (?<!\p{L})(how much|how many grams of|
    cuant[oa]s?(?: gramos de)?)(?: of)?(?: the| that| my| mi| la| esa| de)* (?:lye )?(?:master ?batch|
    solution|solucion|disolucion)(?!\p{L})
  `,
  'gu',
);

/** "280 g of 50% lye solution", "lye 142 g of 50% solution": what was weighed holds so much dry lye. */
const WEIGHED = new RegExp(
  unbroken`
    (?<![\p{L}\d.,])(?:${LYE},? )?(${MASS})(?: of| de)?(?: my| the| mi| la| una| a)*(?: ${PERCENT})
    (?: (?:of|de))?(?: (${LYE}))? (?:solution|solucion|disolucion|master ?batch)(?: (?:of|
    de) (${LYE}))?(?!\p{L})
  `,
  'gu',
);
const WEIGHED_AT = new RegExp(
  unbroken`
    (?<![\p{L}\d.,])(${MASS})(?: of| de)? (?:(${LYE}) (?:solution|master ?batch)|(?:solucion|
    disolucion)(?: de (${LYE}))?) (?:at|al|a|de|of) ${PERCENT}(?!\p{L})
  `,
  'gu',
);
const dryLye = (mass: string, percent: string, name = 'lye'): string =>
  ` ${amountText((gramsOf(mass) * decimal(percent)) / 100)} ${name}`;

/** "120 g of caustic soda already dissolved in 250 g of water": dry lye and its water, each by its weight. */
const BY_WEIGHTS = new RegExp(
  unbroken`
    (${MASS})(?: of| de)?(?: the| my| la| mi)* (${LYE})(?:,? (?:that|which|que|is|are|esta|already|all|ya|
    bien|well|i|i've|have|he))* (?:dissolved|mixed|stirred|disuelt[oa]s?|disuelve|mezclad[oa]s?|
    diluid[oa]s?)(?: up)? (?:in|into|with|en|
    con)(?: the| my| el| los| unos)* (${MASS})(?: of| de)?(?: the)? (?:cold |distilled )?(?:water|
    agua)(?!\p{L})
  `,
  'gu',
);
/** Lye water that somebody has, or asks the grams of: "tengo una solución de sosa"; without either it may be a wish for so much water. */
const SOLUTION = `(?:(?:solucion|disolucion) de ${LYE}|${LYE} solution)`;
const OWN = '(?:una|la|un|mi|a|an|some|the|my)';
const HAD = "(?:tengo|tenemos|me dieron|compre|guarde|ya hice|hay|i have|i've got|i've|we have|got|bought)";
const HAD_SOLUTION = new RegExp(
  `(?<!\\p{L})(${HAD} (?:${OWN} )?)(?:(\\d{1,2}) ?% )?(${SOLUTION})(?!\\p{L})`,
  'u',
);
const ANY_SOLUTION = new RegExp(
  `(?<!\\p{L})(?<!\\d)((?:${OWN} )?)(?:(\\d{1,2}) ?% )?(${SOLUTION})(?!\\p{L})`,
  'u',
);
const ASKS_SOLUTION =
  /(?<!\p{L})(?:how much|how many grams|cuant[oa]s?(?: gramos)?)(?: of| de)?(?: the| that| my| mi| la| esa)* (?:solution|solucion|disolucion)(?!\p{L})/u;
const ownSolution = (plain: string): RegExpExecArray | null =>
  (ASKS_SOLUTION.test(plain) ? ANY_SOLUTION : HAD_SOLUTION).exec(plain);
/** A line with lye water that somebody has named as a masterbatch is. */
function asBatch(plain: string): string {
  const [found, before, percent] = ownSolution(plain) ?? [];
  if (found === undefined) return plain;
  return plain.replace(found, `${before}lye masterbatch${percent === undefined ? '' : ` at ${percent}%`}`);
}
const byWeights = (plain: string): string => asBatch(plain).replace(BY_WEIGHTS, '$1 $2, $3 water');

/**
 * A line with ready-made lye told as a solution of its strength, "50% lye solution", and what is asked of it as lye. Takes what
 * `plainWords` gives. Pure.
 */
export const withSolution = (plain: string): string =>
  byWeights(plain)
    .replace(WEIGHED, (_, mass: string, percent: string, one?: string, two?: string) =>
      dryLye(mass, percent, one ?? two),
    )
    .replace(
      WEIGHED_AT,
      (_, mass: string, one: string | undefined, two: string | undefined, percent: string) =>
        dryLye(mass, percent, one ?? two),
    )
    .replace(
      TOLD,
      (_, percent?: string) => ` ; ${percent === undefined ? 50 : decimal(percent)}% lye solution ; `,
    )
    .replace(ASKED, '$1 lye');

/** The strength that a line tells of ready-made lye, percent; undefined where it tells none, or two. Takes what `plainWords` gives. Pure. */
export function strengthOfReady(plain: string): number | undefined {
  const found = new Set(
    [...byWeights(plain).matchAll(TOLD)].map(([, percent]) =>
      percent === undefined ? 50 : decimal(percent),
    ),
  );
  return found.size === 1 ? [...found][0] : undefined;
}

/** The words by which a line names lye that comes dissolved; undefined where it names none. Takes what `plainWords` gives. Pure. */
export const readyLyeNamed = (plain: string): string | undefined =>
  NAMED.test(byWeights(plain))
    ? (ownSolution(plain)?.[3] ?? NAMED.exec(plain)?.[0] ?? plain).trim()
    : undefined;
