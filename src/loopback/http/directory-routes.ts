import type { Kernel } from '../kernel.ts';
import { refusal } from '../refusals/findings.ts';
import { textOf } from '../state/json.ts';
import type { GuildRecord } from '../state/room.ts';
import { botJson, channelJson, guildJson, memberJson, roleJson, userJson } from '../state/serializers.ts';
import { type Call, ok, type Route } from './exchange.ts';

/** Where the gateway is, who the bot is, and who and what else there is. */
export function directoryRoutes(kernel: Kernel): readonly Route[] {
  const { room, settings } = kernel;
  const guildOf = (call: Call): GuildRecord => {
    const guild = room.guilds.get(call.params[0] ?? '');
    if (!guild || guild.foreign) throw refusal('guild-unknown', 'Unknown Guild');
    return guild;
  };
  const gateway = () =>
    ok({
      url: `${kernel.origin.replace('http:', 'ws:')}/${kernel.secret}/gateway`,
      shards: settings.shards,
      // A day's allowance that never runs out in a test, and no waiting between shards.
      session_start_limit: { total: 1000, remaining: 999, reset_after: 14_400_000, max_concurrency: 64 },
    });
  const application = () =>
    ok({
      id: room.applicationId,
      name: room.applicationName,
      description: '',
      icon: null,
      flags: 0,
      bot: botJson(room),
    });
  const member = (call: Call) => {
    const guild = guildOf(call);
    const found = guild.members.get(call.params[1] ?? '');
    if (!found) throw refusal('member-unknown', 'Unknown Member');
    return ok(memberJson(guild, found));
  };
  const openPrivate = (call: Call) => {
    const user = room.users.get(textOf(call.body.recipient_id) ?? '');
    if (!user) throw refusal('user-unknown', 'Unknown User');
    return ok(channelJson(privateChannel(kernel, user.id, 'bot-dm'), room));
  };
  const user = (call: Call) => {
    const found = room.users.get(call.params[0] ?? '');
    if (!found) throw refusal('user-unknown', 'Unknown User');
    return ok(userJson(found));
  };
  return [
    { method: 'GET', path: /^\/gateway\/bot$/, bot: true, handle: gateway },
    { method: 'GET', path: /^\/users\/@me$/, bot: true, handle: () => ok(botJson(room)) },
    {
      method: 'GET',
      path: /^\/users\/@me\/guilds$/,
      bot: true,
      handle: call => {
        const after = BigInt(call.query.get('after') ?? 0);
        const mine = [...room.guilds.values()].filter(({ id, foreign }) => !foreign && BigInt(id) > after);
        return ok(
          mine
            .slice(0, Number(call.query.get('limit') ?? 200))
            .map(({ id, name }) => ({ id, name, owner: false })),
        );
      },
    },
    { method: 'POST', path: /^\/users\/@me\/channels$/, bot: true, handle: openPrivate },
    { method: 'GET', path: /^\/users\/(\d+)$/, bot: true, handle: user },
    { method: 'GET', path: /^\/(?:oauth2\/)?applications\/@me$/, bot: true, handle: application },
    {
      method: 'GET',
      path: /^\/guilds\/(\d+)$/,
      bot: true,
      handle: call => ok(guildJson(guildOf(call), room)),
    },
    {
      method: 'GET',
      path: /^\/guilds\/(\d+)\/channels$/,
      bot: true,
      handle: call =>
        ok(
          [...guildOf(call).channels.values()]
            .filter(({ form }) => form !== 'thread')
            .map(channel => channelJson(channel, room)),
        ),
    },
    {
      method: 'GET',
      path: /^\/guilds\/(\d+)\/roles$/,
      bot: true,
      handle: call => ok([...guildOf(call).roles.values()].map(role => roleJson(role))),
    },
    { method: 'GET', path: /^\/guilds\/(\d+)\/members\/(\d+)$/, bot: true, handle: member },
  ];
}

/** A user's private channel in a context, opened when it is not there yet. */
export function privateChannel(kernel: Kernel, userId: string, context: 'bot-dm' | 'elsewhere') {
  if (!kernel.room.privateChannel(userId, context))
    kernel.record({ kind: 'private-channel-added', id: kernel.ids.next(), userId, context });
  const channel = kernel.room.privateChannel(userId, context);
  if (!channel) throw new Error('a private channel that was just opened is not there');
  return channel;
}
