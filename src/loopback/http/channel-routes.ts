import type { APIMessage } from 'discord-api-types/v10';
import type { Kernel } from '../kernel.ts';
import { holds, permissionBits } from '../permissions.ts';
import { Findings, refusal } from '../refusals/findings.ts';
import { recordOf, textOf } from '../state/json.ts';
import type { MessageRecord } from '../state/messages.ts';
import type { ChannelRecord } from '../state/room.ts';
import { channelJson } from '../state/serializers.ts';
import { checkDraft, createMessage, deleteMessage, editMessage } from '../writing/write.ts';
import { type Call, noContent, ok, type Route } from './exchange.ts';

/** How long a nonce stays unique: "the past few minutes". Source: Resources > Message > Create Message. */
const nonceMs = 5 * 60_000;

/** Channels and the messages in them, as the bot reaches them outside interactions. */
export function channelRoutes(kernel: Kernel): readonly Route[] {
  const nonces = new Map<string, { readonly id: string; readonly at: number }>();
  const channelOf = (call: Call): ChannelRecord => {
    const channel = kernel.room.channels.get(call.params[0] ?? '');
    const guild = kernel.room.guilds.get(channel?.guildId ?? '');
    if (!channel || channel.context === 'elsewhere' || guild?.foreign)
      throw refusal('channel-unknown', 'Unknown Channel');
    if (!holds(channel.botPermissions, permissionBits.viewChannel))
      throw refusal('channel-hidden', 'Missing Access');
    return channel;
  };
  /** Ephemeral messages are not reachable through their channel. */
  const messageOf = (call: Call): MessageRecord => {
    const record = kernel.messages.get(call.params[1] ?? '');
    const isHere = record?.message.channel_id === channelOf(call).id && record.visibleTo === 'everyone';
    if (!record || !isHere) throw refusal('message-unknown', 'Unknown Message');
    return record;
  };
  const shown = (record: MessageRecord): APIMessage => kernel.files.freshMessage(record.message);

  const post = (call: Call) => {
    const channel = channelOf(call);
    mayPost(kernel, channel, call);
    unarchive(kernel, channel);
    checkDraft(kernel, call, []);
    const nonce = textOf(call.body.nonce) ?? call.body.nonce;
    // Unique to its author, in whatever channel: Resources > Message > Create Message.
    const key = String(nonce);
    const now = performance.now();
    if (call.body.enforce_nonce === true && nonce !== undefined) {
      const earlier = nonces.get(key);
      const record = earlier && now - earlier.at < nonceMs ? kernel.messages.get(earlier.id) : undefined;
      if (record) return ok(shown(record));
    }
    const record = createMessage(kernel, {
      body: call.body,
      uploads: call.uploads,
      channelId: channel.id,
      guildId: channel.guildId,
      visibleTo: 'everyone',
      extra: replyFields(kernel, channel, call),
    });
    if (nonce !== undefined && nonce !== null) nonces.set(key, { id: record.message.id, at: now });
    return ok(record.message);
  };

  const edit = (call: Call) => {
    const record = messageOf(call);
    if (record.message.author.id !== kernel.room.applicationId)
      throw refusal('message-of-another', 'Cannot edit a message authored by another user');
    if (channelOf(call).archived) throw refusal('thread-archived', 'Thread is archived');
    checkDraft(kernel, call, [], record.message);
    return ok(editMessage(kernel, record, call.body, call.uploads).message);
  };

  const remove = (call: Call) => {
    const record = messageOf(call);
    const isOwn = record.message.author.id === kernel.room.applicationId;
    if (!isOwn && !holds(channelOf(call).botPermissions, permissionBits.manageMessages))
      throw refusal('channel-closed', 'Missing Permissions');
    deleteMessage(kernel, record);
    return noContent;
  };

  const list = (call: Call) => {
    const before = call.query.get('before');
    const after = call.query.get('after');
    const limit = Number(call.query.get('limit') ?? 50);
    const all = kernel.messages
      .inChannel(channelOf(call).id)
      .filter(record => record.visibleTo === 'everyone');
    const wanted = all.filter(
      ({ message }) =>
        (before === null || BigInt(message.id) < BigInt(before)) &&
        (after === null || BigInt(message.id) > BigInt(after)),
    );
    return ok(wanted.slice(-limit).reverse().map(shown));
  };

  const typing = (call: Call) => {
    channelOf(call);
    return noContent;
  };

  const message = /^\/channels\/(\d+)\/messages\/(\d+)$/;
  const messages = /^\/channels\/(\d+)\/messages$/;
  return [
    {
      method: 'GET',
      path: /^\/channels\/(\d+)$/,
      bot: true,
      handle: call => ok(channelJson(channelOf(call), kernel.room)),
    },
    {
      method: 'POST',
      path: /^\/channels\/(\d+)\/typing$/,
      bot: true,
      handle: typing,
    },
    { method: 'GET', path: messages, bot: true, handle: list },
    { method: 'POST', path: messages, bot: true, handle: post },
    { method: 'GET', path: message, bot: true, handle: call => ok(shown(messageOf(call))) },
    { method: 'PATCH', path: message, bot: true, handle: edit },
    { method: 'DELETE', path: message, bot: true, handle: remove },
  ];
}

function mayPost(kernel: Kernel, channel: ChannelRecord, call: Call): void {
  if (channel.form === 'forum')
    throw refusal('channel-not-text', 'Cannot send messages in a non-text channel');
  const files = call.uploads.length > 0 ? permissionBits.attachFiles : 0n;
  const post = channel.form === 'thread' ? permissionBits.sendMessagesInThreads : permissionBits.sendMessages;
  if (!holds(channel.botPermissions, post | files)) throw refusal('channel-closed', 'Missing Permissions');
  if (channel.context !== 'bot-dm') return;
  if (kernel.room.users.get(channel.userId ?? '')?.directMessages === false)
    throw refusal('direct-messages-closed', 'Cannot send messages to this user');
}

/** A message brings a thread back out of the archive, unless it is locked. Source: Topics > Threads. */
function unarchive(kernel: Kernel, { id, guildId, archived, locked, botPermissions }: ChannelRecord): void {
  if (locked && !holds(botPermissions, permissionBits.manageThreads))
    throw refusal('thread-locked', 'Thread is locked');
  if (archived && guildId) kernel.record({ kind: 'thread-changed', guildId, id, archived: false, locked });
}

/** Fields of an answer to another message. */
function replyFields(kernel: Kernel, channel: ChannelRecord, call: Call) {
  const reference = recordOf(call.body.message_reference);
  const id = textOf(reference.message_id);
  if (id === undefined) return {};
  const target = kernel.messages.get(id);
  if (!target || target.message.channel_id !== channel.id) {
    if (reference.fail_if_not_exists === false) return {};
    const found = new Findings();
    found.add('reply-to-unknown', ['message_reference'], 'Unknown message');
    found.settle();
    return {};
  }
  const message_reference = { type: 0, message_id: id, channel_id: channel.id, guild_id: channel.guildId };
  return { type: 19, message_reference, referenced_message: target.message };
}
