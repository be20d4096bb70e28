import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import { wordCount } from '../../text/word-count.ts';

/** Who stands before a pot writes two words. */
const MOST_OF_A_CRY = 6;
const GOES_THICK = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:getting|going|gone|went|turn(?:ing|ed)|set(?:ting)?) (?:\p{L}+ )?(?:thick|solid|hard|
    stiff)|s(?:ei|ie)z(?:e|ed|ing)|thickening|espes\p{L}+|endurec\p{L}+)(?!\p{L})
  `,
  'u',
);
/** Whether somebody cries that the pot goes thick, in a few words. Pure. */
export const isPotGoingThick = (question: string): boolean =>
  wordCount(question) <= MOST_OF_A_CRY && GOES_THICK.test(unaccented(question));
