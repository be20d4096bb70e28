import { unbroken } from '../../over-lines.ts';
import { CORRECTS } from './corrects.ts';

const BARS = 'bars?|soaps?|pieces?|cakes?|jab[oó]n(?:es)?|pastillas?|barras?|piezas?';
const UNIT = 'g|gr|grs|gm|grams?|gramos?|oz|ounces?|onzas?|ml|mls';
const FIGURE = String.raw`\d+(?:[.,]\d+)?`;
const PUT_RIGHT = unbroken`
  [\s,.;:–—-]*(?:no\b[\s,.;]*)?${CORRECTS.source}[\s,.;:]*(?:(?:it['’]?s|they['’]?re|i mean|that['’]?s|son|
  eran|es|de|of) )*
`;

/** "10 bars of 100 g, sorry, 12 bars": how many is put right, and each stays as it was. */
const OTHER_COUNT = new RegExp(
  unbroken`
    (?<![\d.,/])\d+(?= (?:${BARS})(?!\p{L}))([^.?!;]{1,40}?(?:${FIGURE}) ?(?:${UNIT})(?!\p{L})(?: (?:each|
    cada un[oa]))?)${PUT_RIGHT}(\d+) (?:${BARS})(?!\p{L})(?! (?:of|de|at|@) ?\d)
  `,
  'giu',
);
/** "12 bars of 100 g, sorry, 90 g": each is put right, and there are as many. */
const OTHER_SIZE = new RegExp(
  unbroken`
    (?<![\d.,/])(\d+ (?:${BARS})(?!\p{L})[^.?!;\d]{1,20})(${FIGURE}) ?(${UNIT})(?!\p{L})(?: (?:each|
    cada un[oa]))?${PUT_RIGHT}(${FIGURE}) ?(${UNIT})(?!\p{L})(?! (?:in all|in total|total|altogether|en
    total))
  `,
  'giu',
);
/** A bar that is put right is not several times what it was: then the batch is told. */
const MOST_TIMES = 3;

/**
 * Bars whose number or size is put right behind them, as they are meant: what stands there alone is no batch. Pure.
 * @example barsPutRight('12 bars of 100 g, sorry 90 g') // '12 bars of 90 g'
 */
export const barsPutRight = (text: string): string =>
  text
    .replace(OTHER_COUNT, (_, each: string, count: string) => `${count}${each}`)
    .replace(
      OTHER_SIZE,
      (all, bars: string, before: string, unitBefore: string, size: string, unit: string) => {
        const [first, second] = [before, size].map(one => Number(one.replace(',', '.'))) as [number, number];
        const isOfBar =
          unitBefore.toLowerCase() !== unit.toLowerCase() ||
          (second < MOST_TIMES * first && first < MOST_TIMES * second);
        return isOfBar ? `${bars}${size} ${unit}` : all;
      },
    );
