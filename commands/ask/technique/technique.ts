import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { LYE_WORDS } from '../../../src/engine/questions/fields/soap-words.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import { askedTopicIn } from '../../../src/engine/questions/lye/topics/asked/read.ts';
import { tellsOfHurt } from '../../../src/engine/questions/lye/topics/nearest/hurt.ts';
import { lyeTopicIn } from '../../../src/engine/questions/lye/topics/topics.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { askedOfBench } from '../../../src/engine/questions/technique/asked/read.ts';
import { outrightIn } from '../../../src/engine/questions/technique/outright/read.ts';
import type { NearMatter } from '../../../src/engine/questions/technique/read.ts';
import { isTechnique } from '../../../src/engine/questions/technique/topic.ts';
import { putsTwoTogether } from '../../../src/engine/questions/technique/two-hues.ts';
import { acidIn } from '../../../src/engine/text/names/acid-words.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import { chatReply } from '../chat.ts';
import { barredReading } from '../colour/barred.ts';
import { asksItsColour, colourGivenReply } from '../colour/colour-given.ts';
import { isBarredScent } from '../colour/scents.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import { afterLyeReply } from '../lye/after-lye.ts';
import { filled } from '../options-of.ts';
import { choicesOf } from '../understood.ts';
import { answeredTo, nearestFirst, techniqueAnswer } from './technique-answer.ts';
import { IN_THE_POT, LIKELY, likeliestIn, standsOver } from './technique-likely.ts';
import { troubleReply } from './trouble.ts';

/** Less likely than this is seldom what is meant. */
const LEAST_OFFERED = 0.12;

/** A dose that is told whole, or lye, is asked for beside what a phrase says: "… for 150 ml please. My scale only does whole grams". */
const isTold = (question: string, { readings: [reading], facts }: QuestionRead): boolean =>
  LYE_WORDS.test(unaccented(question)) ||
  (reading?.job === 'dose' && facts.named.length > 0 && facts.portion !== undefined);

/**
 * The answer to how coloured batter is worked with, and to what is asked round it; undefined where something else is asked, or somebody is
 * hurt.
 */
export async function techniqueReply(
  question: string,
  read: QuestionRead,
  context: Context,
): Promise<Reply | undefined> {
  if (question.startsWith('/') || tellsOfHurt(question)) return undefined;
  const { amount, weighed } = lyeAskedIn(question);
  if (amount || weighed) return undefined;
  const itsColour = asksItsColour(question, read) ? colourGivenReply(question, read, context) : undefined;
  if (itsColour) return itsColour;
  const outright = outrightIn(question);
  if (outright && (outright.atHand || !isTold(question, read)) && barredReading(question, read) === undefined)
    return await outrightReply(question, { outright, read }, context);
  const ofBench = benchReply(question, read, context);
  if (ofBench) return ofBench;
  const [reading] = read.readings;
  if (reading?.job === 'mix' && read.facts.named.length === 0 && putsTwoTogether(question))
    return techniqueAnswer('blend-two', question, context);
  const [first, second] = await likeliestIn(question, read);
  // Last, since these look a question through from end to end, and most ask for no technique.
  if (!first || isAnotherMatter(question, first, read) || isBarredScent(question, read, context))
    return undefined;
  if (first.matter === 'chat') return chatReply(question, context);
  if (first.matter === 'vague-trouble') return await troubleReply(question, read, context);
  const afterLye = afterLyeReply(question, read, { technique: first.matter, context });
  if (afterLye) return afterLye;
  if (first.matter === 'colour-families') {
    const given = colourGivenReply(question, read, context);
    if (given) return given;
  }
  const others = [second].flatMap(one =>
    one && one.chance >= LEAST_OFFERED && isTechnique(one.matter) ? [one.matter] : [],
  );
  const readings = reading && reading.score >= LIKELY && reading.command !== 'compare' ? [reading] : [];
  await keepLines([question, ...readings.map(one => lineOf(one.command, filled(one, context)))], context);
  const { ask, technique } = context.say;
  const reply = nearestFirst(first.matter, question, context);
  return {
    ...reply,
    blocks: [
      { kind: 'text', text: ask.understood({ line: technique.matters[first.matter] }) },
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

/** The judge of jobs is so sure of a flaw that its causes are told. */
const SURE_FLAW = 0.9;
/** From here on a command that was asked for is run. */
const SURE_JOB = 0.9;
/** What is asked of a thing of the bench, where neither a dose, a flaw nor a matter of lye is told. */
function benchReply(question: string, read: QuestionRead, context: Context): Reply | undefined {
  const [reading] = read.readings;
  const asked = askedOfBench(question);
  if (!asked) return undefined;
  const isFlaw = reading?.job === 'diagnose' && reading.score >= SURE_FLAW && read.facts.findings > 0;
  const isDose = reading?.job === 'dose' && read.facts.named.length > 0 && read.facts.portion !== undefined;
  // Of a named colourant a sure command tells more, and another field is no bench of ours.
  const isJob =
    reading !== undefined &&
    reading.job !== 'diagnose' &&
    reading.score >= SURE_JOB &&
    (read.facts.named.length > 0 || read.facts.target !== undefined);
  // A recipe is told with figures, and says "in that order" of its weights.
  const isRecipe = /\d/u.test(question) && LYE_WORDS.test(unaccented(question));
  if (isDose || isJob || isRecipe || read.outside !== undefined || (isFlaw && !asked.overFlaw))
    return undefined;
  if (barredReading(question, read) !== undefined) return undefined;
  if (lyeTopicIn(question) !== undefined) return undefined;
  return answeredTo(asked.technique, asked.to, context);
}

/** What a question says outright; why batter raced is a press away, behind what to do with it now. */
async function outrightReply(
  question: string,
  {
    outright,
    read,
  }: { readonly outright: NonNullable<ReturnType<typeof outrightIn>>; readonly read: QuestionRead },
  context: Context,
): Promise<Reply> {
  const reply = answeredTo(outright.technique, outright.to, context);
  const [reading] = read.readings;
  if (!IN_THE_POT.has(outright.technique) || reading?.job !== 'diagnose') return reply;
  await keepLines([question, lineOf(reading.command, filled(reading, context))], context);
  return { ...reply, choices: choicesOf([reading], context) };
}

/** What stays out of soap, acid beside a colour, and what the patterns of lye find have answers of their own. */
function isAnotherMatter(question: string, first: NearMatter, read: QuestionRead): boolean {
  const topic = lyeTopicIn(question) ?? askedTopicIn(question);
  return (
    (topic !== undefined && !standsOver(first, topic)) ||
    // Vinegar is asked for on lye that was spilt; what is said of it there says no.
    (acidIn(question) !== undefined && first.matter !== 'lye-spilt-surface') ||
    barredReading(question, read) !== undefined
  );
}
