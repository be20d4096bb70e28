import { isAnyOil } from '../../text/amounts/stop-words.ts';
import { readDecimal } from '../number.ts';
import { type Unit, unitOfWord } from '../unit-words.ts';

/** What an amount is of, where it says so. */
export type AmountOf = 'oils' | 'batter';

/**
 * An amount as it was told, taken apart for a sentence: so many of one unit (`pieces` of them where they are counted), or else the
 * words as they were typed. Nothing is converted.
 */
export type SaidAmount = (
  | { readonly count: number; readonly unit: Unit; readonly pieces?: number }
  | { readonly typed: string }
) & { readonly of?: AmountOf };

/** No mark with three figures behind it, which may be thousands. */
const FIGURE = String.raw`(?:(\d{1,3}) )?(\d{1,3})\/(\d{1,3})|\d{1,6}(?:[.,]\d{1,2})?`;
const PLAIN = new RegExp(
  String.raw`^(?:(\d{1,3}) (?:x|bars of) )?(${FIGURE}) ?(fl\.? ?oz|\p{L}{1,12})\.?$`,
  'iu',
);
const OF = /^(.*?\S) (?:(?:of|de) )?(oils?|aceites?|batter|masa)$/iu;

/**
 * Takes an amount apart that a member typed, or that is told in the words of an option. Pure; refuses nothing, since its reader does.
 * @example saidAmount('1 1/2 tazas de masa') // { count: 1.5, unit: 'cup', of: 'batter' }
 */
export function saidAmount(text: string): SaidAmount {
  const [, head = text, kind] = OF.exec(text) ?? [];
  const of = kind === undefined ? {} : ({ of: isAnyOil(kind) ? 'oils' : 'batter' } as const);
  const [, pieces, figure = '', whole = '0', over, under, word = ''] = PLAIN.exec(head) ?? [];
  const unit = /^fl/iu.test(word) ? 'fluid-ounce' : unitOfWord(word);
  const count = under === undefined ? readDecimal(figure)[0] : Number(whole) + Number(over) / Number(under);
  if (unit === undefined || count === undefined || !Number.isFinite(count)) return { typed: head, ...of };
  return { count, unit, ...(pieces !== undefined && { pieces: Number(pieces) }), ...of };
}
