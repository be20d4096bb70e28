import { type Unit, unitOfWord } from './unit-words.ts';

/** A figure with one unit and at most what it is of. `of` is a word, undefined where none was written. */
export type PlainAmount = { readonly count: number; readonly unit: Unit; readonly of: string | undefined };

/** No mark with three figures behind it, which may be thousands. */
const PLAIN = /^(\d{1,5}(?:\.\d{1,2})?) ?([a-z]{1,6})(?: (oils?|aceites?|batter|masa))?$/;

/**
 * A text that is one figure, one unit and nothing else, such as `500 ml`, `2.5 cups`, `12 oz oils`; undefined for whatever else an
 * amount may be written as. Most amounts that are typed are this, and no grammar is needed to read them.
 * @example plainAmount('500 g oils') // { count: 500, unit: 'gram', of: 'oils' }
 */
export function plainAmount(text: string): PlainAmount | undefined {
  const [, count, word, of] = PLAIN.exec(text) ?? [];
  const unit = word === undefined ? undefined : unitOfWord(word);
  return unit && { count: Number(count), unit, of };
}
