/** The room's records as the platform's JSON objects. Shapes: platform documentation, Resources > Guild, Channel, User. */
import { everyonePermissions, permissionBits } from '../permissions.ts';
import type { Json } from './json.ts';
import type { ChannelRecord, GuildRecord, MemberRecord, RoleRecord, Room, UserRecord } from './room.ts';

const channelTypes = { guild: 0, 'bot-dm': 1, elsewhere: 3 } as const;
const guildChannelTypes = { text: 0, thread: 11, forum: 15 } as const;

export const userJson = (user: Pick<UserRecord, 'id' | 'name'>): Json => ({
  id: user.id,
  username: user.name.toLowerCase().replaceAll(/[^a-z0-9_.]/g, '_'),
  discriminator: '0',
  global_name: user.name,
  avatar: null,
  public_flags: 0,
});

/** The bot's own user; it shares its id with the application. */
export const botJson = (room: Room): Json => ({
  ...userJson({ id: room.applicationId, name: room.applicationName }),
  bot: true,
});

/** All bits a member holds: everyone's, own ones, those of roles; the owner holds every bit. */
export function memberPermissions(guild: GuildRecord, member: MemberRecord): bigint {
  if (guild.ownerId === member.user.id) return permissionBits.administrator | ((1n << 50n) - 1n);
  const own = everyonePermissions | member.permissions;
  return member.roles.reduce((bits, id) => bits | (guild.roles.get(id)?.permissions ?? 0n), own);
}

/** A member without its user, as resolved data has it. */
export const partialMemberJson = (guild: GuildRecord, member: MemberRecord): Json => ({
  nick: null,
  avatar: null,
  roles: member.roles,
  joined_at: member.joinedAt,
  premium_since: null,
  pending: false,
  flags: 0,
  communication_disabled_until: null,
  permissions: memberPermissions(guild, member).toString(),
});

export const memberJson = (guild: GuildRecord, member: MemberRecord): Json => ({
  ...partialMemberJson(guild, member),
  user: userJson(member.user),
  deaf: false,
  mute: false,
});

export const roleJson = (role: RoleRecord, position = 1): Json => ({
  id: role.id,
  name: role.name,
  color: 0,
  colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
  hoist: false,
  icon: null,
  unicode_emoji: null,
  position,
  permissions: role.permissions.toString(),
  managed: false,
  mentionable: role.mentionable,
  flags: 0,
});

export function channelJson(channel: ChannelRecord, room: Room): Json {
  const base = { id: channel.id, type: channelTypes[channel.context], flags: 0, last_message_id: null };
  if (channel.form === 'thread') return threadJson(channel, room);
  if (channel.context === 'guild')
    return {
      ...base,
      type: guildChannelTypes[channel.form],
      guild_id: channel.guildId,
      name: channel.name,
      position: 0,
      permission_overwrites: overwritesFor(channel, room),
      nsfw: false,
      parent_id: null,
      topic: null,
      rate_limit_per_user: 0,
    };
  const user = channel.userId === undefined ? undefined : room.users.get(channel.userId);
  return {
    ...base,
    recipients: user ? [userJson(user)] : [],
    ...(channel.context === 'elsewhere' && { name: null }),
  };
}

/** What the bot may do in a channel more and less than everyone. Source: Topics > Permissions > Overwrites. */
function overwritesFor({ botPermissions }: ChannelRecord, room: Room): readonly Json[] {
  const deny = everyonePermissions & ~botPermissions;
  const allow = botPermissions & ~everyonePermissions;
  if (deny === 0n && allow === 0n) return [];
  return [{ id: room.applicationId, type: 1, allow: allow.toString(), deny: deny.toString() }];
}

/** A public thread. Source: Resources > Channel > Thread Metadata Object. */
const threadJson = ({ id, guildId, name, parentId, archived, locked }: ChannelRecord, room: Room): Json => ({
  id,
  type: guildChannelTypes.thread,
  guild_id: guildId,
  parent_id: parentId,
  owner_id: room.applicationId,
  name,
  flags: 0,
  last_message_id: null,
  message_count: 0,
  member_count: 1,
  total_message_sent: 0,
  rate_limit_per_user: 0,
  thread_metadata: {
    archived,
    locked,
    auto_archive_duration: 4320,
    archive_timestamp: new Date(0).toISOString(),
    create_timestamp: new Date(0).toISOString(),
  },
});

const isThread = ({ form }: ChannelRecord): boolean => form === 'thread';

/** The whole guild as GUILD_CREATE carries it. */
export function guildJson(guild: GuildRecord, room: Room): Json {
  const everyone = { id: guild.id, name: '@everyone', permissions: everyonePermissions, mentionable: false };
  // The role that the platform makes for a bot that asks for permissions as it is let in.
  const botRole = {
    id: room.applicationId,
    name: room.applicationName,
    permissions: guild.botPermissions,
    mentionable: false,
  };
  const botMember = {
    user: botJson(room),
    nick: null,
    avatar: null,
    roles: [botRole.id],
    joined_at: guild.joinedAt,
    deaf: false,
    mute: false,
    flags: 0,
    pending: false,
  };
  return {
    id: guild.id,
    name: guild.name,
    owner_id: guild.ownerId,
    preferred_locale: guild.locale,
    icon: null,
    splash: null,
    afk_channel_id: null,
    afk_timeout: 300,
    verification_level: 0,
    default_message_notifications: 0,
    explicit_content_filter: 0,
    mfa_level: 0,
    nsfw_level: 0,
    premium_tier: 0,
    system_channel_id: null,
    system_channel_flags: 0,
    rules_channel_id: null,
    features: [],
    emojis: [],
    stickers: [],
    roles: [
      roleJson(everyone, 0),
      roleJson(botRole),
      ...[...guild.roles.values()].map(role => roleJson(role)),
    ],
    joined_at: guild.joinedAt,
    large: false,
    unavailable: false,
    member_count: guild.members.size + 1,
    members: [botMember, ...[...guild.members.values()].map(member => memberJson(guild, member))],
    channels: [...guild.channels.values()]
      .filter(channel => !isThread(channel))
      .map(channel => channelJson(channel, room)),
    threads: [...guild.channels.values()]
      .filter(channel => isThread(channel) && !channel.archived)
      .map(channel => channelJson(channel, room)),
    voice_states: [],
    presences: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
  };
}
