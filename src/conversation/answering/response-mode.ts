import { valuesOn } from '../../engine/values-on.ts';
import { preferencesOf } from '../../records/preferences.ts';
import { atOnce } from '../at-once.ts';
import type { ResponseMode, SeenBy } from '../command.ts';
import type { Conversation } from '../conversation.ts';
import { checkLegible } from '../faces/legible.ts';
import { emergenciesIn, freeTexts } from '../first-aid/told.ts';
import type { Origin, Question } from '../question.ts';
import { contextOf } from './context-of.ts';
import { isForOneQuestion } from './one-question.ts';
import { findTask } from './task.ts';

type Mode = ResponseMode & { readonly replaces: boolean };

/** For what answers one question alone: it is asked in several places on the way. */
const modes = valuesOn<Conversation, Promise<Mode>>();

/** Who sees the answer, how fast it comes, and whether it replaces the message: known before answering. */
export function responseModeOf(question: Question, conversation: Conversation): Promise<Mode> {
  if (!isForOneQuestion(conversation)) return modeOf(question, conversation);
  const mode = modes.get(conversation) ?? modeOf(question, conversation);
  modes.set(conversation, mode);
  return mode;
}

async function modeOf(question: Question, conversation: Conversation): Promise<Mode> {
  if (emergenciesIn(freeTexts(question)).length > 0) return TO_ASKER;
  try {
    await conversation.registry.prepare?.(question);
    const task = findTask(question, conversation);
    return isBroughtAlong(question) ? { ...task, seenBy: 'asker' } : task;
  } catch {
    return TO_ASKER;
  }
}

/** The store that does not say in this time (ms) whether a jar is named leaves the answer to the asker alone. */
const LOOKED_FOR = 1_000;

/** Who sees the answer: of what the group sees, the asker alone where a jar of theirs is named and they keep those to themselves. */
export async function seenByOf(question: Question, conversation: Conversation): Promise<SeenBy> {
  const { seenBy } = await responseModeOf(question, conversation);
  if (seenBy === 'asker') return 'asker';
  const looked = visibilityOf(question, conversation).catch((): SeenBy => 'asker');
  const seen = await atOnce(looked);
  if (seen !== undefined) return seen;
  const { promise: late, resolve } = Promise.withResolvers<SeenBy>();
  const timer = setTimeout(resolve, LOOKED_FOR, 'asker');
  return await Promise.race([looked, late]).finally(() => clearTimeout(timer));
}

async function visibilityOf(question: Question, conversation: Conversation): Promise<SeenBy> {
  checkLegible(question);
  const task = findTask(question, conversation);
  if (!task.namesOwnJar) return 'group';
  const context = contextOf(question, conversation, task.idempotencyKey);
  const { jars } = await preferencesOf(context.store, context.asker.id);
  return jars === 'shown' || !(await task.namesOwnJar(context)) ? 'group' : 'asker';
}

/** True where only the asker let us in: everything is answered to them alone there. */
export const isBroughtAlong = ({ here }: Origin): boolean => here?.letInBy === 'member';

/** How a "no" and first aid are told: at once, to whoever asked, and never in place of what stood there. */
export const TO_ASKER = {
  seenBy: 'asker',
  pace: 'quick',
  access: 'member',
  opensForm: false,
  replaces: false,
} as const;
