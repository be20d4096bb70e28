import { unbroken } from '../../../../over-lines.ts';
import { POTASSIUM } from '../../amounts/words.ts';

/**
 * Soaps that stay soft or liquid, which potassium hydroxide makes (common practice): liquid, paste, shaving, cream and soft soap, whatever
 * stands between, as in "liquid hand soap".
 */
const SOFT = new RegExp(
  unbroken`
    (?<!\p{L})(?<!(?:not|no|than|like|unlike|how|que|como|cream of) )(?:(?:liquid|soft|shaving|shave|cream|
    paste) (?:(?:hand|dish|body|face|laundry|castile|washing|up|washing-up|foaming|floor) ){0,2}soaps?|
    soap paste|shaving cream|jabon(?:es|cito)? (?:(?:de|para|en|negro|tipo) )*(?:manos )?(?:liquid[oa]|
    blando|pasta|afeitar|rasurar|potasico|en crema)|crema de (?:afeitar|rasurar)|pasta (?:para|
    de) jabon)(?!\p{L})
  `,
  'u',
);
/** "So it doesn't stay soft soap", "last week's liquid soap": of no soap that is asked for. */
const OF_ANOTHER = new RegExp(
  unbroken`
    (?<!\p{L})(?:last (?:week|month|time)|yesterday|ayer|pasad[oa]|instead of|en (?:vez|lugar) de|not|
    no (?:es|quiero))(?:'s)?(?: (?:a|an|the|my|el|la|un|mi))?$
  `,
  'u',
);

/**
 * The words of a message that name a soap which another alkali makes than the one a bar takes, where no alkali is named, or only the
 * bar's: by the figure of the other one it would be far too little or too much. Undefined elsewhere. Takes what `plainWords` gives. Pure.
 */
export function softSoapIn(plain: string): string | undefined {
  if (POTASSIUM.test(plain) || /(?<!\p{L})potas(?:sium|io)(?!\p{L})/u.test(plain)) return undefined;
  const soft = SOFT.exec(plain);
  if (!soft || OF_ANOTHER.test(plain.slice(0, soft.index).trimEnd())) return undefined;
  return soft[0];
}
