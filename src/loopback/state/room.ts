import type { HostEvent } from '../interface/events.ts';
import type { CalendarEntry } from '../interface/people.ts';

export interface UserRecord {
  readonly id: string;
  name: string;
  locale: string;
  directMessages: boolean;
}
export interface MemberRecord {
  readonly user: UserRecord;
  readonly guildId: string;
  readonly joinedAt: string;
  permissions: bigint;
  roles: readonly string[];
}
export interface RoleRecord {
  readonly id: string;
  readonly name: string;
  readonly permissions: bigint;
  /** Whether anybody may call it. */
  readonly mentionable: boolean;
}
export interface ChannelRecord {
  readonly id: string;
  readonly name: string;
  /** Absent for private channels. */
  readonly guildId?: string;
  readonly context: 'guild' | 'bot-dm' | 'elsewhere';
  readonly form: 'text' | 'forum' | 'thread';
  /** The channel or forum that a thread belongs to. */
  readonly parentId?: string;
  archived: boolean;
  locked: boolean;
  /** Whose private channel it is. */
  readonly userId?: string;
  botPermissions: bigint;
}
export interface GuildRecord {
  readonly id: string;
  readonly name: string;
  readonly locale: string;
  readonly ownerId: string;
  readonly botPermissions: bigint;
  readonly joinedAt: string;
  /** The bot is not in it: only what its members brought along themselves works there. */
  readonly foreign: boolean;
  readonly channels: Map<string, ChannelRecord>;
  readonly members: Map<string, MemberRecord>;
  readonly roles: Map<string, RoleRecord>;
  readonly calendar: Map<string, CalendarEntry>;
}

/** Guilds, channels and people as they stand: a fold over the journal. */
export class Room {
  readonly guilds = new Map<string, GuildRecord>();
  readonly channels = new Map<string, ChannelRecord>();
  readonly users = new Map<string, UserRecord>();
  applicationName = '';
  applicationId = '';

  /** The private channel of a user in a context, once it has been opened. */
  privateChannel(userId: string, context: 'bot-dm' | 'elsewhere'): ChannelRecord | undefined {
    for (const channel of this.channels.values())
      if (channel.userId === userId && channel.context === context) return channel;
    return undefined;
  }

  apply(event: HostEvent) {
    switch (event.kind) {
      case 'application':
        this.applicationId = event.id;
        this.applicationName = event.name;
        return;
      case 'guild-added':
        this.guilds.set(event.id, {
          id: event.id,
          name: event.name,
          locale: event.locale,
          ownerId: event.ownerId,
          botPermissions: BigInt(event.botPermissions),
          joinedAt: event.at,
          foreign: event.foreign ?? false,
          channels: new Map(),
          members: new Map(),
          roles: new Map(),
          calendar: new Map(),
        });
        return;
      case 'guild-removed':
        for (const id of this.guilds.get(event.id)?.channels.keys() ?? []) this.channels.delete(id);
        this.guilds.delete(event.id);
        return;
      case 'channel-added':
        return this.#addGuildChannel(event);
      case 'private-channel-added':
        this.channels.set(event.id, {
          id: event.id,
          name: '',
          context: event.context,
          form: 'text',
          archived: false,
          locked: false,
          userId: event.userId,
          botPermissions: -1n,
        });
        return;
      case 'channel-changed': {
        const channel = this.channels.get(event.id);
        if (channel) channel.botPermissions = BigInt(event.botPermissions);
        return;
      }
      case 'calendar-changed': {
        const calendar = this.guilds.get(event.guildId)?.calendar;
        if (event.entry) calendar?.set(event.id, event.entry);
        else calendar?.delete(event.id);
        return;
      }
      case 'thread-changed': {
        const thread = this.channels.get(event.id);
        if (thread) Object.assign(thread, { archived: event.archived, locked: event.locked });
        return;
      }
      case 'channel-removed':
        this.channels.delete(event.id);
        this.guilds.get(event.guildId)?.channels.delete(event.id);
        return;
      case 'role-added':
        this.guilds.get(event.guildId)?.roles.set(event.id, {
          id: event.id,
          name: event.name,
          permissions: BigInt(event.permissions),
          mentionable: event.mentionable ?? true,
        });
        return;
      case 'member-joined':
      case 'member-changed':
        return this.#setMember(event);
      case 'member-left':
        this.guilds.get(event.guildId)?.members.delete(event.id);
        return;
    }
  }

  #addGuildChannel(event: HostEvent & { kind: 'channel-added' }) {
    const guild = this.guilds.get(event.guildId);
    if (!guild) return;
    const channel: ChannelRecord = {
      id: event.id,
      name: event.name,
      guildId: guild.id,
      context: 'guild',
      form: event.form ?? 'text',
      ...(event.parentId !== undefined && { parentId: event.parentId }),
      archived: false,
      locked: false,
      botPermissions: this.channels.get(event.parentId ?? '')?.botPermissions ?? guild.botPermissions,
    };
    guild.channels.set(channel.id, channel);
    this.channels.set(channel.id, channel);
  }

  #setMember(event: HostEvent & { kind: 'member-joined' | 'member-changed' }) {
    const guild = this.guilds.get(event.guildId);
    if (!guild) return;
    const user = this.users.get(event.id) ?? { id: event.id, name: '', locale: '', directMessages: true };
    user.name = event.name;
    user.locale = event.locale;
    user.directMessages = event.directMessages;
    this.users.set(user.id, user);
    guild.members.set(user.id, {
      user,
      guildId: guild.id,
      joinedAt: guild.members.get(user.id)?.joinedAt ?? event.at,
      permissions: BigInt(event.permissions),
      roles: event.roles,
    });
  }
}
