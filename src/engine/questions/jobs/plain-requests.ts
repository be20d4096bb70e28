import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import { OUR_WORDS } from '../fields/soap-words.ts';
import { type TradeTerm, termAsked } from '../found/trade-terms.ts';
import { tellsOfHurt } from '../lye/topics/nearest/hurt.ts';

/** What is asked for in words that can mean one thing only; nothing in them has to be learnt. */
export type PlainRequest =
  | { readonly kind: 'term'; readonly term: TradeTerm }
  /** What the shelf makes today. */
  | { readonly kind: 'today' }
  | { readonly kind: 'undo' }
  /** What the batches ask for next. */
  | { readonly kind: 'dates' }
  /** What can be asked at all. */
  | { readonly kind: 'help' }
  /** Hello, with nothing asked yet. */
  | { readonly kind: 'greeting' }
  | { readonly kind: 'thanks' }
  /** Whether pictures can be looked at. */
  | { readonly kind: 'pictures' }
  /** Good night, said on leaving; in Spanish it is said on coming too. */
  | { readonly kind: 'night' }
  /** What stands on the shelf. */
  | { readonly kind: 'shelf' }
  /** The newest kept recipe so many times as big. */
  | { readonly kind: 'rescale'; readonly times: number };

const COURTESY =
  /^(?:please|pls|so|ok|okay|hi|hey|hello|hola|oye|pues|bueno|por favor) | (?:please|pls|por favor|thanks|gracias)$/gu;

const TODAY = new RegExp(
  unbroken`
    ^(?:(?:what|which) (?:\p{L}+ )?(?:can|could|shall|should|might) (?:i|we) (?:make|pour|soap|do|
    create) (?:today|tonight|this (?:morning|afternoon|evening|weekend))|what to (?:make|pour|soap) today|
    (?:que|cual) (?:\p{L}+ )?(?:puedo|podemos|podria|podriamos) (?:hacer|verter|preparar|crear) (?:hoy|
    esta (?:noche|tarde)|este finde)|que (?:hago|hacemos|vierto|preparo) hoy)(?: (?:with|from|con|de) (?:my|
    what is on my|the|mi|lo que hay en mi) (?:shelf|jars|colou?rs|estanteria|botes|colores))?$
  `,
  'u',
);

const UNDO = new RegExp(
  unbroken`
    ^(?:undo(?: (?:it|that|this|last|the last|my last|last one|the last one|my last change|the last change|
    what i just did))?|take (?:it|that) back|revert(?: (?:it|that))?|des(?:haz(?:lo)?|
    hacer(?:lo)?)(?: (?:eso|esto|lo ultimo|el ultimo cambio|lo que acabo de hacer))?)$
  `,
  'u',
);

const DATES = new RegExp(
  unbroken`
    ^(?:(?:what|when) (?:is|are|s) (?:my|the) (?:next )?(?:batch|soap|bar|curing|cure)(?:s|es)? (?:dates?|
    due|ready|cured|done)|when is my next (?:batch )?(?:date|step)(?: due)?|
    (?:show (?:me )?)?my (?:next )?batch dates?|what (?:do|does) my (?:next )?batch(?:es)? (?:need|ask for|
    want)(?: next)?|what is (?:next|due)(?: (?:for|with) my (?:batch|batches|soap|bars))|cuando (?:estan?|
    estaran?) (?:listos?|curados?|listas?|curadas?) (?:mi|mis) (?:lotes?|jabon(?:es)?|pastillas?|barras?)|
    (?:cuales son )?(?:las |mis )?(?:proximas )?fechas de mis? lotes?|cual es (?:la |
    mi )?proxima fecha(?: de mis? lotes?)?|que (?:le toca a mi lote|les toca a mis lotes)|
    que piden? mis? lotes?)$
  `,
  'u',
);

