import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { register } from '../../src/discord/register.ts';
import { chanceFrom } from '../../src/engine/challenges/voting/chance.ts';
import type { Host } from '../../src/loopback/index.ts';
import type { Member } from '../../src/loopback/interface.ts';
import {
  asOf,
  choiceOf,
  enterBar,
  openChallenge,
  requireChallenge,
  resultAt,
} from '../../src/records/challenges/index.ts';
import { openStore } from '../../src/records/open.ts';
import { bar, made, terms } from '../records/challenges/fair.ts';
import { howMany, isDue } from '../walk.ts';
import { openJudgedHost } from './judged-host.ts';
import { registry } from './room.ts';

const TOKEN = 'loopback-token';
const main = new URL('../../src/main.js', import.meta.url).pathname;
const hour = 3_600_000;
const BARS = 8;
const MEMBERS = howMany(80, 500);

let folder: string;
let address: string;
let host: Host;
let assistant: ChildProcess;

const askedIn = () => host.requests.filter(({ path }) => path === '/gateway/bot').length;

/** The assistant as it runs in production, on the file of records. */
async function start(): Promise<void> {
  // The socket of one that was killed is not its successor's.
  host.dropConnections();
  const before = askedIn();
  assistant = spawn(process.execPath, [main], {
    env: { ...process.env, DISCORD_TOKEN: TOKEN, DISCORD_API: host.api, TINTMOOT_STORE: address },
    stdio: 'ignore',
  });
  await expect.poll(askedIn).toBeGreaterThan(before);
  await host.whenReady();
}

/** A challenge that is being voted on now, with its bars. */
async function prepare(group: string) {
  const store = await openStore(address);
  const scope = { store, group };
  const now = Date.now();
  const times = { opensAt: now - 48 * hour, entriesUntil: now - hour, votesUntil: now + 6 * hour };
  const { id } = await openChallenge(
    scope,
    { terms: { ...terms, ...times, decides: 'votes' }, channel: '', language: 'en' },
    made('1001', now - 49 * hour),
  );
  for (let number = 1; number <= BARS; number++)
    await enterBar(
      scope,
      id,
      { bar: bar(`Bar ${number}`, `maker ${number}`) },
      made(`maker-${number}`, now - 24 * hour),
    );
  await store.close();
  return { id, votesUntil: times.votesUntil };
}

/** Numbers of bars in a member's own order, the same at every try. */
function rankingOf(member: number): readonly number[] {
  const chance = chanceFrom(`member ${member}`);
  const left = Array.from({ length: BARS }, (_, index) => index + 1);
  return Array.from({ length: BARS }, () => left.splice(chance.below(left.length), 1)[0] ?? 0);
}

describe.runIf(isDue('crowd at the vote'))('a crowd at the vote', () => {
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'crowd-'));
    address = `sqlite:${join(folder, 'records.sqlite')}`;
    // How long an answer takes is no matter here, only whether what was answered is true.
    host = await openJudgedHost({ acknowledgeWithinMs: 20_000, patienceMs: 20_000 });
    await register(registry, { token: TOKEN, api: host.api });
  });
  afterAll(async () => {
    assistant.kill('SIGKILL');
    await host.close();
    await rm(folder, { recursive: true, force: true });
  });

  test(`${MEMBERS} members vote at once and the assistant is killed in the middle: every acknowledged ballot is in the tally`, async () => {
    const group = host.addGuild({ name: 'Everybody', channels: ['bench'] });
    const { id, votesUntil } = await prepare(group.id);
    await start();
    const members = Array.from({ length: MEMBERS }, (_, index) =>
      group.addMember({ name: `Member ${index}` }),
    );
    const acknowledged = new Set<number>();
    const half = Promise.withResolvers<void>();
    /** Votes until it is acknowledged, as people do who hear nothing; gives up when told that nobody answers now. */
    const vote = async (member: Member, index: number, nobodyAnswers: () => boolean) => {
      while (!acknowledged.has(index) && !nobodyAnswers()) {
        const answer = await member
          .run('/challenge vote', { ranking: rankingOf(index).join(',') })
          .catch(() => undefined);
        if (answer?.text.startsWith('## Saved: 8 bars')) acknowledged.add(index);
        if (acknowledged.size >= MEMBERS / 2) half.resolve();
      }
    };
    let killed = false;
    const send = (from: number, to: number) => {
      for (let index = from; index < to; index++) void vote(members[index]!, index, () => killed);
    };
    send(0, MEMBERS / 2);
    await half.promise;
    // The other half is under way when it is killed; all at once, they might all be answered in one burst.
    send(MEMBERS / 2, MEMBERS);
    await new Promise(resolve => setTimeout(resolve, 20));

    const gone = once(assistant, 'exit');
    killed = true;
    assistant.kill('SIGKILL');
    await gone;
    const atKill = new Set(acknowledged);
    await start();
    await Promise.all(
      members.flatMap((member, index) => (atKill.has(index) ? [] : [vote(member, index, () => false)])),
    );
    const over = once(assistant, 'exit');
    assistant.kill('SIGTERM');
    await over;

    const store = await openStore(address);
    const scope = { store, group: group.id };
    const challenge = await requireChallenge(scope, id);
    const entries = [...asOf(challenge, votesUntil).entries.keys()].sort();
    const kept = await Promise.all(members.map(member => choiceOf(scope, id, member.id)));
    for (const [index, chosen] of kept.entries())
      expect(chosen, `ballot of member ${index}`).toEqual(
        rankingOf(index).map(number => [entries[number - 1]]),
      );
    const { tally } = await resultAt(scope, challenge, votesUntil);
    expect(tally?.ballots).toBe(MEMBERS);
    expect(atKill.size).toBeGreaterThanOrEqual(MEMBERS / 2);
    expect(atKill.size).toBeLessThan(MEMBERS);
    await store.close();
  });
});
