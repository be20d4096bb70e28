/* A process that does what is due after the vote, and kills itself on the way where it is told to. */

import { appendFileSync } from 'node:fs';
import { challengeActs } from '../../../commands/challenge/deadlines.ts';
import type { Outbox } from '../../../src/conversation/unasked/outbox.ts';
import { startScheduler } from '../../../src/deadlines/scheduler.ts';
import { scopeAt, votesEnd } from '../../records/challenges/fair.ts';

const [address = '', channel = '', killAt = ''] = process.argv.slice(2);
const { store } = await scopeAt(address);
const now = () => votesEnd + 60_000;
const die = () => process.kill(process.pid, 'SIGKILL');

/** A channel as a file: a line for each message that was sent. */
const outbox: Outbox = {
  serves: () => true,
  async post(_place, { headline }, nonce) {
    appendFileSync(channel, `${JSON.stringify({ nonce, headline })}\n`);
    if (killAt === 'post' || (killAt === 'results' && nonce.startsWith('r'))) die();
    return { channel, message: nonce };
  },
  async edit() {
    return 'edited';
  },
};

const watch = startScheduler({
  store,
  serves: () => true,
  acts: challengeActs({ store, outbox, now }),
  now,
  onFault: fault => {
    throw fault;
  },
});
await watch.check();
await watch.stop();
await store.close();
if (process.connected) process.disconnect();
