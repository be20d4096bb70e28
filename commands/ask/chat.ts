import { unbroken } from '../../src/engine/over-lines.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import type { SmallTalk } from '../../src/engine/questions/fields/small-talk.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';

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

/** What is said to small talk, by its kind. */
export function smallTalkReply(kind: SmallTalk, { say: { ask } }: Context): Reply {
  const headline = kind === 'praise' ? ask.welcome : kind === 'wrongChat' ? ask.chat.noHarm : ask.chat[kind];
  return {
    kind: 'reply',
    headline,
    data: { understood: { outside: 'other', chat: kind } },
    blocks: [],
    cautions: [],
  };
}

/** A courtesy for a courtesy: chat that asks for nothing yet. */
export function chatReply(question: string, { say: { ask } }: Context): Reply {
  const plain = unaccented(question);
  const kind = KINDS.find(([, words]) => words.test(plain))?.[0] ?? 'any';
  return {
    kind: 'reply',
    headline: kind === 'welcome' ? ask.welcome : ask.chat[kind],
    data: { understood: { outside: 'other', chat: kind } },
    blocks: [],
    cautions: [],
  };
}
