import { parsePortionRange } from '../../quantities/told/portion.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import { Refusal } from '../../refusal.ts';
import type { Words } from '../found/words-of.ts';
import { amountOf, SPOONS } from './amount-at.ts';

/** A figure, its parts and its unit: "3 000 000 l", "1 1/2 cups". */
const LONGEST = 4;

/**
 * The refusal of an amount that is told in a question and that no portion can be, such as "0 cups" or "3000 cups":
 * whoever reads portions passes it by. Undefined where there is none. Spoons are of powder. Pure.
 */
export function portionOutOfRange({ words }: Words): Refusal<'amount-out-of-range'> | undefined {
  for (const [from, first] of words.entries()) {
    if (!/^\d/u.test(first)) continue;
    for (let to = Math.min(words.length, from + LONGEST); to > from; to -= 1) {
      const unit = words[to - 1]!;
      // One letter behind a figure is as often how warm it is.
      const isPortion = unit.length > 1 || /^[gl]$/u.test(unit);
      const named = unitOfWord(unit);
      if (!isPortion || named === undefined || SPOONS.has(named)) continue;
      const refused = refusalOf(words.slice(from, to).join(' '));
      if (refused) return refused;
    }
  }
  return undefined;
}

function refusalOf(text: string): Refusal<'amount-out-of-range'> | undefined {
  try {
    parsePortionRange(text);
    return undefined;
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    const isBeyond = refusal.id === 'amount-out-of-range' && amountOf(text) === undefined;
    return isBeyond ? (refusal as Refusal<'amount-out-of-range'>) : undefined;
  }
}
