import { parseOils } from '../../batch/oils/lists/oil-list.ts';
import { Refusal } from '../../refusal.ts';
import { readOnce } from '../../remembered.ts';
import { isOil, type ToldAmount } from './amounts.ts';
import type { Words } from './words-of.ts';

/** From the first oil or its amount to the last, where that reads as a list of oils. */
export function oilsIn({ words }: Words, amounts: readonly ToldAmount[]): string | undefined {
  const oils = words.flatMap((_, at) => (isOil(words, at) ? [at] : []));
  const [first] = oils;
  if (first === undefined || !/\d/u.test(words.join(' '))) return undefined;
  const masses = amounts.filter(({ measure, of }) => measure === 'mass' && of !== 'powder');
  // "720 oliva, 80 coco": figures without a unit.
  const bare = words.flatMap((word, at) =>
    /^\d+$/u.test(word) &&
    (isOil(words, at + 1) || (/^(?:de|of)$/u.test(words[at + 1] ?? '') && isOil(words, at + 2)))
      ? [at]
      : [],
  );
  const starts = [Math.min(first, ...bare, ...masses.map(({ from }) => from))];
  const last = oils.at(-1)!;
  const ends = [last + 5, last + 4, last + 3, last + 2, last + 1, ...masses.map(({ to }) => to)].sort(
    (a, b) => b - a,
  );
  for (const start of starts) {
    const read = (end: number) => listIn(words, start, end);
    const whole = ends.map(read).find(list => list !== undefined);
    if (whole === undefined) continue;
    // A clause behind the list that changes nothing of it is no part of what is shown.
    const isWhole = (list: ReturnType<typeof read>) =>
      list?.blend === whole.blend && /^(?:$|\s*,)/u.test(whole.list.slice(list.list.length));
    return ends.toReversed().map(read).find(isWhole)!.list;
  }
  return undefined;
}

/** The words from one to another as a list of oils, and what it comes to. */
function listIn(words: readonly string[], start: number, end: number) {
  const list = words
    .slice(start, end)
    .filter(word => !/^[?!;.()]$/u.test(word))
    .join(' ')
    .replace(/\b(?:with|con|at|al|a|for|superfat|please|de lye)$/u, '')
    .replace(/[\s,]+$/u, '');
  const grams = inGrams(list);
  for (const told of grams === undefined ? [list] : [list, grams]) {
    const blend = blendOf(told);
    if (blend !== undefined) return { list: told, blend };
  }
  return undefined;
}

/**
 * Whole figures without any unit that are too large for percents are grams, as kitchen scales tell them; the line that is
 * shown says so.
 */
function inGrams(list: string): string | undefined {
  const figures = list.match(/\d+/gu)?.map(Number) ?? [];
  const sum = figures.reduce((total, figure) => total + figure, 0);
  if (sum <= 101 || figures.some(figure => figure < 10) || /\d\s*(?:%|g|kg|oz|lb)\b/u.test(list))
    return undefined;
  return list.replace(/\d+/gu, figure => `${figure} g`);
}

/** What a list of oils comes to, to be compared; undefined where it is none. */
const blendOf = readOnce((list): string | undefined => {
  try {
    const { shares, totalGrams } = parseOils(list);
    return shares.length > 0
      ? JSON.stringify([totalGrams, shares.map(({ oil, share }) => [oil.id, share])])
      : undefined;
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
});
