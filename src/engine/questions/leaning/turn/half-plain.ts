import { unbroken } from '../../../over-lines.ts';
import { plainTurn } from './plain.ts';

const MOST_WORDS = 18;
const PLAIN = '(?:plain|uncolou?red|undyed|natural|white|sin color|sin tenir|al natural|natural|blanc[oa])';
/** "Half of that batch is staying plain", "la mitad se queda blanca": what is left of it takes the colour. */
const HALF_PLAIN = new RegExp(
  unbroken`
    (?<!\p{L})(?:half|la mitad)(?: (?:of|de|the|that|my|this|it|la|el|lo))*(?: (?:batch|batter|loaf|soap|
    pot|tanda|masa|lote|jabon))?(?: (?:is|s|will|be|stays?|staying|gonna|going|to|stay|goes|left|va|vaya|
    queda|quede|se|sin|es|sera|dejo|la|lo))+ ${PLAIN}(?!\p{L})
  `,
  'u',
);

/** A turn that says that half of it stays without colour, as the one word that later readers know; else as it was typed. Pure. */
export function halfPlain(typed: string): string {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_WORDS && HALF_PLAIN.test(text) ? 'half of the batch' : typed;
}
