import type { Answerer, Asked, LeavesTo } from './asked.ts';
import { carrierAmountAnswer } from './colour/carrier-amount.ts';
import { hue } from './colour/hue-answer.ts';
import { metalPowder } from './colour/metal-powder.ts';
import { paletteIdea } from './colour/palette-idea.ts';
import { planWithoutOils } from './colour/plan-without-oils.ts';
import { scents } from './colour/scents.ts';
import { severalJars } from './colour/several-jars.ts';
import { colourSums } from './colour/shares.ts';
import { survival } from './colour/survival.ts';
import { contest } from './contest.ts';
import { doubt } from './doubt.ts';
import { lyeElsewhere, otherField } from './elsewhere.ts';
import type { AnsweredBy } from './first-of.ts';
import { nearLye } from './lye/near-lye.ts';
import { nobodyMetIt } from './lye/nobody-met-it.ts';
import { notUnderstood } from './not-understood.ts';
import { asCommand } from './reading/as-command.ts';
import { beyondRange } from './reading/beyond-range.ts';
import { whichPortion } from './reading/which-portion.ts';
import { askedOfNamedColour } from './technique/asked-of-named.ts';
import { technique } from './technique/technique.ts';
import type { AskReply } from './understood.ts';
import { hardlyTold, nearLyeUnsure, wordOfLye } from './unsure.ts';

/** What is left of a question that nobody has a better answer to: the command that it was read as, or what keeps from running it. */
const READ_AS_COMMAND: readonly Answerer[] = [severalJars, whichPortion, beyondRange, asCommand];

/** Who answers a question that needs nothing from before: the first who has an answer. The order is told in DEVELOPERS.md. */
export const ALONE: readonly Answerer[] = [
  nobodyMetIt,
  metalPowder,
  hue,
  colourSums,
  contest,
  paletteIdea,
  askedOfNamedColour,
  technique,
  lyeElsewhere,
  survival,
  nearLye,
  carrierAmountAnswer,
  scents,
  nearLyeUnsure,
  otherField,
  wordOfLye,
  notUnderstood,
  doubt,
  hardlyTold,
  planWithoutOils,
  ...READ_AS_COMMAND,
];

/** The same beside a photo, which is of a bar or of a colour to be mixed. */
export const BESIDE_PHOTO: readonly Answerer[] = [otherField, notUnderstood, doubt, ...READ_AS_COMMAND];

/** The answer of one to a question that needs nothing from before; undefined where it has none, or leaves the question to another. */
export async function answerOf(
  { leavesTo = [], answer }: Answerer,
  asked: Asked,
): Promise<AskReply | undefined> {
  return (await standsAside(leavesTo, asked)) ? undefined : await answer(asked);
}

/** The answer to a question that needs nothing from before: the last of the list always has one. */
export async function answeredAlone(asked: Asked): Promise<AnsweredBy> {
  for (const one of asked.photo ? BESIDE_PHOTO : ALONE) {
    const reply = await answerOf(one, asked);
    if (reply) return { by: one.id, reply };
  }
  throw new Error('a question that nobody answers');
}

/** Whether somebody stands before an answerer in this question. */
async function standsAside(leavesTo: readonly LeavesTo[], asked: Asked): Promise<boolean> {
  if (leavesTo.length === 0) return false;
  if (leavesTo.includes('stays-out') && asked.staysOut()) return true;
  if (!leavesTo.includes('lye') && !leavesTo.includes('check')) return false;
  const { told, recipe } = await asked.nearLye();
  const isNearLye = told !== undefined || recipe !== undefined;
  return isNearLye ? leavesTo.includes('lye') : leavesTo.includes('check') && asked.staysOut() !== undefined;
}
