import { rm } from 'node:fs/promises';
import { pino } from 'pino';
import { isBackupMode, runBackup } from './backup.ts';
import { GrowingRegistry } from './conversation/growing-registry.ts';
import type { Outbox } from './conversation/outbox.ts';
import type { Conversation } from './conversation/receive.ts';
import { type CommandRegistry, readCommands } from './conversation/registry.ts';
import { type Scheduler, startScheduler } from './deadlines/scheduler.ts';
import type { Connection, Platform } from './discord/client.ts';
import { Refusal } from './engine/refusal.ts';
import { type Environment, readEnvironment } from './environment.ts';
import type { Scene } from './local-room.ts';
import type { Metrics } from './operations/metrics.ts';
import { reviveChallenges } from './records/challenges/index.ts';
import { StoreFailure } from './records/failure.ts';
import { openStore } from './records/open.ts';
import { sweepDue } from './records/privacy/retention.ts';
import { onSetAside } from './records/set-aside.ts';
import { signingKeyFile, signingKeyOf } from './records/signing-key.ts';
import { languageOf, wordsIn } from './words/index.ts';
import { openWorkers, type Workers } from './workers/workers.ts';

const COMMANDS = new URL('../commands/', import.meta.url);
const DEMO_FOLDER = '.tintmoot/demo';

/** Logs go to standard error, so that answers on standard output stay clean. */
const logger = ({ TINTMOOT_LOG }: Environment) => pino({ level: TINTMOOT_LOG }, pino.destination(2));
type Log = ReturnType<typeof logger>;

type Opening = {
  readonly registry?: Promise<CommandRegistry>;
  readonly checkDue?: () => void;
  readonly workers?: Workers;
  readonly onStoreFailure?: (failure: StoreFailure) => void;
};

/** Opens everything a question needs. */
async function openConversation(
  environment: Environment,
  log: Log,
  { registry = readCommands(COMMANDS), checkDue, workers = openWorkers(), onStoreFailure }: Opening = {},
): Promise<Conversation> {
  const {
    TINTMOOT_STORE: address,
    TINTMOOT_SIGNING_KEY: given,
    TINTMOOT_SIGNING_KEY_BEFORE: before,
  } = environment;
  const store = await openStore(address);
  onSetAside(({ kind, key, failure }) => {
    onStoreFailure?.(failure);
    log.error({ kind, key, why: failure.kind }, 'a record could not be read and was set aside');
  });
  return {
    registry: await registry,
    services: { store, workers, checkDue },
    key: given ? Buffer.from(given, 'base64') : await signingKeyOf(store, signingKeyFile(address)),
    ...(before && { keyBefore: Buffer.from(before, 'base64') }),
    onFault: (fault, reference) => {
      if (fault instanceof StoreFailure) onStoreFailure?.(fault);
      const { name, message, stack } = fault as Error;
      log.error({ reference, name, message, stack }, 'a question was not answered');
    },
  };
}

async function closeConversation({ services }: Conversation): Promise<void> {
  await services.workers.close();
  await services.store.close();
}

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
  const onBarred = (where: object) => log.warn(where, 'a group could not be told');
  return startScheduler({
    store,
    serves: group => outbox.serves(group),
    async revive(group) {
      await reviveChallenges({ store, group }, now());
      await store.commit([sweepDue(group, new Date(now()))]);
    },
    isGone: group => outbox.isGone?.(group) ?? false,
    acts: async () => {
      await registry.complete?.();
      return registry.deadlineActs({ store, outbox, workers, now, onBarred });
    },
    now,
    onLate: late => metrics?.dues(late),
    onFault: (fault, due) => {
      if (fault instanceof StoreFailure) metrics?.storeFailed(fault);
      const { name, message, stack } = fault as Error;
      log.error({ what: due?.what, name, message, stack }, 'something due was not done');
    },
  });
}

/** `npm run ask`: answers one command, or one a line, and exits. */
async function ask(environment: Environment, args: readonly string[]): Promise<number> {
  const { readAskArguments, runAsk } = await import('./terminal/ask.ts');
  const asked = readAskArguments(args);
  if (!asked) return 2;
  const log = logger({
    ...environment,
    TINTMOOT_LOG: environment.TINTMOOT_LOG === 'silent' ? 'silent' : 'error',
  });
  const conversation = await openConversation(environment, log);
  try {
    return (await runAsk(asked, conversation)) ? 0 : 1;
  } finally {
    await closeConversation(conversation);
  }
}

/** `npm run register`: tells the platform of the commands, once after each change of them. */
async function registerCommands({
  DISCORD_TOKEN: token,
  DISCORD_GUILD: guild,
  DISCORD_API: api,
}: Environment) {
  if (!token) throw new Error('Set DISCORD_TOKEN to register the commands with the chat platform.');
  const { register } = await import('./discord/register.ts');
  const done = await register(await readCommands(COMMANDS), {
    token,
    ...(api && { api }),
    ...(guild && { guild }),
  });
  process.stdout.write(`${JSON.stringify(done, null, 2)}\n`);
  return 0;
}

