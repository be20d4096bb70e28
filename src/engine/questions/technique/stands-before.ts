import { wordCount } from '../../text/word-count.ts';
import { isElsewhere, isNamedElsewhere, MOST_SURELY_ELSEWHERE } from '../fields/other-field.ts';
import { mayBeOfShelf } from '../fields/shelf-words.ts';
import { isHardlyDoubt } from '../fields/unsure.ts';
import type { Job } from '../jobs/jobs.ts';
import type { QuestionRead } from '../read.ts';
import { asksCause } from './cause-asked.ts';
import { isPlainMix, isWishedWith } from './mix-wished.ts';
import { isNamedByNature } from './named-by-nature.ts';
import type { Matter } from './topic.ts';
import { foreseesTwo } from './two-hues.ts';

/* What stands before a matter of working with batter, and how likely that has to be beside it. */

/**
 * From this chance on a matter is answered, where nothing else was surely read. This and the figures below were chosen on two hands'
 * ordinary questions, each left out of the fit.
 */
export const LIKELY = 0.28;
/** A job that is at least so likely, and has all it needs, stands before a matter that is less likely than the second figure. */
const SURE_JOB = 0.9;
const BESIDE_JOB = 0.65;
/** Which of two is stronger, and an answer that is doubted, are asked in the words of any matter. */
const BESIDE_ASKED = 0.95;
/** Who is taken to chat is told nothing: less sure, it is read in the usual way. */
const BESIDE_CHAT = 0.55;
/** What happened is told, with signs of it, in so many words at most: from here on the matter stands first; in more the flaw does. */
const BESIDE_FLAW = 0.8;
const SHORTLY = 9;
/** No chance is so high: a flaw that is told at length is behind nothing but a pot that somebody stands before. */
const BESIDE_STORY = 1.01;
/** Beside another field: one that is only likely, one that is nearly sure or has a name. */
const BESIDE_FIELD = 0.45;
const BESIDE_SURE_FIELD = 0.9;
/** Custard goes thick too. */
export const isOurPot = ({ outside, elsewhere }: QuestionRead): boolean =>
  outside === undefined || elsewhere < MOST_SURELY_ELSEWHERE;
/** What happened is told, with signs of it: why it did is asked. */
const isFlawTold = ({ readings: [reading], facts }: QuestionRead): boolean =>
  reading?.job === 'diagnose' && reading.score >= SURE_JOB && facts.findings > 0;
/** Neither asks anything of soap. */
const isPastime = (matter: Matter): boolean => matter === 'chat' || matter === 'cannot-do';
/** What is done while the batter is in the pot. */
export const IN_THE_POT: ReadonlySet<Matter> = new Set<Matter>(['thick-now', 'riced-now']);
/** Shops and labels are spoken of as prices are. */
const OF_BUSINESS: ReadonlySet<Matter> = new Set<Matter>(['buy-where', 'label-selling']);
/** These have answers of their own where they are asked for at all. */
const ASKED: ReadonlySet<Job> = new Set<Job>(['compare', 'doubt']);

/** What becomes of a plant is told as well by what colours it. */
const BESIDE_FATE = 0.88;
const OF_FATE: ReadonlySet<Matter> = new Set<Matter>(['botanicals', 'colour-families']);
const isSurely = (reading: QuestionRead['readings'][number] | undefined, job: Job): boolean =>
  reading?.job === job && reading.score >= SURE_JOB;

/** Near lye a wrong answer is worse than none, and what is learned of lye's own matters is asked behind. */
const BESIDE_LYE = 0.7;
export const NEAR_LYE: ReadonlySet<Matter> = new Set<Matter>([
  'honey-sugar',
  'lye-cloudy',
  'lye-spilt-surface',
  'lye-nerves',
  'water-amount',
  'no-trace',
  'goggles-gloves',
  'children-helping',
  'kitchen-tools',
]);

/** "And purple?" names no two that are put together. */
const OF_TWO = /[+&/]|\S\s+\S+\s+\S/u;

/** A matter that a question may be about, and what else was read of it. */
type Beside = {
  readonly matter: Matter;
  readonly question: string;
  readonly read: QuestionRead;
  readonly reading: QuestionRead['readings'][number] | undefined;
};

const isSureOf = ({ reading }: Beside): boolean =>
  reading !== undefined && reading.score >= SURE_JOB && reading.missing.length === 0;
const isMostSurelyElsewhere = (read: QuestionRead): boolean =>
  isNamedElsewhere(read) || (read.outside === 'other' && read.elsewhere >= MOST_SURELY_ELSEWHERE);
const NEVER = Number.POSITIVE_INFINITY;

