import { type Client, DiscordAPIError, MessageFlags, type SendableChannels } from 'discord.js';
import type { Outbox, Place } from '../conversation/outbox.ts';
import { type Conversation, sealedPost } from '../conversation/receive.ts';
import type { Reply } from '../conversation/reply.ts';
import { wordsIn } from '../words/index.ts';
import { payloadOf } from './render.ts';

/** Unknown channel, guild or message; no access to it; no permission there: trying again changes nothing. */
const BARRED: ReadonlySet<number | string> = new Set([10_003, 10_004, 10_008, 50_001, 50_013]);

/** Unknown member, unknown user: they left, or their account is gone. */
const GONE: ReadonlySet<number | string> = new Set([10_007, 10_013]);

/** Tells groups in their channels what nobody has just asked for. */
export function discordOutbox(client: Client, conversation: Conversation, now: () => number): Outbox {
  const messageOf = ({ group, language }: Place, reply: Reply) => {
    const sealed = sealedPost(reply, { group, at: now() }, conversation);
    const { components, files } = payloadOf(sealed, wordsIn(language));
    return {
      components: [...components],
      files: [...files],
      flags: MessageFlags.IsComponentsV2 as const,
      allowedMentions: { parse: [] },
    };
  };
  return {
    // A client knows the groups of its own shards only.
    serves: group => client.guilds.cache.has(group),
    async hasMember(group, member) {
      const guild = client.guilds.cache.get(group);
      if (!guild) throw new Error('a group of another process');
      try {
        await guild.members.fetch({ user: member, force: true });
        return true;
      } catch (error) {
        if (error instanceof DiscordAPIError && GONE.has(error.code)) return false;
        throw error;
      }
    },
    post: (place, reply, nonce) =>
      unlessBarred(async () => {
        const channel = await sendable(client, place.channel);
        if (!channel) return 'barred';
        const message = await channel.send({ ...messageOf(place, reply), nonce, enforceNonce: true });
        return { channel: message.channelId, message: message.id };
      }),
    edit: (place, posted, reply) =>
      unlessBarred(async () => {
        const channel = await sendable(client, posted.channel);
        if (!channel) return 'barred';
        await channel.messages.edit(posted.message, { ...messageOf(place, reply), attachments: [] });
        return 'edited';
      }),
  };
}

async function sendable(client: Client, id: string): Promise<SendableChannels | undefined> {
  if (id === '') return undefined;
  const channel = await client.channels.fetch(id);
  return channel?.isSendable() ? channel : undefined;
}

async function unlessBarred<Done>(act: () => Promise<Done>): Promise<Done | 'barred'> {
  try {
    return await act();
  } catch (error) {
    if (error instanceof DiscordAPIError && BARRED.has(error.code)) return 'barred';
    throw error;
  }
}
