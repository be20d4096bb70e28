import { unbroken } from '../../../../../over-lines.ts';
import { FAT, UNIT } from '../../../amounts/words.ts';

const NOTHING = String.raw`(?<![\d.,])0?[.,](?!0+(?![\d.,]*[1-9]))\d+`;
const UNDER_ONE: readonly RegExp[] = [
  new RegExp(
    `(?<!\\p{L})(?:${FAT})(?: ?(?:of|at|de|del|al|a|is|es|will be|va a|con|by|factor|level|rate|:|=))* ?(${NOTHING})(?!\\d)`,
    'u',
  ),
  new RegExp(
    unbroken`
      (${NOTHING})(?!\d) ?(?:%|percent|per cent|por ciento)? ?(?:(?:as|for|of|de|como|the|el|
      lye) )*(?:${FAT})(?!\p{L})(?! ?(?:(?:of|at|de|al|del|is|:|=) ?)*\d+(?:[.,]\d+)?(?![\d.,]*\d)(?! ?${UNIT}))
    `,
    'u',
  ),
];
/** From this on a figure is read as the share of the lye that goes in, below it as the share of the fat that stays. */
const OF_THE_LYE = 0.7;
const MOST_SHARE = 0.3;

/** A superfat under one percent, as it stands, and the percent that is meant where it is a share of one; undefined: of none that is usual. */
export type UnderOne = { readonly text: string; readonly percent: number | undefined };

/**
 * A superfat that is told as less than 1 ("0.95", "0,05"): as often a share of one as a percent, and by the one reading the bar may keep lye.
 * Takes what `plainWords` gives. Pure.
 * @example superfatUnderOne('0.95 superfat on 1000g olive oil') // { text: '0.95', percent: 5 }
 */
export function superfatUnderOne(plain: string): UnderOne | undefined {
  const text = UNDER_ONE.map(pattern => pattern.exec(plain)?.[1]).find(found => found !== undefined);
  if (text === undefined) return undefined;
  const share = Number(text.replace(',', '.').replace(/^\./u, '0.'));
  const percent = share >= OF_THE_LYE ? 100 * (1 - share) : share <= MOST_SHARE ? 100 * share : undefined;
  return { text, percent: percent === undefined ? undefined : Math.round(10 * percent) / 10 };
}
