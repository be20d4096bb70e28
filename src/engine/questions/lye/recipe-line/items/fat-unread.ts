import { unbroken } from '../../../../over-lines.ts';
import { FAT } from '../../amounts/words.ts';

/** A superfat by any of its names. */
const NAMED = unbroken`
  (?:${FAT}|(?:sobre|super) ?-?(?:n)?gras\p{L}*|sobr\p{L}{0,2}grasad?[oa]?|(?:grasa|aceite|fat|
  oil)s? (?:libres?|sobrante|de mas|de sobra|extra|free|over|left over|sin saponificar|unsaponified)|
  (?:libre|free|excess|exceso|surplus) (?:de |of )?(?:grasa|aceite|fat|oil)s?|(?:sin saponificar|
  unsaponified))
`;
const FIGURE = unbroken`
  (?:(?<![\d.,:/])\d{1,2}(?:[.,]\d)?(?![\d:/]| ?(?:g|gr|gramos|grams?|kg|kilos?|oz|onzas?|lbs?|libras?|ml|
  bars?|pastillas|am|pm)(?!\p{L}))|(?<!\p{L})(?:un[oa]?(?= por ?ciento)|one(?= percent)|cero|zero|
  nought)(?!\p{L}))
`;
const UNREAD = new RegExp(
  unbroken`
    (?<!\p{L})${NAMED}(?!\p{L})[^;\d]{0,25}?(?: ; ?)?(?:(?:el|un|al|a|del|at|is|it|make|ponle|que sea|
    pongamos|digamos) )*${FIGURE}|${FIGURE} ?(?:%|percent|por ?ciento)?(?: (?:de|of|the|la|
    el))* ${NAMED}(?!\p{L})
  `,
  'u',
);

/**
 * The words of a message in which a superfat is told with its figure; where the reader found none, the usual one would stand in the place of
 * what was asked for. Undefined where none is told. Takes what `plainWords` gives with its clauses. Pure.
 */
export const superfatTold = (plain: string): string | undefined => UNREAD.exec(plain)?.[0].trim();
