import { flushCompileCache } from 'node:module';
import { answerOn } from './answer-on.ts';
import type { Platform } from './discord/client.ts';
import { endAtOnce } from './end-at-once.ts';
import { Refusal } from './engine/refusal.ts';
import { type Environment, readEnvironment, unknownSettings } from './environment.ts';
import type { Scene } from './local-room.ts';
import { logger } from './log.ts';

/** The sentences, for who is told something: a bot that answers reads them behind its connection. */
const words = () => import('./words/index.ts');
/** Those of this machine's language. */
const wordsHere = async () => {
  const { languageOf, wordsIn } = await words();
  return wordsIn(languageOf(process.env.LANG ?? ''));
};

/** Everything a question needs, for who asks here: a bot that answers opens it behind its connection. */
const opening = () => import('./open-conversation.ts');

/** All commands, for those who list them. */
async function allCommands() {
  const [{ readCommands }, { COMMANDS }] = await Promise.all([
    import('./conversation/registry/registry.ts'),
    opening(),
  ]);
  return await readCommands(COMMANDS);
}

const DEMO_FOLDER = '.tintmoot/demo';

/** `npm run ask`: answers one command, or one a line, and exits. */
async function ask(environment: Environment, args: readonly string[]): Promise<number> {
  const { readAskArguments, runAsk, toldUsage } = await import('./terminal/ask.ts');
  if (await toldUsage(args)) return 0;
  const asked = readAskArguments(args);
  if (!asked) return 2;
  const log = logger({
    ...environment,
    TINTMOOT_LOG: environment.TINTMOOT_LOG === 'silent' ? 'silent' : 'error',
  });
  const { openConversation, closeConversation } = await opening();
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
  const done = await register(await allCommands(), {
    token,
    ...(api && { api }),
    ...(guild && { guild }),
  });
  process.stdout.write(`${JSON.stringify(done, null, 2)}\n`);
  return 0;
}

/** How long after the start what was compiled is kept for the next one, ms: the first answers do not wait for it. */
const KEEP_AFTER_MS = 5_000;

/** Otherwise it is kept at the end only, and a process that is killed leaves the next one to compile all anew. */
const keepCompiled = () => setTimeout(flushCompileCache, KEEP_AFTER_MS).unref();

/** Answers on the chat platform until told to stop, or until the platform closes the door. */
async function serve(environment: Environment, token: string): Promise<number> {
  // First of all: the first process of a container that handles no signal is deaf to it.
  const told = toldToStop();
  const log = logger(environment);
  // A newer release may know them, so that a rollback starts all the same.
  for (const setting of unknownSettings(process.env)) log.warn({ setting }, 'there is no such setting');
  const { DISCORD_API: api, DISCORD_SHARDS: shard } = environment;
  const starting = answerOn({ token, ...(api && { api }), ...(shard && { shard }) }, environment, log);
  const answering = await Promise.race([starting, told]);
  if (typeof answering === 'string') {
    log.info({ why: answering }, 'stopping before it answers');
    // Nothing was promised to anybody, and what a start writes can be broken off anywhere.
    endAtOnce(0);
    return 0;
  }
  log.info('answering on the chat platform');
  keepCompiled();
  const why = await Promise.race([told, answering.lost]);
  log.info({ why }, 'stopping');
  await answering.close();
  const code = why === 'SIGTERM' || why === 'SIGINT' ? 0 : 1;
  if (answering.isStuck()) {
    log.warn('something is stuck and is left behind');
    endAtOnce(code);
  }
  return code;
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
  const say = await wordsHere();
  const answerAt = async (platform: Platform, now: () => number) => {
    const { register } = await import('./discord/register.ts');
    await register(await allCommands(), platform);
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
  const { demoScene } = await import('./demo/scene.ts');
  const scene = await demoScene(DEMO_FOLDER, { anew: args.includes('--reset') });
  const store = `sqlite:${DEMO_FOLDER}/records.sqlite`;
  return await localRoom({ ...environment, TINTMOOT_STORE: store }, args, scene);
}

const toldToStop = () =>
  new Promise<string>(resolve => {
    for (const signal of ['SIGTERM', 'SIGINT']) process.once(signal, () => resolve(signal));
  });

async function dispatch([mode, ...rest]: readonly string[]): Promise<number> {
  const environment = readEnvironment(process.env);
  if (mode === 'ask') return await ask(environment, rest);
  if (mode === 'backup' || mode === 'restore' || mode === 'move') {
    const { runBackup } = await import('./backup.ts');
    const say = await wordsHere();
    process.stdout.write(`${await runBackup(mode, rest, { store: environment.TINTMOOT_STORE, say })}\n`);
    return 0;
  }
  if (mode === 'register') return await registerCommands(environment);
  if (mode === 'demo') return await demo(environment, rest);
  const token = environment.DISCORD_TOKEN;
  return token ? await serve(environment, token) : await localRoom(environment, [mode ?? '', ...rest]);
}

/** The sentence of a refusal, after the setting that it is about; `move` names its stores itself. */
async function refusalAtStart(refusal: Refusal, [mode]: readonly string[]): Promise<string> {
  const text = (await words()).wordsIn('en').refusal(refusal);
  return refusal.id.startsWith('store-') && mode !== 'move' ? `TINTMOOT_STORE: ${text}` : text;
}

async function sentenceOf(error: Error, args: readonly string[]): Promise<string> {
  if (error instanceof Refusal) return await refusalAtStart(error, args);
  const { whyNotStarted } = await import('./why-not-started.ts');
  return whyNotStarted(error);
}

/** Does what the arguments ask; resolves with the exit code, after one sentence on standard error for a failure. */
export async function run(args: readonly string[]): Promise<number> {
  try {
    return await dispatch(args);
  } catch (error) {
    process.stderr.write(`${await sentenceOf(error as Error, args)}\n`);
    return 1;
  }
}
