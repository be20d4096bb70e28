import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';

/** Longer texts tell enough to stand alone, words. */
export const MOST_WORDS = 14;
/** Longer texts are not looked at, characters. */
const LONGEST = 160;

/** Opens a turn and says nothing: "ok and", "y entonces". */
const LEAD = new RegExp(
  unbroken`
    ^(?:and|ok|okay|okey|kk?|righto?|so|then|now|but|also|or|oh|ooh|ah|um+|uh|hmm+|sorry|wait|actually|well|
    great|cool|lovely|yes|yep|yeah|aye|no|nope|hey|ay|y|ya|e|o|u|vale|bueno|buena|entonces|pues|pero|
    tambien|oye|oiga|perdon|perdona|espera|a ver|ahora|si|sip|genial|perfecto|listo|dale) (?=.)
  `,
  'u',
);
/** Ends one. */
const TAIL = new RegExp(
  unbroken` (?:then|too|instead|please|pls|plz|lol|haha+|tho|though|also|as well|now|ta|thanks|thx|sorry|again|
    still|even|right|innit|int it|aye|eh|or what|an all|man|mate|x+|o que|o q|verdad|cierto|entonces|
    tambien|mejor|porfa(?:vor)?|por favor|pues|gracias|jaja+|perdon|ahora|otra vez|ojo|eso si|mind|
    mind you)$
  `,
  'u',
);

/** The lead-ins that say that something is put right or goes on. */
export type Opened = {
  readonly text: string;
  readonly leads: readonly string[];
  readonly tails: readonly string[];
};

/** A text in lower case without accents, marks and smileys; figures keep their points. */
export const plainTurn = (text: string): string =>
  unaccented(text, LONGEST)
    .replace(/['’‘`´]/gu, '')
    .replace(/(?<!\d)[.,:]|[.,:](?!\d)/gu, ' ')
    .replace(/[^\p{L}\p{N}.,/%+-]+/gu, ' ')
    .replace(/(?<!\d)-|-(?!\d)/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();

/** A turn without what opens and ends it; undefined where it is too long to lean on anything. */
export function openedTurn(typed: string): Opened | undefined {
  if (typed.length > LONGEST) return undefined;
  let text = plainTurn(typed);
  if (text === '' || text.split(' ').length > MOST_WORDS) return undefined;
  const leads: string[] = [];
  for (let found = LEAD.exec(text); found; found = LEAD.exec(text)) {
    leads.push(found[0].trim());
    text = text.slice(found[0].length);
  }
  const tails: string[] = [];
  for (let found = TAIL.exec(text); found; found = TAIL.exec(text)) {
    tails.push(found[0].trim());
    text = text.slice(0, -found[0].length);
  }
  return { text, leads, tails };
}
