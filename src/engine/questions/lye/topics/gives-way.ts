import { colourantsMeant } from '../../../colourants/find.ts';
import { unbroken } from '../../../over-lines.ts';
import { acidIn } from '../../../text/names/acid-words.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { LYE_WORDS } from '../../fields/soap-words.ts';
import type { QuestionRead, Reading } from '../../read.ts';
import { HARM_TOPIC_ORIGINS } from './harm-topic.ts';
import { HURTS_ANYWHERE } from './hurts-anywhere.ts';
import { tellsOfHurt } from './nearest/hurt.ts';
import type { LyeTopic } from './topic.ts';

/**
 * Matters near lye whose words are those of colours too: a scale beside a dose, the pH that a pigment bears, ash in a dyer's pot, a spice
 * beside a colourant, a drop of oil to wet in, a crust of bread that a brown is likened to, a label that is read out. None of them keeps
 * anybody from harm by standing first; acid beside ultramarine does, and is none of them.
 */
const SHARED: ReadonlySet<string> = new Set<LyeTopic>([
  'ph-high',
  'soap-ph',
  'other-alkali',
  'scale',
  'hot-oils-of-scent',
  'kitchen-spice',
  'food-kitchen',
  'lye-on-label',
]);
/** Further ones, where nothing is left open of what is asked: a price, a chart and an oven are spoken of beside a colour too. */
const SHARED_SURELY: ReadonlySet<string> = new Set<LyeTopic>([
  'two-figures',
  'takes-no-lye',
  'old-oil',
  'oil-forgotten',
  'oven-to-hurry',
  'liquid-lye',
  'ultramarine-acid',
  'drink-bottle',
]);
/** What is told of a bar that is made names flames, ovens and washing too: a flaw with several signs is told first. */
const SHARED_WITH_FLAWS: ReadonlySet<string> = new Set<LyeTopic>([
  'when-safe',
  'flame',
  'oven-to-hurry',
  'storing',
  'scale',
  'two-figures',
]);
const MOST_SIGNS = 3;
/** Orange spots that smell of old oil are a flaw of bars, and no oil that is to become some: two signs will do. */
const SIGNS_OF_OLD_OIL = 2;
/** Left out one writer at a time, what was learned is right from here on in 199 of 200. */
const MOST_SURELY = 0.97;
/** What a loaf did in the oven is told, and its rule still stands behind the answer: less is sure enough. */
const OVEN_SURELY = 0.9;
const SPICE = /cinnamon|canela|clove|clavo|chil[il]|cayen|pepper|pimienta|mustard|mostaza/u;
/** Whether a name, in lower case without accents, is of a spice that irritates skin whatever it colours: its matter stands first. Pure. */
export const isHotSpice = (name: string): boolean => SPICE.test(name);
/** Beside acid nothing gives way. */
const isBesideAcid = (question: string): boolean => acidIn(question) !== undefined;
/** Beside these only what the catalogue holds is a colourant, and no further spice. */
const OF_SPICES: ReadonlySet<string> = new Set<LyeTopic>(['kitchen-spice', 'hot-oils-of-scent']);
/** What is asked of a colour. */
const OF_COLOUR: ReadonlySet<string> = new Set([
  'dose',
  'survives-lye',
  'mix',
  'wet',
  'preview',
  'compare',
  'plan',
]);
/** Left out one writer at a time, what was learned is right from here on in 49 of 50. */
const SURELY = 0.8;

/** A soap that is entered in a contest is no matter of handling, where no lye is spoken of. */
const isOfContest = ({ job, score }: Reading, question: string): boolean =>
  job === 'challenge' &&
  score >= MOST_SURELY &&
  !LYE_WORDS.test(unaccented(question)) &&
  CONTEST.test(question);
const CONTEST =
  /(?<!\p{L})(?:challenges?|contests?|competitions?|compete|rounds?|entry|entries|vot\p{L}+|retos?|desaf[ií]os?|concursos?|concurs\p{L}+|rondas?)(?!\p{L})/iu;

/**
 * How a matter of lye that was found gives way to what else a question surely asks: `behind` it stands behind that answer, `silently` it is none
 * at all; undefined where it stays first. Pure.
 */
export function givesWay(
  question: string,
  { read, matter }: { readonly read: QuestionRead; readonly matter: string },
): 'behind' | 'silently' | undefined {
  const [reading] = read.readings;
  if (!reading || tellsOfHurt(question)) return undefined;
  // Chile is a country, and no chilli.
  const isCountry = matter === 'kitchen-spice' && read.facts.country === 'CL';
  if (isCountry || isOfContest(reading, question)) return 'silently';
  if (matter === 'ash-or-lye' && isFilmTold(reading, question)) return 'behind';
  if (SHARED_WITH_FLAWS.has(matter) && isFlawTold(reading, question, { read })) return 'behind';
  if (matter === 'old-oil' && isFlawTold(reading, question, { read, signs: SIGNS_OF_OLD_OIL }))
    return 'behind';
  if (matter === 'oven-to-hurry' && isFlawTold(reading, question, { read, signs: 1, surely: OVEN_SURELY }))
    return 'behind';
  // Whether a bar may be sold hangs on what is wrong with it.
  if (matter === 'selling' && isFlawTold(reading, question, { read, signs: 1 })) return 'silently';
  if (isOfItsColour(question, { reading, read, matter }) || isOfNoLye(question, { reading, read, matter }))
    return 'behind';
  return !staysFirst(matter) && isOfFateAlone(question, { reading, read }) ? 'silently' : undefined;
}

