import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  isNoSingleAlkali,
  isOfAWord,
  isOnlyOfLye,
  opensWithPlan,
  tellsOfMade,
} from '../../../../src/engine/questions/lye/asked-plainly.ts';
import { refuseGroupLeftOut } from '../../../../src/engine/questions/lye/group-left-out.ts';
import { isOfNoAmount } from '../../../../src/engine/questions/lye/no-amount.ts';
import { refuseOtherAlkali } from '../../../../src/engine/questions/lye/other-alkali.ts';
import { readPlanQuestion, refuseWeighedFat } from '../../../../src/engine/questions/lye/plan-question.ts';
import { isBleachOrLye, lyeAskedIn, readLyeQuestion } from '../../../../src/engine/questions/lye/question.ts';
import { saidBeside } from '../../../../src/engine/questions/lye/said-beside.ts';
import { saidPlainly } from '../../../../src/engine/questions/lye/said-plainly.ts';
import { lyeAmissIn } from '../../../../src/engine/questions/lye/slips/amiss.ts';
import {
  asksWhetherTooMuch,
  differenceTopic,
  tellsDifference,
} from '../../../../src/engine/questions/lye/slips/lye-difference.ts';
import { ofLye } from '../../../../src/engine/questions/lye/slips/reckoned.ts';
import {
  gramsOrMillilitres,
  lyeAndOilsAlone,
  toldAmounts,
  wordsOfBatch,
} from '../../../../src/engine/questions/lye/slips/told-amounts.ts';
import { putInAmiss, spoonedOnTop } from '../../../../src/engine/questions/lye/slips/weighed-amiss.ts';
import { acidTakesIn } from '../../../../src/engine/questions/lye/sums/acid-takes.ts';
import { oilsForLye } from '../../../../src/engine/questions/lye/sums/inverse.ts';
import {
  impureLyeIn,
  readyLyeIn,
  waterForLyeIn,
  withHalfAsPercent,
} from '../../../../src/engine/questions/lye/sums/ready-lye.ts';
import {
  readyLyeNamed,
  strengthOfReady,
  withSolution,
} from '../../../../src/engine/questions/lye/sums/ready-solution.ts';
import { scaledIn } from '../../../../src/engine/questions/lye/sums/scaled.ts';
import { lyeSpilledIn } from '../../../../src/engine/questions/lye/sums/spilled.ts';
import { askedTopicIn } from '../../../../src/engine/questions/lye/topics/asked/read.ts';
import {
  asksForOrder,
  isAskedGenerally,
} from '../../../../src/engine/questions/lye/topics/asked-generally.ts';
import { asksOfKeeping } from '../../../../src/engine/questions/lye/topics/asks-of-keeping.ts';
import { isOfAnOil } from '../../../../src/engine/questions/lye/topics/beside-weights.ts';
import { isCurious } from '../../../../src/engine/questions/lye/topics/curious.ts';
import { isHotSpice } from '../../../../src/engine/questions/lye/topics/gives-way.ts';
import { asksAmountOfLye } from '../../../../src/engine/questions/lye/topics/nearest/general.ts';
import { tellsOfHurt } from '../../../../src/engine/questions/lye/topics/nearest/hurt.ts';
import { lyeBeyondAllOils } from '../../../../src/engine/questions/lye/topics/too-much-at-once.ts';
import {
  careTopicIn,
  isCalmMatter,
  isHarmMatter,
  lyeTopicIn,
} from '../../../../src/engine/questions/lye/topics/topics.ts';
import { isWeighedRecipe } from '../../../../src/engine/questions/lye/weighed-recipe.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { asData } from '../../as-data.ts';

/*
 * What each reader near lye makes of what makers ask (lines of the matters, and of the tests beside): what it reads, and what it leaves to
 * another. As read when this was written, and looked over for what is plainly wrong.
 */

