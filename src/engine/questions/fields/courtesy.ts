import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

const whole = (words: string) => new RegExp(String.raw`(?<!\p{L})(?:${words})(?!\p{L})`, 'u');

/** What is said to chat that asks nothing, by what it is; the first that fits. */
const KINDS = [
  [
    'noHarm',
    whole(String.raw`sorry|wrong (?:group|chat|one)|ignore|oops|perdon\p{L}*|disculp\p{L}+|equivo\p{L}+`),
  ],
  [
    'pictures',
    whole(
      unbroken`
        (?:can|could|do|are) (?:you|u|ya) (?:able to )?(?:see|read|look at|view|open|understand|
        check) (?:\p{L}+ )?(?:pics?|photos?|pictures?|images?)|(?:puedes?|podes|sabes?) (?:ver|leer|mirar|
        abrir|revisar) (?:las? |una? |mis? )?(?:fotos?|imagen(?:es)?)|(?:ves|miras|lees|ve|mira) fotos?
      `,
    ),
  ],
  ['night', whole('(?:good)? ?night|nite|hasta manana')],
  ['welcome', whole(String.raw`thank\p{L}*|thx|ty|ta|cheers|gracias|agradezco|geni[ao]|bendito|salvaste`)],
  [
    'wellDone',
    whole(
      unbroken`
        done it|did it|made (?:it|my|it)|finished|poured|first (?:ever )?(?:swirl|soap|batch)|in the mou?ld|
        pics?|photos?|pictures?|ya (?:lo )?(?:quedo|hice|esta)|listo|fotos?
      `,
    ),
  ],
  [
    'here',
    whole(
      unbroken`
        where i|any(?:one|body)|around|you there|got a (?:sec|minute|min)|can i ask|alguien|me ayudas|
        pregunt\p{L}+|consulta|duda|right place|new here|colou?r person
      `,
    ),
  ],
] as const;

/** What is said to chat that asks for nothing, by what it is; `any` where it is none of them. */
export type Courtesy = (typeof KINDS)[number][0] | 'any';

/** What kind of courtesy a text is that asks for nothing yet. Pure. */
export function courtesyIn(text: string): Courtesy {
  const plain = unaccented(text);
  return KINDS.find(([, words]) => words.test(plain))?.[0] ?? 'any';
}
