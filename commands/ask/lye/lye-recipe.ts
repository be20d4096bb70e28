import type { Context } from '../../../src/conversation/context.ts';
import { poursFrom } from '../../../src/engine/batch/blend-limits.ts';
import { parseOils } from '../../../src/engine/batch/oils/lists/oil-list.ts';
import { USUAL_HEAT } from '../../../src/engine/heat/setting.ts';
import { purityTold } from '../../../src/engine/questions/lye/amounts/purity-told.ts';
import { isOnlyOfLye } from '../../../src/engine/questions/lye/asked-plainly.ts';
import { readLyeBesideTalk } from '../../../src/engine/questions/lye/beside-talk.ts';
import { refuseGroupLeftOut } from '../../../src/engine/questions/lye/group-left-out.ts';
import { planReading } from '../../../src/engine/questions/lye/plan-reading.ts';
import { type LyeQuestion, refuseFigureOrWord } from '../../../src/engine/questions/lye/question.ts';
import type { Way } from '../../../src/engine/questions/lye/recipe-line/items/item.ts';
import { respeltOils } from '../../../src/engine/questions/lye/respelt-oils.ts';
import { saidBeside, wholeSentences } from '../../../src/engine/questions/lye/said-beside.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { Refusal, unlessRefused } from '../../../src/engine/refusal.ts';
import type { AskedOfLye } from './asked-of-lye.ts';
import type { LyeFound, LyeReading } from './lye-found.ts';
import { stopped } from './lye-stopped.ts';
import { weighedReply } from './weighed-lye.ts';

/**
 * The recipe that a question weighs: what its lye that was weighed does, or a reading for `/plan` that holds every word of it. What was not
 * understood of it is asked back; undefined where a flaw is told with it, or only a word of lye.
 */
export async function recipeFound(asked: AskedOfLye): Promise<LyeFound> {
  const { typed, question, read, context } = asked;
  const { amount, weighed } = asked.figures();
  const { ordered, unordered } = asked.turned();
  try {
    refuseFigureOrWord(typed);
    // Spelling puts the kinds of oils into the names of some: "mantecas".
    if (typed !== question) refuseGroupLeftOut(typed, { sure: true });
    const recipe = readLyeBesideTalk(question, { ordered, ...(unordered && { unordered }) });
    const told = {
      ...withCorrections(recipe, read),
      left: wholeSentences(typed, recipe.left),
      beside: [...new Set([...(recipe.beside ?? []), ...saidBeside(typed)])],
    };
    if (told.weighed) return weighedReply(told, question, context);
    if (!amount && told.given.oils === undefined && isOnlyOfLye(question)) return undefined;
    return readingOf(told, context);
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    // A flaw that is told with the whole recipe stays with whoever reads flaws.
    if (read.readings[0]?.job === 'diagnose' && !amount && asked.found() === undefined) return undefined;
    return stopped(
      context.say.refusal(refusal),
      { question, weighed, problem: refusal.id, ways: waysOf(refusal) },
      context,
    );
  }
}

/** The recipes that a question back leaves open, each of which is one press. */
const waysOf = ({ values }: Refusal): readonly Way[] => ('ways' in values && values.ways) || [];

/** A plan whose oils are only part of the fats weighed for it would have too little lye for them, and no word of it. */
export async function planFound({ question, read, context, turned }: AskedOfLye): Promise<LyeFound> {
  try {
    const plan = planReading(turned().ordered, read);
    if (!plan) return undefined;
    const { reading, left } = plan;
    const text = context.say.lyeQuestions.leftOut({ left });
    return {
      ...reading,
      kind: 'reading',
      notes: left.length === 0 ? [] : [{ kind: 'text', text, firm: true }],
    };
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return stopped(context.say.refusal(refusal), { question, weighed: false, problem: refusal.id }, context);
  }
}

/** Oils whose names were put right before anything was read are told as well. */
function withCorrections(told: LyeQuestion, { corrections }: QuestionRead): LyeQuestion {
  const before = respeltOils(told.given.oils, corrections);
  return before.length === 0 ? told : { ...told, respelt: [...before, ...(told.respelt ?? [])] };
}

/** Where the oils pour no colder, degrees Celsius: whoever asks for their lye told no temperature, and the lye is the same. */
function warmStart(oils: string | undefined): number | undefined {
  const list = oils === undefined ? undefined : unlessRefused(() => parseOils(oils));
  return (
    list &&
    poursFrom(
      list.shares.map(({ oil, share }) => ({ oil, grams: share })),
      USUAL_HEAT.startC,
    )
  );
}

function readingOf(
  { given, usualKoh, left, respelt = [], beside = [] }: LyeQuestion,
  { say }: Context,
): LyeReading {
  const purity = purityTold(given);
  const startC = warmStart(given.oils);
  const all = { ...given, ...(startC !== undefined && { start: `${startC} C` }) };
  const texts = Object.fromEntries(Object.entries(all).map(([name, value]) => [name, String(value)]));
  return {
    kind: 'reading',
    job: 'lye',
    score: 0,
    command: 'plan',
    given: texts,
    missing: given.oils === undefined ? ['oils'] : [],
    notes: [
      ...(respelt.length > 0 ? [say.lyeQuestions.respelt({ respelt })] : []),
      ...(startC === undefined ? [] : [say.lyeQuestions.poursHot({ startC })]),
      ...(usualKoh ? [say.lyeQuestions.usualKoh] : []),
      ...(purity ? [say.lyeQuestions.purityTold(purity)] : []),
      ...(left.length > 0 ? [say.lyeQuestions.passedBy({ left })] : []),
      ...(beside.length > 0 && given.oils !== undefined ? [say.lyeQuestions.saidBeside({ beside })] : []),
    ].map(text => ({ kind: 'text', text, firm: true })),
  };
}
