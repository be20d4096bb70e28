import {
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
import { holdRecorded } from '../../recorded.ts';

/*
 * What each reader near lye makes of what makers ask (lines of the matters, and of the tests beside): what it reads, and what it leaves to
 * another. As read when this was written, and looked over for what is plainly wrong.
 */

const STEPS = {
  opensWithPlan,
  isOnlyOfLye,
  tellsOfMade,
  isOfAWord: (text: string) => isOfAWord(readQuestion(text).readings[0]!, text),
  refuseGroupLeftOut: (text: string) => refuseGroupLeftOut(text, { sure: true }),
  isOfNoAmount: (text: string) => isOfNoAmount(text, readQuestion(text)),
  refuseOtherAlkali,
  readPlanQuestion,
  refuseWeighedFat,
  readLyeQuestion: (text: string) => {
    const { lye: _lye, ...told } = readLyeQuestion(text);
    return told;
  },
  isBleachOrLye,
  lyeAskedIn,
  saidBeside,
  saidPlainly,
  lyeAmissIn,
  differenceTopic,
  asksWhetherTooMuch,
  tellsDifference,
  ofLye: (text: string) => ofLye(toldAmounts(wordsOfBatch(text))),
  gramsOrMillilitres,
  lyeAndOilsAlone,
  toldAmounts,
  wordsOfBatch,
  putInAmiss,
  spoonedOnTop,
  acidTakesIn,
  oilsForLye,
  readyLyeIn,
  impureLyeIn,
  waterForLyeIn,
  withHalfAsPercent,
  strengthOfReady,
  withSolution,
  readyLyeNamed,
  scaledIn,
  lyeSpilledIn,
  asksForOrder,
  isAskedGenerally,
  askedTopicIn,
  asksOfKeeping,
  isOfAnOil,
  isCurious,
  isHotSpice,
  asksAmountOfLye,
  tellsOfHurt,
  lyeBeyondAllOils,
  careTopicIn,
  isCalmMatter,
  isHarmMatter,
  lyeTopicIn,
  isWeighedRecipe,
} as const;

holdRecorded('a reader near lye', { steps: STEPS, folder: import.meta.dirname });
