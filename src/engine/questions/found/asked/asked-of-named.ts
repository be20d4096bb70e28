import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { wordCount } from '../../../text/word-count.ts';
import { type AskedOfIt, askedIn } from '../../leaning/before.ts';
import type { Facts } from '../facts.ts';

/** Longer questions tell of more than that, words. */
const MOST_WORDS = 9;
/** Asks whether, and not how it is got out again. */
const ASKS_WHETHER = new RegExp(
  unbroken`
    ^\W*(?:and |but |y |pero |con )*(?:do|does|will|would|can|could|is|are|(?:con |el |la |los |
    las )?\p{L}+ (?:se )?(?:me )?(?:mancha|sangra|destin|despint|aguanta))
  `,
  'iu',
);
const IS_CLEANED =
  /(?<!\p{L})(?:out|off|remove|clean|wash|rid|quit\p{L}*|sac\p{L}*|limpi\p{L}*|lav\p{L}*)(?!\p{L})/iu;

/**
 * What is asked of one colourant by its name, though the words beside it are those of a house: "do red oxides stain a bath". Undefined where
 * nothing of the kind is. Pure.
 */
export function askedOfNamed(
  question: string,
  { named }: Pick<Facts, 'named'>,
): { readonly item: string; readonly asked: AskedOfIt } | undefined {
  const [item, ...others] = named;
  const asked = askedIn(question);
  const text = unaccented(question);
  if (item === undefined || others.length > 0 || asked === undefined || wordCount(question) > MOST_WORDS)
    return undefined;
  return ASKS_WHETHER.test(text) && !IS_CLEANED.test(text) ? { item, asked } : undefined;
}
