import type { Context } from '../../../src/conversation/context.ts';
import { mayBeOfShelf } from '../../../src/engine/questions/fields/shelf-words.ts';
import { inOrder } from '../../../src/engine/questions/lye/amounts/amounts-first.ts';
import { opensWithPlan } from '../../../src/engine/questions/lye/asked-plainly.ts';
import { isOfNoAmount } from '../../../src/engine/questions/lye/no-amount.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import { asksForLyeOf } from '../../../src/engine/questions/lye/recipe-line/plain-recipe.ts';
import {
  asksForLyeOfWeighed,
  weighsAnOilTwice,
} from '../../../src/engine/questions/lye/recipe-line/recipe-asked.ts';
import { isOneFigureForOils } from '../../../src/engine/questions/lye/sums/one-figure.ts';
import { givesWayToAWeight } from '../../../src/engine/questions/lye/topics/beside-weights.ts';
import type { LyeTopic } from '../../../src/engine/questions/lye/topics/topic.ts';
import { lyeTopicIn } from '../../../src/engine/questions/lye/topics/topics.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { whenAsked } from '../../../src/engine/when-asked.ts';

/** A question as its answerers near lye see it; what is a function is read when the first of them asks for it, once. */
export type AskedOfLye = {
  /** As it was typed. */
  readonly typed: string;
  /** With its slips put right. */
  readonly question: string;
  readonly read: QuestionRead;
  readonly context: Context;
  /** The question with every amount before its name, and as it is where that is not sure. */
  readonly turned: () => ReturnType<typeof inOrder>;
  /** Whether lye is asked for, and whether some is weighed. */
  readonly figures: () => { readonly amount: boolean; readonly weighed: boolean };
  /** The matter that patterns find, where it does not wait behind the weight that is asked for. */
  readonly found: () => LyeTopic | undefined;
  /** A matter, unless it gives way to the lye of a recipe that is weighed whole beside it. */
  readonly standing: (topic: LyeTopic | undefined) => LyeTopic | undefined;
  readonly isOfShelf: () => boolean;
  /** A whole plan is asked for, and no lye. */
  readonly isOfPlan: () => boolean;
  /** Lye is asked for, or was weighed. */
  readonly isOfWeights: () => boolean;
};

/** A question for its answerers near lye. `question`: with its slips put right; `typed`: as it was typed. */
export function askedOfLye(
  question: string,
  {
    typed,
    read,
    context,
  }: { readonly typed: string; readonly read: QuestionRead; readonly context: Context },
): AskedOfLye {
  const job = read.readings[0]?.job;
  const turned = whenAsked(() => inOrder(question));
  // Beside a recipe that reads whole its number is what is waited for.
  const isWaitedFor = whenAsked(() => asksForLyeOfWeighed(typed));
  const givesWay = (topic: LyeTopic) =>
    (isWaitedFor() && givesWayToAWeight(topic, typed)) ||
    (topic === 'two-figures' && (weighsAnOilTwice(typed) || isOneFigureForOils(typed)));
  const standing = (topic: LyeTopic | undefined) =>
    topic !== undefined && givesWay(topic) ? undefined : topic;
  const figures = whenAsked(() => {
    const asked = lyeAskedIn(turned().ordered);
    const { weighed } = asked;
    return { weighed, amount: asked.amount || (!weighed && (isWaitedFor() || asksForLyeOf(question))) };
  });
  const isAsked = () => figures().amount || figures().weighed;
  const isOfShelf = whenAsked(() => Boolean(job?.startsWith('shelf')) && mayBeOfShelf(question));
  const isOfPlan = whenAsked(() => !isOfShelf() && (job === 'plan' || opensWithPlan(question)) && !isAsked());
  // A dose of a colour that is named weighs no lye.
  const isColoured = () => job === 'dose' && read.facts.named.length > 0 && !figures().weighed;
  return {
    typed,
    question,
    read,
    context,
    turned,
    figures,
    found: whenAsked(() =>
      standing(lyeTopicIn(typed) ?? (typed === question ? undefined : lyeTopicIn(question))),
    ),
    standing,
    isOfShelf,
    isOfPlan,
    isOfWeights: whenAsked(
      () =>
        !isOfShelf() &&
        !isOfPlan() &&
        (isAsked() || job === 'lye') &&
        !isColoured() &&
        !isOfNoAmount(question, read),
    ),
  };
}
