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

const SWAPPED = 0.6;
const DOUBLED = 0.4;
const OTHER_START = 0.4;

/* One letter in another's place. */
const REPLACED = 1;
const NEIGHBOUR = 0.7;
const HEARD_AS = 0.6;

/** Letters that a slip knows by name, numbered; what is none of them is `OTHER`. */
const LETTERS = 'abcdefghijklmnopqrstuvwxyzñ';
const OTHER = LETTERS.length;
const SIZE = OTHER + 1;
/** The numbers of letters by their UTF-16 unit: none of those that have one lies beyond. */
const numbers = new Uint8Array(256).fill(OTHER);
for (const [at, letter] of Array.from(LETTERS).entries()) numbers[letter.charCodeAt(0)] = at;
const numberOf = (unit: number): number => numbers[unit] ?? OTHER;

/** What a letter costs in another's place, by the numbers of both; alike letters are seen before. */
const REPLACING = Float64Array.from({ length: SIZE * SIZE }, (_, pair) => {
  const letters = (LETTERS[Math.floor(pair / SIZE)] ?? '') + (LETTERS[pair % SIZE] ?? '');
  return ALIKE.has(letters) ? HEARD_AS : NEIGHBOURS.has(letters) ? NEIGHBOUR : REPLACED;
});
const isNeighbour = (one: number, other: number): boolean => NEIGHBOURING[one * SIZE + other] === 1;
const NEIGHBOURING = Uint8Array.from({ length: SIZE * SIZE }, (_, pair) =>
  Number(NEIGHBOURS.has((LETTERS[Math.floor(pair / SIZE)] ?? '') + (LETTERS[pair % SIZE] ?? ''))),
);
const VOWELS: ReadonlySet<number> = new Set(Array.from('aeiouy', letter => numberOf(letter.charCodeAt(0))));
const MUTE = numberOf('h'.charCodeAt(0));
/** A letter that is not there and none beside it is the same: a mute one, a vowel, any. */
const LEFT_OUT = Float64Array.from({ length: SIZE }, (_, letter) =>
  letter === MUTE ? 0.5 : VOWELS.has(letter) ? 0.7 : 0.8,
);
/** One too many that is nobody's double or neighbour. */
const TOO_MANY = Float64Array.from({ length: SIZE }, (_, letter) =>
  letter === MUTE || VOWELS.has(letter) ? 0.8 : 0.9,
);

/** One too many: twice, or a neighbouring key hit along. Letters by their units, NaN where there is none. */
function tooMany(letter: number, before: number, after: number): number {
  if (letter === before || letter === after) return DOUBLED;
  const number = numberOf(letter);
  return isNeighbour(number, numberOf(before)) || isNeighbour(number, numberOf(after))
    ? NEIGHBOUR
    : TOO_MANY[number]!;
}

const isStart = (typed = '', meant = ''): boolean => typed === meant || ALIKE.has(typed + meant);

/* Where it is worked out, made once: words are compared by the hundred. */
const LONGEST = 64;
const roomFor = (width: number) => {
  const row = () => new Float64Array(width + 1);
  return { rows: [row(), row(), row()] as const, leaving: row(), units: new Uint16Array(width + 1) };
};
let room = roomFor(LONGEST);

/**
 * How unlikely it is that `typed` was meant for `meant`: 0 where they are one word, about 1 for one slip of the finger. Doubled,
 * swapped and mute letters, neighbouring keys and letters that sound alike cost less; another first letter costs more.
 * Weighted optimal string alignment (Wagner and Lowrance 1975). For single words of at most 40 letters. Who has no use for a cost
 * beyond `most` is given some number beyond it (Ukkonen 1985: rows only grow).
 */
export function slipCost(typed: string, meant: string, most = Number.POSITIVE_INFINITY): number {
  if (typed === meant) return 0;
  const width = meant.length;
  if (width > room.units.length - 1) room = roomFor(width);
  const { leaving, units } = room;
  let [before, above, row] = room.rows;
  above[0] = 0;
  let last = Number.NaN;
  for (let j = 1; j <= width; j += 1) {
    const letter = meant.charCodeAt(j - 1);
    const left = LEFT_OUT[numberOf(letter)]!;
    above[j] = above[j - 1]! + (letter === last ? DOUBLED : left);
    leaving[j] = letter === last || letter === meant.charCodeAt(j) ? DOUBLED : left;
    units[j] = letter;
    last = letter;
  }
  let leastAbove = 0;
  for (let i = 1; i <= typed.length; i += 1) {
    const letter = typed.charCodeAt(i - 1);
    const earlier = typed.charCodeAt(i - 2);
    const extra = tooMany(letter, earlier, typed.charCodeAt(i));
    const replacing = numberOf(letter) * SIZE;
    row[0] = above[0]! + extra;
    let least = row[0];
    for (let j = 1; j <= width; j += 1) {
      const there = units[j]!;
      const replaced = letter === there ? 0 : REPLACING[replacing + numberOf(there)]!;
      let best = above[j - 1]! + replaced;
      if (above[j]! + extra < best) best = above[j]! + extra;
      const shorter = row[j - 1]! + leaving[j]!;
      if (shorter < best) best = shorter;
      if (i > 1 && j > 1 && letter === units[j - 1] && earlier === there) {
        const swapped = before[j - 2]! + SWAPPED;
        if (swapped < best) best = swapped;
      }
      row[j] = best;
      if (best < least) least = best;
    }
    // A swap reaches over one row, and costs something itself.
    const bound = Math.min(least, leastAbove + SWAPPED);
    if (bound > most) return bound;
    leastAbove = least;
    [before, above, row] = [above, row, before];
  }
  return above[width]! + (isStart(typed[0], meant[0]) ? 0 : OTHER_START);
}

/** The most that a word of that many letters may be off: short words differ too little from one another. */
export const mostOff = (length: number): number => (length < 5 ? 0.8 : length < 8 ? 1.25 : 1.75);
