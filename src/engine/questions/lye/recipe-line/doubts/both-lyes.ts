import { unbroken } from '../../../../over-lines.ts';

const BOTH = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:both|2|two|the (?:2|two))(?: (?:the|of the|of my|my|kinds of|sorts of))* (?:lyes|alkalis|alkalies|hydroxides|
    caustics)|(?:las (?:2|dos)|ambas|2|dos) (?:sosas|lejias|causticas)|(?:los (?:2|dos)|ambos|2|dos) (?:alcalis|hidroxidos)|dual lye)(?!\p{L})
  `,
  'u',
);
/** Each alkali with its share or its weight: then both are told. */
const SHARE = String.raw`\d ?(?:%|percent|por ciento)[^;]*`;
const [SODIUM, POTASH] = ['(?:naoh|sodium)[^;]*', '(?:koh|potas)'];
const SHARED = new RegExp(`${SHARE}${SODIUM}${SHARE}${POTASH}|${SHARE}${POTASH}[^;]*${SHARE}${SODIUM}`, 'u');

/**
 * The words by which a recipe is to be made with two alkalis whose shares nobody told: all of one would be another weight than all of the other.
 * Undefined where none do. Takes what `plainWords` gives. Pure.
 * @example bothLyesIn('both lyes half and half, 500 g olive') // 'both lyes'
 */
export const bothLyesIn = (plain: string): string | undefined =>
  SHARED.test(plain) ? undefined : BOTH.exec(plain)?.[0];
