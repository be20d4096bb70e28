import { knownOil } from '../../batch/oils/find-oil.ts';
import { isEveryday, isNearOil, TURNS } from './amounts/chat-words.ts';
import { UNIT } from './amounts/words.ts';
import { absenceIn, isHarmlessBesideOil } from './recipe-line/doubts/beside-oils.ts';

/** Words that a line was put into here, and nobody typed. */
export const OF_OURS = /^(?:purity|concentration|solution|superfat)$/u;
/** Words that stand at no weight, tell of an oil that is out, or are none of the question's: not names of oils, so that none is offered. */
export function isTalk(word: string, line: string): boolean {
  if (TURNS.has(word) || isEveryday(word) || isHarmlessBesideOil(word) || absenceIn(word) !== undefined)
    return true;
  const isWeighed = new RegExp(
    `\\d ?(?:${UNIT})? ?(?:of |de )?(?:\\p{L}+ )?${word}(?!\\p{L})|(?<!\\p{L})${word} ?[:=]? ?\\d`,
    'u',
  );
  return /^[\p{L}'-]+$/u.test(word) && !isNearOil(word) && !isWeighed.test(line);
}

/** Whether words name a fat by its kind. Pure. */
export const namesFat = (words: string): boolean =>
  /\b(?:oils?|butters?|fats?|wax|aceites?|mantecas?|mantequillas?|grasas?|ceras?)\b/u.test(words);

/** Whether a word is near the name of an oil and none itself. Pure. */
export const isStrangeOil = (word: string): boolean =>
  !TURNS.has(word) && isNearOil(word) && knownOil(word) === undefined;
