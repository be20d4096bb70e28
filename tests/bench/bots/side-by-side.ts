import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { register } from '../../../src/discord/register.ts';
import { type Host, type Member, openHost } from '../../../src/loopback/index.ts';
import { registry } from '../../loopback/room.ts';
import { PATIENT } from '../../records/patience.ts';

const TOKEN = 'bench-token';
/** How many ask at once. */
const TOGETHER = 16;
/** What `npm start` gives Node: ours is started as a host starts it. */
const START = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8')) as {
  scripts: { start: string };
};
const FLAGS = START.scripts.start.split(' ').filter(one => one.startsWith('--'));
/** Of the kernel's clock, by which it counts the time of processes. */
const TICKS_PER_SECOND = 100;

/** A bot in a process of its own, with a host of its own. */
export type Bot = {
  readonly host: Host;
  /** As many as ask at once: each has records of their own. */
  readonly members: readonly Member[];
  /** From the start of the process until the platform counts it as ready, ms. */
  readonly readyMs: number;
  /** Seconds of processor time spent so far. */
  cpu(): number;
  /** Resident memory, bytes. */
  resident(): number;
  /** Asks it to stop, and waits until it has. */
  stop(): Promise<void>;
  close(): Promise<void>;
};

/** Starts a bot and waits until it is ready. */
export async function startBot(script: URL, variables: NodeJS.ProcessEnv): Promise<Bot> {
  // The platform's three seconds are not what is measured: the first answers after a start take longer on a crowded machine.
  const host = await openHost({ acknowledgeWithinMs: PATIENT });
  const group = host.addGuild({ name: 'Sunday soapers', channels: ['bench'] });
  await register(registry, { token: TOKEN, api: host.api });
  const began = performance.now();
  const child: ChildProcess = spawn(
    process.execPath,
    [...(script.pathname.endsWith('/src/main.js') ? FLAGS : []), script.pathname],
    {
      env: {
        ...process.env,
        DISCORD_TOKEN: TOKEN,
        DISCORD_API: host.api,
        TINTMOOT_LOG: 'error',
        ...variables,
      },
      stdio: ['ignore', 'ignore', 'inherit'],
    },
  );
  await host.whenReady();
  const readyMs = performance.now() - began;
  const status = () => readFileSync(`/proc/${child.pid}/status`, 'utf8');
  return {
    host,
    members: Array.from({ length: TOGETHER }, (_, at) => group.addMember({ name: `Member ${at}` })),
    readyMs,
    cpu() {
      const fields = readFileSync(`/proc/${child.pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
      return (Number(fields[11]) + Number(fields[12])) / TICKS_PER_SECOND;
    },
    resident: () => Number(/^VmRSS:\s+(\d+)/m.exec(status())?.[1]) * 1024,
    async stop() {
      const gone = once(child, 'exit');
      child.kill('SIGTERM');
      await gone;
    },
    async close() {
      child.kill('SIGKILL');
      await host.close();
    },
  };
}

export type Driven = {
  readonly perSecond: number;
  /** Processor time of the bot for each answer, ms. */
  readonly cpuEach: number;
  /** Sorted, ms. */
  readonly took: readonly number[];
};

/** Asks `count` times, every member one question after another, and waits for every answer. */
export async function drive(
  bot: Bot,
  { count, ask }: { count: number; ask: (member: Member) => Promise<unknown> },
): Promise<Driven> {
  const took: number[] = [];
  let asked = 0;
  const [began, cpu] = [performance.now(), bot.cpu()];
  const one = async (member: Member) => {
    while (asked < count) {
      asked += 1;
      const at = performance.now();
      await ask(member);
      took.push(performance.now() - at);
    }
  };
  await Promise.all(bot.members.map(one));
  const seconds = (performance.now() - began) / 1000;
  return {
    perSecond: count / seconds,
    cpuEach: ((bot.cpu() - cpu) * 1000) / count,
    took: took.sort((a, b) => a - b),
  };
}

export const median = (list: readonly number[]): number =>
  list.toSorted((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;

/** The value that a share of a sorted list stays below. */
export const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
