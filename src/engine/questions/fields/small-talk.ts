import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import { LYE_WORDS } from './soap-words.ts';

/** What is said to pass the time, or asked of somebody with hands. */
export const SMALL_TALK = ['joke', 'taste', 'cannot', 'praise', 'wrongChat', 'night'] as const;
export type SmallTalk = (typeof SMALL_TALK)[number];

/** Longer texts say something besides, words. */
const MOST_WORDS = 12;

const OPENS = String.raw`^(?:(?:hi|hey|hello|lol|haha+|jaja+|so|and|ok|oh|che|oye|hola|perdon|sorry|soz|oops|uy|ay|ja) )*`;
const YOU = '(?:can|could|will|would) (?:you|u|ya|ye)(?: please)?';
const KINDS: readonly (readonly [SmallTalk, RegExp])[] = [
  [
    'joke',
    new RegExp(
      unbroken`
        (?<!\p{L})(?:(?:tell|know|knows|got|have|do you know|hear) (?:me |us |you )?(?:a |any |some |
        one )?(?:good |soap |new )?(?:jokes?|riddles?)|(?:cuent\p{L}+|sabes|sabe|conoces|contame|
        dime) (?:me )?(?:un |algun |algunos )?(?:buen )?(?:chistes?|adivinanzas?))(?!\p{L})
      `,
      'u',
    ),
  ],
  [
    'taste',
    new RegExp(
      unbroken`
        (?<!\p{L})(?:(?:whats|what is|which is|do you have a|got a) (?:your |ur )?fav\p{L}*|(?:cual|
        que) es tu (?:\p{L}+ )?(?:favorit\p{L}|preferid\p{L})|(?:do|would) (?:you|u) (?:like|love|prefer|
        hate|wash|bathe)|te gusta(?:n|ria)?)(?!\p{L})
      `,
      'u',
    ),
  ],
  [
    'wrongChat',
    new RegExp(
      unbroken`
        ${OPENS}(?:(?:wrong|not the right) (?:chat|group|person|window|thread|one)|(?:that|this) (?:was|
        wasnt|was not) (?:meant )?(?:for|to) (?:another|the other|here|you|somebody|someone|a different)|
        (?:(?:me |le |lo )?(?:err?e|equivoque)(?: de)?,? ?(?:(?:era|iba|es) )?(?:al|para el|para la|de|
        en el) (?:otro )?(?:grupo|chat)|(?:era|iba) (?:al|para el|para la|para mi|a mi) (?:otro )?(?:grupo|
        chat)|grupo equivocado|chat equivocado))
      `,
      'u',
    ),
  ],
  [
    'night',
    new RegExp(
      unbroken`
        ^(?:(?:good )?ni(?:ght|te)(?: ni(?:ght|te))?(?: all| everyone| everybody| folks| then)?(?= |$)|
        off to bed|im off to bed|buenas noches (?:a tod[oa]s|gente|grupo)|hasta manana|me voy a (?:dormir|
        la cama))(?!\p{L})
      `,
      'u',
    ),
  ],
  [
    'cannot',
    new RegExp(
      unbroken`
        (?<!\p{L})(?:${YOU} (?:(?:order|buy|send|post|deliver|ship|bring|lend) (?:me|us)|book|reserve|ring|
        phone|email|pay|sing|cook|drive|sign me|put me down|tell (?:him|her|my))|(?:whats|what is|hows|
        how is) the weather|(?:are )?(?:you|u) any good (?:at|with)|(?:me|nos) (?:anotas|anota|compras|
        compra|pedis|pides|pide|mandas|manda|envias|reservas|llamas|inscribes|apuntas|prestas|
        pasas a buscar)|(?:podes|puedes|podrias) (?:comprar|pedir|mandar|enviar|reservar|llamar|anotar|
        inscribir|apuntar|venir)\p{L}*|que tiempo (?:hace|hara|va a hacer)|va a llover)(?!\p{L})
      `,
      'u',
    ),
  ],
  [
    'praise',
    new RegExp(
      unbroken`
        ^(?:(?:lol|haha+|jaja+|aw+|ay|ok|well|thanks|gracias|che|oye|sos|eres) )*(?:(?:youre|ur|you are|
        u are|youre all|sos|eres) (?:better than|more use than|a (?:star|legend|gem|lifesaver|genius|
        godsend)|the best|brilliant|amazing|great|lovely|clever|funny|un (?:sol|amor|genio|crack|angel)|
        una (?:genia|crack)|lo mas|(?:el|la) mejor|mejor que)|(?:un sol|un amor|una genia|un genio|
        que genio))(?!\p{L})
      `,
      'u',
    ),
  ],
];

const HELP =
  /(?<!\p{L})(?:ambulance|doctor|hospital|poison|emergency|help|urgent\p{L}*|ambulancia|medic[oa]|toxicolog\p{L}*|emergencia\p{L}*|auxilio|ayuda)(?!\p{L})/u;

/**
 * What kind of small talk a text is, where it is nothing else: no figure and no lye in it. Pure.
 * @example smallTalkIn('do you know any jokes about soap') // 'joke'
 */
export function smallTalkIn(text: string): SmallTalk | undefined {
  const plain = unaccented(text, 160)
    .replace(/['’]/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  if (/\d/u.test(plain) || LYE_WORDS.test(plain) || HELP.test(plain) || plain.split(' ').length > MOST_WORDS)
    return undefined;
  return KINDS.find(([, words]) => words.test(plain))?.[0];
}

/** What keeps from harm or hangs on a figure is never passed by. */
const MATTERS = new RegExp(
  unbroken`
    \d|(?<!\p{L})(?:lye|caustic|sosa|soda|lejia|naoh|koh|burn\p{L}*|hurt\p{L}*|skin|eyes?|quem\p{L}*|ojos?|
    piel|duel\p{L}*|zap\p{L}*|sting\p{L}*|batter|masa|bars?|barras?|pastillas?)(?!\p{L})
  `,
  'u',
);
const ASIDE = new RegExp(
  unbroken`
    ^(.{12,160}?)[.,;!)\s] *(?:but )?(?:anyway|anyways|anyhow|any road|en fin|pero bueno|bueno igual|
    volviendo al tema|a lo que iba|mi pregunta es|my question is)[,:. ]+(.{10,})$
  `,
  'isu',
);

/**
 * What is asked behind an aside that the asker takes leave of ("himself says it's cheaper in the shop. Anyway, how do I …"); the text as it is
 * where the aside may matter. Pure.
 */
export function pastAside(text: string): string {
  const [, aside, asked] = ASIDE.exec(text) ?? [];
  if (aside === undefined || asked === undefined) return text;
  return MATTERS.test(unaccented(aside)) ? text : asked;
}
