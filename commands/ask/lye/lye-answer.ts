import { unbroken } from '../../../src/engine/over-lines.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Block, Reply } from '../../../src/conversation/reply.ts';
import { mayBeOfShelf } from '../../../src/engine/questions/fields/shelf-words.ts';
import { inOrder } from '../../../src/engine/questions/lye/amounts/amounts-first.ts';
import { isOfNoAmount } from '../../../src/engine/questions/lye/no-amount.ts';
import { readPlanQuestion, refuseWeighedFat } from '../../../src/engine/questions/lye/plan-question.ts';
import {
  isBleachOrLye,
  type LyeQuestion,
  lyeAskedIn,
  readLyeQuestion,
  refuseFigureOrWord,
} from '../../../src/engine/questions/lye/question.ts';
import type { Way } from '../../../src/engine/questions/lye/recipe-line/items/item.ts';
import { asksForLyeOf } from '../../../src/engine/questions/lye/recipe-line/plain-recipe.ts';
import {
  asksForLyeOfWeighed,
  weighsAnOilTwice,
} from '../../../src/engine/questions/lye/recipe-line/recipe-asked.ts';
import { saidBeside } from '../../../src/engine/questions/lye/said-beside.ts';
import { differenceTopic, tellsDifference } from '../../../src/engine/questions/lye/slips/lye-difference.ts';
import { spoonedOnTop } from '../../../src/engine/questions/lye/slips/weighed-amiss.ts';
import { oilsForLye } from '../../../src/engine/questions/lye/sums/inverse.ts';
import { readLyeInChat } from '../../../src/engine/questions/lye/told-in-chat.ts';
import { askedTopicIn } from '../../../src/engine/questions/lye/topics/asked/read.ts';
import type { LyeTopic } from '../../../src/engine/questions/lye/topics/topic.ts';
import { careTopicIn, lyeTopicIn } from '../../../src/engine/questions/lye/topics/topics.ts';
import type { QuestionRead, Reading } from '../../../src/engine/questions/read.ts';
import { Refusal, unlessRefused } from '../../../src/engine/refusal.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import { inPassing } from '../in-passing.ts';
import { generalMatter } from './general-matter.ts';
import {
  BEFORE_AMOUNTS,
  givesWayToAWeight,
  isOfAnOil,
  isOfHarm,
  OF_A_WEIGHED_RECIPE,
} from './lye-or-matter.ts';
import { stopped } from './lye-stopped.ts';
import { lyeSumsReply } from './lye-sums.ts';
import { topicReply } from './matter.ts';
import { nearReply } from './nearest-matter.ts';
import { oilsReply, weighedReply } from './weighed-lye.ts';

/** A reading that `/plan` answers, with what must be said beside it. */
type LyeReading = Omit<Reading, 'job'> & {
  readonly kind: 'reading';
  readonly job: 'lye' | 'plan';
  readonly notes: readonly Block[];
};

/** Whether lye and its oils are weighed in a question, so that it can be checked. */
function isWeighedRecipe(question: string): boolean {
  if (!lyeAskedIn(question).weighed) return false;
  const told = unlessRefused(() => readLyeQuestion(question));
  return told?.weighed !== undefined && told.given.oils !== undefined;
}

/** Whoever opens with the word wants the whole plan, however many oils follow. */
const PLAN_FIRST = /^\W*(?:please |por favor )?plan(?:e[ae]\w*|ifi\w*)? /iu;

