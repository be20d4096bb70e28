import type { Reply } from '../../src/conversation/reply.ts';
import type { Answerer, Asked, LeavesTo } from './asked.ts';
import { hue } from './colour/hue-answer.ts';
import { paletteIdea } from './colour/palette-idea.ts';
import { scents } from './colour/scents.ts';
import { severalJars } from './colour/several-jars.ts';
import { colourSums } from './colour/shares.ts';
import { survival } from './colour/survival.ts';
import { contest } from './contest.ts';
import { doubt } from './doubt.ts';
import { lyeElsewhere, otherField } from './elsewhere.ts';
import { nearLye } from './lye/near-lye.ts';
import { notUnderstood } from './not-understood.ts';
import { asCommand } from './reading/as-command.ts';
import { beyondRange } from './reading/beyond-range.ts';
import { whichPortion } from './reading/which-portion.ts';
import { askedOfNamedColour } from './technique/asked-of-named.ts';
import { technique } from './technique/technique.ts';
import { hardlyTold, nearLyeUnsure, wordOfLye } from './unsure.ts';

/** What is left of a question that nobody has a better answer to: the command that it was read as, or what keeps from running it. */
const READ_AS_COMMAND: readonly Answerer[] = [severalJars, whichPortion, beyondRange, asCommand];

/** Who answers a question that needs nothing from before: the first who has an answer. The order is told in DEVELOPERS.md. */
export const ALONE: readonly Answerer[] = [
  hue,
  colourSums,
  contest,
  paletteIdea,
  askedOfNamedColour,
  technique,
  lyeElsewhere,
  survival,
  nearLye,
  scents,
  nearLyeUnsure,
  otherField,
  wordOfLye,
  notUnderstood,
  doubt,
  hardlyTold,
  ...READ_AS_COMMAND,
];

/** The same beside a photo, which is of a bar or of a colour to be mixed. */
export const BESIDE_PHOTO: readonly Answerer[] = [otherField, notUnderstood, doubt, ...READ_AS_COMMAND];

/** The answer of the first who has one, and whose it is. */
export async function answeredBy(asked: Asked): Promise<{ readonly by: string; readonly reply: Reply }> {
  for (const { id, leavesTo = [], answer } of asked.photo ? BESIDE_PHOTO : ALONE) {
    const reply = (await standsAside(leavesTo, asked)) ? undefined : await answer(asked);
    if (reply) return { by: id, reply };
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
