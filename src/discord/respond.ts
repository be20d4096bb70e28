import {
  type APIMessageTopLevelComponent,
  type AutocompleteInteraction,
  DiscordAPIError,
  InteractionResponseType,
  InteractionWebhook,
  MessageFlags,
} from 'discord.js';
import { arrived } from '../conversation/answering/arrival.ts';
import { forOneQuestion } from '../conversation/answering/one-question.ts';
import { responseModeOf, seenByOf } from '../conversation/answering/response-mode.ts';
import type { Conversation } from '../conversation/conversation.ts';
import type { Question } from '../conversation/question.ts';
import { receive, suggest } from '../conversation/receive.ts';
import type { Answer } from '../conversation/reply.ts';
import { cut } from '../engine/text/excerpt.ts';
import { wordsIn } from '../words/index.ts';
import { answerCallback } from './callback.ts';
import { modalOf } from './form.ts';
import type { LateForms } from './late-forms.ts';
import { messageOf, type Payload, payloadOf, problemPayload } from './render.ts';
import type { Routed } from './route.ts';
import { settlesWithin } from './settles.ts';

type Acknowledgeable = Exclude<Routed, AutocompleteInteraction>;
type Shown = Exclude<Answer, { kind: 'form' }>;

/** An answer that takes longer is announced first: the platform waits three seconds for the announcement. */
const ANNOUNCE_AFTER_MS = 1_500;

/** Characters of a suggestion's name and of its value. Source: Interactions > Application Commands > Choice. */
const MOST_SUGGESTED = 100;

/** The platform's codes for an interaction that it has forgotten, and one that somebody has answered. */
const LOST = 10_062;
const TAKEN = 40_060;
/** Its code for a follow-up to an interaction that nobody has answered yet. */
const UNANSWERED = 10_015;

const hasCode = (error: unknown, code: number) => error instanceof DiscordAPIError && error.code === code;

/** True for the two failures after which nothing may be sent any more, and nothing is lost that was ours. */
export const isTooLate = (error: unknown): boolean => hasCode(error, LOST) || hasCode(error, TAKEN);

/** True when a request failed without a "no": it may have arrived, and only its receipt was lost. */
const mayHaveArrived = (error: unknown): boolean => !(error instanceof DiscordAPIError);

/**
 * Answers an interaction exactly once: at once when the answer is quick, announced first when it is not. Resolves with
 * the answer once the platform has taken it.
 */
export async function respond(
  interaction: Acknowledgeable,
  question: Question,
  { conversation: shared, lateForms }: { readonly conversation: Conversation; readonly lateForms: LateForms },
): Promise<Answer> {
  // Who sees it and what it says share one store, and the time that is waited for it.
  const conversation = forOneQuestion(shared, question);
  const began = performance.now();
  // Begun first: what has to be known before it can be announced is looked up meanwhile, and counts as waiting.
  const answering = receive(question, conversation);
  // Heard where it is awaited, which the next lines may not come to.
  answering.catch(() => undefined);
  const { pace, replaces, opensForm } = await responseModeOf(question, conversation);
  const line: Line = {
    interaction,
    onlyAsker: (await seenByOf(question, conversation)) === 'asker',
    replacing: replaces && interaction.isMessageComponent(),
  };
  const say = wordsIn(question.language);
  const left = Math.max(0, ANNOUNCE_AFTER_MS - (performance.now() - began));
  if ((pace === 'quick' || opensForm) && (await settlesWithin(answering, left)))
    await answerAtOnce(line, await answering);
  else if (!opensForm) await announceAndAnswer(line, answering);
  else await answerAfterWaiting(line, answering, lateForms.keep(question.asker.id, answering, say));
  const answer = await answering;
  await arrived(answer);
  return answer;
}

type Line = {
  readonly interaction: Acknowledgeable;
  readonly onlyAsker: boolean;
  /** The answer takes the place of the message that was pressed on. */
  readonly replacing: boolean;
};

async function answerAtOnce(line: Line, answer: Answer): Promise<void> {
  const { interaction, onlyAsker, replacing } = line;
  if (answer.kind === 'form') {
    if (interaction.isModalSubmit()) throw new Error('a form cannot follow a form');
    await interaction.showModal(modalOf(answer));
    return;
  }
  // A problem never wipes away the message that the button was on.
  const updates = replacing && answer.kind === 'reply';
  const payload = payloadFor(answer);
  await surely(line, payload, () =>
    updates ? update(line, payload) : send(line, payload, onlyAsker || !isReply(answer)),
  );
}

