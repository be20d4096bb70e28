import {
  type Client,
  ComponentType,
  DiscordAPIError,
  GuildScheduledEventEntityType,
  GuildScheduledEventPrivacyLevel,
  MessageFlags,
  PermissionFlagsBits,
  type REST,
  Routes,
  ShardClientUtil,
  Status,
} from 'discord.js';
import type { Conversation } from '../conversation/conversation.ts';
import { sealedPost } from '../conversation/follow-ups/sealed.ts';
import type { Reply } from '../conversation/reply.ts';
import type { Appointment, Outbox, Place } from '../conversation/unasked/outbox.ts';
import { cut } from '../engine/text/excerpt.ts';
import { wordsIn } from '../words/index.ts';
import { payloadOf } from './render.ts';

/** Refusals that a second try would not change, besides everything that is unknown (404) or forbidden (403). */
const BARRED: ReadonlySet<number | string> = new Set([
  50_008, // a channel that takes no messages
  50_083, // an edit in an archived thread
  160_005, // a locked thread
]);
const ARCHIVED = 50_083;
/** A second thread under one message. */
const THREAD_STANDS = 160_004;
/** Answers after which another try may help: a wrong or new token, and too many requests. */
const MAY_PASS: ReadonlySet<number> = new Set([401, 429]);

/** Unknown member, unknown user: they left, or their account is gone. */
const GONE: ReadonlySet<number | string> = new Set([10_007, 10_013]);

/** How the platform writes the id of a member. */
const SNOWFLAKE = /^\d{1,20}$/;

/** Direct messages are a group of one, called after its member; see `route.ts`. */
const DIRECT = 'direct-';
const isDirect = (group: string): boolean => group.startsWith(DIRECT);

/** Tells groups in their channels what nobody has just asked for. */
export function discordOutbox(
  { client, posting: rest }: { readonly client: Client; readonly posting: REST },
  conversation: Conversation,
  now: () => number,
): Outbox {
  const messageOf = ({ group, language }: Place, reply: Reply) => {
    const sealed = sealedPost(reply, { group, at: now() }, conversation);
    return requestOf(payloadOf(sealed, wordsIn(language)));
  };
  return {
    // A client knows the groups of its own shards only; what is between one member and us comes to the first shard.
    // Source: Gateway > Sharding.
    serves: group => (isDirect(group) ? client.ws.shards.has(0) : client.guilds.cache.has(group)),
    leads: () => client.ws.shards.has(0),
    shards: () => ({ ids: [...client.ws.shards.keys()], of: shardCountOf(client) }),
    groups: () => [...client.guilds.cache.keys()],
    async hasMember(group, member) {
      // What the platform cannot know it cannot have lost.
      if (!SNOWFLAKE.test(member)) return true;
      if (isDirect(group) && group !== `${DIRECT}${member}`) return false;
      if (!isDirect(group) && !client.guilds.cache.has(group)) throw new Error('a group of another process');
      try {
        // Over the line of what nobody asked for: a sweep asks for many, and answers do not wait for it.
        await rest.get(isDirect(group) ? Routes.user(member) : Routes.guildMember(group, member));
        return true;
      } catch (error) {
        if (error instanceof DiscordAPIError && GONE.has(error.code)) return false;
        throw error;
      }
    },
    isGone: group => isGone(client, group),
    post: (place, reply, nonce, { calls } = {}) =>
      unlessBarred(async () => {
        if (place.channel === '') return 'barred';
        const { body, files } = calling(messageOf(place, reply), calls);
        const sent = { body: { ...body, nonce, enforce_nonce: true }, files };
        const message = (await rest.post(Routes.channelMessages(place.channel), sent)) as Sent;
        return { channel: message.channel_id, message: message.id };
      }),
    edit: (place, { channel, message }, reply) =>
      unlessBarred(async () => {
        const edit = () => rest.patch(Routes.channelMessage(channel, message), messageOf(place, reply));
        await unarchiving(rest, channel, edit);
        return 'edited' as const;
      }),
    tell: (member, place, reply, nonce) =>
      unlessBarred(async () => {
        const recipient = { recipient_id: member };
        const { id } = (await rest.post(Routes.userChannels(), { body: recipient })) as { id: string };
        // Buttons are pressed where they stand: in the member's own talk with us, a group of one.
        const { body, files } = messageOf({ ...place, group: `${DIRECT}${member}` }, reply);
        const once = nonce === undefined ? {} : { nonce, enforce_nonce: true };
        await rest.post(Routes.channelMessages(id), { body: { ...body, ...once }, files });
        return 'told' as const;
      }),
    openThread: ({ channel, message }, name) =>
      unlessRefused(async () => {
        // Under a message in a thread the platform opens none.
        if (client.channels.cache.get(channel)?.isThread()) return 'barred';
        const open = rest.post(Routes.threads(channel, message), { body: { name: cut(name, MOST_NAME) } });
        // One that stands there is our own, whose receipt was lost.
        await open.catch(unlessCode(THREAD_STANDS));
        return 'opened' as const;
      }),
    schedule: (group, appointment) =>
      unlessRefused(async () => {
        if (!mayKeepCalendar(client, group)) return 'barred';
        const made = (await rest.post(Routes.guildScheduledEvents(group), {
          body: calendarEntry(appointment),
        })) as { id: string };
        return made.id;
      }),
    reschedule: (group, id, appointment) =>
      unlessRefused(async () => {
        if (!mayKeepCalendar(client, group)) return 'barred';
        const route = Routes.guildScheduledEvent(group, id);
        await (appointment ? rest.patch(route, { body: calendarEntry(appointment) }) : rest.delete(route));
        return 'done' as const;
      }),
  };
}

