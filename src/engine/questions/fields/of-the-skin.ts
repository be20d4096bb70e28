import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

const FACE = new RegExp(
  unbroken`
    (?<!\p{L})(?:face ?masks?|facial\p{L}*|(?:on|for|in) (?:my|the|your|a) (?:face|skin)|skin|sun ?(?:cream|
    screen)|make ?up|piel|cara|cutis|rostro|crema|maquillaje)(?!\p{L})
  `,
  'u',
);

/** Whether a text is of a powder that goes on somebody's skin or face, and of no soap. Pure. */
export function isOfTheSkin(text: string): boolean {
  const plain = unaccented(text);
  return FACE.test(plain) && !/(?<!\p{L})(?:soap\p{L}*|bars?|jab[oó]n\p{L}*)(?!\p{L})/u.test(plain);
}
