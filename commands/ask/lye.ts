import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import { checkLye, lyeForAnyOil, waterForLye } from '../../src/engine/questions/lye/check.ts';
import { type OilsForLye, oilsForLye } from '../../src/engine/questions/lye/inverse.ts';
import { readPlanQuestion } from '../../src/engine/questions/lye/plan-question.ts';
import {
  isBleachOrLye,
  type LyeQuestion,
  lyeAskedIn,
  readLyeQuestion,
  refuseFigureOrWord,
} from '../../src/engine/questions/lye/question.ts';
import type { LyeTopic } from '../../src/engine/questions/lye/topic.ts';
import { careTopicIn, lyeTopicIn } from '../../src/engine/questions/lye/topics.ts';
import type { QuestionRead, Reading } from '../../src/engine/questions/read.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { keepAskedLine } from '../../src/records/asked/index.ts';
import { askFollowUps } from './follow-ups.ts';
import { inPassing } from './in-passing.ts';
import { cautions, topicReply } from './matter.ts';

/** A reading that `/plan` answers, with what must be said beside it. */
type LyeReading = Omit<Reading, 'job'> & {
  readonly kind: 'reading';
  readonly job: 'lye' | 'plan';
  readonly notes: readonly Block[];
};

/** Another substance, a spill, or harm: these are answered even where an amount of lye is asked for. */
const BEFORE_AMOUNTS: ReadonlySet<LyeTopic> = new Set([
  'clean-up',
  'drain-cleaner',
  'bleach',
  'baking-soda',
  'spooned-lye',
  'koh-for-naoh',
  'disposal',
  'hot-loaf',
  'lye-with-cleaner',
  'scale-batch',
  'no-superfat',
  'water-forgotten',
  'not-an-oil',
  'swallowed',
  'electric-shock',
  'lye-in-food',
  'amounts-swapped',
  'oil-forgotten',
  'hot-liquid',
]);

/** Whoever opens with the word wants the whole plan, however many oils follow. */
const PLAN_FIRST = /^\W*(?:please |por favor )?plan(?:e[ae]\w*|ifi\w*)? /iu;

/**
 * What a question about lye, its slips put right, is answered with: its handling (as it was `typed`, too), a check of lye that was weighed, water for it, or a reading
 * for `/plan` that holds every word of it. Undefined where it is no such question.
 */
export async function lyeAnswer(
  question: string,
  {
    typed,
    read,
    context,
  }: { readonly typed: string; readonly read: QuestionRead; readonly context: Context },
): Promise<Reply | LyeReading | undefined> {
  const care = careTopicIn(typed);
  if (care) return topicReply(care, context);
  const passing = inPassing(typed, context);
  if (passing) return passing;
  const job = read.readings[0]?.job;
  if (job?.startsWith('shelf')) return undefined;
  const asked = lyeAskedIn(question);
  const topic = lyeTopicIn(typed) ?? (typed === question ? undefined : lyeTopicIn(question));
  if (topic && (BEFORE_AMOUNTS.has(topic) || !(asked.amount || asked.weighed)))
    return topicReply(topic, context);
  if ((job === 'plan' || PLAN_FIRST.test(question)) && !asked.amount && !asked.weighed)
    return planReading(question, read, context);
  const coloured = job === 'dose' && read.facts.named.length > 0 && !asked.weighed;
  if (!(asked.amount || asked.weighed || job === 'lye') || coloured) return undefined;
  if (asked.amount && isBleachOrLye(question))
    return stopped(
      context.say.lyeQuestions.bleachOrLye,
      { question, weighed: asked.weighed, problem: 'lye-or-bleach' },
      context,
    );
  const inverse = asked.weighed ? oilsForLye(question) : undefined;
  if (inverse) return oilsReply(inverse, context);
  try {
    refuseFigureOrWord(typed);
    const told = readLyeQuestion(question);
    if (told.weighed) return weighedReply(told, question, context);
    return readingOf(told, context);
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    // A flaw that is told with the whole recipe stays with whoever reads flaws.
    if (job === 'diagnose' && !asked.amount && topic === undefined) return undefined;
    return stopped(
      context.say.refusal(refusal),
      { question, weighed: asked.weighed, problem: refusal.id },
      context,
    );
  }
}

/** A whole plan asked for in plain words: every part of it is taken into the plan or named as left out. */
function planReading(question: string, read: QuestionRead, { say }: Context): LyeReading | undefined {
  const [reading] = read.readings;
  const told = readPlanQuestion(question);
  if (!reading || !told) return undefined;
  const { size, ...rest } = reading.given;
  const texts = Object.fromEntries(Object.entries(told.given).map(([name, value]) => [name, String(value)]));
  const weighed =
    told.given.oils !== undefined &&
    /\d ?(?:k?g|kilos?|gramos?|grams?|oz|lbs?|pounds?|libras?)\b/u.test(told.given.oils);
  const { left } = told;
  return {
    ...reading,
    kind: 'reading',
    job: 'plan',
    // A mass beside weighed oils is of something else: of honey, of salt.
    given: { ...rest, ...(size !== undefined && !weighed && { size }), ...texts },
    missing: [],
    notes: left.length === 0 ? [] : [{ kind: 'text', text: say.lyeQuestions.leftOut({ left }), firm: true }],
  };
}

