/*
 * A process that takes a gram of an item again and again, of one member's after another's: `store-shelf-user.ts ADDRESS
 * NAME:TIMES:MEMBER...`. Prints for each how often it was told that a gram was taken, and how often that there was not
 * enough.
 */
import { Refusal } from '../../src/engine/refusal.ts';
import { openStore } from '../../src/records/open.ts';
import { useItem } from '../../src/records/shelf/index.ts';
import { PATIENT } from '../records/patience.ts';

const [, , address = '', ...turns] = process.argv;
const store = await openStore(address, PATIENT);

/** Takes one gram under a cause of its own; whether there was enough. */
async function take(member: string, cause: string): Promise<boolean> {
  try {
    await useItem({ store, member }, 'ultramarine', 1, { cause, at: new Date() });
    return true;
  } catch (error) {
    if (!(error instanceof Refusal) || error.id !== 'shelf-not-enough') throw error;
    return false;
  }
}

const told = [];
for (const turn of turns) {
  const [name = '', times = '0', member = ''] = turn.split(':');
  const causes = Array.from({ length: Number(times) }, (_, n) => `${name}-${n}`);
  let taken = 0;
  while (causes.length > 0) {
    const answers = await Promise.all(causes.splice(0, 4).map(cause => take(member, cause)));
    taken += answers.filter(Boolean).length;
  }
  told.push({ taken, refused: Number(times) - taken });
}
await store.close();
console.log(JSON.stringify(told));
