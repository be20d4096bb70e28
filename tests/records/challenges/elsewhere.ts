/* A process of its own, as a second instance would be: votes as one member after the other, or closes. */

import { setTimeout as after } from 'node:timers/promises';
import { Refusal } from '../../../src/engine/refusal.ts';
import {
  castBallot,
  closeChallenge,
  readChallenge,
  resultAt,
} from '../../../src/records/challenges/index.ts';
import { challengeBallots, under } from '../../../src/records/keys.ts';
import { everything } from '../../../src/records/store.ts';
import { closingGrace, made, scopeAt, votesEnd } from './fair.ts';

const [task, address = '', id = '', given = '', ...entries] = process.argv.slice(2);
const scope = await scopeAt(address);
const tell = (message: unknown) => process.send?.(message as never);

/** Votes until the challenge is closed, and tells of each ballot that was acknowledged. */
async function vote(): Promise<void> {
  for (let voter = 0; voter < 500; voter++) {
    const member = `${given}${voter}`;
    const chosen = entries.map((_, i) => [entries[(i + voter) % entries.length] ?? '']);
    const cast = made(member, votesEnd - 1);
    try {
      await castBallot(scope, id, { chosen, joinedAt: 0 }, { ...cast, id: `${process.pid}${cast.id}` });
      tell(member);
    } catch (failure) {
      if (!(failure instanceof Refusal)) throw failure;
      return;
    }
  }
}

/** Closes as soon as so many ballots are in, and tells at once what it counts. */
async function close(): Promise<void> {
  while ((await everything(scope.store, under(challengeBallots(scope.group, id)))).length < Number(given))
    await after(5);
  const challenge = await readChallenge(scope, id);
  if (!challenge) throw new Error('no challenge');
  await closeChallenge(scope, challenge, votesEnd + closingGrace);
  const closed = await readChallenge(scope, id);
  if (closed) tell((await resultAt(scope, closed, Number.MAX_SAFE_INTEGER)).tally);
}

await (task === 'vote' ? vote() : close());
await scope.store.close();
if (process.connected) process.disconnect();
