import { hasHappened } from '../../../hazards/index.ts';
import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { lyeSpilledIn } from '../sums/spilled.ts';
import { ASKED_AHEAD, HARMLESS, IN_ITS_WORDS, NEVER_IN_GENERAL, WHAT_IF } from './calm-topics.ts';
import { isCareOnly } from './care-only.ts';
import { isCalmMatter, lyeTopicIn } from './topics.ts';

/** Longer texts tell a story, and a story may hold somebody who is hurt. */
const LONGEST = 160;

const IF =
  /^\W*(?:(?:and|so|but|y|pero)\W+)*(?:what (?:if|(?:would )?happens? if)|qu[eé] (?:pasa|pasar[ií]a) si)\b/iu;
const LEAVE =
  /\b(?:(?:can|could|may|should|shall) (?:i|we)|is it (?:ok|okay|safe|fine|allowed)|puedo|podemos|se puede|es seguro|est[aá] bien)\b/iu;
const HEAT = /\b(?:hot|warm|boiled|boiling|caliente|hirviendo|reci[eé]n hervid[oa])\b/giu;
/** Somebody or an animal that is not well. */
const UNWELL = new RegExp(
  unbroken`
    (?<!\p{L})(?:cough\p{L}*|gasp\p{L}*|chok\p{L}*|wheez\p{L}*|shak\p{L}*|limp|dead|dying|died|sick|ill|unwell|faint\p{L}*|dizzy|
    vomit\p{L}*|cry\p{L}*|scream\p{L}*|tos\p{L}*|ahog\p{L}*|tiembl\p{L}*|muert[oa]|enferm\p{L}*|mare\p{L}*|llor\p{L}*|grit\p{L}*|
    respira mal)(?!\p{L})
  `,
  'iu',
);

/** Pain, wounds and calls for help; what was drunk, tasted or splashed. */
const TOLD_HURT = new RegExp(
  unbroken`
    (?<!\p{L})(?:burn(?:s|ed|t|ing)?|hurt\p{L}*|sting\p{L}*|stung|red|blister\p{L}*|rash|swallow\p{L}*|drank|tasted|licked|ate|
    splash\p{L}*|eyes?|help|arde\p{L}*|quem\p{L}*|duele\p{L}*|roj[oa]s?|ampollas?|sarpullido|trag[oóué]\p{L}*|bebi[oó]|
    prob[oóé]|lami[oó]|comi[oó]|salpic\p{L}*|ojos?|ayuda|auxilio)(?!\p{L})
  `,
  'iu',
);
/** It does so at this moment. */
const GOING_WRONG = new RegExp(
  unbroken`
    (?<!\p{L})(?:fizz\p{L}*|(?<!for (?:more )?)bubbl\p{L}*|foam\p{L}*|smok\p{L}*|steam\p{L}*|boil(?:s|ed) over|overflow\p{L}*|
    spill\p{L}*|spilt|espuma|burbuj\p{L}*|humo|vapor|hierve|hirvi[oó]|derram\p{L}*|rebos\p{L}*)(?!\p{L})
  `,
  'iu',
);

/** Where lye may be, and no bench. */
const ON_A_BODY = new RegExp(
  unbroken`
    (?<!\p{L})(?:skin|hands?(?! (?:blender|mixer))|fingers?|arms?|legs?|face|mouth|lips?|throat|nose|feet|foot|
    touch\p{L}*|piel|manos?|dedos?|brazos?|piernas?|cara|boca|labios?|garganta|nariz|pies?|toc[oóu]\p{L}*)(?!\p{L})
  `,
  'iu',
);

/** Two cleaners are spoken of in general only where it is asked for leave. */
const MAY_I = /^\W*(?:can|could|may|should) (?:i|we)\b|^\W*(?:puedo|podemos|se puede|es seguro)\b/iu;
/** Something is in the oil already, and then it is no longer the oil alone that smokes. */
const IN_THE_OIL =
  /(?<!\p{L})(?:added|poured|put|stirred|mixed|ech[eé]|puse|a[nñ]ad[ií]|vert[ií]|mezcl\p{L}+|batter|masa|soap|jab[oó]n|jug|jarra)(?!\p{L})/iu;

