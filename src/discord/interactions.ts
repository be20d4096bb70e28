import type { Interaction, Message } from 'discord.js';
import type { Logger } from 'pino';
import type { Conversation } from '../conversation/conversation.ts';
import { followUpNameIn } from '../conversation/follow-ups/follow.ts';
import type { Question } from '../conversation/question.ts';
import type { Answer } from '../conversation/reply.ts';
import { LateForms } from './late-forms.ts';
import { answerNote, type NoteDesk } from './notes.ts';
import { isTooLate, respond, respondTyping } from './respond.ts';
import { questionOf } from './route.ts';
import type { Outcome, Watcher } from './watcher.ts';

type Desk = {
  readonly conversation: Conversation;
  readonly log: Logger;
  readonly watcher: Watcher;
  readonly lateForms: LateForms;
  readonly origins: ReadonlySet<string>;
};

/** What is done with what comes in: neither rejects. */
export type Answers = {
  /** `began`: when it came, by `performance.now()`, ms. */
  readonly toInteraction: (interaction: Interaction, began: number) => Promise<void>;
  readonly toNote: (message: Message) => Promise<void>;
};

/** Answers over the client's own line, and notes over the line for what no interaction asked for. */
export function answersOf({
  posting,
  ...given
}: Omit<Desk, 'lateForms'> & Pick<NoteDesk, 'posting'>): Answers {
  const desk = { ...given, lateForms: new LateForms() };
  return {
    toInteraction: (interaction, began) => answer(interaction, desk, began),
    toNote: message => noteTaken(message, { conversation: desk.conversation, posting }, desk.log),
  };
}

/** An interaction that cannot be read or answered is noted, and the next one is taken. */
async function answer(interaction: Interaction, desk: Desk, began: number): Promise<void> {
  const { conversation, log, watcher, lateForms, origins } = desk;
  let question: Question | undefined;
  const ended = (outcome: Outcome) => {
    const [command, ms] = [askedFor(question, conversation), performance.now() - began];
    watcher.answered({ command, outcome, seconds: ms / 1000 });
    const kind = question?.kind ?? 'unread';
    return { kind, command, outcome, interaction: interaction.id, ms: Math.round(ms) };
  };
  try {
    if (interaction.isButton() && LateForms.isFor(interaction.customId))
      return await lateForms.press(interaction);
    question = questionOf(interaction, origins);
    if (!question) return;
    let outcome: Outcome = 'answered';
    if (question.kind === 'typing' && interaction.isAutocomplete())
      await respondTyping(interaction, question, conversation);
    else if (interaction.isRepliable())
      outcome = outcomeOf(await respond(interaction as Parameters<typeof respond>[0], question, desk));
    log.info(ended(outcome), 'answered');
  } catch (error) {
    const { name, message, stack } = error as Error;
    const late = isTooLate(error);
    const level = late || question?.kind === 'typing' ? 'warn' : 'error';
    log[level]({ ...ended(late ? 'lost' : 'fault'), name, message, stack }, 'not answered');
  }
}

const outcomeOf = (given: Answer): Outcome => {
  if (given.kind !== 'problem') return 'answered';
  return OUR_FAULTS.test(given.id) ? 'fault' : 'refused';
};
/** Ids of the refusals that tell of a fault of ours, or of the store's. */
const OUR_FAULTS = /^(?:our-fault|records-|work-took-too-long)/;

/** What was asked for, by a name that is declared: whatever else is claimed, or could not be read, is `unknown`. */
function askedFor(question: Question | undefined, { registry }: Conversation): string {
  switch (question?.kind) {
    case undefined:
      return 'unknown';
    case 'command':
    case 'typing': {
      const name = question.path.join(' ');
      return registry.actions.has(name) ? name : 'unknown';
    }
    case 'follow': {
      const name = followUpNameIn(question.sealed);
      return registry.followUps.has(name) ? name : 'unknown';
    }
    case 'point':
      return registry.menuEntries.has(question.entry) ? question.entry : 'unknown';
  }
}

/** Answers a note that tells of an emergency; says nothing of any other, nor of what it said. */
async function noteTaken(message: Message, desk: NoteDesk, log: Logger): Promise<void> {
  try {
    if (await answerNote(message, desk)) log.info({ kind: 'note', message: message.id }, 'answered');
  } catch (error) {
    const { name, message: what, stack } = error as Error;
    log.error({ kind: 'note', message: message.id, name, what, stack }, 'not answered');
  }
}
