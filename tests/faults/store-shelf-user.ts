/*
 * A process that takes a gram of an item again and again: `store-shelf-user.ts ADDRESS NAME TIMES [MEMBER]`. Prints how
 * often it was told that a gram was taken, and how often that there was not enough.
 */
import { Refusal } from '../../src/engine/refusal.ts';
import { openStore } from '../../src/records/open.ts';
import { useItem } from '../../src/records/shelf/index.ts';
import { PATIENT } from '../records/patience.ts';

const [, , address = '', name = '', times = '0', member = '7'] = process.argv;
const store = await openStore(address, PATIENT);
let taken = 0;
let refused = 0;
const one = async (n: number) => {
  try {
    await useItem({ store, member }, 'ultramarine', 1, { cause: `${name}-${n}`, at: new Date() });
    taken += 1;
  } catch (error) {
    if (!(error instanceof Refusal) || error.id !== 'shelf-not-enough') throw error;
    refused += 1;
  }
};
const all = Array.from({ length: Number(times) }, (_, n) => n);
while (all.length > 0) await Promise.all(all.splice(0, 4).map(one));
await store.close();
console.log(JSON.stringify({ taken, refused }));
