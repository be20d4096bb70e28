/** Threads and the calendar of a guild, as the bot keeps them. Source: Resources > Channel, Guild Scheduled Event. */
import type { CalendarEntry } from '../interface/people.ts';
import type { Kernel } from '../kernel.ts';
import { holds, permissionBits } from '../permissions.ts';
import { Findings, refusal } from '../refusals/findings.ts';
import { type Json, numberOf, recordOf, textOf } from '../state/json.ts';
import type { ChannelRecord } from '../state/room.ts';
import { channelJson } from '../state/serializers.ts';
import { type Call, noContent, ok, type Route } from './exchange.ts';

export function threadRoutes(kernel: Kernel): readonly Route[] {
  const { room } = kernel;
  const channelOf = (call: Call): ChannelRecord & { guildId: string } => {
    const channel = room.channels.get(call.params[0] ?? '');
    if (!channel?.guildId) throw refusal('channel-unknown', 'Unknown Channel');
    if (!holds(channel.botPermissions, permissionBits.viewChannel))
      throw refusal('channel-hidden', 'Missing Access');
    return channel as ChannelRecord & { guildId: string };
  };

  /** A thread under a message has the message's id. */
  const openUnder = (call: Call) => {
    const channel = channelOf(call);
    const message = kernel.messages.get(call.params[1] ?? '');
    if (message?.message.channel_id !== channel.id) throw refusal('message-unknown', 'Unknown Message');
    if (!holds(channel.botPermissions, permissionBits.createPublicThreads) || channel.form !== 'text')
      throw refusal('channel-closed', 'Missing Permissions');
    const { id } = message.message;
    if (room.channels.has(id))
      throw refusal('thread-twice', 'A thread has already been created for this message');
    const found = new Findings();
    found.text('thread-name', ['name'], call.body.name, 1);
    found.settle();
    const { id: parentId, guildId } = channel;
    kernel.record({
      kind: 'channel-added',
      guildId,
      id,
      name: textOf(call.body.name) ?? '',
      form: 'thread',
      parentId,
    });
    return ok(channelJson(room.channels.get(id) ?? channel, room));
  };

  const change = (call: Call) => {
    const channel = channelOf(call);
    const { id, guildId, botPermissions } = channel;
    const manages = holds(botPermissions, permissionBits.manageThreads);
    const mayOpen = !channel.locked && holds(botPermissions, permissionBits.sendMessagesInThreads);
    if (channel.form !== 'thread' || !(manages || mayOpen))
      throw refusal('channel-closed', 'Missing Permissions');
    const archived = (call.body.archived ?? channel.archived) === true;
    const locked = (call.body.locked ?? channel.locked) === true;
    kernel.record({ kind: 'thread-changed', guildId, id, archived, locked });
    return ok(channelJson(channel, room));
  };

  return [
    {
      method: 'POST',
      path: /^\/channels\/(\d+)\/messages\/(\d+)\/threads$/,
      bot: true,
      handle: openUnder,
    },
    { method: 'PATCH', path: /^\/channels\/(\d+)$/, bot: true, handle: change },
    ...calendarRoutes(kernel),
  ];
}

function calendarRoutes(kernel: Kernel): readonly Route[] {
  const guildOf = (call: Call) => {
    const guild = kernel.room.guilds.get(call.params[0] ?? '');
    if (!guild || guild.foreign) throw refusal('guild-unknown', 'Unknown Guild');
    if (!holds(guild.botPermissions, permissionBits.createEvents))
      throw refusal('channel-closed', 'Missing Permissions');
    return guild;
  };
  const entryOf = (call: Call): CalendarEntry => {
    const entry = guildOf(call).calendar.get(call.params[1] ?? '');
    if (!entry) throw refusal('event-unknown', 'Unknown Guild Scheduled Event');
    return entry;
  };
  const write = (call: Call, before: CalendarEntry | undefined) => {
    const guild = guildOf(call);
    const body = { ...(before && jsonOf(before)), ...call.body };
    const entry: CalendarEntry = {
      id: before?.id ?? kernel.ids.next(),
      name: textOf(body.name) ?? '',
      says: textOf(body.description) ?? '',
      starts: textOf(body.scheduled_start_time) ?? '',
      ends: textOf(body.scheduled_end_time) ?? '',
    };
    const now = kernel.settings.now();
    if (before && Date.parse(before.ends) <= now)
      throw refusal('event-over', 'You cannot update a finished event');
    const found = new Findings();
    found.text('event-name', ['name'], body.name, 1);
    const isPlaced = textOf(recordOf(body.entity_metadata).location) !== undefined;
    if (numberOf(body.entity_type, 0) === 3 && !(isPlaced && entry.ends))
      found.add('event-place', ['entity_metadata']);
    const [starts, ends] = [Date.parse(entry.starts), Date.parse(entry.ends)];
    const begins = entry.starts !== before?.starts;
    if (before && begins && Date.parse(before.starts) <= now)
      found.add('event-begun', ['scheduled_start_time']);
    if (!(starts < ends) || (begins && starts < now)) found.add('event-times', ['scheduled_start_time']);
    found.settle();
    kernel.record({ kind: 'calendar-changed', guildId: guild.id, id: entry.id, entry });
    return ok(jsonOf(entry));
  };
  const all = /^\/guilds\/(\d+)\/scheduled-events$/;
  const one = /^\/guilds\/(\d+)\/scheduled-events\/(\d+)$/;
  return [
    { method: 'POST', path: all, bot: true, handle: call => write(call, undefined) },
    { method: 'PATCH', path: one, bot: true, handle: call => write(call, entryOf(call)) },
    {
      method: 'DELETE',
      path: one,
      bot: true,
      handle: call => {
        kernel.record({ kind: 'calendar-changed', guildId: guildOf(call).id, id: entryOf(call).id });
        return noContent;
      },
    },
  ];
}

const jsonOf = ({ id, name, says, starts, ends }: CalendarEntry): Json => ({
  id,
  name,
  description: says,
  entity_type: 3,
  privacy_level: 2,
  entity_metadata: { location: '' },
  scheduled_start_time: starts,
  scheduled_end_time: ends,
});
