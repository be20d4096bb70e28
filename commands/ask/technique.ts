import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { askedTopicIn } from '../../src/engine/questions/lye/asked/read.ts';
import { tellsOfHurt } from '../../src/engine/questions/lye/nearest/hurt.ts';
import { lyeAskedIn } from '../../src/engine/questions/lye/question.ts';
import type { LyeTopic } from '../../src/engine/questions/lye/topic.ts';
import { careTopicIn, lyeTopicIn } from '../../src/engine/questions/lye/topics.ts';
import type { QuestionRead } from '../../src/engine/questions/read.ts';
import type { NearTechnique } from '../../src/engine/questions/technique/read.ts';
import type { Technique } from '../../src/engine/questions/technique/topic.ts';
import { acidIn } from '../../src/engine/text/names/acid-words.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import { barredReading } from './barred.ts';
import { isLikelyElsewhere, isNamedElsewhere, MOST_SURELY_ELSEWHERE } from './elsewhere.ts';
import { askFollowUps } from './follow-ups.ts';
import { keepLines } from './kept-lines.ts';
import { filled } from './options-of.ts';
import { techniqueAnswer } from './technique-answer.ts';
import { choicesOf } from './understood.ts';

/** From this chance on it is answered, where nothing else was surely read: with each of four writers left out, 85 to 95 of 100 right. */
const LIKELY = 0.3;
/** From this one on, whatever else was read. */
const SURE_BESIDE = 0.75;
/** A job that is at least so likely stands before a technique that is only likely. */
const SURE_JOB = 0.9;
/** Less likely than this is seldom what is meant. */
const LEAST_OFFERED = 0.12;

/** The answer to how coloured batter is worked with; undefined where something else is asked, or somebody is hurt. */
export async function techniqueReply(
  question: string,
  read: QuestionRead,
  context: Context,
): Promise<Reply | undefined> {
  if (question.startsWith('/') || tellsOfHurt(question) || OF_GEAR.test(question)) return undefined;
  const { amount, weighed } = lyeAskedIn(question);
  if (amount || weighed) return undefined;
  const [first, second] = await likeliestIn(question, read);
  // Last, since these look a question through from end to end, and most ask for no technique.
  if (!first || isAnotherMatter(question, read)) return undefined;
  const others = second && second.chance >= LEAST_OFFERED ? [second.technique] : [];
  const [reading] = read.readings;
  const readings = reading && reading.score >= LIKELY && reading.command !== 'compare' ? [reading] : [];
  await keepLines([question, ...readings.map(one => lineOf(one.command, filled(one, context)))], context);
  const { ask, technique } = context.say;
  const reply = techniqueAnswer(first.technique, context);
  return {
    ...reply,
    blocks: [
      { kind: 'text', text: ask.understood({ line: technique.matters[first.technique] }) },
      ...reply.blocks,
    ],
    choices: [
      ...others.map(other => ({
        kind: 'button' as const,
        label: ask.ratherThat({ job: technique.matters[other] }),
        follow: askFollowUps.technique.with({ technique: other }),
      })),
      ...choicesOf(readings, context),
    ],
  };
}

/** What is worn is a matter near lye, whatever it is worn for. */
const OF_GEAR = /\b(?:goggles?|gloves?|visor|gafas|guantes|antiparras|lentes)\b/iu;

/** Custard goes thick too. */
const isOurPot = ({ outside, elsewhere }: QuestionRead): boolean =>
  outside === undefined || elsewhere < MOST_SURELY_ELSEWHERE;
/** Who stands before a pot writes two words. */
const MOST_OF_A_CRY = 6;
const GOES_THICK =
  /(?<!\p{L})(?:(?:getting|going|gone|went|turn(?:ing|ed)|set(?:ting)?) (?:\p{L}+ )?(?:thick|solid|hard|stiff)|s(?:ei|ie)z(?:e|ed|ing)|thickening|espes\p{L}+|endurec\p{L}+)(?!\p{L})/u;
const isPotGoingThick = (question: string): boolean =>
  question.trim().split(/\s+/u).length <= MOST_OF_A_CRY &&
  GOES_THICK.test(unaccented(question).toLowerCase());

/** Of a few words a technique is asked, though they name a flaw: "false trace?". */
const A_FEW = 5;
/** What happened is told, with signs of it: why it did is asked. */
const isFlawTold = ({ readings: [reading], facts }: QuestionRead, question: string): boolean =>
  reading?.job === 'diagnose' &&
  reading.score >= SURE_JOB &&
  facts.findings > 0 &&
  question.trim().split(/\s+/u).length > A_FEW;
const URGENT =
  /(?<!\p{L})(?:now|help|quick|hurry|do i do|to do|can i do|ahora|ayuda|rapido|urgente?|que hago|hago ya|auxilio|still in the|todavia en)(?!\p{L})/u;

/** A command has all that it needs for what is surely asked of it. */
const isSurelyElse = ({ readings: [reading] }: QuestionRead): boolean =>
  reading !== undefined && reading.score >= SURE_JOB && reading.missing.length === 0;

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

/** What stays out of soap, acid beside a colour, and what the patterns of lye find have answers of their own. */
function isAnotherMatter(question: string, read: QuestionRead): boolean {
  const matter = careTopicIn(question) ?? lyeTopicIn(question) ?? askedTopicIn(question);
  return (
    (matter !== undefined && !OF_BATTER.has(matter)) ||
    acidIn(question) !== undefined ||
    barredReading(question, read) !== undefined
  );
}

/** What is done while the batter is in the pot. */
const IN_THE_POT: ReadonlySet<Technique> = new Set(['thick-now', 'riced-now']);

const CRY: NearTechnique = { technique: 'thick-now', chance: 1 };

async function nearestTo(question: string): Promise<readonly NearTechnique[]> {
  // The weights are large, and nobody needs them before a question in words is asked.
  const { techniquesOf } = await import('../../src/engine/questions/technique/read.ts');
  return techniquesOf(question).near;
}

/** The techniques that a question may ask about, the likeliest first; none where it is surely about something else. */
async function likeliestIn(question: string, read: QuestionRead): Promise<readonly NearTechnique[]> {
  const isCry = isPotGoingThick(question) && isOurPot(read);
  const near = isCry ? [CRY] : await nearestTo(question);
  const [first] = near;
  if (!first || first.chance < LIKELY) return [];
  // Its pans and paints are stirred and layered too.
  const isElse =
    first.chance < SURE_BESIDE ? isLikelyElsewhere(read) || isSurelyElse(read) : isNamedElsewhere(read);
  if (isElse && !isCry) return [];
  const isUrgent = IN_THE_POT.has(first.technique) && URGENT.test(unaccented(question));
  return isFlawTold(read, question) && !isUrgent ? [] : near;
}
