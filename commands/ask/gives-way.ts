import { unbroken } from '../../src/engine/over-lines.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Block } from '../../src/conversation/reply.ts';
import { colourantsMeant } from '../../src/engine/colourants/find.ts';
import { LYE_WORDS } from '../../src/engine/questions/fields/soap-words.ts';
import { isLyeMatter } from '../../src/engine/questions/lye/topics/lye-matter.ts';
import { tellsOfHurt } from '../../src/engine/questions/lye/topics/nearest/hurt.ts';
import type { LyeTopic } from '../../src/engine/questions/lye/topics/topic.ts';
import type { QuestionRead, Reading } from '../../src/engine/questions/read.ts';
import { acidIn } from '../../src/engine/text/names/acid-words.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import type { lyeAnswer } from './lye/lye-answer.ts';

/**
 * Matters near lye whose words are those of colours too: a scale beside a dose, the pH that a pigment bears, ash in a dyer's pot, a spice
 * beside a colourant, a drop of oil to wet in, a crust of bread that a brown is likened to. None of them keeps anybody from harm by
 * standing first; acid beside ultramarine does, and is none of them.
 */
const SHARED: ReadonlySet<string> = new Set<LyeTopic>([
  'ph-high',
  'soap-ph',
  'other-alkali',
  'scale',
  'hot-oils-of-scent',
  'kitchen-spice',
  'food-kitchen',
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
/** Left out one writer at a time, what was learned is right from here on in 199 of 200. */
const MOST_SURELY = 0.97;
/** These irritate skin, whatever they colour: their matter stands first. */
export const SPICE = /cinnamon|canela|clove|clavo|chil[il]|cayen|pepper|pimienta|mustard|mostaza/u;
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

/** What stands behind an answer that a matter gave way to: the matter's own, whole where it is acted on. */
export type GivenWay = { readonly notes: readonly Block[] };

/** A soap that is entered in a contest is no matter of handling, where no lye is spoken of. */
const isOfContest = ({ job, score }: Reading, question: string): boolean =>
  job === 'challenge' &&
  score >= MOST_SURELY &&
  !LYE_WORDS.test(unaccented(question)) &&
  CONTEST.test(question);
const CONTEST =
  /(?<!\p{L})(?:challenges?|contests?|competitions?|compete|rounds?|entry|entries|vot\p{L}+|retos?|desaf[ií]os?|concursos?|concurs\p{L}+|rondas?)(?!\p{L})/iu;

/**
 * Where a question is surely of a colour that it names, the matter of handling that its words were taken for stands behind the answer
 * instead of in its place; undefined where the matter stays first. `near`: what was read near lye.
 */
export function givesWay(
  question: string,
  { read, near }: { readonly read: QuestionRead; readonly near: Awaited<ReturnType<typeof lyeAnswer>> },
  { say }: Context,
): GivenWay | undefined {
  if (near?.kind !== 'reply' || tellsOfHurt(question)) return undefined;
  const [reading] = read.readings;
  const matter = (near.data as { understood?: { lye?: string } }).understood?.lye;
  if (!reading || matter === undefined) return undefined;
  if (isOfContest(reading, question)) return { notes: [] };
  // A country, and no chilli.
  if (matter === 'kitchen-spice' && read.facts.country === 'CL') return { notes: [] };
  const notes = () => notesOf(matter, near.headline, say);
  if (matter === 'ash-or-lye' && isFilmTold(reading, question)) return { notes: notes() };
  if (SHARED_WITH_FLAWS.has(matter) && isFlawTold(reading, question, read)) return { notes: notes() };
  const isShared =
    SHARED.has(matter) ||
    (SHARED_SURELY.has(matter) && reading.score >= MOST_SURELY && !isBesideAcid(question));
  if (!isShared) return undefined;
  const { named, target } = read.facts;
  const isNamed =
    named.some(name => !SPICE.test(name) && (!OF_SPICES.has(matter) || colourantsMeant(name).length > 0)) ||
    (matter === 'food-kitchen' && target !== undefined);
  if (!isNamed || !OF_COLOUR.has(reading.job) || reading.score < SURELY) return undefined;
  return { notes: notes() };
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

/** A flaw that is told with several signs, and no lye beside them. */
const isFlawTold = ({ job, score }: Reading, question: string, { facts }: QuestionRead): boolean =>
  job === 'diagnose' &&
  score >= MOST_SURELY &&
  facts.findings >= MOST_SIGNS &&
  !LYE_WORDS.test(unaccented(question));

function notesOf(matter: string, headline: string, say: Context['say']): readonly Block[] {
  const asked = isLyeMatter(matter) ? `${say.lyeQuestions.matters[matter]} ` : '';
  return [{ kind: 'text', text: `${asked}${headline}`, firm: true }];
}
