import { unbroken } from '../../over-lines.ts';

/** What stands before the amount that is meant, where another was told first. */
export const CORRECTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:no,? wait|wait|hang on|hold on|sorry|scratch that|i mean(?:t)?|rather|actually|make (?:it|
    that)|not? that|oops|whoops|perd[oó]n(?:en|a|ad)?|mejor dicho|digo|quise decir|quiero decir|espera|
    esperen?|corrijo|me equivoqu[eé]|disculp\p{L}*|miento)(?!\p{L})
  `,
  'iu',
);
