import { pino } from 'pino';
import type { Command } from '../../src/conversation/command.ts';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { openLately } from '../../src/conversation/lately/lately.ts';
import { indexCommands, readCommands } from '../../src/conversation/registry/registry.ts';
import { type Scheduler, startScheduler } from '../../src/deadlines/scheduler.ts';
import { connect } from '../../src/discord/client.ts';
// What answers is loaded behind a connection: here before it, so that the first question of a file is answered as any other.
import '../../src/discord/interactions.ts';
import { discordOutbox } from '../../src/discord/post.ts';
import { register } from '../../src/discord/register.ts';
import type { Watcher } from '../../src/discord/watcher.ts';
import type { HostEvent, HostOptions } from '../../src/loopback/interface.ts';
import { reviveChallenges } from '../../src/records/challenges/index.ts';
import { openStore } from '../../src/records/open.ts';
import { prefer } from '../../src/records/preferences.ts';
import type { Store } from '../../src/records/store.ts';
import { PATIENT } from '../records/patience.ts';
import { sharedWorkers } from '../workers/shared.ts';
import { openJudgedHost } from './judged-host.ts';

export const registry = await readCommands(new URL('../../commands/', import.meta.url));
const token = 'loopback-token';
/** Bit 15 of the gateway's intents. */
const MESSAGE_CONTENT = 1 << 15;

export type RoomOptions = {
  readonly store?: Store;
  readonly host?: HostOptions;
  readonly log?: string;
  /** Steward and member are answered whole, nothing folded: for tests of what an answer says in all. */
  readonly whole?: boolean;
  /** Pictures are drawn, for tests that look at them. */
  readonly draws?: boolean;
  /** The bot reads every message, as where the platform granted it the intent. */
  readonly readsMessages?: boolean;
  /** Declared besides our own. */
  readonly commands?: readonly Command[];
};

/** The bot of every room, from the platform's first years: older than any time that a test chooses. */
const APPLICATION = '80351110224678912';
/** Our commands as the first room of this process registered them; registering has tests of its own. */
let registered: HostEvent | undefined;

/**
 * The production path end to end on this machine: the real client, registered commands, deadlines kept by the
 * host's clock, a group with a steward and a member, and a store in memory unless another is handed in.
 */
export async function openRoom({
  store,
  host: hostOptions,
  log = 'silent',
  whole = false,
  draws = false,
  readsMessages = false,
  commands,
}: RoomOptions = {}) {
  const known = commands ? indexCommands([...registry.commands, ...commands]) : registry;
  // The platform waits three seconds; on a busy machine that would be a test of the machine.
  const standing = known === registry && !hostOptions?.replay ? registered : undefined;
  const host = await openJudgedHost({
    acknowledgeWithinMs: 240_000,
    application: { id: APPLICATION },
    ...(readsMessages && { privilegedIntents: MESSAGE_CONTENT }),
    ...(standing && { replay: [standing] }),
    ...hostOptions,
  });
  const group = host.addGuild({ name: 'Sunday soapers', channels: ['bench', 'show-and-tell'] });
  const kept = store ?? (await openStore('sqlite::memory:', PATIENT));
  const faults: unknown[] = [];
  const barred: unknown[] = [];
  const ended: Parameters<Watcher['answered']>[0][] = [];
  const waits: number[] = [];
  const watcher: Watcher = {
    answered: about => ended.push(about),
    rateLimited: () => waits.push(Date.now()),
  };
  const now = hostOptions?.now ?? Date.now;
  const workers = sharedWorkers({ draws });
  let watch: Scheduler | undefined;
  const conversation: Conversation = {
    registry: known,
    services: { store: kept, workers, checkDue: () => void watch?.check(), lately: openLately() },
    key: new Uint8Array(32).fill(7),
    onFault: fault => faults.push(fault),
  };
  if (!standing) await register(known, { token, api: host.api });
  if (known === registry) registered ??= host.events.findLast(({ kind }) => kind === 'commands-changed');
  const connection = await connect(
    { token, api: host.api, readsMessages },
    conversation,
    pino({ level: log }),
    watcher,
  );
  const outbox = discordOutbox(connection, conversation, now);
  watch = startScheduler({
    store: kept,
    serves: id => outbox.serves(id),
    revive: id => reviveChallenges({ store: kept, group: id }, now()),
    isGone: id => outbox.isGone?.(id) ?? false,
    acts: registry.deadlineActs({ store: kept, outbox, workers, now, onBarred: where => barred.push(where) }),
    now,
    onFault: fault => faults.push(fault),
  });
  const steward = group.addMember({ name: 'Odile', permissions: 1n << 5n });
  const member = group.addMember({ name: 'Bram' });
  if (whole) for (const { id } of [steward, member]) await prefer(kept, id, { answers: 'whole' });
  return {
    host,
    group,
    conversation,
    connection,
    watch,
    faults,
    judging: host.judging,
    /** Where a group could not be told. */
    barred,
    /** How each question ended, and when the platform told us to wait, as who runs it is told. */
    ended,
    waits,
    store: kept,
    steward,
    member,
    async [Symbol.asyncDispose]() {
      await Promise.all([watch.stop(), connection.close()]);
      await conversation.services.workers.close();
      if (!store) await kept.close();
      await host.close();
    },
  };
}
