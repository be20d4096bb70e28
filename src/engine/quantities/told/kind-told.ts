import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import type { Portion } from '../amount.ts';
import { oilsTold } from './oils-told.ts';

const OILS = /(?<!\p{L})(?:oils?|fats?|aceites?|grasas?|graso)(?!\p{L})/iu;
const BATTER = /(?<!\p{L})(?:batter|soap|masa|mezcla|jab[oó]n|pasta|batch|lote)(?!\p{L})/iu;
/** "12 oz, batter not oils". */
const NOT_OILS = new RegExp(
  unbroken`
    (?<!\p{L})(?:not|no|isn['’]?t|without|sin) (?:(?:the|of|in|de|los|las|el|son|es|my|just|
    only) )*(?:oils?|fats?|aceites?|grasas?)(?!\p{L})(?! (?:and|y|plus|only))
  `,
  'iu',
);
/** "Medio kilo de oliva", "counting the lard". */
const OF_FAT = new RegExp(
  unbroken`
    (?:(?<=\d ?(?:k?g|grs?|grams?|gramos?|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)(?: (?:justos?|
    exact[oa]s?|just|only|solo))? )(?:of|de)|(?<!\p{L})(?:counting|including|contando|
    incluyendo)) (?:(?:the|my|la|el|mi|los|las) )?(\p{L}+(?: \p{L}+){0,2})
  `,
  'iu',
);

function namesFat(text: string): boolean {
  const words = OF_FAT.exec(text)?.[1]?.split(' ') ?? [];
  return words.some((_, at) => knownOil(words.slice(0, at + 1).join(' ')) !== undefined);
}

/**
 * A weight with what it is of, as the whole of its text tells: what is said beside an amount is passed by when it is read. Takes the text
 * with numbers as figures. Pure.
 * @example ofKindTold({ measure: 'mass', grams: 700, of: 'batter' }, '700 g, that is just the oils').of // 'oils'
 */
export function ofKindTold(portion: Portion, text: string): Portion {
  if (portion.measure !== 'mass') return portion;
  if (NOT_OILS.test(text)) return BATTER.test(text) || !isOils(text) ? { ...portion, of: 'batter' } : portion;
  return portion.of === 'batter' && isOils(text) && !BATTER.test(text) ? { ...portion, of: 'oils' } : portion;
}

const isOils = (text: string): boolean =>
  OILS.test(text.replace(NOT_OILS, ' ')) || namesFat(text) || oilsTold(text) !== undefined;

/** Whether a text tells that a weight is of oils, or of batter; takes it as it was typed. Pure. */
export const tellsKind = (text: string): boolean => BATTER.test(text) || NOT_OILS.test(text) || isOils(text);