/** Characters of the name of a thread and of a calendar entry. Source: Resources > Channel, Guild Scheduled Event. */
const MOST_NAME = 100;
const MOST_SAYS = 1_000;

const mayKeepCalendar = (client: Client, group: string): boolean =>
  client.guilds.cache.get(group)?.members.me?.permissions.has(PermissionFlagsBits.CreateEvents) ?? false;

/** An entry that happens in the channel, which the platform calls external. */
const calendarEntry = ({ name, says, from, until }: Appointment) => ({
  name: cut(name, MOST_NAME),
  description: cut(says, MOST_SAYS),
  entity_type: GuildScheduledEventEntityType.External,
  privacy_level: GuildScheduledEventPrivacyLevel.GuildOnly,
  entity_metadata: { location: '/challenge show' },
  scheduled_start_time: new Date(from).toISOString(),
  scheduled_end_time: new Date(until).toISOString(),
});

/** The message with a call of a role before it: only that role is called, whatever else is written. */
function calling(message: ReturnType<typeof requestOf>, role: string | undefined) {
  if (role === undefined) return message;
  const call = { type: ComponentType.TextDisplay, content: `<@&${role}>` } as const;
  const { body, files } = message;
  return {
    body: {
      ...body,
      components: [call, ...body.components],
      allowed_mentions: { parse: [], roles: [role] },
    },
    files,
  };
}

type Sent = { readonly id: string; readonly channel_id: string };

/** A payload as the body of a request and its files. */
export function requestOf({ components, files }: ReturnType<typeof payloadOf>) {
  return {
    body: {
      components,
      flags: MessageFlags.IsComponentsV2,
      allowed_mentions: { parse: [] },
      attachments: files.map(({ name }, index) => ({ id: String(index), filename: name })),
    },
    files: files.map(({ attachment, name }) => ({ name: name ?? 'file', data: attachment as Buffer })),
  };
}

/** A message takes a thread out of the archive by itself; an edit needs it to be out. */
async function unarchiving(rest: REST, channel: string, edit: () => Promise<unknown>): Promise<void> {
  try {
    await edit();
  } catch (error) {
    if (!(error instanceof DiscordAPIError) || error.code !== ARCHIVED) throw error;
    await rest.patch(Routes.channel(channel), { body: { archived: false } });
    await edit();
  }
}

const shardCountOf = ({ options, ws }: Client): number => options.shardCount ?? ws.shards.size;

/** True for a group of our own shards that we are no longer in: not one that is only out of order for a while. */
function isGone(client: Client, group: string): boolean {
  if (!client.isReady() || !/^\d+$/.test(group) || client.guilds.cache.has(group)) return false;
  const shard = ShardClientUtil.shardIdForGuildId(group, shardCountOf(client));
  return client.ws.shards.get(shard)?.status === Status.Ready;
}

async function unlessBarred<Done>(act: () => Promise<Done>): Promise<Done | 'barred'> {
  try {
    return await act();
  } catch (error) {
    if (error instanceof DiscordAPIError && isBarred(error)) return 'barred';
    throw error;
  }
}

/** What only stands beside the news holds up nothing, whatever the platform has against it. */
async function unlessRefused<Done>(act: () => Promise<Done>): Promise<Done | 'barred'> {
  try {
    return await act();
  } catch (error) {
    const refused = error instanceof DiscordAPIError && error.status < 500 && !MAY_PASS.has(error.status);
    if (refused) return 'barred';
    throw error;
  }
}

const unlessCode = (code: number) => (error: unknown) => {
  if (!(error instanceof DiscordAPIError) || error.code !== code) throw error;
};

const isBarred = ({ code, status }: DiscordAPIError): boolean =>
  BARRED.has(code) || ((status === 403 || status === 404) && Number(code) >= 10_000);
