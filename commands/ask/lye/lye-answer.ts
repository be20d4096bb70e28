import { isBleachOrLye } from '../../../src/engine/questions/lye/question.ts';
import { asksForLyeOf } from '../../../src/engine/questions/lye/recipe-line/plain-recipe.ts';
import { differenceTopic, tellsDifference } from '../../../src/engine/questions/lye/slips/lye-difference.ts';
import { spoonedOnTop } from '../../../src/engine/questions/lye/slips/weighed-amiss.ts';
import { oilsForLye } from '../../../src/engine/questions/lye/sums/inverse.ts';
import { askedTopicIn } from '../../../src/engine/questions/lye/topics/asked/read.ts';
import {
  BEFORE_AMOUNTS,
  isOfAnOil,
  isOfHarm,
  OF_A_WEIGHED_RECIPE,
} from '../../../src/engine/questions/lye/topics/beside-weights.ts';
import { generalMatter } from '../../../src/engine/questions/lye/topics/nearest/general.ts';
import { careTopicIn, lyeTopicIn } from '../../../src/engine/questions/lye/topics/topics.ts';
import { isWeighedRecipe } from '../../../src/engine/questions/lye/weighed-recipe.ts';
import type { AskedOfLye } from './asked-of-lye.ts';
import { inPassing } from './in-passing.ts';
import type { LyeFound } from './lye-found.ts';
import { planFound, recipeFound } from './lye-recipe.ts';
import { stopped } from './lye-stopped.ts';
import { lyeSumsReply } from './lye-sums.ts';
import { topicReply } from './matter.ts';
import { nearReply } from './nearest-matter.ts';
import { rateReply } from './rate.ts';
import { oilsReply } from './weighed-lye.ts';

/** One who answers near lye; `applies`: what has to be asked for that, anything where it is left out. */
type LyeAnswerer = {
  readonly id: string;
  readonly applies?: (asked: AskedOfLye) => boolean;
  readonly answer: (asked: AskedOfLye) => LyeFound | Promise<LyeFound>;
};

const isOfWeights = (asked: AskedOfLye): boolean => asked.isOfWeights();

/** Who answers near lye, in this order: what went wrong with a weight, matters, then weights. */
export const LYE_ANSWERERS: readonly LyeAnswerer[] = [
  { id: 'rate', answer: ({ typed, context }) => rateReply(typed, context) },
  { id: 'sums', answer: sums },
  { id: 'asked-of-things', answer: ofThings },
  { id: 'care', answer: care },
  { id: 'in-passing', answer: ({ typed, context }) => inPassing(typed, context) },
  { id: 'learned', answer: learned },
  { id: 'matter', applies: asked => !asked.isOfShelf(), answer: matter },
  { id: 'plan', applies: asked => asked.isOfPlan(), answer: planFound },
  { id: 'bleach-or-lye', applies: isOfWeights, answer: bleachOrLye },
  { id: 'oils-for-lye', applies: isOfWeights, answer: oilsFor },
  { id: 'recipe', applies: isOfWeights, answer: recipeFound },
];

/** What the first who answers near lye says, and who that is. */
export async function foundNearLye(
  asked: AskedOfLye,
): Promise<{ readonly by: string; readonly found: NonNullable<LyeFound> } | undefined> {
  for (const { id, applies, answer } of LYE_ANSWERERS) {
    const found = applies === undefined || applies(asked) ? await answer(asked) : undefined;
    if (found) return { by: id, found };
  }
  return undefined;
}

/** A weight that went wrong, told by its own figures; harm and the weight of an oil are none. */
function sums({ typed, context }: AskedOfLye): LyeFound {
  return isOfHarm(lyeTopicIn(typed)) || isOfAnOil(typed) ? undefined : lyeSumsReply(typed, context);
}

/** What is asked of what in general. */
function ofThings({ typed, context, standing }: AskedOfLye): LyeFound {
  const general = standing(askedTopicIn(typed));
  return general && !asksForLyeOf(typed) ? topicReply(general, context) : undefined;
}

/** A matter of care, unless the recipe beside it can be checked. */
function care({ typed, context, standing, turned }: AskedOfLye): LyeFound {
  const topic = standing(careTopicIn(typed) ?? differenceTopic(typed));
  if (topic === undefined) return undefined;
  const isChecked =
    OF_A_WEIGHED_RECIPE.has(topic) && isWeighedRecipe(turned().ordered) && !spoonedOnTop(typed);
  return !isChecked || tellsDifference(typed) ? topicReply(topic, context) : undefined;
}

/** A matter that a question is surely about by what was learned. */
async function learned({ typed, read, context, found }: AskedOfLye): Promise<LyeFound> {
  const near = await generalMatter(typed, { found: found(), read });
  return near && nearReply(near, context);
}

/** A matter that patterns find, where no weight is asked for or it stands before any. */
function matter({ read, context, found, figures }: AskedOfLye): LyeFound {
  const topic = found();
  // "Does manganese violet hold at pH 13" asks of the colour.
  const isOfColour =
    topic === 'soap-ph' && read.readings[0]?.job === 'survives-lye' && read.facts.named.length > 0;
  if (topic === undefined || isOfColour) return undefined;
  const { amount, weighed } = figures();
  return BEFORE_AMOUNTS.has(topic) || !(amount || weighed) ? topicReply(topic, context) : undefined;
}

/** A word that is bleach to one and lye to another is asked, not weighed. */
async function bleachOrLye({ question, context, figures }: AskedOfLye): Promise<LyeFound> {
  const { amount, weighed } = figures();
  if (!amount || !isBleachOrLye(question)) return undefined;
  const headline = context.say.lyeQuestions.bleachOrLye;
  return stopped(headline, { question, weighed, problem: 'lye-or-bleach' }, context);
}

/** Lye that is weighed already, and how much oil takes it. */
function oilsFor({ context, turned, figures }: AskedOfLye): LyeFound {
  const inverse = figures().weighed ? oilsForLye(turned().ordered) : undefined;
  return inverse && oilsReply(inverse, context);
}
