import type { APIMessage } from 'discord-api-types/v10';
import type { HostEvent } from '../interface/events.ts';
import type { Kernel } from '../kernel.ts';
import type { Json } from '../state/json.ts';
import { channelJson, guildJson, memberJson, roleJson, userJson } from '../state/serializers.ts';
import type { Gateway } from './gateway.ts';

/** Intents. Source: platform documentation, Gateway > List of Intents. */
const intents = {
  guilds: 1,
  members: 1 << 1,
  guildMessages: 1 << 9,
  directMessages: 1 << 12,
  content: 1 << 15,
} as const;

/** Tells the gateway's sessions what happened in the room, as far as the platform would. */
export function announce(kernel: Kernel, gateway: Gateway, event: HostEvent) {
  const { room } = kernel;
  const guild =
    'guildId' in event && event.guildId !== undefined ? room.guilds.get(event.guildId) : undefined;
  if (guild?.foreign) return;
  switch (event.kind) {
    case 'guild-added': {
      const added = room.guilds.get(event.id);
      if (added && !added.foreign) {
        const json = guildJson(added, room);
        gateway.dispatch('GUILD_CREATE', event.id, intents.guilds, () => json);
      }
      return;
    }
    case 'guild-removed':
      return gateway.dispatch('GUILD_DELETE', event.id, intents.guilds, same({ id: event.id }));
    case 'channel-added':
    case 'channel-changed':
    case 'thread-changed': {
      const channel = room.channels.get(event.id);
      if (!channel) return;
      const name = `${channel.form === 'thread' ? 'THREAD' : 'CHANNEL'}_${event.kind === 'channel-added' ? 'CREATE' : 'UPDATE'}`;
      return gateway.dispatch(name, channel.guildId, intents.guilds, same(channelJson(channel, room)));
    }
    case 'channel-removed': {
      const json = { id: event.id, guild_id: event.guildId, type: 0 };
      return gateway.dispatch('CHANNEL_DELETE', event.guildId, intents.guilds, same(json));
    }
    case 'role-added': {
      const role = guild?.roles.get(event.id);
      const json = role && { guild_id: event.guildId, role: roleJson(role) };
      if (json) gateway.dispatch('GUILD_ROLE_CREATE', event.guildId, intents.guilds, same(json));
      return;
    }
    case 'member-joined':
    case 'member-changed': {
      const member = guild?.members.get(event.id);
      if (!guild || !member) return;
      const name = event.kind === 'member-joined' ? 'GUILD_MEMBER_ADD' : 'GUILD_MEMBER_UPDATE';
      return gateway.dispatch(
        name,
        guild.id,
        intents.members,
        same({ ...memberJson(guild, member), guild_id: guild.id }),
      );
    }
    case 'member-left': {
      const user = userJson(room.users.get(event.id) ?? { id: event.id, name: '' });
      return gateway.dispatch(
        'GUILD_MEMBER_REMOVE',
        event.guildId,
        intents.members,
        same({ guild_id: event.guildId, user }),
      );
    }
    case 'message-created':
      return announceMessage(kernel, gateway, 'MESSAGE_CREATE', event);
    case 'message-edited':
      return announceMessage(kernel, gateway, 'MESSAGE_UPDATE', event);
    case 'message-deleted': {
      if (event.visibleTo !== 'everyone') return;
      const guildId = room.channels.get(event.channelId)?.guildId;
      const json = {
        id: event.id,
        channel_id: event.channelId,
        ...(guildId !== undefined && { guild_id: guildId }),
      };
      const wanted = guildId === undefined ? intents.directMessages : intents.guildMessages;
      return gateway.dispatch('MESSAGE_DELETE', guildId, wanted, same(json));
    }
  }
}

const same = (json: Json) => () => json;

function announceMessage(
  kernel: Kernel,
  gateway: Gateway,
  name: 'MESSAGE_CREATE' | 'MESSAGE_UPDATE',
  event: HostEvent & { kind: 'message-created' | 'message-edited' },
) {
  if (
    event.visibleTo !== 'everyone' ||
    kernel.room.channels.get(event.message.channel_id)?.context === 'elsewhere'
  )
    return;
  const wanted = event.guildId === undefined ? intents.directMessages : intents.guildMessages;
  const full = {
    ...event.message,
    // The library knows a private channel by nothing else (observed).
    channel_type: channelTypeOf(kernel, event.message.channel_id),
    ...(event.guildId !== undefined && { guild_id: event.guildId }),
  } as unknown as Json;
  const isOwn = event.message.author.id === kernel.room.applicationId;
  const blank = { ...full, content: '', embeds: [], attachments: [], components: [] } as Json;
  // Without the message content intent others' messages arrive empty: Gateway > Message Content Intent.
  const reads = (granted: number): boolean =>
    isOwn ||
    event.guildId === undefined ||
    isNamed(kernel, event.message) ||
    (granted & intents.content) !== 0;
  gateway.dispatch(name, event.guildId, wanted, session => (reads(session.intents) ? full : blank));
}

function channelTypeOf({ room }: Kernel, id: string): unknown {
  const channel = room.channels.get(id);
  return channel && channelJson(channel, room).type;
}

const isNamed = (kernel: Kernel, message: APIMessage): boolean =>
  message.mentions.some(user => user.id === kernel.room.applicationId);
