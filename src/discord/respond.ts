import { type AutocompleteInteraction, DiscordAPIError, MessageFlags } from 'discord.js';
import type { Question } from '../conversation/question.ts';
import { type Conversation, receive, responseModeOf, seenByOf, suggest } from '../conversation/receive.ts';
import type { Answer } from '../conversation/reply.ts';
import { wordsIn } from '../words/index.ts';
import { modalOf } from './form.ts';
import { type Payload, payloadOf, problemPayload } from './render.ts';
import type { Routed } from './route.ts';

type Acknowledgeable = Exclude<Routed, AutocompleteInteraction>;

/** An answer that takes longer is announced first: the platform waits three seconds for the announcement. */
const ANNOUNCE_AFTER_MS = 1_500;

/** The platform's codes for an interaction that it has forgotten, and one that somebody has answered. */
const LOST = 10_062;
const TAKEN = 40_060;

/** True for the two failures after which nothing may be sent any more, and nothing is lost that was ours. */
export const isTooLate = (error: unknown): boolean =>
  error instanceof DiscordAPIError && (error.code === LOST || error.code === TAKEN);

/** Answers an interaction exactly once: at once when the answer is quick, announced first when it is not. */
export async function respond(
  interaction: Acknowledgeable,
  question: Question,
  conversation: Conversation,
): Promise<void> {
  const { pace, replaces } = responseModeOf(question, conversation);
  const onlyAsker = (await seenByOf(question, conversation)) === 'asker';
  const replacing = replaces && interaction.isMessageComponent();
  const answering = receive(question, conversation);
  const inTime = pace === 'quick' && (await settlesWithin(answering, ANNOUNCE_AFTER_MS));
  if (!inTime) {
    if (replacing) await interaction.deferUpdate();
    else await interaction.deferReply(onlyAsker ? { flags: MessageFlags.Ephemeral } : {});
  }
  const answer = await answering;
  if (answer.kind === 'form') {
    if (inTime) await interactionForm(interaction, answer);
    else throw new Error('a form came too late to be shown');
    return;
  }
  const message = messageOf(answer);
  const hidden = onlyAsker || answer.kind === 'problem' ? MessageFlags.Ephemeral : 0;
  const flags = MessageFlags.IsComponentsV2 as const;
  if (!inTime) await interaction.editReply({ ...message, flags });
  // A problem never wipes away the message that the button was on.
  else if (replacing && answer.kind === 'reply')
    await interaction.update({ ...message, flags, attachments: [] });
  else await interaction.reply({ ...message, flags: flags | hidden });
}

/** Suggestions while a member types; too late is no harm. */
export async function respondTyping(
  interaction: AutocompleteInteraction,
  question: Extract<Question, { kind: 'typing' }>,
  conversation: Conversation,
): Promise<void> {
  const suggestions = await suggest(question, conversation);
  await interaction.respond(
    suggestions
      .slice(0, 25)
      .map(({ name, value }) => ({ name: name.slice(0, 100), value: value.slice(0, 100) })),
  );
}

async function interactionForm(interaction: Acknowledgeable, form: Extract<Answer, { kind: 'form' }>) {
  if (interaction.isModalSubmit()) throw new Error('a form cannot follow a form');
  await interaction.showModal(modalOf(form));
}

function messageOf(answer: Exclude<Answer, { kind: 'form' }>) {
  const { components, files }: Payload =
    answer.kind === 'problem' ? problemPayload(answer) : payloadOf(answer, wordsIn(answer.language));
  return { components: [...components], files: [...files], allowedMentions: { parse: [] } };
}

async function settlesWithin(promise: Promise<unknown>, ms: number): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<false>(resolve => {
    timer = setTimeout(resolve, ms, false);
  });
  return await Promise.race([promise.then(() => true), late]).finally(() => clearTimeout(timer));
}
