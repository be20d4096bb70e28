import { unbroken } from '../../over-lines.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { QuestionRead } from '../read.ts';
import { type AnswerTo, answerTo } from './answer-to.ts';
import type { NamedAnswer } from './named-answers.ts';

/** Side by side they are not stirred into one. */
const APART = new RegExp(
  unbroken`
    (?<!\p{L})(?:swirl\p{L}*|layer\p{L}*|stripe\p{L}*|half|palette|beside|next to|pour\p{L}*|remolin\p{L}*|
    capas?|franjas?|rayas?|mitad|paleta|al lado|go(?:es)? with|combin\p{L}+)(?!\p{L})
  `,
  'u',
);
const TOGETHER = /^(?:and|with|plus|y|e|con|mas|\+|&)$/u;

/**
 * Whether a question puts two hues into one pot and names no more than the hue that is to come of it: "blue with yellow, how much of each for a
 * nice green". Pure.
 */
export function putsTwoTogether(question: string): boolean {
  const plain = unaccented(question);
  if (APART.test(plain) || /\d/u.test(plain)) return false;
  const words = plain.match(/\p{L}+|[+&]/gu) ?? [];
  const isHue = (word: string | undefined): boolean => word !== undefined && isColourWord(foldedColour(word));
  return words.some(
    (word, at) =>
      TOGETHER.test(word) && isHue(words[at - 1]) && isHue(words[at + 1]) && words[at - 1] !== words[at + 1],
  );
}

/** Only a turn of phrase is as sure as this. */
const BY_PHRASE = 1;
/** Whether a question was read as asking which colour two named colourants come to. Pure. */
export const foreseesTwo = ({ readings: [reading], facts }: QuestionRead): boolean =>
  reading?.job === 'preview' && reading.score === BY_PHRASE && facts.named.length === 2;

/** Pairs that so many put together that what comes of them is told in words. */
const OF_PAIRS: ReadonlySet<NamedAnswer> = new Set<NamedAnswer>(['blue-and-yellow', 'red-and-blue']);

/** What is told of two hues by their names; undefined of every other pair, which is foreseen. Pure. */
export function pairTold(question: string): AnswerTo | undefined {
  const to = answerTo('blend-two', question);
  return 'named' in to && OF_PAIRS.has(to.named) ? to : undefined;
}