const STEPS = {
  opensWithPlan: (text: string) => opensWithPlan(text),
  isOnlyOfLye: (text: string) => isOnlyOfLye(text),
  tellsOfMade: (text: string) => tellsOfMade(text),
  isOfAWord: (text: string) => isOfAWord(readQuestion(text).readings[0]!, text),
  isNoSingleAlkali: (text: string) => isNoSingleAlkali(text),
  refuseGroupLeftOut: (text: string) => refuseGroupLeftOut(text, { sure: true }),
  isOfNoAmount: (text: string) => isOfNoAmount(text, readQuestion(text)),
  refuseOtherAlkali: (text: string) => refuseOtherAlkali(text),
  readPlanQuestion: (text: string) => readPlanQuestion(text),
  refuseWeighedFat: (text: string) => refuseWeighedFat(text),
  readLyeQuestion: (text: string) => readLyeQuestion(text),
  isBleachOrLye: (text: string) => isBleachOrLye(text),
  lyeAskedIn: (text: string) => lyeAskedIn(text),
  saidBeside: (text: string) => saidBeside(text),
  saidPlainly: (text: string) => saidPlainly(text),
  lyeAmissIn: (text: string) => lyeAmissIn(text),
  differenceTopic: (text: string) => differenceTopic(text),
  asksWhetherTooMuch: (text: string) => asksWhetherTooMuch(text),
  tellsDifference: (text: string) => tellsDifference(text),
  ofLye: (text: string) => ofLye(toldAmounts(wordsOfBatch(text))),
  gramsOrMillilitres: (text: string) => gramsOrMillilitres(text),
  lyeAndOilsAlone: (text: string) => lyeAndOilsAlone(text),
  toldAmounts: (text: string) => toldAmounts(text),
  wordsOfBatch: (text: string) => wordsOfBatch(text),
  putInAmiss: (text: string) => putInAmiss(text),
  spoonedOnTop: (text: string) => spoonedOnTop(text),
  acidTakesIn: (text: string) => acidTakesIn(text),
  oilsForLye: (text: string) => oilsForLye(text),
  readyLyeIn: (text: string) => readyLyeIn(text),
  impureLyeIn: (text: string) => impureLyeIn(text),
  waterForLyeIn: (text: string) => waterForLyeIn(text),
  withHalfAsPercent: (text: string) => withHalfAsPercent(text),
  strengthOfReady: (text: string) => strengthOfReady(text),
  withSolution: (text: string) => withSolution(text),
  readyLyeNamed: (text: string) => readyLyeNamed(text),
  scaledIn: (text: string) => scaledIn(text),
  lyeSpilledIn: (text: string) => lyeSpilledIn(text),
  asksForOrder: (text: string) => asksForOrder(text),
  isAskedGenerally: (text: string) => isAskedGenerally(text),
  askedTopicIn: (text: string) => askedTopicIn(text),
  asksOfKeeping: (text: string) => asksOfKeeping(text),
  isOfAnOil: (text: string) => isOfAnOil(text),
  isCurious: (text: string) => isCurious(text),
  isHotSpice: (text: string) => isHotSpice(text),
  asksAmountOfLye: (text: string) => asksAmountOfLye(text),
  tellsOfHurt: (text: string) => tellsOfHurt(text),
  lyeBeyondAllOils: (text: string) => lyeBeyondAllOils(text),
  careTopicIn: (text: string) => careTopicIn(text),
  isCalmMatter: (text: string) => isCalmMatter(text),
  isHarmMatter: (text: string) => isHarmMatter(text),
  lyeTopicIn: (text: string) => lyeTopicIn(text),
  isWeighedRecipe: (text: string) => isWeighedRecipe(text),
} as const;

const rows = JSON.parse(readFileSync(new URL('steps.json', import.meta.url), 'utf8')) as Record<
  keyof typeof STEPS,
  readonly (readonly [input: never, told: unknown])[]
>;

test.each(Object.keys(STEPS) as (keyof typeof STEPS)[])('a reader near lye: %s', step => {
  const told = rows[step].map(([input]) => ({ input, told: asData(() => STEPS[step](input)) }));
  expect(told).toEqual(rows[step].map(([input, one]) => ({ input, told: one })));
});
