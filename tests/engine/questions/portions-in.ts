import { amountsIn } from '../../../src/engine/questions/found/amounts.ts';
import { thingsIn } from '../../../src/engine/questions/found/names/entities.ts';
import { wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { readPortions } from '../../../src/engine/questions/portion-line/portion-line.ts';
import { settled } from '../../../src/engine/questions/settled.ts';

/** The portions of a question, whatever is asked of them. */
export const portionsIn = (question: string) => {
  const typed = wordsOf(question);
  const things = thingsIn(typed);
  const words = settled(typed, things);
  return readPortions(words, things, amountsIn(words, things));
};
