import { unbroken } from '../../../src/engine/over-lines.ts';
import { mayBeOfShelf } from '../../../src/engine/questions/fields/shelf-words.ts';
import type { Job } from '../../../src/engine/questions/jobs/jobs.ts';
import type { LyeTopic } from '../../../src/engine/questions/lye/topics/topic.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import type { NearMatter } from '../../../src/engine/questions/technique/read.ts';
import type { Matter } from '../../../src/engine/questions/technique/topic.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { isElsewhere, isNamedElsewhere, MOST_SURELY_ELSEWHERE } from '../elsewhere.ts';
import { isHardlyDoubt } from '../unsure.ts';

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
/** From here on what patterns found by a word of another meaning gives way. */
const SURELY = 0.75;

/** Custard goes thick too. */
const isOurPot = ({ outside, elsewhere }: QuestionRead): boolean =>
  outside === undefined || elsewhere < MOST_SURELY_ELSEWHERE;
/** Who stands before a pot writes two words. */
const MOST_OF_A_CRY = 6;
const GOES_THICK = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:getting|going|gone|went|turn(?:ing|ed)|set(?:ting)?) (?:\p{L}+ )?(?:thick|solid|hard|
    stiff)|s(?:ei|ie)z(?:e|ed|ing)|thickening|espes\p{L}+|endurec\p{L}+)(?!\p{L})
  `,
  'u',
);
const isPotGoingThick = (question: string): boolean =>
  wordCount(question) <= MOST_OF_A_CRY && GOES_THICK.test(unaccented(question));

/** What happened is told, with signs of it: why it did is asked. */
const isFlawTold = ({ readings: [reading], facts }: QuestionRead): boolean =>
  reading?.job === 'diagnose' && reading.score >= SURE_JOB && facts.findings > 0;
const URGENT =
  /(?<!\p{L})(?:now|help|quick|hurry|do i do|to do|can i do|ahora|ayuda|rapido|urgente?|que hago|hago ya|auxilio|still in the|todavia en)(?!\p{L})/u;

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
  'lye-cloudy',
  'lye-spilt-surface',
  'lye-nerves',
  'water-amount',
  'no-trace',
  'goggles-gloves',
  'children-helping',
  'kitchen-tools',
]);

/** The judge of jobs is sure of a colour to be mixed. */
const SURELY_MIXED = 0.99;
/** "How do I make navy?": a colour that is named at the end of it, and nothing else. */
const isPlainMix = (question: string, { readings: [reading], facts }: QuestionRead): boolean =>
  reading?.job === 'mix' &&
  reading.score >= SURELY_MIXED &&
  facts.target !== undefined &&
  /^\P{L}*(?:how (?:do|can|would) (?:i|you|we|one) (?:make|get|mix)|c[oó]mo (?:hago|hacer|consigo|saco))(?!\p{L})/iu.test(
    question,
  ) &&
  question
    .toLowerCase()
    .replace(/\P{L}+$/u, '')
    .endsWith(facts.target.text);

/** "I want eucalyptus green, greyish, I have green clay and charcoal": a colour that is wished, and what is at hand for it. */
const WISHED =
  /(?<!\p{L})(?:quiero|quisiera|busco|necesito|me gustaria|want|need|fancy|after|looking for)(?!\p{L})/u;
const AT_HAND = /(?<!\p{L})(?:tengo|tenemos|i have|have|got|i['’]ve)(?!\p{L})/u;
const isWishedWith = (question: string, { readings: [reading], facts }: QuestionRead): boolean => {
  const text = unaccented(question);
  return (
    reading?.job === 'mix' &&
    reading.score >= SURELY_MIXED &&
    facts.target !== undefined &&
    facts.named.length > 1 &&
    WISHED.test(text) &&
    AT_HAND.test(text)
  );
};

/** How likely a matter has to be beside what else was read of a question. */
function leastBeside(matter: Matter, read: QuestionRead, question: string): number {
  return Math.max(NEAR_LYE.has(matter) ? BESIDE_LYE : 0, besideRead(matter, read, question));
}

/** "And purple?" names no two that are put together. */
const OF_TWO = /[+&/]|\S\s+\S+\s+\S/u;

function besideRead(matter: Matter, read: QuestionRead, question: string): number {
  const [reading] = read.readings;
  if (
    read.outside === 'medical' ||
    read.outside === 'lye-elsewhere' ||
    isPlainMix(question, read) ||
    isWishedWith(question, read)
  )
    return Number.POSITIVE_INFINITY;
  if (reading?.job.startsWith('shelf') && mayBeOfShelf(question)) return Number.POSITIVE_INFINITY;
  // Custard and wax go thick and split too.
  if (IN_THE_POT.has(matter) && (isNamedElsewhere(read) || !isOurPot(read))) return Number.POSITIVE_INFINITY;
  if (matter === 'blend-two' && !OF_TWO.test(question.trim())) return Number.POSITIVE_INFINITY;
  if (read.outside === 'business' && OF_BUSINESS.has(matter)) return BESIDE_JOB;
  if (isNamedElsewhere(read) || (read.outside === 'other' && read.elsewhere >= MOST_SURELY_ELSEWHERE))
    return BESIDE_SURE_FIELD;
  if (isElsewhere(read)) return BESIDE_FIELD;
  if (isFlawTold(read)) return wordCount(question) <= SHORTLY ? BESIDE_FLAW : BESIDE_STORY;
  const isSure = reading !== undefined && reading.score >= SURE_JOB && reading.missing.length === 0;
  if (isSurely(reading, 'survives-lye') && OF_FATE.has(matter)) return BESIDE_FATE;
  if (isSurely(reading, 'plan') && read.facts.portion !== undefined) return BESIDE_ASKED;
  if (matter === 'chat') return reading?.job === 'doubt' || !isSure ? BESIDE_CHAT : BESIDE_JOB;
  // Of a flaw without a sign nothing is known yet, and help is no more than a list.
  if (!isSure || reading.job === 'help' || reading.job === 'diagnose') return LIKELY;
  // "Does that count as part of my oils" doubts nothing.
  return ASKED.has(reading.job) && !isHardlyDoubt(reading, question) ? BESIDE_ASKED : BESIDE_JOB;
}

/** Matters near lye whose words are those of working with batter too; every other one that its patterns find stands first. */
const OF_BATTER: ReadonlySet<LyeTopic> = new Set([
  'trace-signs',
  'mixing-temperature',
  'no-trace',
  'lye-roughly',
  'mould-stuff',
  'puree',
  'takes-no-lye',
]);
/** Found by a word that means something else here: mustard is a yellow, used oil a base, lye that clumps was just mixed. */
const MISTAKEN: Readonly<Partial<Record<Matter, readonly LyeTopic[]>>> = {
  'lye-cloudy': ['clumped'],
  'shine-sparkle': ['kitchen-spice'],
  'yellow-base': ['old-oil'],
};

/** Whether a matter stands before what patterns find near lye. */
export const standsOver = ({ matter, chance }: NearMatter, topic: LyeTopic): boolean =>
  OF_BATTER.has(topic) || (chance >= SURELY && (MISTAKEN[matter]?.includes(topic) ?? false));

const CRY: NearMatter = { matter: 'thick-now', chance: 1 };

async function nearestTo(question: string): Promise<readonly NearMatter[]> {
  // The weights are large, and nobody needs them before a question in words is asked.
  const { mattersOf } = await import('../../../src/engine/questions/technique/read.ts');
  return mattersOf(question).near;
}

/** The matters that a question may be about, the likeliest first; none where it is surely about something else. */
export async function likeliestIn(question: string, read: QuestionRead): Promise<readonly NearMatter[]> {
  const isCry = isPotGoingThick(question) && isOurPot(read);
  const near = isCry ? [CRY] : await nearestTo(question);
  const [first] = near;
  if (!first || first.chance < LIKELY) return [];
  const isUrgent = IN_THE_POT.has(first.matter) && URGENT.test(unaccented(question));
  const least = leastBeside(first.matter, read, question);
  return isCry || (isUrgent && Number.isFinite(least)) || first.chance >= least ? near : [];
}
