import type { Kernel } from '../kernel.ts';
import { everyonePermissions } from '../permissions.ts';
import type { Json } from '../state/json.ts';
import { channelJson, memberJson, userJson } from '../state/serializers.ts';
import type { Ask } from './ask.ts';

const contexts = { guild: 0, 'bot-dm': 1, elsewhere: 2 } as const;

/** Who installed the bot: 0 a guild, 1 a user. Source: Receiving and Responding > Authorizing Integration Owners. */
const ownersOf = (ask: Pick<Ask, 'channel' | 'userId'> & { readonly foreign: boolean }): Json =>
  ask.foreign ? { 1: ask.userId } : { 0: ask.channel.guildId ?? '0' };

/** The interaction object that the gateway carries. Source: Receiving and Responding > Interaction Structure. */
export function payloadOf(kernel: Kernel, ask: Ask, id: string, token: string): Json {
  const { room, settings } = kernel;
  const { channel } = ask;
  const guild = channel.guildId === undefined ? undefined : room.guilds.get(channel.guildId);
  const member = guild?.members.get(ask.userId);
  const user = room.users.get(ask.userId);
  const source = ask.sourceMessageId === undefined ? undefined : kernel.messages.get(ask.sourceMessageId);
  const foreign = channel.context === 'elsewhere' || guild?.foreign === true;
  const botPermissions = channel.botPermissions === -1n ? everyonePermissions : channel.botPermissions;
  return {
    id,
    token,
    version: 1,
    application_id: room.applicationId,
    type: ask.type,
    data: ask.data,
    channel_id: channel.id,
    // The bot sees nothing of a guild it is not in but what the interaction says.
    ...(!guild?.foreign && { channel: channelJson(channel, room) }),
    ...(guild && {
      guild_id: guild.id,
      guild_locale: guild.locale,
      guild: { id: guild.id, locale: guild.locale, features: [] },
    }),
    ...(guild && member ? { member: memberJson(guild, member) } : { user: user && userJson(user) }),
    locale: user?.locale ?? 'en-US',
    app_permissions: botPermissions.toString(),
    entitlements: [],
    entitlement_sku_ids: [],
    authorizing_integration_owners: ownersOf({ ...ask, foreign }),
    context: contexts[channel.context],
    attachment_size_limit: settings.attachmentSizeLimit,
    ...(source && { message: kernel.files.freshMessage(source.message) }),
  };
}
