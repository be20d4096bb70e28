import type { Aspect, AspectPhrases } from './aspects/aspect.ts';
import { aspectByWords } from './aspects/by-words.ts';
import { OF_A_COLOUR } from './aspects/of-a-colour.ts';
import { OF_AN_ANSWER } from './aspects/of-an-answer.ts';
import { HAPPENED } from './aspects/of-what-happened.ts';

/** Looked for in this order. A whole turn has to be of such words: what names a thing of its own stands alone. */
const ASPECTS: readonly AspectPhrases[] = [...HAPPENED, ...OF_AN_ANSWER, ...OF_A_COLOUR];

/**
 * What is asked of the thing before in a turn that names none, by a phrase that is known or else by what its words are; undefined where it
 * asks for something of its own. Pure.
 */
export const aspectIn = (turn: string): Aspect | undefined =>
  ASPECTS.find(([, turns]) => turns.test(turn))?.[0] ?? aspectByWords(turn);