const OPENS = new RegExp(
  unbroken`
    ^\W*(?:(?:hi|hello|hey|hola|oye|so|and|y|please|por favor|just asking|una duda|una pregunta|
    quick question)\W+)*(?:can|could|should|shall|may|must|do|does|is|are|how|when|what (?:happens|would|
    ph)|will|would|why|which|puedo|puede|pueden|podr[ií]a|debo|se puede|es|son|aguantan?|resisten?|sirven?|
    c[oó]mo|cu[aá]ndo|cu[aá]nto|qu[eé] pasa|por qu[eé]|hay que)\b
  `,
  'iu',
);
/** What is asked at the end of what is told. */
const ASKS_ADVICE = /\b(?:what (?:do|should|can) i do|qu[eé] (?:hago|puedo hacer))\b/giu;
/** "Use" and "put" in a question are no past. */
const USE = /\b(?:can|could|may|should|shall) (?:i|we|you) use\b|\bhow do (?:i|we|you) put\b/giu;
const NOT_NOW = new RegExp(
  unbroken`
    \bjust (?:asking|curious|wondering|in case|want to know)\b|\bmixed up\b|\bswapped\b|\bno longer\b|
    \b(?:hot|boiling|warm)(?= (?:lye )?water)|\b(?:hirviendo|caliente)\b|\b(?:inhale|
    breathe)\b.{0,12}\bsteam\b|\bsteam\b(?= (?:of|from))|\b(?:does|can|will) it explode\b|
    \bexplota\b(?=\W*$)
  `,
  'giu',
);

