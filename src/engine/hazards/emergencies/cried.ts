import { unaccented } from '../../text/unaccented.ts';

/** What is called out beside it and tells nothing more. */
const BESIDE = 'help|ayuda|auxilio|socorro|omg|please|por favor|quick|rapido|ay|theres|there is|hay';
/** Longer texts tell more than a cry, UTF-16 units. */
const LONGEST = 80;
const FIRE = 'fire|flames|fuego|incendio|llamas';
const CRY = new RegExp(`^(?:(?:a|${BESIDE}|un) )*(?:${FIRE})(?: (?:${BESIDE}|${FIRE}|here|aqui))*$`, 'u');
/** "Ayuda, fuego en el taller": help is called for, and where it burns is told. */
const CRY_AT = new RegExp(
  `^(?:(?:a|${BESIDE}|un) )+(?:${FIRE}) (?:in|on|at|en) (?:(?:the|my|our|el|la|mi|un|una) )*\\p{L}+(?: (?:${BESIDE}))*$`,
  'u',
);

/**
 * Whether a text is nothing but a cry of fire: in capitals, with a mark of exclamation, or said more than once. "fire" in small letters
 * is the name of a colour.
 * @example criesFire('FIRE') // true
 */
export function criesFire(text: string): boolean {
  if (text.length > LONGEST) return false;
  const words = unaccented(text)
    .replaceAll(/[^\p{L}]+/gu, ' ')
    .trim();
  const isCried =
    /[!¡]/u.test(text) || (/\p{L}/u.test(text) && text === text.toUpperCase()) || words.includes(' ');
  return isCried && (CRY.test(words) || CRY_AT.test(words));
}
