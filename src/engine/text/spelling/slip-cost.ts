/* What a slip of the finger or of the ear costs: from memory of how people type on phones and spell what they hear. */

/** Rows of the two layouts that share their letters; a key's neighbours lie beside, above and below it. */
const ROWS = ['qwertyuiop', 'asdfghjklñ', 'zxcvbnm'] as const;

const NEIGHBOURS: ReadonlySet<string> = new Set(
  ROWS.flatMap((row, at) =>
    row
      .split('')
      .flatMap((key, place) =>
        [row[place - 1], row[place + 1], ROWS[at + 1]?.[place], ROWS[at + 1]?.[place - 1]].flatMap(other =>
          other === undefined ? [] : [key + other, other + key],
        ),
      ),
  ),
);
/** Letters that one ear takes for the other, in English or Spanish. */
const ALIKE: ReadonlySet<string> = new Set(
  'ck cs kq cq sz cz bv vw gj yi ei eo ae ao ou ai jh mn xs xj dt ie ea oe oa uo io'
    .split(' ')
    .flatMap(([one, other]) => [`${one}${other}`, `${other}${one}`]),
);
const isVowel = (letter: string | undefined) => letter !== undefined && 'aeiouy'.includes(letter);

const SWAPPED = 0.6;
const DOUBLED = 0.4;
const OTHER_START = 0.4;

/** One letter in another's place. */
function replaced(typed: string, meant: string): number {
  if (typed === meant) return 0;
  const pair = typed + meant;
  return ALIKE.has(pair) ? 0.6 : NEIGHBOURS.has(pair) ? 0.7 : 1;
}
/** A letter that is not there: one of two, a mute one, a vowel, any. */
const leftOut = (letter: string, beside: readonly (string | undefined)[]): number =>
  beside.includes(letter) ? DOUBLED : letter === 'h' ? 0.5 : isVowel(letter) ? 0.7 : 0.8;
/** One too many: twice, or a neighbouring key hit along. */
const tooMany = (letter: string, beside: readonly (string | undefined)[]): number =>
  beside.includes(letter)
    ? DOUBLED
    : beside.some(other => other !== undefined && NEIGHBOURS.has(letter + other))
      ? 0.7
      : isVowel(letter) || letter === 'h'
        ? 0.8
        : 0.9;

const isStart = (typed = '', meant = ''): boolean => typed === meant || ALIKE.has(typed + meant);

/**
 * How unlikely it is that `typed` was meant for `meant`: 0 where they are one word, about 1 for one slip of the finger. Doubled,
 * swapped and mute letters, neighbouring keys and letters that sound alike cost less; another first letter costs more.
 * Weighted optimal string alignment (Wagner and Lowrance 1975). For single words of at most 40 letters.
 */
export function slipCost(typed: string, meant: string): number {
  if (typed === meant) return 0;
  let before: number[] = [];
  let above = [0];
  for (let j = 1; j <= meant.length; j += 1)
    above.push(above[j - 1]! + leftOut(meant[j - 1]!, [meant[j - 2]]));
  for (let i = 1; i <= typed.length; i += 1) {
    const letter = typed[i - 1]!;
    const extra = tooMany(letter, [typed[i - 2], typed[i]]);
    const row = [above[0]! + extra];
    for (let j = 1; j <= meant.length; j += 1) {
      const there = meant[j - 1]!;
      let best = Math.min(
        above[j - 1]! + replaced(letter, there),
        above[j]! + extra,
        row[j - 1]! + leftOut(there, [meant[j - 2], meant[j]]),
      );
      if (i > 1 && j > 1 && letter === meant[j - 2] && typed[i - 2] === there)
        best = Math.min(best, before[j - 2]! + SWAPPED);
      row.push(best);
    }
    [before, above] = [above, row];
  }
  return above[meant.length]! + (isStart(typed[0], meant[0]) ? 0 : OTHER_START);
}

/** The most that a word of that many letters may be off: short words differ too little from one another. */
export const mostOff = (length: number): number => (length < 5 ? 0.8 : length < 8 ? 1.25 : 1.75);