/** A thing is told, and asked about at the end. */
const ENDS = new RegExp(
  unbroken`
    \b(?:is (?:that|this|it)|that) (?:fine|ok|okay|safe|alright|all right|allowed|right)\W*$|,? (?:ok|okay|
    right|yes or no)\?+\s*$|\b(?:est[aá] bien|es seguro|pasa algo|vale|se puede|lo puedo usar)\W*$
  `,
  'iu',
);
/** Who is hurt, by what, or what is going on: of this nothing is only asked. */
const SOMEBODY = new RegExp(
  unbroken`
    (?<!\p{L})(?:eyes?|skin|hands?|fingers?|arms?|legs?|face|mouth|lips?|tongue|throat|nose|lungs?|chest|stomach|
    feet|foot|hair|son|daughter|kids?|child(?:ren)?|baby|toddler|husband|wife|mum|mom|dad|dogs?|cats?|pets?|
    puppy|somebody|someone|drank|drinks?|swallow\p{L}*|eat|ate|eaten|lick\p{L}*|breath\p{L}*|inhal\p{L}*|cough\p{L}*|
    chok\p{L}*|vomit\p{L}*|dizzy|faint\p{L}*|rash\p{L}*|itch\p{L}*|blister\p{L}*|sting\p{L}*|burns?|burning|pain\p{L}*|red|sore|
    smell\p{L}*|stink\p{L}*|gas|fumes?|flames?|fire|alight|explo\p{L}*|erupt\p{L}*|volcan\p{L}*|overflow\p{L}*|doctor|
    hospital|ambulance|poison\p{L}*|emergency|first aid|what do i do|ojos?|piel|manos?|dedos?|brazos?|piernas?|
    cara|boca|labios?|lengua|garganta|nariz|pulm\p{L}+|pecho|est[oó]mago|pies?|pelo|hij[oa]s?|ni[nñ][oa]s?|
    beb[eé]s?|marido|esposa?|perr[oa]s?|gat[oa]s?|mascotas?|gallinas?|cabras?|vacas?|pollos?|p[aá]jaros?|
    peces|hens?|chickens?|birds?|goats?|cows?|horses?|fish|parrots?|rabbits?|alguien|bebi[oó]|beber|trag\p{L}*|
    comi[oó]|lami\p{L}*|respir\p{L}*|inhal\p{L}*|tos\p{L}*|v[oó]mit\p{L}*|mare\p{L}*|desmay\p{L}*|sarpullido|ampollas?|picor|
    arde\p{L}*|duele\p{L}*|dolor|rojo|roja|huele\p{L}*|olor|humos?|llamas?|fuego|explot\p{L}*|desbord\p{L}*|m[eé]dic[oa]|
    urgencias|ambulancia|t[oó]xic\p{L}*|veneno\p{L}*|qu[eé] hago)(?!\p{L})
  `,
  'iu',
);
/** What an animal only gives. */
const MILKED = /\b(?:goat|cow)(?:'?s)? milk\b|\bleche de (?:cabra|vaca)\b/giu;
/** Going on at this moment: "is rising", "se está saliendo". */
const GOING_ON =
  /(?<!\p{L})(?:is|are|it'?s|its|keeps?|started|starts|est[aá]n?|sigue|empez[oó]|empieza)(?: \p{L}+){0,2} (?:\p{L}+ing|\p{L}+ndo)(?!\p{L})/iu;
/** What holds the lye has given way. */
const BROKE = new RegExp(
  unbroken`
    (?<!\p{L})(?:crack\p{L}*|broke\p{L}*|shatter\p{L}*|burst\p{L}*|leak\p{L}*|spill\p{L}*|spilt|melt\p{L}*|
    romp\p{L}*|rot[oa]|raj\p{L}*|grieta|revent\p{L}*|derram\p{L}*|gote\p{L}*|derrit\p{L}*)(?!\p{L})
  `,
  'iu',
);
/** What a loaf does that has only overheated is told calmly, unless it does more. */
const MORE_THAN_A_CRACK = new RegExp(
  unbroken`
    (?<!\p{L})(?:ris(?:es|ing|en)|spit\p{L}*|smok\p{L}*|steam\p{L}*|boil\p{L}*|foam\p{L}*|bubbl\p{L}*|ooz\p{L}*|leak\p{L}*|spill\p{L}*|out of|
    over the|sub(?:e|iendo)|salpica\p{L}*|hierv\p{L}*|espuma|burbuj\p{L}*|rebos\p{L}*|sale\p{L}*|saliendo)(?!\p{L})
  `,
  'iu',
);

/** Asked of a colour or an ingredient: what lye does to it. */
const BEARS =
  /^\W*(?:does|will|do|can|aguantan?|resisten?|sobreviven?)\b.{0,60}\b(?:survive|hold up|bear|soap|batter|lye|sosa|jab[oó]n|masa)\b[^.!?]*\?*\s*$/iu;

/** Two cleaners are a matter of gas, unless it is asked plainly whether they may meet. */
const CLEANERS = /\b(?:bleach|chlorine|ammonia|clean\w*|lej[ií]a|cloro|amoniaco|limpi\w*)\b/iu;
/** More is told behind the question. */
const GOES_ON = /[.!?]\s+\S+\s+\S/u;

const LYE_WORD = '(?:lye|naoh|caustic(?: soda)?|sosa|soda|lejia)';
/** Which of the two goes into which: a question, and nothing that was done. */
const IN_WHICH_ORDER = [
  new RegExp(
    String.raw`\b${LYE_WORD}\b.{0,24}\b(?:water|agua)\b.{0,8}\b(?:or|o)\b.{0,16}\b(?:water|agua)\b.{0,20}\b${LYE_WORD}\b`,
    'u',
  ),
  new RegExp(
    String.raw`\b(?:water|agua)\b.{0,24}\b${LYE_WORD}\b.{0,8}\b(?:or|o)\b.{0,16}\b${LYE_WORD}\b.{0,20}\b(?:water|agua)\b`,
    'u',
  ),
  // "When I mix the caustic, do I put it to the water or the water to it?"
  new RegExp(
    String.raw`\b${LYE_WORD}\b.{0,30}\b(?:it|la)\b.{0,12}\b(?:water|agua)\b.{0,8}\b(?:or|o)\b.{0,12}\b(?:water|agua)\b.{0,12}\b(?:it|ella)\b`,
    'u',
  ),
];
/** A note that somebody wrote on themselves: the hand holds ink, and no lye. */
const NOTED = new RegExp(
  unbroken`
    \b(?:(?:(?:had|have|got|put) it (?:written|noted|down)(?: down)?|wrote (?:it|that|the order)(?: down)?|
    written) on (?:my|the) (?:hand|arm|wrist|palm)|(?:had|have|put) it on my (?:hand|arm|wrist|
    palm) in (?:pen|ink|biro|marker)|(?:me )?(?:lo|la) (?:ten[ií]a |hab[ií]a )?(?:apunt[eé]|apuntado|
    anot[eé]|anotado|escrib[ií]|escrito) en (?:la|mi) (?:mano|brazo|mu[nñ]eca|palma))
  `,
  'giu',
);

/** Pure. Whether only the order is asked, by somebody who has done nothing and to whom nothing has happened. */
export function asksForOrder(typed: string): boolean {
  const words = typed.replace(NOTED, ' ');
  return (
    IN_WHICH_ORDER.some(order => order.test(unaccented(words))) &&
    ![UNWELL, TOLD_HURT, GOING_WRONG, ON_A_BODY].some(told => told.test(words)) &&
    !hasHappened(words.replace(/\b(?:now|ya|ahora|(?:do|should|shall) (?:i|we|you) put)\b/giu, ' '))
  );
}

const isQuestion = (words: string): boolean =>
  (OPENS.test(words) && !GOES_ON.test(words)) || ENDS.test(words);

/** Of lye that is mixed and of metal first aid is shown in doubt all the same. */
const LYE_OR_METAL = /\b(?:soda|mezcla\w*|latas?|tins?|alumini\w*|metal\w*)\b/iu;

function isHarmless(words: string): boolean {
  const told = words
    .replace(NOT_NOW, ' ')
    .replace(USE, ' ')
    .replace(
      /\b(?:i have|tengo) (?=asthma|asma)|\b(?:melts?|dissolves?)(?= (?:faster|quicker|better))/giu,
      ' ',
    );
  return ![SOMEBODY, GOING_ON, BROKE, LYE_OR_METAL].some(word => word.test(told)) && !hasHappened(told);
}

/** What went missing or was spilled is told with how it came about. */
const LONGEST_OF_CARE = 260;
function isOfCareAlone(words: string): boolean {
  const topic = lyeTopicIn(words);
  return topic !== undefined && isCareOnly(topic, words);
}

/**
 * True where a short question asks whether something may be done, or of lye and its harm in general, and nothing in it
 * says that anything has happened, that somebody is hurt, or that it is going on: it is answered, and first aid would only
 * frighten. Asking what to do if it happens is not meant.
 */
export function isAskedGenerally(words: string): boolean {
  if (words.length > LONGEST) return words.length <= LONGEST_OF_CARE && isOfCareAlone(words);
  if (asksForOrder(words)) return true;
  const topic = lyeTopicIn(words);
  if (topic !== undefined && NEVER_IN_GENERAL.has(topic)) return false;
  if (topic === 'bleach-mixed' && !MAY_I.test(words)) return false;
  if (isCalmMatter(words) && ![UNWELL, TOLD_HURT, GOING_WRONG, ON_A_BODY].some(told => told.test(words)))
    return true;
  // Lye water that was lost on the bench, by weight, and on nobody.
  if (lyeSpilledIn(words) && ![UNWELL, TOLD_HURT].some(told => told.test(words))) return true;
  if (topic !== undefined && isCareOnly(topic, words)) return true;
  if (topic === 'smoking-oil') return ![SOMEBODY, BROKE, IN_THE_OIL].some(told => told.test(words));
  if (topic === 'hot-crack')
    return ![SOMEBODY, MORE_THAN_A_CRACK].some(told => told.test(words.replace(ASKS_ADVICE, ' ')));
  if (topic !== undefined && HARMLESS.has(topic) && isHarmless(words)) return true;
  if (topic !== undefined && ASKED_AHEAD.has(topic) && LEAVE.test(words))
    return (
      ![UNWELL, GOING_ON, BROKE].some(told => told.test(words)) && !hasHappened(words.replace(HEAT, ' '))
    );
  if (topic !== undefined && WHAT_IF.has(topic) && IF.test(words))
    return (
      ![UNWELL, TOLD_HURT, GOING_WRONG, ON_A_BODY, SOMEBODY, BROKE].some(told => told.test(words)) &&
      !hasHappened(words)
    );
  const isOfLye =
    topic !== undefined &&
    IN_ITS_WORDS.has(topic) &&
    (OPENS.test(words) ||
      topic === 'lye-and-water-swapped' ||
      (topic === 'no-goggles' && words.includes('?') && !SOMEBODY.test(words)));
  if (isOfLye)
    return ![UNWELL, BROKE].some(told => told.test(words)) && !hasHappened(words.replace(NOT_NOW, ' '));
  // Only what has an answer of its own; of all else first aid is shown in doubt.
  if (topic === undefined && (!BEARS.test(words) || CLEANERS.test(words))) return false;
  if (
    !isQuestion(words) ||
    SOMEBODY.test(words.replace(MILKED, ' ')) ||
    GOING_ON.test(words) ||
    BROKE.test(words)
  )
    return false;
  return !hasHappened(words.replace(NOT_NOW, ' ').replace(USE, ' '));
}
