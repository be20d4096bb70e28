import {
  Client,
  Events,
  GatewayIntentBits,
  type Interaction,
  type Message,
  Options,
  Partials,
  type REST,
  Status,
} from 'discord.js';
import type { Logger } from 'pino';
import type { Conversation } from '../conversation/conversation.ts';
import { followUpNameIn } from '../conversation/follow-ups/follow.ts';
import type { Question } from '../conversation/question.ts';
import type { Answer } from '../conversation/reply.ts';
import { attachmentOrigins } from './download.ts';
import { INTENT_NAMES } from './invite.ts';
import { LateForms } from './late-forms.ts';
import { answerNote, type NoteDesk } from './notes.ts';
import { isTooLate, respond, respondTyping } from './respond.ts';
import { postingRest, REST_TIMEOUT_MS, Tally } from './rest.ts';
import { questionOf } from './route.ts';

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

type Outcome = 'answered' | 'refused' | 'fault' | 'lost';

/** Who is told how questions ended; `command` is the name of a command or of what follows one, never a member's word. */
export type Watcher = {
  answered(about: { readonly command: string; readonly outcome: Outcome; readonly seconds: number }): void;
  /** The platform told us to wait. */
  rateLimited(): void;
};
const unwatched: Watcher = { answered: () => undefined, rateLimited: () => undefined };

/**
 * Of the client's own line, which carries answers to interactions: what groups are told unasked goes over another.
 * The library counts answers to interactions against its own limit of 50 requests a second, which the
 * platform does not: see "Interaction endpoints are not bound to the bot's Global Rate Limit" there.
 */
const REQUESTS_PER_SECOND = 1_000;
const FINISH_WITHIN_MS = 10_000;
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

/** Connects to the chat platform and answers what comes. Rejects when the platform turns us away. */
export async function connect(
  { token, api, shard, readsMessages = false }: Platform,
  conversation: Conversation,
  log: Logger,
  watcher: Watcher = unwatched,
): Promise<Connection> {
  const client = new Client({
    intents: [
      ...INTENT_NAMES.map(name => GatewayIntentBits[name]),
      ...(readsMessages ? [GatewayIntentBits.MessageContent] : []),
    ],
    partials: [Partials.Channel],
    makeCache: Options.cacheWithLimits(REMEMBERED_BY_LIBRARY),
    ...(shard && { shards: [shard.id], shardCount: shard.of }),
    allowedMentions: { parse: [] },
    rest: { globalRequestsPerSecond: REQUESTS_PER_SECOND, timeout: REST_TIMEOUT_MS, ...(api && { api }) },
  });
  guardPackets(client, log);
  const tally = new Tally(() => watcher.rateLimited());
  tally.listen(client.rest);
  const posting = postingRest(client, token, tally);
  const desk = { conversation, log, watcher, lateForms: new LateForms(), origins: attachmentOrigins(api) };
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
    const answering = answer(interaction, desk).finally(() => inFlight.delete(answering));
    inFlight.add(answering);
  });
  client.on(Events.MessageCreate, message => {
    if (closing || taken.has(message.id)) return;
    const answering = noteTaken(message, { conversation, posting }, log).finally(() =>
      inFlight.delete(answering),
    );
    inFlight.add(answering);
  });

  const ready = new Promise<void>(resolve => client.once(Events.ClientReady, () => resolve()));
  await client.login(token);
  await ready;
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

type Desk = {
  readonly conversation: Conversation;
  readonly log: Logger;
  readonly watcher: Watcher;
  readonly lateForms: LateForms;
  readonly origins: ReadonlySet<string>;
};

/** Never rejects: an interaction that cannot be read or answered is noted, and the next one is taken. */
async function answer(interaction: Interaction, desk: Desk): Promise<void> {
  const { conversation, log, watcher, lateForms, origins } = desk;
  const began = performance.now();
  let question: Question | undefined;
  const ended = (outcome: Outcome) => {
    const [command, ms] = [askedFor(question, conversation), performance.now() - began];
    watcher.answered({ command, outcome, seconds: ms / 1000 });
    const kind = question?.kind ?? 'unread';
    return { kind, command, outcome, interaction: interaction.id, ms: Math.round(ms) };
  };
  try {
    if (interaction.isButton() && LateForms.isFor(interaction.customId))
      return await lateForms.press(interaction);
    question = questionOf(interaction, origins);
    if (!question) return;
    let outcome: Outcome = 'answered';
    if (question.kind === 'typing' && interaction.isAutocomplete())
      await respondTyping(interaction, question, conversation);
    else if (interaction.isRepliable())
      outcome = outcomeOf(await respond(interaction as Parameters<typeof respond>[0], question, desk));
    log.info(ended(outcome), 'answered');
  } catch (error) {
    const { name, message, stack } = error as Error;
    const late = isTooLate(error);
    const level = late || question?.kind === 'typing' ? 'warn' : 'error';
    log[level]({ ...ended(late ? 'lost' : 'fault'), name, message, stack }, 'not answered');
  }
}

const outcomeOf = (given: Answer): Outcome => {
  if (given.kind !== 'problem') return 'answered';
  return OUR_FAULTS.test(given.id) ? 'fault' : 'refused';
};
/** Ids of the refusals that tell of a fault of ours, or of the store's. */
const OUR_FAULTS = /^(?:our-fault|records-|work-took-too-long)/;

/** What was asked for, by a name that is declared: whatever else is claimed, or could not be read, is `unknown`. */
function askedFor(question: Question | undefined, { registry }: Conversation): string {
  switch (question?.kind) {
    case undefined:
      return 'unknown';
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

/**
 * The library itself throws on a packet that lacks what it expects, out of reach of any listener, and the process
 * would end. `handlePacket` is private there; the version is pinned, and a test sends such packets.
 */
function guardPackets(client: Client, log: Logger): void {
  const ws = client.ws as unknown as { handlePacket(...packet: unknown[]): unknown };
  const handle = ws.handlePacket.bind(client.ws);
  ws.handlePacket = (...packet) => {
    try {
      return handle(...packet);
    } catch (error) {
      const { name, message, stack } = error as Error;
      log.error({ name, message, stack }, 'a packet could not be read');
      return false;
    }
  };
}

/** Answers a note that tells of an emergency; says nothing of any other, nor of what it said. */
async function noteTaken(message: Message, desk: NoteDesk, log: Logger): Promise<void> {
  try {
    if (await answerNote(message, desk)) log.info({ kind: 'note', message: message.id }, 'answered');
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
