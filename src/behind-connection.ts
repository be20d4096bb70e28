import type { Conversation } from './conversation/conversation.ts';
import type { GrowingRegistry } from './conversation/registry/growing-registry.ts';
import type { Outbox } from './conversation/unasked/outbox.ts';
import { setLooks } from './deadlines/looks.ts';
import { type Scheduler, startScheduler } from './deadlines/scheduler.ts';
import type { Connection } from './discord/client.ts';
import type { Environment } from './environment.ts';
import type { Log } from './log.ts';
import { COMMANDS, closeConversation, openConversation } from './open-conversation.ts';
import type { Metrics } from './operations/metrics.ts';
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

type Behind = {
  readonly environment: Environment;
  readonly log: Log;
  readonly now: () => number;
  readonly metrics: Metrics | undefined;
  /** Hears why when the store is gone for as long as this process lives. */
  readonly onStoreLost: (why: string) => void;
};

/**
 * All that stands behind a connection, and is read only once there is one, since nobody can ask before: the records, the
 * commands and the groups' time. Rejects where the store cannot be opened.
 */
export async function openBehind(
  connection: Connection,
  { environment, log, now, metrics, onStoreLost }: Behind,
) {
  let scheduler: Scheduler | undefined;
  const workers = openWorkers();
  const registry = import('./conversation/registry/growing-registry.ts').then(({ GrowingRegistry }) =>
    GrowingRegistry.of(COMMANDS),
  );
  // Heard by whoever opens the conversation.
  registry.catch(() => undefined);
  const conversation = await openConversation(environment, log, {
    registry,
    checkDue: () => void scheduler?.check(),
    workers,
    onStoreFailure: failure => metrics?.storeFailed(failure),
    onStoreLost,
  });
  const { discordOutbox } = await import('./discord/post.ts');
  scheduler = keepTime(conversation, discordOutbox(connection, conversation, now), { log, now, metrics });
  const notAhead = (fault: unknown) => log.warn({ why: String(fault) }, 'nothing was made ready ahead');
  const ahead = setTimeout(() => void registry.then(makeReady).catch(notAhead), AHEAD_AFTER_MS).unref();
  return {
    conversation,
    scheduler,
    workers,
    stopAhead: () => clearTimeout(ahead),
    close: () => closeConversation(conversation),
  };
}
