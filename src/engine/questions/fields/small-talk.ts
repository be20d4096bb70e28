import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import { asksWhatItDoes } from '../asking/what-it-does.ts';
import { thingsIn } from '../found/names/entities.ts';
import { wordsOf } from '../found/words-of.ts';
import { LYE_WORDS } from './soap-words.ts';
import { thanksForBars } from './thanks-for-bars.ts';

/** What is said to pass the time, or asked of somebody with hands. */
export const SMALL_TALK = [
  'joke',
  'taste',
  'cannot',
  'praise',
  'wrongChat',
  'night',
  'program',
  'remind',
  'draw',
  'greets',
] as const;
export type SmallTalk = (typeof SMALL_TALK)[number];

/** Longer texts say something besides, words. */
const MOST_WORDS = 12;
/** What only a program is asked may be told at more length. */
const MOST_OF_A_PROGRAM = 16;
const OF_A_PROGRAM: ReadonlySet<SmallTalk> = new Set(['program', 'remind', 'draw']);

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
        (?:^(?:(?:please|pls|porfa|can you|could you) )*(?:tell (?!me |us |you )\p{L}+ (?:to|that|i|he|she|
        we)|(?:dile|diles|avisale|avisales|preguntale) (?:a|al|que)))(?!\p{L})|
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
    'program',
    new RegExp(
      unbroken`
        (?<!\p{L})(?:(?:are|r) (?:you|u|ya) (?:(?:just|really|actually|even) )?(?:an? )?(?:real|human|
        person|people|bot|robot|ai|machine|computer|program|man or|woman)|(?:is (?:this|that|there)|
        am i talking to) (?:an? )?(?:real |actual )?(?:person|human|bot|robot|machine|somebody real)|
        (?:eres|sos|es usted|eres tu) (?:de verdad )?(?:un |una )?(?:persona|human[oa]|robot|bot|maquina|
        programa|de verdad|real|ia)|(?:hablo|estoy hablando) con (?:un |una )?(?:persona|robot|maquina|bot|
        programa))(?!\p{L})
      `,
      'u',
    ),
  ],
  [
    'remind',
    new RegExp(
      unbroken`
        (?<!\p{L})(?:remind (?:me|us)|set (?:me )?(?:a|an) (?:reminder|alarm|timer)|(?:ponme|pon|ponerme|
        me pones) (?:un |una )?(?:aviso|alarma|recordatorio)|(?:recuerda|recorda|avisa|acuerda)me (?:que|de|
        para|cuando|manana|el)|me (?:recuerdas|avisas))(?!\p{L})
      `,
      'u',
    ),
  ],
  [
    'draw',
    new RegExp(
      unbroken`
        (?<!\p{L})(?:(?:can|could|will|would) (?:you|u|ya) (?:please )?(?:draw|sketch|make|do|
        show)(?: me)? (?:an? )?(?:drawing|sketch|picture|diagram|image)|(?:draw|sketch) (?:me|it|this|that)|
        (?:me )?(?:puedes|podes|podrias|haces)(?: hacer| dibujar)? (?:un )?(?:dibujo|boceto|esquema)|
        dibuja(?:me|lo)|hazme un (?:dibujo|boceto))(?!\p{L})
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

const GREETS = new RegExp(
  unbroken`
    ^(?:(?:oh|well|hey|hi|hello|howdy|hola|holi\p{L}*|buenas|ay) )*(?:hi|hello|hey|howdy|g?morn(?:in|ing)?|
    good (?:morn(?:in|ing)?|afternoon|evening|day)|hola|buenas|buenos dias|buenas (?:tardes|noches)|bon dia|
    que tal|saludos)(?!\p{L})
  `,
  'u',
);
/** Something is asked, or told of a batch, a colour or an amount. */
const SAYS_MORE = new RegExp(
  unbroken`
    [?¿]|(?<!\p{L})(?:my
    (?:top|soap|white|first|last|blue|red|green|pink|black)|gone|goes|overnight|how|what|whats|why|when|where|which|can|could|do|does|did|is
    it|are|should|need|help|
    want|wanna|looking|got|made|came|went|turned?|colou?r\p{L}*|mica\p{L}*|oxid\p{L}*|clay|pigment\p{L}*|
    lye|batter|bars?|lo(?:af|aves)|mou?lds?|swirl\p{L}*|trace|recipe|oils?|cure\p{L}*|grams?|oz|lbs?|cups?|
    tsp|como|que hago|por que|cuando|donde|cual|cuant\p{L}+|puedo|puede|se puede|necesito|ayuda|quiero|
    quisiera|busco|me (?:ha|han|sali\p{L}*|qued\p{L}*)|se me|salio|quedo|sosa|lejia|masa|pastilla\p{L}*|
    molde\p{L}*|receta\p{L}*|aceite\p{L}*|gramos?|arcilla|pigmento\p{L}*)(?!\p{L})
  `,
  'u',
);
const MOST_OF_A_GREETING = 24;

/** A greeting with its weather and its day, and nothing asked or told. */
function greets(text: string): boolean {
  const said = unaccented(text, 200).replace(/['’]/gu, '');
  const plain = said.replace(/[^\p{L}\p{N}]+/gu, ' ').trim();
  return (
    plain.split(' ').length <= MOST_OF_A_GREETING &&
    GREETS.test(plain) &&
    !SAYS_MORE.test(said) &&
    !HELP.test(plain) &&
    !asksWhatItDoes(plain) &&
    !MATTERS.test(plain.replace(/\d+/gu, ' '))
  );
}

/**
 * What kind of small talk a text is, where it is nothing else: no figure and no lye in it. Pure.
 * @example smallTalkIn('do you know any jokes about soap') // 'joke'
 */
export function smallTalkIn(text: string): SmallTalk | undefined {
  if (greets(text)) return 'greets';
  const plain = unaccented(text, 160)
    .replace(/['’]/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  if (
    /\d/u.test(plain) ||
    LYE_WORDS.test(plain) ||
    HELP.test(plain) ||
    plain.split(' ').length > MOST_OF_A_PROGRAM
  )
    return undefined;
  if (thanksForBars(text, plain)) return 'praise';
  const kind = KINDS.find(([, words]) => words.test(plain))?.[0];
  const isShort = plain.split(' ').length <= MOST_WORDS;
  return kind !== undefined && (isShort || OF_A_PROGRAM.has(kind)) ? kind : undefined;
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
  if (MATTERS.test(unaccented(aside))) return text;
  // What is named in the aside may be what "it" is that is asked of.
  const named = colourantsIn(asked).length > 0 ? [] : colourantsIn(aside);
  return named.length > 0 ? `${named.join(', ')}: ${asked}` : asked;
}

const colourantsIn = (text: string): readonly string[] =>
  thingsIn(wordsOf(text)).flatMap(({ text: name, colourants }) => (colourants.length > 0 ? [name] : []));
