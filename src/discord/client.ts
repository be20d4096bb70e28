import { Client, Events, GatewayIntentBits, type Interaction, type Message, Partials } from 'discord.js';
import type { Logger } from 'pino';
import type { Conversation } from '../conversation/receive.ts';
import { answerNote } from './notes.ts';
import { isTooLate, respond, respondTyping } from './respond.ts';
import { questionOf } from './route.ts';

/** A running client. */
export type Connection = {
  readonly client: Client;
  /** Resolves with the reason when the platform has closed the door for good: the process should end. */
  readonly lost: Promise<string>;
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

/**
 * The library counts answers to interactions against its own limit of 50 requests a second, which the
 * platform does not: see "Interaction endpoints are not bound to the bot's Global Rate Limit" there.
 */
const REQUESTS_PER_SECOND = 1_000;
/** Long enough for a picture over a slow line, short enough that a hung request does not pile up more. */
const REST_TIMEOUT_MS = 5_000;
const FINISH_WITHIN_MS = 10_000;
const LEAVE_WITHIN_MS = 5_000;
/** Interactions remembered to tell a second delivery: a resumed connection repeats the last few at most. */
const REMEMBERED = 10_000;

/** Connects to the chat platform and answers what comes. Rejects when the platform turns us away. */
export async function connect(
  { token, api, shard, readsMessages = false }: Platform,
  conversation: Conversation,
  log: Logger,
): Promise<Connection> {
  const client = new Client({
    // Messages come only so that a cry for help is answered; see `notes.ts`.
    intents: [
      GatewayIntentBits.Guilds,
      GatewayIntentBits.GuildMessages,
      GatewayIntentBits.DirectMessages,
      ...(readsMessages ? [GatewayIntentBits.MessageContent] : []),
    ],
    partials: [Partials.Channel],
    ...(shard && { shards: [shard.id], shardCount: shard.of }),
    allowedMentions: { parse: [] },
    rest: { globalRequestsPerSecond: REQUESTS_PER_SECOND, timeout: REST_TIMEOUT_MS, ...(api && { api }) },
  });
  const { promise: lost, resolve: lose } = Promise.withResolvers<string>();
  client.on(Events.ShardDisconnect, ({ code }) => lose(`the platform closed the connection (${code})`));
  client.on(Events.Invalidated, () => lose('the platform ended the session'));
  client.on(Events.ShardError, (error, shard) =>
    log.warn({ shard, error: error.message }, 'connection error'),
  );
  client.on(Events.Error, error => log.error({ error: error.message }, 'client error'));

  const inFlight = new Set<Promise<void>>();
  const taken = new Set<string>();
  let closing = false;
  client.on(Events.InteractionCreate, interaction => {
    if (closing || taken.has(interaction.id)) return;
    remember(taken, interaction.id);
    const answering = answer(interaction, conversation, log).finally(() => inFlight.delete(answering));
    inFlight.add(answering);
  });
  client.on(Events.MessageCreate, message => {
    if (closing || taken.has(message.id)) return;
    const answering = noteTaken(message, conversation, log).finally(() => inFlight.delete(answering));
    inFlight.add(answering);
  });

  const ready = new Promise<void>(resolve => client.once(Events.ClientReady, () => resolve()));
  await client.login(token);
  await ready;
  return {
    client,
    lost,
    async close() {
      closing = true;
      await within(FINISH_WITHIN_MS, Promise.allSettled(inFlight));
      await within(LEAVE_WITHIN_MS, client.destroy());
    },
  };
}

async function answer(interaction: Interaction, conversation: Conversation, log: Logger): Promise<void> {
  const began = performance.now();
  const question = questionOf(interaction);
  if (!question) return;
  try {
    if (question.kind === 'typing' && interaction.isAutocomplete())
      await respondTyping(interaction, question, conversation);
    else if (interaction.isRepliable())
      await respond(interaction as Parameters<typeof respond>[0], question, conversation);
    const ms = Math.round(performance.now() - began);
    log.info({ kind: question.kind, interaction: question.id, ms }, 'answered');
  } catch (error) {
    const { name, message, stack } = error as Error;
    const level = isTooLate(error) || question.kind === 'typing' ? 'warn' : 'error';
    log[level]({ kind: question.kind, interaction: question.id, name, message, stack }, 'not answered');
  }
}

/** Answers a note that tells of an emergency; says nothing of any other, nor of what it said. */
async function noteTaken(message: Message, conversation: Conversation, log: Logger): Promise<void> {
  try {
    if (await answerNote(message, conversation)) log.info({ kind: 'note', message: message.id }, 'answered');
  } catch (error) {
    const { name, message: what, stack } = error as Error;
    log.error({ kind: 'note', message: message.id, name, what, stack }, 'not answered');
  }
}

/** Keeps the newest ids; the oldest go first, as a Set remembers the order of insertion. */
function remember(ids: Set<string>, id: string): void {
  ids.add(id);
  const [oldest] = ids;
  if (ids.size > REMEMBERED && oldest !== undefined) ids.delete(oldest);
}

async function within(ms: number, work: Promise<unknown>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const limit = new Promise<void>(resolve => {
    timer = setTimeout(resolve, ms);
  });
  await Promise.race([work, limit]).finally(() => clearTimeout(timer));
}