/**
 * What a question about lye, its slips put right, is answered with: its handling (as it was `typed`, too), a
 * check of lye that was weighed, water for it, or a reading
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
  const { ordered, unordered } = inOrder(question);
  const sums = isOfHarm(lyeTopicIn(typed)) || isOfAnOil(typed) ? undefined : lyeSumsReply(typed, context);
  if (sums) return sums;
  // What is asked of what in general; a weight that went wrong is told by sums, harm by its patterns.
  // Beside a recipe that reads whole its number is what is waited for.
  const isWaitedFor = asksForLyeOfWeighed(typed);
  const givesWay = (topic: LyeTopic) =>
    (isWaitedFor && givesWayToAWeight(topic, typed)) || (topic === 'two-figures' && weighsAnOilTwice(typed));
  const standing = (topic: LyeTopic | undefined) =>
    topic !== undefined && givesWay(topic) ? undefined : topic;
  const general = standing(askedTopicIn(typed));
  if (general && !asksForLyeOf(typed)) return topicReply(general, context);
  const care = standing(careTopicIn(typed) ?? differenceTopic(typed));
  const isChecked =
    care !== undefined && OF_A_WEIGHED_RECIPE.has(care) && isWeighedRecipe(ordered) && !spoonedOnTop(typed);
  if (care && (!isChecked || tellsDifference(typed))) return topicReply(care, context);
  const passing = inPassing(typed, context);
  if (passing) return passing;
  const found = standing(lyeTopicIn(typed) ?? (typed === question ? undefined : lyeTopicIn(question)));
  const near = await generalMatter(typed, { found, read });
  if (near) return nearReply(near, context);
  const job = read.readings[0]?.job;
  if (job?.startsWith('shelf') && mayBeOfShelf(question)) return undefined;
  const turned = lyeAskedIn(ordered);
  const asked =
    turned.weighed || turned.amount ? turned : { ...turned, amount: isWaitedFor || asksForLyeOf(question) };
  // "Does manganese violet hold at pH 13" asks of the colour.
  const isOfColour = found === 'soap-ph' && job === 'survives-lye' && read.facts.named.length > 0;
  const topic = isOfColour ? undefined : found;
  if (topic && (BEFORE_AMOUNTS.has(topic) || !(asked.amount || asked.weighed)))
    return topicReply(topic, context);
  if ((job === 'plan' || PLAN_FIRST.test(question)) && !asked.amount && !asked.weighed)
    return planOrNo(ordered, { read, question, context });
  const coloured = job === 'dose' && read.facts.named.length > 0 && !asked.weighed;
  if (!(asked.amount || asked.weighed || job === 'lye') || coloured || isOfNoAmount(question, read))
    return undefined;
  if (asked.amount && isBleachOrLye(question))
    return stopped(
      context.say.lyeQuestions.bleachOrLye,
      { question, weighed: asked.weighed, problem: 'lye-or-bleach' },
      context,
    );
  const inverse = asked.weighed ? oilsForLye(ordered) : undefined;
  if (inverse) return oilsReply(inverse, context);
  try {
    refuseFigureOrWord(typed);
    const told = {
      ...withCorrections(readLyeInChat(question, { ordered, ...(unordered && { unordered }) }), read),
      beside: saidBeside(typed),
    };
    if (told.weighed) return weighedReply(told, question, context);
    if (!asked.amount && told.given.oils === undefined && isOnlyOfLye(question)) return undefined;
    return readingOf(told, context);
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    // A flaw that is told with the whole recipe stays with whoever reads flaws.
    if (job === 'diagnose' && !asked.amount && topic === undefined) return undefined;
    return stopped(
      context.say.refusal(refusal),
      { question, weighed: asked.weighed, problem: refusal.id, ways: waysOf(refusal) },
      context,
    );
  }
}

/** What a recipe is asked for by: with none of it, and no figure, oils are not what is missing. */
const OF_A_RECIPE = new RegExp(
  unbroken`
    \d|(?<!\p{L})(?:recipes?|batch(?:es)?|calculat\p{L}*|calc|weigh\p{L}*|need|amount|how much|work out|
    percent|oils?|olive|coconut|castile|lard|tallow|recetas?|lotes?|calcul\p{L}*|pes[ao]\p{L}*|
    necesit\p{L}*|cantidad|cuant[oa]s?|aceites?|oliva|coco|castilla|manteca|sebo|plan\p{L}*|for|
    para)(?!\p{L})
  `,
  'iu',
);
const isOnlyOfLye = (question: string): boolean => !OF_A_RECIPE.test(unaccented(question));

/** The recipes that a question back leaves open, each of which is one press. */
const waysOf = ({ values }: Refusal): readonly Way[] => ('ways' in values && values.ways) || [];

/** A plan whose oils are only part of the fats weighed for it would have too little lye for them, and no word of it. */
async function planOrNo(
  ordered: string,
  {
    read,
    question,
    context,
  }: { readonly read: QuestionRead; readonly question: string; readonly context: Context },
): Promise<Reply | LyeReading | undefined> {
  try {
    return planReading(ordered, read, context);
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return stopped(context.say.refusal(refusal), { question, weighed: false, problem: refusal.id }, context);
  }
}

