import { unbroken } from '../../../../over-lines.ts';
import { MASS } from '../../amounts/words.ts';

/** What makes a butter, or surely no butter, of it: before and behind. */
const KIND_BEFORE = String.raw`(?:butters?|powder|nibs?|mantec\p{L}*|mantequillas?|soaps? (?:of|with|from))(?: ?:| of| de)* ?`;
const KIND_BEHIND = unbroken`
  (?:,? (?:and|y|e|&|,) (?:${MASS} )?\p{L}+){0,2} butters?|(?: in)? ?(?:powder|nibs?|mass|husks?|shells?|liquor|
  soap|bars?)
`;
const WEIGHED = new RegExp(
  unbroken`
    (?<!${KIND_BEFORE})(?<!\p{L})(?:(?:${MASS}|\d+(?:[.,]\d+)? ?%?)(?: of)? cocoa(?!\p{L})(?!${KIND_BEHIND})|
    cocoa(?!${KIND_BEHIND})(?: ?[:=])? ?(?:${MASS}|\d+(?:[.,]\d+)? ?%))
  `,
  'u',
);

/**
 * Bare "cocoa" with its weight among oils: the butter takes lye and the powder none, so that which of them it is has to be told. Undefined where a
 * butter or the powder is named; "cacao" among weighed oils is the butter to whoever wrote so in Spanish. Takes what `plainWords` gives. Pure.
 * @example cocoaNamedIn('500 g olive, 80 g cocoa') // '80 g cocoa'
 */
export const cocoaNamedIn = (plain: string): string | undefined => WEIGHED.exec(plain)?.[0].trim();
