import type { Conversation } from './conversation/conversation.ts';
import type { GrowingRegistry } from './conversation/registry/growing-registry.ts';
import type { Outbox } from './conversation/unasked/outbox.ts';
import { setLooks } from './deadlines/looks.ts';
import { type Scheduler, startScheduler } from './deadlines/scheduler.ts';
import type { Connection, Platform } from './discord/client.ts';
import { FINISH_WITHIN_MS, within } from './discord/within.ts';
import type { Environment } from './environment.ts';
import { COMMANDS, closeConversation, type Log, openConversation } from './open-conversation.ts';
import type { Metrics } from './operations/metrics.ts';
import { readinessOf } from './readiness.ts';
import { HOUSE } from './records/dues/dues.ts';
import { anonymousGroup, StoreFailure } from './records/failure.ts';
import { SWEEP, sweepDue } from './records/privacy/retention.ts';
import { openWorkers } from './workers/workers.ts';

type Barred = { readonly group: string; readonly channel: string; readonly what: string };

/** Does what is due while this process runs, for the groups that it speaks to. */
function keepTime(
  { registry, services: { store, workers } }: Conversation,
  outbox: Outbox,
  {
    log,
    now,
    metrics,
  }: { readonly log: Log; readonly now: () => number; readonly metrics: Metrics | undefined },
): Scheduler {
  const onStoreFault = (fault: unknown, what?: string) => {
    if (fault instanceof StoreFailure) metrics?.storeFailed(fault);
    const { name, message, stack } = fault as Error;
    log.error({ what, name, message, stack }, 'something due was not done');
  };
  const onBarred = ({ group, channel, what }: Barred) =>
    log.warn({ group: anonymousGroup(group), channel, what }, 'a group could not be told');
  void setLooks(store, outbox, now()).catch(fault => onStoreFault(fault, SWEEP));
  return startScheduler({
    store,
    serves: group => (group === HOUSE ? (outbox.leads?.() ?? true) : outbox.serves(group)),
    async revive(group) {
      const { reviveChallenges } = await import('./records/challenges/index.ts');
      await reviveChallenges({ store, group }, now());
      await store.commit([sweepDue(group, new Date(now()))]);
    },
    shards: () => outbox.shards?.(),
    isGone: group => outbox.isGone?.(group) ?? false,
    acts: async () => {
      await registry.complete?.();
      return registry.deadlineActs({ store, outbox, workers, now, onBarred });
    },
    unhurried: new Set([SWEEP]),
    now,
    onLate: late => metrics?.dues(late),
    onFault: (fault, due) => onStoreFault(fault, due?.what),
  });
}

/** What is known of this process by and by: the connection, and the store behind the conversation. */
type Started = { connection?: Connection; conversation?: Conversation };

/**
 * Health and metrics, for those who run it: served before anything else is begun, so that a start which takes long is not
 * taken for a process that is dead. Ready is who is connected and can read its records.
 */
async function openOperations(
  at: { readonly host: string; readonly port: number },
  metrics: Metrics,
  started: Started,
) {
  const { serveOperations } = await import('./operations/server.ts');
  const closed = () => (started.connection?.open() ? undefined : 'not connected to the chat platform');
  return await serveOperations(at, {
    metrics,
    ready: async () => {
      const { connection, conversation } = started;
      if (!connection || !conversation) return 'starting';
      return await readinessOf({ store: conversation.services.store, metrics, closed })();
    },
  });
}

/** The command that is asked most, and a text that tells of no harm. */
const MOST_ASKED = 'dose';
const NO_HARM = 'a spoon of blue';
/** How long after the start this process makes ready, ms: who asks first then waits for nothing. */
const AHEAD_AFTER_MS = 1_000;

/** Loads the command that is asked most, and builds what looks for harm and for names in every text. */
async function makeReady(registry: GrowingRegistry): Promise<void> {
  const { emergenciesIn } = await import('./conversation/first-aid/told.ts');
  emergenciesIn([NO_HARM]);
  await registry.ahead(MOST_ASKED);
  const { colourantsMeant } = await import('./engine/colourants/find.ts');
  colourantsMeant(NO_HARM);
}

/** Answers on a chat platform and keeps the groups' time, until closed. */
export async function answerOn(platform: Platform, environment: Environment, log: Log, now = Date.now) {
  const workers = openWorkers();
  const { TINTMOOT_OPERATIONS: at } = environment;
  // Nobody who does not look pays for counting.
  const metrics = at && (await import('./operations/metrics.ts')).openMetrics(() => workers.load());
  const started: Started = {};
  const operations = at && metrics && (await openOperations(at, metrics, started));
  try {
    return await begin(platform, { environment, log, now, workers, metrics, started, operations });
  } catch (fault) {
    await operations?.close();
    throw fault;
  }
}

type Beginning = {
  readonly environment: Environment;
  readonly log: Log;
  readonly now: () => number;
  readonly workers: ReturnType<typeof openWorkers>;
  readonly metrics: Metrics | undefined;
  readonly started: Started;
  readonly operations: { close(): Promise<void> } | undefined;
};

async function begin(
  platform: Platform,
  { environment, log, now, workers, metrics, started, operations }: Beginning,
) {
  let scheduler: Scheduler | undefined;
  const { promise: storeLost, resolve: loseStore } = Promise.withResolvers<string>();
  // What knows the commands is read behind the connection: nobody can ask before.
  const { promise: connected, resolve: connectedNow, reject: notConnected } = Promise.withResolvers<void>();
  const registry = connected
    .then(() => import('./conversation/registry/growing-registry.ts'))
    .then(({ GrowingRegistry }) => GrowingRegistry.of(COMMANDS));
  // Whoever waits for it hears that the platform turned us away.
  registry.catch(() => undefined);
  // The store opens in its own thread while this one reads the library.
  const opening = openConversation(environment, log, {
    registry,
    checkDue: () => void scheduler?.check(),
    workers,
    onStoreFailure: failure => metrics?.storeFailed(failure),
    onStoreLost: loseStore,
  });
  // Heard below: the platform may turn us away before.
  opening.catch(() => undefined);
  const { connect } = await import('./discord/client.ts');
  const connection = await connect(platform, opening, log, metrics).catch(async (fault: unknown) => {
    // Whoever waits for it lets go of the store.
    notConnected(fault);
    await opening.catch(() => undefined);
    throw fault;
  });
  started.connection = connection;
  connectedNow();
  const conversation = await opening.catch(async fault => {
    await connection.close();
    throw fault;
  });
  started.conversation = conversation;
  const { discordOutbox } = await import('./discord/post.ts');
  scheduler = keepTime(conversation, discordOutbox(connection, conversation, now), { log, now, metrics });
  const notAhead = (fault: unknown) => log.warn({ why: String(fault) }, 'nothing was made ready ahead');
  const ahead = setTimeout(() => void registry.then(makeReady).catch(notAhead), AHEAD_AFTER_MS).unref();
  const { check, stop } = scheduler;
  let isLeft = false;
  return {
    conversation,
    keepTime: check,
    /** Why it can answer no more, once that is so. */
    lost: Promise.race([connection.lost, storeLost]),
    /** True once it is closed, where a thread, or something due that takes long, would hold up the end of the process. */
    isStuck: () => isLeft || workers.isStuck(),
    async close() {
      clearTimeout(ahead);
      // What is due is done again by the next process: whatever of it takes longer is left.
      const [isDone] = await Promise.all([within(FINISH_WITHIN_MS, stop()), connection.close()]);
      isLeft = !isDone;
      await operations?.close();
      await closeConversation(conversation);
    },
  };
}
