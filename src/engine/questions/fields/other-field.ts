import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { QuestionRead } from '../read.ts';
import { SOAP_WORDS } from './soap-words.ts';

/* Whether a question is of a field that is not ours, and how surely. Chances, 0 to 1. */

/** From here on a matter of handling is only taken for one, where no lye is spoken of. */
export const SURELY_ELSEWHERE = 0.6;
/** From here on another field's sentence stands before what its words were taken for, lye and soap not spoken of. */
export const MOST_SURELY_ELSEWHERE = 0.9;

/** Whether a question is of another field that has a name here. Pure. */
export const isNamedElsewhere = ({ outside }: QuestionRead): boolean =>
  outside !== undefined && outside !== 'other';

/** Whether it is of any other field, one without a name too: a matter of ours has to be likelier than that. Pure. */
export const isElsewhere = ({ outside }: QuestionRead): boolean => outside !== undefined;

/** Whether a question is surely of another field that has no name here, with neither lye nor soap in it. Pure. */
export const isSurelyElsewhere = (question: string, { outside, elsewhere }: QuestionRead): boolean =>
  outside === 'other' && elsewhere >= MOST_SURELY_ELSEWHERE && !SOAP_WORDS.test(unaccented(question));

const MAKES_SOAP = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:mak(?:e|es|ing)|help(?:s|ing)?(?: (?:me|us|with))?) (?:the |my |our )?soap|(?:hacer|
    hago|hacemos|haciendo|ayud\p{L}+ (?:a hacer|con)) (?:el |mi )?jabon(?:es)?)(?!\p{L})
  `,
  'u',
);
/** Whether somebody is told to make soap or to help at it. Pure. */
export const tellsOfMakingSoap = (question: string): boolean => MAKES_SOAP.test(unaccented(question));
