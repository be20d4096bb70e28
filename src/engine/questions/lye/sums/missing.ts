import { unbroken } from '../../../over-lines.ts';
import { plainWords } from '../amounts/words.ts';
import type { LyeCheck } from './check.ts';

/** What is asked for is the rest, and not all of the lye. */
const ASKS_REST = new RegExp(
  unbroken`
    (?<!\p{L})(?:how much|what|how many(?: grams)?) (?:more|else|extra)(?! (?:is )?(?:than|or less))(?!\p{L})|
    (?<!\p{L})(?:how much|what)(?: \p{L}+){0,2} (?:is|s|am i|are we)? ?(?:missing|short|still needed|left to add)(?!\p{L})|
    (?<!\p{L})cuant[oa]s?(?: \p{L}+){0,2} (?:mas|(?:(?:me|le|nos) )?(?:falta\p{L}*|queda por echar))(?!\p{L})|
    (?<!\p{L})(?:que|cuanto) (?:me |le |nos )?falta(?!\p{L})
  `,
  'u',
);

/** Lye that is to be put on top of what is in already, and all of it, grams; neither rounded up. */
export type LyeMissing = { readonly missing: number; readonly all: number; readonly check: LyeCheck };

/** Grams to a tenth, never more than they are. */
const down = (grams: number): number => Math.floor(grams * 10) / 10;

/**
 * How much lye is missing where a question says what went in and asks how much more; undefined where it asks for something else, or none is
 * missing. Pure.
 */
export function lyeMissing(question: string, check: LyeCheck): LyeMissing | undefined {
  if (!ASKS_REST.test(plainWords(question, { clauses: true }))) return undefined;
  const all = down(check.usualGrams);
  const missing = down(all - check.lye.grams + Number.EPSILON * all);
  return missing > 0 ? { missing, all, check } : undefined;
}
