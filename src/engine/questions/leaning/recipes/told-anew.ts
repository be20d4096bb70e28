import { parseLye } from '../../../batch/lye/lye-choice.ts';
import type { LyeChoice } from '../../../batch/request.ts';
import { unbroken } from '../../../over-lines.ts';
import { unlessRefused } from '../../../refusal.ts';
import type { Ran } from '../before.ts';
import { ASKS_RECIPE, type Lean, run } from '../lean-kinds.ts';
import { atSuperfat } from './recipe.ts';

/* What comes out otherwise after a recipe was told: the other lye, how pure it is. */

const LEADS = unbroken`
  (?:(?:if|si|its|it is|is|es|era|was|fuera|with|con|i|we|have|ive|got|only|use|using|used|tengo|uso|usar|
  use|what|about|for|para|lo|mismo|misma|la|el|the|same|again|but|pero|should|have|had|said|say|meant|mean|
  queria|quise|quiero|decir|dicho|tenia|que|haber|debi|digo|sorry|perdon|make|it|hazlo|hacerlo|now|
  ahora|soda|y|uy|no|mi|my) )*
`;
const POTASH = '(?:potassium(?: hydroxide)?|koh|potasa(?: caustica)?|potasio|hidroxido de potasio)';
const SODA =
  '(?:sodium(?: hydroxide)?|naoh|sosa(?: caustica)?|soda caustica|caustic soda|hidroxido de sodio)';
const TAILS =
  '(?: (?:ive|i have|i|got|have|lye|la|que|lo|tengo|hay|en|casa|here|hard|soap|bar|bars|jabon|duro|solido|instead|en vez))*';
const OTHER_LYE = new RegExp(
  `^${LEADS}(?:(${POTASH})|${SODA})${TAILS}(?: (?:at|al|a|with|con)? ?(\\d{1,2}) ?%?(?: ?(?:superfat|sf|de sobreengrasado|sobreengrasado))?)?$`,
  'u',
);
/** "If it's potassium I've got", "should have said caustic soda", "the same with NaOH at 5": the same recipe by the other lye. Pure. */
export function otherLyeLaid(text: string, before: Ran): Lean | undefined {
  const [whole, potash, told] = OTHER_LYE.exec(text) ?? [];
  if (whole === undefined) return undefined;
  const { lye: _lye, purity: _purity, ...others } = before.given;
  const given = potash === undefined ? others : { ...others, lye: 'KOH' };
  // What is too much for a superfat may be a purity.
  const laid = told === undefined ? { ...before, given } : atSuperfat({ ...before, given }, Number(told));
  return laid ? run(laid) : ASKS_RECIPE;
}

const PURITY_TURN = new RegExp(
  unbroken`
    ^(?:(?:the|my|mi|la|el|es|is|its|it|era|was|y|lye|que) )*(?:(?:${POTASH}|${SODA}|lye|lejia) (?:is|es|
    era|was|only|solo|que|tengo)* ?)?(?:(?:at|del|al|de|of|only|solo) )*((?:8|9)\d(?:[.,]\d+)?|100)(?: ?(?:%|
    percent|por ciento))?(?: (?:pure|purity|pura|pureza|de pureza))?(?: (?:the|my|la|mi) (?:${POTASH}|${SODA}|
    lye|lejia))?$
  `,
  'u',
);
const OF_LYE = new RegExp(`(?<!\\p{L})(?:${POTASH}|${SODA}|lye|lejia|pur[eo]|pur[ai]\\p{L}*)(?!\\p{L})`, 'u');
const SAYS_POTASH = new RegExp(POTASH, 'u');
const SAYS_SODA = new RegExp(SODA, 'u');
const purityIn = (text: string): string | undefined =>
  OF_LYE.test(text) ? PURITY_TURN.exec(text)?.[1] : undefined;

const SODA_ALONE: LyeChoice = { kind: 'NaOH' };

/** "Es del 85 la potasa", "my KOH is 85%": how pure the lye of the recipe is. Pure. */
export function purityLaid(text: string, before: Ran): Lean | undefined {
  const told = purityIn(text);
  if (told === undefined) return undefined;
  const lye = before.given.lye === undefined ? SODA_ALONE : unlessRefused(() => parseLye(before.given.lye!));
  // Of two alkalis only one is told, and of lye water none is dry: neither may become all of the lye.
  if (lye === undefined || lye.kind === 'both' || lye.solutionPercent !== undefined) return ASKS_RECIPE;
  const isPotash = lye.kind === 'KOH';
  // Of the other lye than the recipe's: which is meant is asked.
  if ((isPotash ? SAYS_SODA : SAYS_POTASH).test(text)) return ASKS_RECIPE;
  const given = isPotash ? { ...before.given, lye: `KOH ${told}%` } : { ...before.given, purity: told };
  return run({ ...before, given });
}
/** Whether a turn tells how pure lye is. Pure. */
export const tellsPurity = (text: string): boolean => purityIn(text) !== undefined;
