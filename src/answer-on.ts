import type { Conversation } from './conversation/conversation.ts';
import type { Connection, Platform } from './discord/client.ts';
import { FINISH_WITHIN_MS, within } from './discord/within.ts';
import type { Environment } from './environment.ts';
import type { Log } from './log.ts';
import type { Metrics } from './operations/metrics.ts';
import type { WatchedWorkers } from './workers/workers.ts';

/** What is known of this process by and by: the connection, the store behind the conversation, and the workers. */
type Started = { connection?: Connection; conversation?: Conversation; workers?: WatchedWorkers };

/**
 * Health and metrics, for those who run it: served before anything else is begun, so that a start which takes long is not
 * taken for a process that is dead. Ready is who is connected and can read its records.
 */
async function openOperations(
  at: { readonly host: string; readonly port: number },
  metrics: Metrics,
  started: Started,
) {
  const [{ serveOperations }, { readinessOf }] = await Promise.all([
    import('./operations/server.ts'),
    import('./readiness.ts'),
  ]);
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

/** Answers on a chat platform and keeps the groups' time, until closed. */
export async function answerOn(platform: Platform, environment: Environment, log: Log, now = Date.now) {
  const { TINTMOOT_OPERATIONS: at } = environment;
  const started: Started = {};
  const load = () => started.workers?.load() ?? { waiting: 0, running: 0 };
  // Nobody who does not look pays for counting.
  const metrics = at && (await import('./operations/metrics.ts')).openMetrics(load);
  const operations = at && metrics && (await openOperations(at, metrics, started));
  try {
    return await begin(platform, { environment, log, now, metrics, started, operations });
  } catch (fault) {
    await operations?.close();
    throw fault;
  }
}

type Beginning = {
  readonly environment: Environment;
  readonly log: Log;
  readonly now: () => number;
  readonly metrics: Metrics | undefined;
  readonly started: Started;
  readonly operations: { close(): Promise<void> } | undefined;
};

async function begin(platform: Platform, { environment, log, now, metrics, started, operations }: Beginning) {
  const { promise: storeLost, resolve: onStoreLost } = Promise.withResolvers<string>();
  const opened = Promise.withResolvers<Conversation>();
  // Heard below too.
  opened.promise.catch(() => undefined);
  const { connect } = await import('./discord/client.ts');
  const connection = await connect(platform, opened.promise, log, metrics);
  started.connection = connection;
  const behind = await import('./behind-connection.ts')
    .then(({ openBehind }) => openBehind(connection, { environment, log, now, metrics, onStoreLost }))
    .catch(async (fault: unknown) => {
      opened.reject(fault);
      await connection.close();
      throw fault;
    });
  const { conversation, scheduler, workers } = behind;
  started.conversation = conversation;
  started.workers = workers;
  opened.resolve(conversation);
  let isLeft = false;
  return {
    conversation,
    keepTime: scheduler.check,
    /** Why it can answer no more, once that is so. */
    lost: Promise.race([connection.lost, storeLost]),
    /** True once it is closed, where a thread, or something due that takes long, would hold up the end of the process. */
    isStuck: () => isLeft || workers.isStuck(),
    async close() {
      behind.stopAhead();
      // What is due is done again by the next process: whatever of it takes longer is left.
      const [isDone] = await Promise.all([within(FINISH_WITHIN_MS, scheduler.stop()), connection.close()]);
      isLeft = !isDone;
      await operations?.close();
      await behind.close();
    },
  };
}