/** What of a thing goes in for water, on skin or not at all stands first whatever else is asked of it. */
const STANDS_FIRST: ReadonlySet<string> = new Set<LyeTopic>([
  'puree',
  'liquid-instead',
  'fresh-plants',
  'craft-glitter',
  'ink',
  'household-scent',
  'hot-oils-of-scent',
  'kitchen-spice',
  'candle-scent',
  'not-an-oil',
  'sand-and-shells',
]);
const staysFirst = (matter: string): boolean =>
  STANDS_FIRST.has(matter) || matter in HARM_TOPIC_ORIGINS || HURTS_ANYWHERE.has(matter);

/** What was read beside a matter: the likeliest job, and the whole of it. */
type Beside = { readonly reading: Reading; readonly read: QuestionRead; readonly matter: string };

/** Whether a colour is surely asked of by its name, and no lye is spoken of: what was found of handling is not what is asked. */
function isOfNoLye(question: string, { reading, read, matter }: Beside): boolean {
  return (
    !staysFirst(matter) &&
    !LYE_WORDS.test(unaccented(question)) &&
    !isBesideAcid(question) &&
    (OF_COLOUR.has(reading.job) || reading.job === 'law') &&
    reading.score >= MOST_SURELY &&
    read.facts.named.some(name => !isHotSpice(name) && colourantsMeant(name).length > 0)
  );
}

/** Lye as what a colour has to bear, and nothing that is done with it. */
const BORNE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:will|would|does|do|can|if|that|once|when) (?:the )?lye (?:just )?(?:kill|eat|destroy|ruin|wreck|
    turn|change|fade|bleach|brown|wash|hit|get|touch)\p{L}*|lye[- ](?:proof|safe|stable|fast)|(?:survive|stand|hold|
    take|bear|withstand|last)\p{L}*(?: up)?(?: to| in| against)? (?:the )?lye|(?:in|by|from|to) (?:the )?lye|
    (?:aguant|resist|soport|sobreviv)\p{L}+ (?:a |al |con )?(?:la |el )?(?:sosa|soda|lejia)(?: caustica)?|(?:la )?(?:sosa|
    soda|lejia) (?:(?:se )?(?:lo|la|los|las) )?(?:mata|come|destruye|arruina|quema|cambia|vuelve|pone|decolora|
    estropea|destine)\p{L}*|(?:en|con) (?:la )?(?:sosa|soda|lejia))(?!\p{L})
  `,
  'gu',
);
/** Whether lye is spoken of only as what a named colour has to bear: "is blueberry any good or will the lye kill it, I have a freezer full". */
function isOfFateAlone(question: string, { reading, read }: Omit<Beside, 'matter'>): boolean {
  if (reading.job !== 'survives-lye' || reading.score < MOST_SURELY || read.facts.named.length === 0)
    return false;
  const text = unaccented(question);
  return LYE_WORDS.test(text) && !LYE_WORDS.test(text.replace(BORNE, ' ')) && !isBesideAcid(question);
}

/** Whether the words of a matter are those of a colour that is surely asked of, by its name. */
function isOfItsColour(question: string, { reading, read, matter }: Beside): boolean {
  const isShared =
    SHARED.has(matter) ||
    (SHARED_SURELY.has(matter) && reading.score >= MOST_SURELY && !isBesideAcid(question));
  const { named, target } = read.facts;
  const isNamed =
    named.some(name => !isHotSpice(name) && (!OF_SPICES.has(matter) || colourantsMeant(name).length > 0)) ||
    (matter === 'food-kitchen' && target !== undefined);
  return isShared && isNamed && OF_COLOUR.has(reading.job) && reading.score >= SURELY;
}

const FILM = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:on|over|all over|across) (?:the |my )?tops?|powder\p{L}*|film|bloom|dust\p{L}*|
    polv\p{L}+|por encima|en la (?:parte de arriba|superficie)|capa blanca)(?!\p{L})
  `,
  'iu',
);
const GRAINS = new RegExp(
  unbroken`
    (?<!\p{L})(?:grain\p{L}*|crystal\p{L}*|beads?|pockets?|hard|sting\p{L}*|zap\p{L}*|burn\p{L}*|bit(?:e|es|
    ing)|touch\p{L}*|lick\p{L}*|gran\p{L}+|cristal\p{L}*|bolitas|dur[oa]s?|pic[ao]\p{L}*|quem\p{L}*|
    arde\p{L}*|tocar|toqu[eé]|lengua)(?!\p{L})
  `,
  'iu',
);
/** A white film is told, and no grains or sting: why it came is asked, and how ash is told from lye stands beside it. */
const isFilmTold = ({ job, score }: Reading, question: string): boolean =>
  job === 'diagnose' && score >= MOST_SURELY && FILM.test(question) && !GRAINS.test(question);

type FlawWeighed = { readonly read: QuestionRead; readonly signs?: number; readonly surely?: number };

/** A flaw that is told with several signs, and no lye beside them. */
const isFlawTold = (
  { job, score }: Reading,
  question: string,
  { read: { facts }, signs = MOST_SIGNS, surely = MOST_SURELY }: FlawWeighed,
): boolean =>
  job === 'diagnose' && score >= surely && facts.findings >= signs && !LYE_WORDS.test(unaccented(question));
