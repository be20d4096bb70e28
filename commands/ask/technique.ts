import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { askedTopicIn } from '../../src/engine/questions/lye/asked/read.ts';
import { tellsOfHurt } from '../../src/engine/questions/lye/nearest/hurt.ts';
import { lyeAskedIn } from '../../src/engine/questions/lye/question.ts';
import type { LyeTopic } from '../../src/engine/questions/lye/topic.ts';
import { careTopicIn, lyeTopicIn } from '../../src/engine/questions/lye/topics.ts';
import type { QuestionRead } from '../../src/engine/questions/read.ts';
import type { Technique } from '../../src/engine/questions/technique/topic.ts';
import { acidIn } from '../../src/engine/text/names/acid-words.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import { keepAskedLine } from '../../src/records/asked/index.ts';
import { barredReading } from './barred.ts';
import { SURELY_ELSEWHERE } from './elsewhere.ts';
import { askFollowUps } from './follow-ups.ts';
import { filled } from './options-of.ts';
import { techniqueAnswer } from './technique-answer.ts';
import { choicesOf } from './understood.ts';

/** From this chance on it is answered, where nothing else was surely read: with each writer left out, right 15 times in 16. */
const LIKELY = 0.3;
/** From this one on, whatever else was read. */
const SURE_BESIDE = 0.75;
/** A job that is at least so likely stands before a technique that is only likely. */
const SURE_JOB = 0.9;
/** Less likely than this is seldom what is meant. */
const LEAST_OFFERED = 0.12;

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

/** The answer to how coloured batter is worked with; undefined where something else is asked, or somebody is hurt. */
export async function techniqueReply(
  question: string,
  read: QuestionRead,
  context: Context,
): Promise<Reply | undefined> {
  if (question.startsWith('/') || tellsOfHurt(question) || OF_GEAR.test(question)) return undefined;
  const { amount, weighed } = lyeAskedIn(question);
  if (amount || weighed) return undefined;
  const matter = careTopicIn(question) ?? lyeTopicIn(question) ?? askedTopicIn(question);
  if (matter !== undefined && !OF_BATTER.has(matter)) return undefined;
  // What stays out of soap, and acid beside a colour, have answers of their own.
  if (barredReading(question, read) !== undefined || acidIn(question) !== undefined) return undefined;
  // The weights are large, and nobody needs them before a question in words is asked.
  const { techniquesOf } = await import('../../src/engine/questions/technique/read.ts');
  const { near } = isPotGoingThick(question)
    ? { near: [{ technique: 'thick-now', chance: 1 } as const] }
    : techniquesOf(question);
  const [first, second] = near;
  if (
    !first ||
    (isElsewhere(read, first.chance) && !(first.chance === 1 && read.elsewhere < ANOTHER_POT)) ||
    first.chance < LIKELY ||
    (first.chance < SURE_BESIDE && isSurelyElse(read))
  )
    return undefined;
  if (isFlawTold(read, question) && !(IN_THE_POT.has(first.technique) && URGENT.test(unaccented(question))))
    return undefined;
  const others = second && second.chance >= LEAST_OFFERED ? [second.technique] : [];
  const [reading] = read.readings;
  const readings = reading && reading.score >= LIKELY && reading.command !== 'compare' ? [reading] : [];
  await keepAskedLine(
    context.shelf,
    context.idempotencyKey,
    {
      command: 'ask',
      given: {},
      candidates: [question, ...readings.map(one => lineOf(one.command, filled(one, context)))],
    },
    context.change.at,
  );
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

/** What is done while the batter is in the pot. */
const IN_THE_POT: ReadonlySet<Technique> = new Set(['thick-now', 'riced-now']);
/** What is worn is a matter near lye, whatever it is worn for. */
const OF_GEAR = /\b(?:goggles?|gloves?|visor|gafas|guantes|antiparras|lentes)\b/iu;

/** From here on it is somebody else’s pot that goes thick. */
const ANOTHER_POT = 0.9;
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

/** Another field is named, or surely meant: its pans and paints are stirred and layered too. */
const isElsewhere = ({ outside, elsewhere }: QuestionRead, chance: number): boolean =>
  outside !== undefined && (outside !== 'other' || (elsewhere >= SURELY_ELSEWHERE && chance < SURE_BESIDE));

/** A command has all that it needs for what is surely asked of it. */
const isSurelyElse = ({ readings: [reading] }: QuestionRead): boolean =>
  reading !== undefined && reading.score >= SURE_JOB && reading.missing.length === 0;