const GREETING = new RegExp(
  unbroken`
    ^(?:hi+|hey+|hello+|hiya+|heya|howdy|yo|good (?:morning|afternoon|evening|day|night)|(?:good )?night|
    nite|morning|evening|hola+|holi|buenas|buen(?:os)? dias?|buenas (?:tardes|noches)|saludos|ola)(?: |$)
  `,
  'u',
);
const NIGHT = /^(?:good )?(?:night|nite)(?: |$)/u;
const THANKS =
  /(?:^| )(?:thanks?|thank (?:you|u)|thankyou|thx|ty|tysm|cheers|ta|much appreciated|gracias|(?:te |lo |os )?agradezco|muy amable)(?: |$)/u;
/** Something is asked or told beside the courtesy. */
const BESIDE = new RegExp(
  unbroken`
    \d|\b(?:how|what|why|when|where|which|who|can|could|should|would|does|do i|is it|are|will|help|but|
    still|not|problem|que|como|cuant[oa]s?|cual|cuando|donde|puedo|se puede|sirve|ayuda|pero|todavia|aun|
    sigue|no)\b
  `,
  'u',
);
/** Longer texts tell more than a courtesy. */
const MOST_OF_A_COURTESY = 8;
/** Thanks of who has just come in: a greeting, and nothing was answered yet. */
const NEW_HERE = new RegExp(
  unbroken`
    (?:^| )(?:(?:thanks?|thank you|gracias) (?:so much |a lot |mucho )?(?:for|por) (?:adding|accepting|
    having|letting|aceptar\p{L}*|agregar\p{L}*|recibir\p{L}*|admitir\p{L}*|anadir\p{L}*|dejarme)|
    soy nuev[oa]|im new|i am new|new here)(?: |$)
  `,
  'u',
);
const MOST_OF_A_WELCOME = 14;

