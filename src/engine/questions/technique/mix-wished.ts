import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { QuestionRead } from '../read.ts';

/** The judge of jobs is sure of a colour to be mixed. */
const SURELY_MIXED = 0.99;
/** What opens a question for the mix of one colour, which is named next. */
const MIX_FOR = new RegExp(
  unbroken`
      ^\P{L}*(?:\p{L}+ )?(?:an? |the |una |la )?(?:mix|recipe|blend|formula|ratio|mezcla|receta|
      combinacion|proporcion) (?:for|to get|para|pa) (?:an? |the |un |una |el |la |hacer |lograr |
      sacar |colou?r |tono )*
    `,
  'u',
);
const isMixFor = (question: string, target: string): boolean => {
  const text = unaccented(question);
  const opened = MIX_FOR.exec(text)?.[0];
  return opened !== undefined && text.slice(opened.length).startsWith(unaccented(target));
};
/** "How do I make navy?", "mix for navy": a colour that is named at the end of it, or right behind what opens it, and nothing else. Pure. */
export const isPlainMix = (question: string, { readings: [reading], facts }: QuestionRead): boolean =>
  reading?.job === 'mix' &&
  reading.score >= SURELY_MIXED &&
  facts.target !== undefined &&
  (isMixFor(question, facts.target.text) || isMadeAtItsEnd(question, facts.target.text));
const isMadeAtItsEnd = (question: string, target: string): boolean =>
  /^\P{L}*(?:how (?:do|can|would) (?:i|you|we|one) (?:make|get|mix)|c[oó]mo (?:hago|hacer|consigo|saco))(?!\p{L})/iu.test(
    question,
  ) &&
  question
    .toLowerCase()
    .replace(/\P{L}+$/u, '')
    .endsWith(target);

/** Whether a colour is wished of two and more colourants that are told to be at hand. Pure. */
export const isMixOfOnHand = ({ readings: [reading], facts }: QuestionRead): boolean =>
  reading?.job === 'mix' && facts.target !== undefined && facts.onHand !== undefined;

/** Only a turn of phrase is as sure as this. */
const BY_PHRASE = 1;
/** Whether a turn of phrase asks for the mix of a hue that is told: "fog, grey with a little blue; what powders?" Pure. */
export const isToldMix = ({ readings: [reading], facts }: QuestionRead): boolean =>
  reading?.job === 'mix' && reading.score === BY_PHRASE && facts.target !== undefined;

const WISHED =
  /(?<!\p{L})(?:quiero|quisiera|busco|necesito|me gustaria|want|need|fancy|after|looking for)(?!\p{L})/u;
const AT_HAND = /(?<!\p{L})(?:tengo|tenemos|i have|have|got|i['’]ve)(?!\p{L})/u;
/** "I want eucalyptus green, greyish, I have green clay and charcoal": a colour that is wished, and what is at hand for it. Pure. */
export const isWishedWith = (question: string, { readings: [reading], facts }: QuestionRead): boolean => {
  const text = unaccented(question);
  return (
    reading?.job === 'mix' &&
    reading.score >= SURELY_MIXED &&
    facts.target !== undefined &&
    facts.named.length > 1 &&
    WISHED.test(text) &&
    AT_HAND.test(text)
  );
};
