import { type Message, MessageFlags } from 'discord.js';
import type { Origin } from '../conversation/question.ts';
import { type Conversation, firstAidForWords } from '../conversation/receive.ts';
import { languageOf, wordsIn } from '../words/index.ts';
import { payloadOf } from './render.ts';

/**
 * Answers a message that tells of an emergency, and no other: with the first aid, where everybody who reads the message
 * reads it too. True when it was answered. The platform lets us read what is written to us and in direct messages, and
 * everything where it granted the message content intent.
 */
export async function answerNote(message: Message, conversation: Conversation): Promise<boolean> {
  if (message.author.bot || message.content === '' || !message.channel.isSendable()) return false;
  const answer = await firstAidForWords(message.content, originOf(message), conversation);
  if (answer?.kind !== 'reply') return false;
  const { components, files } = payloadOf({ ...answer, choices: [] }, wordsIn(answer.language));
  await message.channel.send({
    components: [...components],
    files: [...files],
    flags: MessageFlags.IsComponentsV2,
    allowedMentions: { parse: [] },
  });
  return true;
}

/** A message does not say its writer's language: the group's stands in, unless they prefer another. */
function originOf({ id, author, guild, channelId, createdTimestamp }: Message): Origin {
  const locale = guild?.preferredLocale;
  return {
    id,
    at: createdTimestamp,
    asker: { id: author.id, name: author.displayName, manages: false, roles: [] },
    group: guild?.id ?? `direct-${author.id}`,
    channel: channelId,
    language: languageOf(locale ?? 'en'),
    locale,
  };
}