/** A form that is late is opened by the button that is sent meanwhile; anything else takes its place. */
async function answerAfterWaiting(line: Line, answering: Promise<Answer>, waiting: Payload): Promise<void> {
  await surely(line, waiting, () => send(line, waiting, line.onlyAsker));
  const answer = await answering;
  if (answer.kind !== 'form') await edit(line, payloadFor(answer));
}

const isReply = ({ kind }: Answer) => kind === 'reply';

async function announceAndAnswer(line: Line, answering: Promise<Answer>): Promise<void> {
  const { interaction, onlyAsker, replacing } = line;
  let isSure = true;
  try {
    if (replacing && interaction.isMessageComponent()) await interaction.deferUpdate();
    else await interaction.deferReply(onlyAsker ? { flags: MessageFlags.Ephemeral } : {});
  } catch (error) {
    // "Already answered" is our own first try where its receipt was lost.
    if (!mayHaveArrived(error) && !hasCode(error, TAKEN)) throw error;
    isSure = false;
  }
  const answer = await answering;
  if (answer.kind === 'form') throw new Error('a form came where none was declared');
  const payload = payloadFor(answer);
  const keepsMessage = replacing && answer.kind === 'problem';
  const finish = () => (keepsMessage ? followUp(line, payload) : edit(line, payload));
  if (isSure) return await finish();
  try {
    await finish();
  } catch (error) {
    if (!hasCode(error, UNANSWERED)) throw error;
    await send(line, payload, onlyAsker);
  }
}

/** Sends something; where it may have arrived, puts it in its place again, and sends it once more where nothing stands. */
async function surely(line: Line, payload: Payload, act: () => Promise<void>): Promise<void> {
  try {
    await act();
  } catch (lost) {
    if (!mayHaveArrived(lost)) throw lost;
    try {
      await edit(line, payload);
    } catch (error) {
      if (!hasCode(error, UNANSWERED)) throw error;
      await act();
    }
  }
}

const V2 = MessageFlags.IsComponentsV2 as const;
const flagsFor = (onlyAsker: boolean) => (onlyAsker ? V2 | MessageFlags.Ephemeral : V2);

/** Nobody changes them: the library's type is of those who might. */
type Components = APIMessageTopLevelComponent[];

async function send({ interaction }: Line, payload: Payload, onlyAsker: boolean): Promise<void> {
  const flags = flagsFor(onlyAsker);
  if (payload.files.length > 0) await interaction.reply({ ...messageOf(payload), flags });
  else
    await answerCallback(
      interaction,
      {
        type: InteractionResponseType.ChannelMessageWithSource,
        data: { components: payload.components as Components, flags, allowed_mentions: { parse: [] } },
      },
      payload.written,
    );
}

async function update({ interaction }: Line, payload: Payload): Promise<void> {
  if (!interaction.isMessageComponent()) throw new Error('only a press can replace its message');
  if (payload.files.length > 0)
    await interaction.update({ ...messageOf(payload), flags: V2, attachments: [] });
  else
    await answerCallback(
      interaction,
      {
        type: InteractionResponseType.UpdateMessage,
        data: {
          components: payload.components as Components,
          flags: V2,
          attachments: [],
          allowed_mentions: { parse: [] },
        },
      },
      payload.written,
    );
}

/**
 * Past the library's own notes of what was sent: it does not know of a message whose receipt was lost. By our own id, not by
 * the one that the interaction says.
 */
const webhookOf = ({ interaction: { client, token } }: Line) =>
  new InteractionWebhook(client, client.application.id, token);

async function edit(line: Line, payload: Payload): Promise<void> {
  await webhookOf(line).editMessage('@original', { ...messageOf(payload), flags: V2 });
}

async function followUp(line: Line, payload: Payload): Promise<void> {
  await webhookOf(line).send({ ...messageOf(payload), flags: flagsFor(true) });
}

const payloadFor = (answer: Shown & { language: Answer['language'] }): Payload =>
  answer.kind === 'problem' ? problemPayload(answer) : payloadOf(answer, wordsIn(answer.language));

/** Suggestions while a member types; too late is no harm. */
export async function respondTyping(
  interaction: AutocompleteInteraction,
  question: Extract<Question, { kind: 'typing' }>,
  conversation: Conversation,
): Promise<void> {
  const suggestions = await suggest(question, conversation);
  await interaction.respond(
    suggestions
      // A shortened value would be another one.
      .filter(({ value }) => value.length <= MOST_SUGGESTED)
      .slice(0, 25)
      .map(({ name, value }) => ({ name: cut(name, MOST_SUGGESTED), value })),
  );
}
