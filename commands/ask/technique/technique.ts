import type { Context } from '../../../src/conversation/context.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { namesLye } from '../../../src/engine/questions/fields/soap-words.ts';
import { asksItsColour } from '../../../src/engine/questions/found/asked/asks-its-colour.ts';
import { isBarredScent } from '../../../src/engine/questions/found/asked/scent-asked.ts';
import { staysOut } from '../../../src/engine/questions/found/asked/stays-out.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import { askedTopicIn } from '../../../src/engine/questions/lye/topics/asked/read.ts';
import { tellsOfHurt } from '../../../src/engine/questions/lye/topics/nearest/hurt.ts';
import { lyeTopicIn } from '../../../src/engine/questions/lye/topics/topics.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { benchAsked } from '../../../src/engine/questions/technique/bench-asked.ts';
import type { Talk } from '../../../src/engine/questions/technique/beside.ts';
import { asksCause } from '../../../src/engine/questions/technique/cause-asked.ts';
import { likeliestIn, standsOver } from '../../../src/engine/questions/technique/likely.ts';
import { isMixOfOnHand, isPlainMix, isToldMix } from '../../../src/engine/questions/technique/mix-wished.ts';
import { outrightIn } from '../../../src/engine/questions/technique/outright/read.ts';
import type { NearMatter } from '../../../src/engine/questions/technique/read.ts';
import { IN_THE_POT, LIKELY } from '../../../src/engine/questions/technique/stands-before.ts';
import { isTechnique, type Technique } from '../../../src/engine/questions/technique/topic.ts';
import { foreseesTwo, pairTold, putsTwoTogether } from '../../../src/engine/questions/technique/two-hues.ts';
import { acidIn } from '../../../src/engine/text/names/acid-words.ts';
import { whenAsked } from '../../../src/engine/when-asked.ts';
import type { Answerer } from '../asked.ts';
import { chatReply, smallTalkReply } from '../chat.ts';
import { colourGivenReply } from '../colour/colour-given.ts';
import { type AnsweredBy, firstOf } from '../first-of.ts';
import { askFollowUps } from '../follow-ups.ts';
import { choicesOf } from '../how-read.ts';
import { keepLines } from '../kept-lines.ts';
import { afterLyeReply } from '../lye/after-lye.ts';
import { filled } from '../reading/options-of.ts';
import type { AskReply } from '../understood.ts';
import { answeredTo, nearestFirst, techniqueAnswer } from './technique-answer.ts';
import { troubleReply } from './trouble.ts';

/** A question as those see it who answer how batter is worked with. `near`: the matters that it may be about, the likeliest first; read once. */
type AskedOfBatter = {
  readonly question: string;
  readonly read: QuestionRead;
  readonly context: Context;
  readonly near: () => Promise<readonly NearMatter[]>;
};

/** What a matter is told with, where it is the likeliest one. */
const where =
  (matter: Talk, reply: (asked: AskedOfBatter) => AskReply | Promise<AskReply | undefined>) =>
  async (asked: AskedOfBatter): Promise<AskReply | undefined> => {
    const [first] = await asked.near();
    return first?.matter === matter ? await reply(asked) : undefined;
  };

/** Who answers how coloured batter is worked with, in this order: what is asked in so many words, then what is likeliest. */
export const BATTER_ANSWERERS: readonly Answerer<AskedOfBatter>[] = [
  { id: 'its-colour', answer: itsColour },
  { id: 'outright', answer: outright },
  { id: 'bench', answer: bench },
  { id: 'two-together', answer: twoTogether },
  { id: 'chat', answer: where('chat', ({ question, context }) => chatReply(question, context)) },
  // What a program that only answers cannot do: order, remind, tell somebody.
  { id: 'errand', answer: where('cannot-do', ({ context }) => smallTalkReply('cannot', context)) },
  {
    id: 'trouble',
    answer: where('vague-trouble', ({ question, read, context }) => troubleReply(question, read, context)),
  },
  { id: 'after-lye', answer: afterLye },
  { id: 'colour-families', answer: colourFamilies },
  { id: 'likeliest', answer: likeliest },
];

/** How coloured batter is worked with, and what is asked round it; not where lye is weighed or somebody is hurt. */
export const technique: Answerer = {
  id: 'technique',
  answer: async ({ said, read, context }) => (await answeredOfBatter(said, read, context))?.reply,
};

/** What the first who answers of working with batter says, and who that is; undefined where something else is asked. */
export async function answeredOfBatter(
  question: string,
  read: QuestionRead,
  context: Context,
): Promise<AnsweredBy | undefined> {
  if (question.startsWith('/') || tellsOfHurt(question)) return undefined;
  const { amount, weighed } = lyeAskedIn(question);
  if (amount || weighed) return undefined;
  const near = whenAsked(() => nearestMatters(question, read));
  return await firstOf(BATTER_ANSWERERS, { question, read, context, near });
}

/** The matters that a question may be about; none where what stays out of soap, acid beside a colour or lye has an answer of its own. */
async function nearestMatters(question: string, read: QuestionRead): Promise<readonly NearMatter[]> {
  const near = await likeliestIn(question, read);
  const [first] = near;
  // Last, since these look a question through from end to end, and most ask for no technique.
  return !first || isAnotherMatter(question, first, read) || isBarredScent(question, read) ? [] : near;
}