/** Health and metrics, for those who run it. Ready is who is connected and can read its records. */
async function openOperations(
  at: { readonly host: string; readonly port: number },
  {
    metrics,
    conversation: { services },
    closed,
  }: {
    readonly metrics: Metrics;
    readonly conversation: Conversation;
    /** What is wrong with the connection, if anything. */
    readonly closed: () => string | undefined;
  },
) {
  const { serveOperations } = await import('./operations/server.ts');
  return await serveOperations(at, {
    metrics,
    async ready() {
      const wrong = closed() ?? metrics.storeTrouble();
      if (wrong === undefined) await services.store.range('meta/', 'meta0', 1);
      return wrong;
    },
  });
}

/** Answers on a chat platform and keeps the groups' time, until closed. */
async function answerOn(platform: Platform, environment: Environment, log: Log, now = Date.now) {
  let scheduler: Scheduler | undefined;
  const workers = openWorkers();
  const { TINTMOOT_OPERATIONS: at } = environment;
  // Nobody who does not look pays for counting.
  const metrics = at && (await import('./operations/metrics.ts')).openMetrics(() => workers.load());
  const opening = openConversation(environment, log, {
    registry: GrowingRegistry.of(COMMANDS),
    checkDue: () => void scheduler?.check(),
    workers,
    onStoreFailure: failure => metrics?.storeFailed(failure),
  });
  // The store opens in its own thread while this one reads the library.
  const [conversation, { connect }, { discordOutbox }] = await Promise.all([
    opening,
    import('./discord/client.ts'),
    import('./discord/post.ts'),
  ]);
  let connection: Connection | undefined;
  const closed = () => (connection?.open() ? undefined : 'not connected to the chat platform');
  const operations = at && metrics && (await openOperations(at, { metrics, conversation, closed }));
  connection = await connect(platform, conversation, log, metrics);
  scheduler = keepTime(conversation, discordOutbox(connection.client, conversation, now, connection.tally), {
    log,
    now,
    metrics,
  });
  return {
    conversation,
    keepTime: scheduler.check,
    lost: connection.lost,
    async close() {
      await Promise.all([scheduler.stop(), connection.close()]);
      await operations?.close();
      await closeConversation(conversation);
    },
  };
}

/** Answers on the chat platform until told to stop, or until the platform closes the door. */
async function serve(environment: Environment, token: string): Promise<number> {
  const log = logger(environment);
  const { DISCORD_API: api, DISCORD_SHARDS: shard } = environment;
  const answering = await answerOn({ token, ...(api && { api }), ...(shard && { shard }) }, environment, log);
  log.info('answering on the chat platform');
  const why = await Promise.race([toldToStop(), answering.lost]);
  log.info({ why }, 'stopping');
  await answering.close();
  return why === 'SIGTERM' || why === 'SIGINT' ? 0 : 1;
}

/** The room on this machine, in the browser and in this terminal: no chat server needed. */
async function localRoom(environment: Environment, args: readonly string[], scene?: Scene): Promise<number> {
  const quiet = {
    ...environment,
    TINTMOOT_LOG: environment.TINTMOOT_LOG === 'info' ? 'warn' : environment.TINTMOOT_LOG,
  } as const;
  const log = logger(quiet);
  const stop = new AbortController();
  void toldToStop().then(signal => stop.abort(signal));
  const { runLocalRoom } = await import('./local-room.ts');
  const say = wordsIn(languageOf(process.env.LANG ?? ''));
  const answerAt = async (platform: Platform, now: () => number) => {
    const { register } = await import('./discord/register.ts');
    await register(await readCommands(COMMANDS), platform);
    return await answerOn({ ...platform, readsMessages: true }, environment, log, now);
  };
  await runLocalRoom(
    { environment, say, signal: stop.signal, answerAt, ...(scene && { scene }) },
    { plain: args.includes('--plain') },
  );
  return 0;
}

/** `npm run demo`: the local room of an invented group, in a store of its own. `--reset` plays it anew. */
async function demo(environment: Environment, args: readonly string[]): Promise<number> {
  if (args.includes('--reset')) await rm(DEMO_FOLDER, { recursive: true, force: true });
  const { demoScene } = await import('./demo/scene.ts');
  const store = `sqlite:${DEMO_FOLDER}/records.sqlite`;
  return await localRoom({ ...environment, TINTMOOT_STORE: store }, args, demoScene());
}

const toldToStop = () =>
  new Promise<string>(resolve => {
    for (const signal of ['SIGTERM', 'SIGINT']) process.once(signal, () => resolve(signal));
  });

async function dispatch([mode, ...rest]: readonly string[]): Promise<number> {
  const environment = readEnvironment(process.env);
  if (mode === 'ask') return await ask(environment, rest);
  if (isBackupMode(mode)) {
    const say = wordsIn(languageOf(process.env.LANG ?? ''));
    process.stdout.write(`${await runBackup(mode, rest, { store: environment.TINTMOOT_STORE, say })}\n`);
    return 0;
  }
  if (mode === 'register') return await registerCommands(environment);
  if (mode === 'demo') return await demo(environment, rest);
  const token = environment.DISCORD_TOKEN;
  return token ? await serve(environment, token) : await localRoom(environment, [mode ?? '', ...rest]);
}

/** Does what the arguments ask; resolves with the exit code, after one sentence on standard error for a failure. */
export async function run(args: readonly string[]): Promise<number> {
  try {
    return await dispatch(args);
  } catch (error) {
    const text = error instanceof Refusal ? wordsIn('en').refusal(error) : (error as Error).message;
    process.stderr.write(`${text}\n`);
    return 1;
  }
}
