import { unbroken } from '../../../over-lines.ts';
import { substanceNamed } from '../../../stability/names.ts';
import { plantNamed } from '../../../stability/plant-classes.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { tellsOfHarm } from '../recipe-line/plain-recipe.ts';

/** Longer texts tell a story, and a story may hold somebody who is hurt. */
const LONGEST = 160;
const KEEPS = new RegExp(
  unbroken`
    (?<!\p{L})(?:aguantan?|resisten?|soportan?|sobreviven?|holds? up|surviv\p{L}+|stays?|keeps? (?:its|
    the) colou?rs?|fad(?:e|es)|turns?|se ponen? (?:morad|azul|verde|marron|cafe|gris|roj|negr|rosa)\p{L}*|
    dan? (?:un )?(?:rosa|azul|verde|amarill|morad|roj)\p{L}*)(?!\p{L})
  `,
  'u',
);
const LYE = /(?<!\p{L})(?:lye|naoh|saponif\p{L}+|sosa|soda|lejia|soap|jabon)(?!\p{L})/u;
/** "Or is that just burning money". */
const MONEY = /(?<!\p{L})burn(?:ing|in|in'|s)? (?:my |good |the )?money(?!\p{L})/gu;

/** Whether a text asks what lye does to a colourant or a plant that it names, and nothing in it is of harm. Pure. */
export function asksOfKeeping(text: string): boolean {
  if (text.length > LONGEST) return false;
  const plain = unaccented(text).replace(MONEY, ' ');
  return KEEPS.test(plain) && LYE.test(plain) && !tellsOfHarm(plain) && namesColour(plain);
}

function namesColour(plain: string): boolean {
  const words = plain.match(/\p{L}+/gu) ?? [];
  return words.some((word, at) =>
    [word, `${word} ${words[at + 1] ?? ''}`].some(
      name => name.length > 3 && (substanceNamed(name) !== undefined || plantNamed(name) !== undefined),
    ),
  );
}