/** What stays out of soap, acid beside a colour, and what the patterns of lye find have answers of their own. */
function isAnotherMatter(question: string, first: NearMatter, read: QuestionRead): boolean {
  const topic = lyeTopicIn(question) ?? askedTopicIn(question);
  return (
    (topic !== undefined && !standsOver(first, topic)) ||
    // Vinegar is asked for on lye that was spilt; what is said of it there says no.
    (acidIn(question) !== undefined && first.matter !== 'lye-spilt-surface') ||
    staysOut(question, read) !== undefined
  );
}

/** The colour of the one thing that is named, in so many words. */
function itsColour({ question, read, context }: AskedOfBatter): AskReply | undefined {
  return asksItsColour(question, read) ? colourGivenReply(question, read, context) : undefined;
}

/** A dose that is told whole, or lye, is asked for beside what a phrase says: "… for 150 ml please. My scale only does whole grams". */
const isTold = (question: string, { readings: [reading], facts }: QuestionRead): boolean =>
  namesLye(question) || (reading?.job === 'dose' && facts.named.length > 0 && facts.portion !== undefined);

/** What a question says outright; why batter raced is a press away, behind what to do with it now. */
async function outright({ question, read, context }: AskedOfBatter): Promise<AskReply | undefined> {
  const said = outrightIn(question);
  const isSaid = said && (said.atHand || !isTold(question, read)) && !staysOut(question, read);
  // What lies in the pot is told with its cause a press away, unless it is the cause that is asked.
  if (said && IN_THE_POT.has(said.technique) && asksCause(question, read)) return undefined;
  if (!isSaid) return undefined;
  const reply = answeredTo(said.technique, said.to, context);
  const [reading] = read.readings;
  if (!IN_THE_POT.has(said.technique) || reading?.job !== 'diagnose') return reply;
  await keepLines([question, lineOf(reading.command, filled(reading, context))], context);
  return { ...reply, choices: choicesOf([reading], context) };
}

/** What is asked of a thing of the bench. */
function bench({ question, read, context }: AskedOfBatter): AskReply | undefined {
  const asked = benchAsked(question, read);
  return asked && answeredTo(asked.technique, asked.to, context);
}

/** Two hues that are put together, where no colourant is named, or where what comes of the two is told in words. */
function twoTogether({ question, read, context }: AskedOfBatter): AskReply | undefined {
  if (isMixOfOnHand(read)) return undefined;
  const told = foreseesTwo(read) ? pairTold(question) : undefined;
  if (told) return answeredTo('blend-two', told, context);
  const isMix =
    read.readings[0]?.job === 'mix' && read.facts.named.length === 0 && !isPlainMix(question, read);
  return isMix && putsTwoTogether(question) ? techniqueAnswer('blend-two', question, context) : undefined;
}

/** The likeliest matter, where it is one of working with batter. */
async function likelyTechnique({ near }: AskedOfBatter): Promise<Technique | undefined> {
  const [first] = await near();
  return first && isTechnique(first.matter) ? first.matter : undefined;
}

async function afterLye(asked: AskedOfBatter): Promise<AskReply | undefined> {
  const { question, read, context } = asked;
  const likely = await likelyTechnique(asked);
  return likely && afterLyeReply(question, read, { technique: likely, context });
}

async function colourFamilies(asked: AskedOfBatter): Promise<AskReply | undefined> {
  const { question, read, context } = asked;
  const isOfFamilies = (await likelyTechnique(asked)) === 'colour-families';
  return isOfFamilies ? colourGivenReply(question, read, context) : undefined;
}

/** Less likely than this is seldom what is meant. */
const LEAST_OFFERED = 0.12;

/** Told in general of what two come to, where no colour is wished of what is at hand. */
const OF_MIXING: ReadonlySet<Technique> = new Set(['blend-two', 'mix-colourants', 'colour-families']);

/** Matters of hues themselves, which stand before the mix of one. */
const OF_HUES: ReadonlySet<Technique> = new Set([
  ...OF_MIXING,
  'whiter-soap',
  'bright-colours',
  'pastel-colours',
  'darker-lighter',
  'natural-colours',
  'colours-that-stay',
  'clays-colour',
]);

/** The likeliest matter, with the next one and the command that may be meant to press. */
async function likeliest(asked: AskedOfBatter): Promise<AskReply | undefined> {
  const { question, read, context } = asked;
  const first = await likelyTechnique(asked);
  if (first === undefined || (OF_MIXING.has(first) && isMixOfOnHand(read))) return undefined;
  if (!OF_HUES.has(first) && isToldMix(read)) return undefined;
  const [, second] = await asked.near();
  const others = [second].flatMap(one =>
    one && one.chance >= LEAST_OFFERED && isTechnique(one.matter) ? [one.matter] : [],
  );
  const [reading] = read.readings;
  const readings = reading && reading.score >= LIKELY && reading.command !== 'compare' ? [reading] : [];
  await keepLines([question, ...readings.map(one => lineOf(one.command, filled(one, context)))], context);
  const { ask, technique: words } = context.say;
  const reply = nearestFirst(first, question, context);
  return {
    ...reply,
    blocks: [{ kind: 'text', text: ask.understood({ line: words.matters[first] }) }, ...reply.blocks],
    choices: [
      ...others.map(other => ({
        kind: 'button' as const,
        label: ask.ratherThat({ job: words.matters[other] }),
        follow: askFollowUps.technique.with({ technique: other }),
      })),
      ...choicesOf(readings, context),
    ],
  };
}
