import { Client, Events, GatewayIntentBits, type Interaction, RESTEvents, Status } from 'discord.js';
import type { Logger } from 'pino';
import { followUpNameIn } from '../conversation/follow.ts';
import type { Question } from '../conversation/question.ts';
import type { Conversation } from '../conversation/receive.ts';
import type { Answer } from '../conversation/reply.ts';
import { isTooLate, respond, respondTyping } from './respond.ts';
import { questionOf } from './route.ts';

/** A running client. */
export type Connection = {
  readonly client: Client;
  /** True while the platform's socket is open and answered. */
  open(): boolean;
  /** Resolves with the reason when the platform has closed the door for good: the process should end. */
  readonly lost: Promise<string>;
  /** Takes nothing new, finishes what is in flight, lets go. Never waits longer than fifteen seconds. */
  close(): Promise<void>;
};

export type Platform = {
  readonly token: string;
  readonly api?: string;
  /** Which shard this process is; absent for the only one. */
  readonly shard?: { readonly id: number; readonly of: number };
};

/** Who is told how questions ended; `command` is the name of a command or of what follows one, never a member's word. */
export type Watcher = {
  answered(about: {
    readonly command: string;
    readonly outcome: 'answered' | 'refused' | 'fault' | 'lost';
    readonly seconds: number;
  }): void;
  /** The platform told us to wait. */
  rateLimited(): void;
};
const unwatched: Watcher = { answered: () => undefined, rateLimited: () => undefined };

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
  { token, api, shard }: Platform,
  conversation: Conversation,
  log: Logger,
  watcher: Watcher = unwatched,
): Promise<Connection> {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds],
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
  client.rest.on(RESTEvents.RateLimited, () => watcher.rateLimited());
  client.on(Events.Error, error => log.error({ error: error.message }, 'client error'));

  const inFlight = new Set<Promise<void>>();
  const taken = new Set<string>();
  let closing = false;
  client.on(Events.InteractionCreate, interaction => {
    if (closing || taken.has(interaction.id)) return;
    remember(taken, interaction.id);
    const answering = answer(interaction, conversation, { log, watcher }).finally(() =>
      inFlight.delete(answering),
    );
    inFlight.add(answering);
  });

  const ready = new Promise<void>(resolve => client.once(Events.ClientReady, () => resolve()));
  await client.login(token);
  await ready;
  return {
    client,
    lost,
    open: () => !closing && client.ws.status === Status.Ready,
    async close() {
      closing = true;
      await within(FINISH_WITHIN_MS, Promise.allSettled(inFlight));
      await within(LEAVE_WITHIN_MS, client.destroy());
    },
  };
}

async function answer(
  interaction: Interaction,
  conversation: Conversation,
  { log, watcher }: { readonly log: Logger; readonly watcher: Watcher },
): Promise<void> {
  const began = performance.now();
  const question = questionOf(interaction);
  if (!question) return;
  const { kind, id } = question;
  const ended = (outcome: Parameters<Watcher['answered']>[0]['outcome']) => {
    const [command, ms] = [askedFor(question, conversation), performance.now() - began];
    watcher.answered({ command, outcome, seconds: ms / 1000 });
    return { kind, command, outcome, interaction: id, ms: Math.round(ms) };
  };
  try {
    let outcome: 'answered' | 'refused' | 'fault' = 'answered';
    if (question.kind === 'typing' && interaction.isAutocomplete())
      await respondTyping(interaction, question, conversation);
    else if (interaction.isRepliable())
      outcome = outcomeOf(
        await respond(interaction as Parameters<typeof respond>[0], question, conversation),
      );
    log.info(ended(outcome), 'answered');
  } catch (error) {
    const { name, message, stack } = error as Error;
    const late = isTooLate(error);
    const level = late || kind === 'typing' ? 'warn' : 'error';
    log[level]({ ...ended(late ? 'lost' : 'fault'), name, message, stack }, 'not answered');
  }
}

const outcomeOf = (given: Answer) => {
  if (given.kind !== 'problem') return 'answered';
  return OUR_FAULTS.test(given.id) ? 'fault' : 'refused';
};
/** Ids of the refusals that tell of a fault of ours, or of the store's. */
const OUR_FAULTS = /^(?:our-fault|records-|work-took-too-long)/;

/** What was asked for, by a name that is declared: whatever else is claimed counts as `unknown`. */
function askedFor(question: Question, { registry }: Conversation): string {
  switch (question.kind) {
    case 'command':
    case 'typing': {
      const name = question.path.join(' ');
      return registry.actions.has(name) ? name : 'unknown';
    }
    case 'follow': {
      const name = followUpNameIn(question.sealed);
      return registry.followUps.has(name) ? name : 'unknown';
    }
    case 'point':
      return registry.menuEntries.has(question.entry) ? question.entry : 'unknown';
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