/** A greeting or thanks that stands alone, whoever it is said to. */
function courtesyOf(question: string): PlainRequest | undefined {
  const text = unaccented(question)
    .replace(/['’]/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/\b(?:for (?:the|your|all the) help|por (?:la|tu|su|toda la) ayuda)\b/u, ' ')
    .trim();
  if (
    text.split(' ').length > (NEW_HERE.test(text) ? MOST_OF_A_WELCOME : MOST_OF_A_COURTESY) ||
    OUR_WORDS.test(text) ||
    tellsOfHurt(question)
  )
    return undefined;
  const isAnyone = /^(?:\w+ )?(?:is )?any(?:one|body) (?:there|here|about)$/u.test(text);
  if (isAnyone) return { kind: 'greeting' };
  if (NEW_HERE.test(text) && !BESIDE.test(text)) return { kind: 'greeting' };
  if (BESIDE.test(text) || question.includes('?')) return undefined;
  if (THANKS.test(text)) return { kind: 'thanks' };
  if (NIGHT.test(text)) return { kind: 'night' };
  return GREETING.test(text) ? { kind: 'greeting' } : undefined;
}

const SHELF = new RegExp(
  unbroken`
    ^(?:what(?:s| is| do i have| have (?:i|we)(?: got)?) (?:there )?(?:on|in) (?:my|the|our) (?:shel(?:f|
    ves)|stash|drawer)|(?:have|do) (?:i|we) (?:got |have )?(?:any |some )?(?:\p{L}+ ){0,3}(?:left )?(?:on|
    in) (?:my|the|our) (?:shel(?:f|ves)|stash)|que (?:hay|tengo|tenemos|queda) en (?:la|mi|el|
    nuestra) (?:repisa|estant\p{L}*|balda)(?: de \p{L}+)?)$
  `,
  'u',
);

const HELP = new RegExp(
  unbroken`
    ^(?:(?:so|and|new here|soy nuev[oa]|y) )*(?:(?:what|wht) (?:(?:all|else|exactly|things) )?(?:can|could|
    do) (?:you|u|ya) (?:do|help(?: me)? with|answer|know)(?: for (?:me|us))?|(?:what|wot) (?:are|r) (?:you|
    u|ya) (?:good |here )?for|(?:what|wha|wot)cha (?:good )?for|how can (?:you|u) help(?: me| us)?|
    what can i ask(?: you| here)?|(?:(?:tu|vos|usted|ustedes) )?(?:en|con) que (?:(?:cosas|temas|asuntos|
    clase de (?:cosas|asuntos|temas)) )?(?:(?:me|nos) )?(?:puedes|podes|puede|pueden|podrias|
    podria) (?:(?:tu|vos|usted|ustedes) )?(?:ayudar|asistir|echar una mano)(?:me|nos)?|(?:(?:tu|vos|usted|
    ustedes) )?que (?:(?:mas|cosas|todo) )?(?:sabes|sabe|saben|puedes|podes|puede|pueden) hacer(?: (?:tu|
    vos|usted))?(?: (?:ademas de|aparte de|fuera de) [\p{L} ]{1,40})?|(?:(?:tu|vos|
    usted) )?para que (?:sirves|servis|sirve usted|estas)|(?:de )?que (?:te |le )?puedo (?:preguntar|
    consultar)(?:te|le)?)(?: (?:then|exactly|here|mate|entonces|aqui|aca))?$
  `,
  'u',
);

const PICTURES = new RegExp(
  unbroken`
    ^(?:(?:hey|hi|hello|ok|so|bot|hola|oye) )*(?:(?:can|could|do|are) (?:you|u|ya) (?:able to )?(?:see|read|
    look at|view|open|understand|check) (?:\p{L}+ )?(?:pics?|photos?|pictures?|images?)|(?:(?:tu|vos|usted|
    aqui) )?(?:puedes?|podes|sabes?) (?:ver|leer|mirar|abrir|revisar) (?:las? |una? |mis? )?(?:fotos?|
    imagen(?:es)?)|(?:ves|miras|lees) fotos)(?: (?:here|too|bot|aqui|aca|tambien))*$
  `,
  'u',
);

const RESCALE: readonly (readonly [RegExp, number])[] = [
  [/^(?:double|dobla|doblar|duplica|duplicar)\b/u, 2],
  [/^(?:triple|triplica|triplicar)\b/u, 3],
  [/^(?:halve|half of|make half of|la mitad de|haz la mitad de)\b/u, 0.5],
];
const LAST_RECIPE = new RegExp(
  unbroken`
    ^\p{L}+(?: \p{L}+){0,3}? (?:my|the|mi|la) (?:last|latest|newest|ultima) (?:saved |kept )?(?:recipe|
    receta)(?: guardada)?$|^\p{L}+(?: \p{L}+){0,3}? mi ultima receta$
  `,
  'u',
);

/**
 * The one thing that a question of few words asks for: a word's meaning, what can be made today, to undo, what is due, the
 * last recipe bigger or smaller, a greeting, thanks. Undefined where it is read in the usual way. English and Spanish.
 */
export function plainRequest(question: string): PlainRequest | undefined {
  if (question.length > 100) return undefined;
  const term = termAsked(question);
  if (term) return { kind: 'term', term };
  const text = unaccented(question)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(COURTESY, '');
  const courtesy = courtesyOf(question);
  if (courtesy) return courtesy;
  if (PICTURES.test(text)) return { kind: 'pictures' };
  if (HELP.test(text.replace(/^(?:buen[oa]s (?:dias|tardes|noches)) /u, ''))) return { kind: 'help' };
  if (SHELF.test(text)) return { kind: 'shelf' };
  if (TODAY.test(text)) return { kind: 'today' };
  if (UNDO.test(text)) return { kind: 'undo' };
  if (DATES.test(text)) return { kind: 'dates' };
  const times = LAST_RECIPE.test(text) ? RESCALE.find(([said]) => said.test(text))?.[1] : undefined;
  return times === undefined ? undefined : { kind: 'rescale', times };
}