/** A whole plan asked for in plain words: every part of it is taken into the plan or named as left out. */
function planReading(question: string, read: QuestionRead, { say }: Context): LyeReading | undefined {
  const [reading] = read.readings;
  const told = readPlanQuestion(question);
  if (!reading) return undefined;
  if (!told) return withoutOils(reading);
  const { size, ...rest } = reading.given;
  const texts = Object.fromEntries(Object.entries(told.given).map(([name, value]) => [name, String(value)]));
  const weighed =
    told.given.oils !== undefined &&
    /\d ?(?:k?g|kilos?|gramos?|grams?|oz|lbs?|pounds?|libras?)\b/u.test(told.given.oils);
  // A mass beside weighed oils is of something else: of honey, of salt.
  const taken =
    typeof size === 'string' && !weighed && told.given.size === undefined
      ? told.left.find(piece => isSizeAlone(piece, size))
      : undefined;
  const left = told.left.filter(piece => piece !== taken);
  for (const piece of left) refuseWeighedFat(piece);
  return {
    ...reading,
    kind: 'reading',
    job: 'plan',
    given: { ...rest, ...(taken !== undefined && size !== undefined && { size }), ...texts },
    missing: [],
    notes: left.length === 0 ? [] : [{ kind: 'text', text: say.lyeQuestions.leftOut({ left }), firm: true }],
  };
}

/** Words beside a size that name nothing else it could be of. */
const BESIDE_SIZE = new RegExp(
  unbroken`
    \b(?:for|of|in|an?|my|the|to|fill|size|about|total|batter|soap|batch|oils?|mou?ld|loaf|wide|para|de|en|
    un|una|mi|el|la|tamano|unos|unas|masa|jabon|lote|tanda|aceites?|molde)\b|[\s.:,?!]
  `,
  'gu',
);

/** Whether a part of a question that no other option takes is the size and nothing but the size: “2 cups blue” is of the blue. */
const isSizeAlone = (piece: string, size: string): boolean => {
  const bare = (text: string) => unaccented(text).replace(BESIDE_SIZE, '');
  return bare(piece) !== '' && bare(piece) === bare(size);
};

/** Oils that do not read as one list are asked for, and a size beside them: lye for some of them is lye for none. */
function withoutOils(reading: Reading): LyeReading | undefined {
  if (reading.given.oils === undefined) return undefined;
  const { oils: _, size: __, ...rest } = reading.given;
  return { ...reading, kind: 'reading', job: 'plan', given: rest, missing: ['oils'], notes: [] };
}

/** Oils whose names were put right before anything was read are told as well. */
function withCorrections(told: LyeQuestion, { corrections }: QuestionRead): LyeQuestion {
  const words = new Set(told.given.oils?.toLowerCase().split(/[^\p{L}]+/u));
  const ofOils = corrections.filter(({ to }) => words.has(to.toLowerCase()));
  const before = ofOils.map(({ from, to }) => ({ typed: from, read: to }));
  return before.length === 0 ? told : { ...told, respelt: [...before, ...(told.respelt ?? [])] };
}

function readingOf(
  { given, usualKoh, left, respelt = [], beside = [] }: LyeQuestion,
  { say }: Context,
): LyeReading {
  const texts = Object.fromEntries(Object.entries(given).map(([name, value]) => [name, String(value)]));
  return {
    kind: 'reading',
    job: 'lye',
    score: 0,
    command: 'plan',
    given: texts,
    missing: given.oils === undefined ? ['oils'] : [],
    notes: [
      ...(respelt.length > 0 ? [say.lyeQuestions.respelt({ respelt })] : []),
      ...(usualKoh ? [say.lyeQuestions.usualKoh] : []),
      ...(left.length > 0 ? [say.lyeQuestions.passedBy({ left })] : []),
      ...(beside.length > 0 && given.oils !== undefined ? [say.lyeQuestions.saidBeside({ beside })] : []),
    ].map(text => ({ kind: 'text', text, firm: true })),
  };
}
