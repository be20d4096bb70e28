import { STRENGTH_WORDS } from '../quantities/strength.ts';
import { unitOfWord } from '../quantities/unit-words.ts';
import { foldedColour, isColourWord } from '../text/colours/folded-colours.ts';
import { isOil } from './found/amounts.ts';
import type { NamedThing } from './found/names/named-thing.ts';
import type { Words } from './found/words-of.ts';

/** Words of the questions themselves, which a slip may be meant for too. */
const ASKED: ReadonlySet<string> = new Set('batter superfat stronger survive challenge'.split(' '));
const STRENGTHS: ReadonlySet<string> = new Set(STRENGTH_WORDS);
/** What a unit is counted by. */
const COUNTED = /^(?:[\d.,/]+|an?|one|two|three|four|half|un|una|dos|tres|media?|medio|cuarto|quarter)$/u;
/** Words of an oil's name that stand two or three places behind its first. */
const LONGEST_OIL = 3;

/**
 * Slips stay put right only where that names a thing, an oil or a colour, or is a unit behind its figure, a strength or a word of
 * questions: any other word is left as it was typed.
 */
export function settled({ words, corrections }: Words, things: readonly NamedThing[]): Words {
  const isOfOil = (at: number) =>
    Array.from({ length: LONGEST_OIL }, (_, back) => at - back).some(from => from >= 0 && isOil(words, from));
  const kept = corrections.filter(
    ({ at, to }) =>
      ASKED.has(to) ||
      STRENGTHS.has(to) ||
      isColourWord(foldedColour(to)) ||
      (unitOfWord(to) !== undefined && COUNTED.test(words[at - 1] ?? '')) ||
      things.some(({ from, to: end }) => at >= from && at < end) ||
      isOfOil(at),
  );
  const back = new Map(corrections.filter(one => !kept.includes(one)).map(({ at, from }) => [at, from]));
  const right = words.map((word, at) => back.get(at) ?? word);
  return { words: right, text: right.join(' ').replaceAll('colour', 'color'), corrections: kept };
}
