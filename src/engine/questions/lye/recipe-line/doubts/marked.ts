import { unbroken } from '../../../../over-lines.ts';
import { unaccented } from '../../../../text/unaccented.ts';

/** A mark that the message gives a meaning to: what stands in it may be out of the pot. */
const MEANT_BY_MARK = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:square |round )?brackets?|bracketed|parenthes[ie]s|corchetes?|parentesis|asterisks?|asteriscos?|
    starred|underlined|subrayad[oa]s?|in bold|in italics|en negrita|en cursiva|highlighted|resaltad[oa]s?)(?!\p{L})
  `,
  'u',
);
/** Struck through, as a chat marks it: nobody here sees whether the writer did, or only drew waves. */
const STRUCK_OUT = /(~~[^~]*[\p{L}\d][^~]*~~|[^\s,;]*\p{L}[\u0335\u0336][^,;]*)/u;

/** What a message strikes through, or what it calls a mark by whose meaning an oil may be out of the pot; undefined where neither. Pure. */
export const markedIn = (question: string): string | undefined =>
  STRUCK_OUT.exec(question)?.[1] ?? MEANT_BY_MARK.exec(unaccented(question))?.[0];
