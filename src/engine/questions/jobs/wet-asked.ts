import { unbroken } from '../../over-lines.ts';
import { sharesPowders } from '../fields/field-of.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';
import { LYE } from './dose-by-phrase.ts';

const CARRIER = unbroken`
  (?:oil|olive oil|castor oil|light oil|water|glycerine?|glycerol|alcohol|vodka|aceite|agua|glicerina|alcohol|aceite de \p{L}+|
  \p{L}+ oil)
`;
const WETS = unbroken`
  (?:mix|stir|wet|disperse|dissolve|slake|soak|blend|deshacer|deshago|disolver|disuelvo|mojar|mojo|humedecer|
  humedezco|dispersar|disperso|remojar|remojo|diluir|diluyo|desleir|empapar)
`;
const WETTED = unbroken`
  (?:mixed|stirred|wetted|wet|dispersed|dissolved|slaked|soaked|deshace|disuelve|moja|humedece|dispersa|
  remoja|diluye|deslie|deshecho|disuelto|mojado|dispersado)
`;
/** "Use sunflower oil to wet the charcoal", "puedo usar aceite de maravilla para deshacer el carbón". */
const CARRIER_FIRST = new RegExp(
  unbroken`
    (?<!\p{L})${CARRIER}(?: (?:flower|seed))? (?:(?:is |es |sirve |works? |ok |okay |fine )*)(?:to|for|para|
    a) ${WETS}(?:ing)?(?: (?:the|my|el|la|los|mi))* $
  `,
  'u',
);
/** "Ultramarine in glycerine, is that ok", "ultramar azul en glicerina se puede?" */
const THING_FIRST = new RegExp(
  unbroken`
    ^ (?:(?:be |se |go |goes |goes in )?(?:${WETTED} )?)?(?:in|into|with|en|con) (?:(?:the|plain|pure|some|el|la|un|una|
    un poco de|poca) )*${CARRIER}(?!\p{L})(?! (?:soap|batter|masa|jabon))
  `,
  'u',
);
const MAY = new RegExp(
  unbroken`
      (?<!\p{L})(?:can|could|may|should|does|do|will|ok|okay|fine|work|works|is it|se puede|puedo|sirve|vale|
      va bien|funciona|esta bien|acceptable|advisable|cierto|verdad|right|or not|o no)(?!\p{L})
    `,
  'u',
);
/** Whether it is asked if something may be done, or works. Pure. */
export const asksWhetherItMay = (text: string): boolean => MAY.test(text);

/** "Should it be dispersed in oil or in water". */
const EITHER = new RegExp(
  unbroken`
    (?<!\p{L})${WETTED} (?:(?:in|into|with|en|con) )?${CARRIER},? (?:or|o) (?:(?:in|into|with|en|con) )?${CARRIER}(?!\p{L})
  `,
  'u',
);

/** "Con qué deshago el titanio", "what do I slake the titanium in". */
const WITH_WHAT = new RegExp(
  String.raw`(?<!\p{L})(?:(?:con|en) que (?:se )?${WETS}|(?:what|which) (?:do|can|should|would) (?:i|you|we) ${WETS})(?: (?:the|my|el|la|los|mi))* $`,
  'u',
);

/** Whether it is asked what one named colourant is wetted in, by the name of a carrier. Pure. */
export function asksItsCarrier(read: Words, { things, amounts }: Found): boolean {
  const { text, words } = read;
  if (sharesPowders(read)) return false;
  // "Aceite de maravilla" is what it is wetted in.
  const named = things.filter(
    ({ colourants, from }) =>
      colourants.length > 0 && !/^aceite (?:de|d)$/u.test(words.slice(from - 2, from).join(' ')),
  );
  const [thing] = named;
  if (named.length !== 1 || thing === undefined || amounts.length > 0 || LYE.test(text)) return false;
  const before = `${words.slice(0, thing.from).join(' ')} `;
  const behind = ` ${words.slice(thing.to).join(' ')}`;
  return (
    CARRIER_FIRST.test(before) ||
    WITH_WHAT.test(before) ||
    EITHER.test(text) ||
    (THING_FIRST.test(behind) && MAY.test(text))
  );
}