function readingOf({ given, usualKoh, left }: LyeQuestion, { say }: Context): LyeReading {
  const texts = Object.fromEntries(Object.entries(given).map(([name, value]) => [name, String(value)]));
  return {
    kind: 'reading',
    job: 'lye',
    score: 0,
    command: 'plan',
    given: texts,
    missing: given.oils === undefined ? ['oils'] : [],
    notes: [
      ...(usualKoh ? [say.lyeQuestions.usualKoh] : []),
      ...(left.length > 0 ? [say.lyeQuestions.passedBy({ left })] : []),
    ].map(text => ({ kind: 'text', text, firm: true })),
  };
}

/** How much oil takes lye that is weighed already. */
function oilsReply(inverse: OilsForLye, context: Context): Reply {
  const words = context.say.lyeQuestions;
  return {
    kind: 'reply',
    headline: words.oilsFor(inverse),
    data: { understood: { lye: 'oils-for-lye' }, oilsForLye: inverse },
    blocks: [{ kind: 'text', text: words.oilsForWhy(inverse), firm: true }],
    cautions: cautions(context),
  };
}

/** Lye that was weighed: what it does in these oils, how much water it wants, or which oils it is for. */
async function weighedReply(
  { given, weighed, oilGrams, waterGrams, asksWater, left }: LyeQuestion,
  question: string,
  context: Context,
): Promise<Reply> {
  const { say } = context;
  const words = say.lyeQuestions;
  if (weighed === undefined || given.lye?.match(/both|\+|solution/u))
    return stopped(words.nameOils, { question, weighed: true, problem: 'lye-mixed' }, context);
  const { oils, additives } = given;
  const check = oils === undefined ? undefined : checkLye(weighed, { oils, additives, sizeGrams: oilGrams });
  const checked = check && [
    ...(waterGrams === undefined ? [] : [words.waterBeside({ water: waterGrams, lye: weighed.grams })]),
    words.checkedWhy(check),
    words.remedy[check.verdict],
    ...(left.length > 0 ? [words.passedBy({ left })] : []),
  ];
  const reply = (headline: string, texts: readonly string[], data: object): Reply => ({
    kind: 'reply',
    headline,
    data: { understood: { lye: 'weighed', weighed }, ...data },
    blocks: texts.map(text => ({ kind: 'text', text })),
    cautions: cautions(context),
  });
  if (asksWater) {
    const water = waterForLye(weighed.grams, given.water, check?.oilGrams ?? oilGrams);
    const said = { water: water.grams, lye: weighed.grams, percent: water.percent };
    // Lye that burns is told before its water.
    if (check?.verdict === 'lye-heavy') return reply(words.checked(check), checked ?? [], { check });
    return reply(
      words.water(said),
      [words.waterWhy(said), ...(check ? [words.checked(check), ...(checked ?? [])] : [])],
      {
        water,
        ...(check && { check }),
      },
    );
  }
  const { answer: tooDry, why: tooDryWhy } = words.topics['too-little-water'];
  const isDry = waterGrams !== undefined && waterGrams < weighed.grams;
  if (check && isDry && check.verdict !== 'lye-heavy')
    return reply(tooDry, [tooDryWhy, words.checked(check), ...(checked ?? [])], { check, waterGrams });
  if (check) return reply(words.checked(check), [...(checked ?? []), ...(isDry ? [tooDry] : [])], { check });
  if (oilGrams === undefined)
    return stopped(
      say.refusal(new Refusal('oils-empty', {})),
      { question, weighed: true, problem: 'oils-empty' },
      context,
    );
  const said = { lye: weighed.grams, oils: oilGrams };
  const verdict = lyeForAnyOil(weighed, oilGrams);
  return reply(
    verdict === 'too-much-for-all' ? words.tooMuchForAll(said) : words.hangsOnOils(said),
    [words.nameOils],
    {
      verdict,
    },
  );
}

/** Somebody has the lye in a jug, a batter or a bar already. */
const MADE =
  /\b(?:put|added|poured|used|mixed|made|weighed|went in|eché|eche|echó|puse|puso|hice|usé|use|agregué|añadí|mezclé|pesé)\b/iu;

/** No number: something was not understood. The question itself comes back in a form to be put right. */
async function stopped(
  headline: string,
  {
    question,
    weighed,
    problem,
  }: { readonly question: string; readonly weighed: boolean; readonly problem: string },
  context: Context,
): Promise<Reply> {
  const { say, shelf, idempotencyKey, change } = context;
  await keepAskedLine(
    shelf,
    idempotencyKey,
    { command: 'ask', given: {}, candidates: [question] },
    change.at,
  );
  return {
    kind: 'reply',
    headline,
    data: { understood: { lye: 'stopped' }, problem },
    blocks: [
      { kind: 'text', text: say.lyeQuestions.noNumber },
      ...(weighed && MADE.test(question)
        ? [{ kind: 'text' as const, text: say.lyeQuestions.weighedButUnread }]
        : []),
    ],
    cautions: cautions(context),
    choices: [
      { kind: 'button', label: say.ask.change, follow: askFollowUps.change.with({ line: idempotencyKey }) },
    ],
  };
}
