import { unbroken } from '../../../../over-lines.ts';
import { FAT } from '../../amounts/words.ts';

/** What puts one discount on top of another. */
const ON_TOP = new RegExp(
  unbroken`
    (?<!\p{L})(?:also|too|as well|on top|plus|added?|additional|another|extra|again|further|and then|
    besides|mas|ademas|tambien|encima|aparte|otro|otra|adicional|extra|sumado|y luego)(?!\p{L})
  `,
  'u',
);
/** The same in other words: "5% superfat (that is a 5% lye discount)". */
const SUPERFAT_TOLD = new RegExp(`(?<![\\p{L}\\d])${FAT}(?![\\p{L}])`, 'u');
const BESIDE_FAT = new RegExp(
  `(?:${FAT})(?: (?:of|at|de|del|al|is|es|the|lye|sosa|soda))* (?<figure>\\d{1,2}(?:[.,]\\d+)?)(?![\\d.,]*\\d| ?(?:g|gr|kg|oz|lb|grams?|gramos)(?!\\p{L}))`,
  'u',
);
const PERCENT_TOLD = /(?<![\d.,])(?<figure>\d{1,2}(?:[.,]\d+)?)(?= ?(?:%|percent|pct|por ?ciento))/u;
/**
 * The words of a line without its superfat that tell of a second one: another figure, or the same on top of it. Undefined where the
 * first is only told again. Takes what {@link fixedIn} leaves. Pure.
 */
export function secondFat(rest: string, superfat: string | undefined): string | undefined {
  if (superfat === undefined) return undefined;
  for (const sentence of rest.split(';')) {
    const [fat] = SUPERFAT_TOLD.exec(sentence) ?? [];
    const figure = (BESIDE_FAT.exec(sentence) ?? PERCENT_TOLD.exec(sentence))?.groups?.figure;
    if (fat === undefined || figure === undefined) continue;
    if (figure !== superfat || ON_TOP.test(rest)) return `${figure}% ${fat}`;
  }
  return undefined;
}