/** What stands before a matter that is less likely than `least`: the first that applies says so. */
const STANDS_BEFORE: readonly {
  readonly what: string;
  readonly applies: (beside: Beside) => boolean;
  readonly least: number;
}[] = [
  {
    what: 'somebody’s health, lye for something else',
    applies: ({ read: { outside } }) => outside === 'medical' || outside === 'lye-elsewhere',
    least: NEVER,
  },
  {
    what: 'what batter did, of which the cause is asked',
    applies: ({ matter, question, read }) => IN_THE_POT.has(matter) && asksCause(question, read),
    least: NEVER,
  },
  { what: 'a colour to be mixed', applies: ({ question, read }) => isPlainMix(question, read), least: NEVER },
  {
    what: 'a colour that is wished',
    applies: ({ question, read }) => isWishedWith(question, read),
    least: NEVER,
  },
  {
    what: 'a shelf',
    applies: ({ question, reading }) => reading?.job.startsWith('shelf') === true && mayBeOfShelf(question),
    least: NEVER,
  },
  {
    what: 'a plant or a clay by its name, which is no powder without one',
    applies: ({ matter, question, read }) =>
      matter === 'unlabelled-powder' && isNamedByNature(question, read),
    least: NEVER,
  },
  // Custard and wax go thick and split too.
  {
    what: 'another pot',
    applies: ({ matter, read }) => IN_THE_POT.has(matter) && (isNamedElsewhere(read) || !isOurPot(read)),
    least: NEVER,
  },
  {
    what: 'two colourants whose colour together is foreseen',
    applies: ({ matter, read }) => matter === 'blend-two' && foreseesTwo(read),
    least: NEVER,
  },
  {
    what: 'one thing alone',
    applies: ({ matter, question }) => matter === 'blend-two' && !OF_TWO.test(question.trim()),
    least: NEVER,
  },
  {
    what: 'shops and labels, of which prices are spoken',
    applies: ({ matter, read }) => read.outside === 'business' && OF_BUSINESS.has(matter),
    least: BESIDE_JOB,
  },
  {
    what: 'another field, surely',
    applies: ({ read }) => isMostSurelyElsewhere(read),
    least: BESIDE_SURE_FIELD,
  },
  { what: 'another field', applies: ({ read }) => isElsewhere(read), least: BESIDE_FIELD },
  {
    what: 'a flaw in a few words',
    applies: ({ question, read }) => isFlawTold(read) && wordCount(question) <= SHORTLY,
    least: BESIDE_FLAW,
  },
  { what: 'a flaw told at length', applies: ({ read }) => isFlawTold(read), least: BESIDE_STORY },
  {
    what: 'what becomes of a plant',
    applies: ({ matter, reading }) => isSurely(reading, 'survives-lye') && OF_FATE.has(matter),
    least: BESIDE_FATE,
  },
  {
    what: 'the law of a colour in a place that is named',
    applies: ({ reading, read: { facts } }) =>
      isSurely(reading, 'law') && facts.named.length > 0 && (facts.region ?? facts.country) !== undefined,
    least: NEVER,
  },
  {
    what: 'a plan of a portion that is told',
    applies: ({ read, reading }) => isSurely(reading, 'plan') && read.facts.portion !== undefined,
    least: BESIDE_ASKED,
  },
  {
    what: 'chat that may be one',
    applies: beside => isPastime(beside.matter) && (beside.reading?.job === 'doubt' || !isSureOf(beside)),
    least: BESIDE_CHAT,
  },
  { what: 'a command, beside chat', applies: ({ matter }) => isPastime(matter), least: BESIDE_JOB },
  // Of a flaw without a sign nothing is known yet, and help is no more than a list.
  {
    what: 'nothing that is sure',
    applies: beside => !isSureOf(beside) || /^(?:help|diagnose)$/u.test(beside.reading?.job ?? ''),
    least: LIKELY,
  },
  // "Does that count as part of my oils" doubts nothing.
  {
    what: 'a comparison, a doubt',
    applies: ({ question, reading }) =>
      reading !== undefined && ASKED.has(reading.job) && !isHardlyDoubt(reading, question),
    least: BESIDE_ASKED,
  },
  { what: 'any other sure command', applies: () => true, least: BESIDE_JOB },
];

/** How likely a matter has to be beside what else was read of a question, 0 to 1; more than any chance where it never stands first. Pure. */
export function leastBeside(matter: Matter, read: QuestionRead, question: string): number {
  const beside: Beside = { matter, question, read, reading: read.readings[0] };
  const least = STANDS_BEFORE.find(({ applies }) => applies(beside))?.least ?? BESIDE_JOB;
  return Math.max(NEAR_LYE.has(matter) ? BESIDE_LYE : 0, least);
}
