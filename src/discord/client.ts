import { Client, Events, GatewayIntentBits, Options, Partials, type REST, Status } from 'discord.js';
import type { Logger } from 'pino';
import type { Conversation } from '../conversation/conversation.ts';
import { attachmentOrigins } from './download.ts';
import type { Answers } from './interactions.ts';
import { INTENT_NAMES } from './invite.ts';
import { sendRequest } from './request.ts';
import { postingRest, REST_TIMEOUT_MS, Tally } from './rest.ts';
import type { Watcher } from './watcher.ts';
import { FINISH_WITHIN_MS, within } from './within.ts';

/** A running client. */
export type Connection = {
  readonly client: Client;
  /** True while the platform's socket is open and answered. */
  open(): boolean;
  /** Resolves with the reason when the platform has closed the door for good: the process should end. */
  readonly lost: Promise<string>;
  /** The line for what no interaction asked for. */
  readonly posting: REST;
  /** What the platform said "too many" to. */
  readonly tally: Tally;
  /** Takes nothing new, finishes what is in flight, lets go. Never waits longer than fifteen seconds. */
  close(): Promise<void>;
};

export type Platform = {
  readonly token: string;
  readonly api?: string;
  /** True where the platform lets us read every message: the room on this machine, or with the privileged intent. */
  readonly readsMessages?: boolean;
  /** Which shard this process is; absent for the only one. */
  readonly shard?: { readonly id: number; readonly of: number };
};

const unwatched: Watcher = { answered: () => undefined, rateLimited: () => undefined };

/**
 * Of the client's own line, which carries answers to interactions: what groups are told unasked goes over another.
 * The library counts answers to interactions against its own limit of 50 requests a second, which the
 * platform does not: see "Interaction endpoints are not bound to the bot's Global Rate Limit" there.
 */
const REQUESTS_PER_SECOND = 1_000;
const LEAVE_WITHIN_MS = 5_000;
/** Interactions remembered to tell a second delivery: a resumed connection repeats the last few at most. */
const REMEMBERED = 10_000;

/**
 * What the library keeps of what it hears: groups, their channels and roles, and ourselves. Every question brings its
 * own asker and message, and nobody looks for another's.
 */
const REMEMBERED_BY_LIBRARY = {
  MessageManager: 0,
  GuildMemberManager: { maxSize: 0, keepOverLimit: isOurs },
  UserManager: { maxSize: 0, keepOverLimit: isOurs },
};

function isOurs({ id, client }: { readonly id: string; readonly client: Client }): boolean {
  return id === client.user?.id;
}

/**
 * Connects to the chat platform and answers what comes, once the conversation is there. Rejects when the platform turns us
 * away. What answers is loaded behind the connection: the platform has to be spoken to before anybody can ask.
 */
export async function connect(
  { token, api, shard, readsMessages = false }: Platform,
  conversation: Conversation | Promise<Conversation>,
  log: Logger,
  watcher: Watcher = unwatched,
): Promise<Connection> {
  const tally = new Tally(() => watcher.rateLimited());
  const client = new Client({
    intents: [
      ...INTENT_NAMES.map(name => GatewayIntentBits[name]),
      ...(readsMessages ? [GatewayIntentBits.MessageContent] : []),
    ],
    partials: [Partials.Channel],
    makeCache: Options.cacheWithLimits(REMEMBERED_BY_LIBRARY),
    ...(shard && { shards: [shard.id], shardCount: shard.of }),
    allowedMentions: { parse: [] },
    rest: {
      globalRequestsPerSecond: REQUESTS_PER_SECOND,
      timeout: REST_TIMEOUT_MS,
      makeRequest: tally.counting(sendRequest),
      ...(api && { api }),
    },
  });
  guardPackets(client, log);
  const posting = postingRest(client, token, tally);
  let loading: Promise<Answers> | undefined;
  const answers = () => {
    loading ??= Promise.all([import('./interactions.ts'), conversation]).then(
      ([{ answersOf }, conversation]) =>
        answersOf({ conversation, posting, log, watcher, origins: attachmentOrigins(api) }),
    );
    return loading;
  };
  const { promise: lost, resolve: lose } = Promise.withResolvers<string>();
  client.on(Events.ShardDisconnect, ({ code }) => lose(`the platform closed the connection (${code})`));
  client.on(Events.Invalidated, () => lose('the platform ended the session'));
  client.on(Events.ShardError, (error, shard) =>
    log.warn({ shard, error: error.message }, 'connection error'),
  );
  client.on(Events.Error, error => log.error({ error: error.message }, 'client error'));

  // Whoever opens the conversation hears why it does not open, and ends this.
  const notLoaded = (error: unknown) => lose(`what answers could not be loaded: ${(error as Error).message}`);
  const inFlight = new Set<Promise<void>>();
  const taken = new Set<string>();
  let closing = false;
  client.on(Events.InteractionCreate, interaction => {
    if (closing || taken.has(interaction.id)) return;
    remember(taken, interaction.id);
    const began = performance.now();
    const answering = answers()
      .then(({ toInteraction }) => toInteraction(interaction, began))
      .catch(notLoaded)
      .finally(() => inFlight.delete(answering));
    inFlight.add(answering);
  });
  client.on(Events.MessageCreate, message => {
    if (closing || taken.has(message.id)) return;
    remember(taken, message.id);
    const answering = answers()
      .then(({ toNote }) => toNote(message))
      .catch(notLoaded)
      .finally(() => inFlight.delete(answering));
    inFlight.add(answering);
  });

  const ready = new Promise<void>(resolve => client.once(Events.ClientReady, () => resolve()));
  await client.login(token);
  await ready;
  answers().catch(notLoaded);
  return {
    client,
    posting,
    lost,
    open: () => !closing && client.ws.status === Status.Ready,
    tally,
    async close() {
      closing = true;
      await within(FINISH_WITHIN_MS, Promise.allSettled(inFlight));
      await within(LEAVE_WITHIN_MS, client.destroy());
    },
  };
}

/**
 * The library itself throws on a packet that lacks what it expects, out of reach of any listener, and the process
 * would end. `handlePacket` is private there; the version is pinned, and a test sends such packets.
 */
function guardPackets(client: Client, log: Logger): void {
  const ws = client.ws as unknown as {
    handlePacket(...packet: unknown[]): unknown;
    readonly packetQueue?: readonly unknown[];
  };
  const handle = ws.handlePacket.bind(client.ws);
  ws.handlePacket = (...packet) => {
    try {
      // What came before the connection was ready is taken up with the next packet, whatever that is.
      const isIdle = ws.packetQueue?.length === 0;
      return (isIdle && isTalk(packet[0])) || handle(...packet);
    } catch (error) {
      const { name, message, stack } = error as Error;
      log.error({ name, message, stack }, 'a packet could not be read');
      return false;
    }
  };
}

/**
 * A message of a bot (our own answers come back as such) or without a word that we may read: nobody looks at it (`notes.ts`),
 * and in a busy group there are more of those than of anything else. The library would make five objects of each.
 */
function isTalk(packet: unknown): boolean {
  const { t, d } = (packet ?? {}) as { t?: unknown; d?: { author?: { bot?: unknown }; content?: unknown } };
  if (t !== 'MESSAGE_CREATE') return false;
  return d?.author?.bot === true || d?.content === '';
}

/** Keeps the newest ids; the oldest go first, as a Set remembers the order of insertion. */
function remember(ids: Set<string>, id: string): void {
  ids.add(id);
  const [oldest] = ids;
  if (ids.size > REMEMBERED && oldest !== undefined) ids.delete(oldest);
}
