/*
 * A process that writes until it is killed: `store-writer.ts ADDRESS [ROUND]`. Each number it prints is one whose
 * two records the store has acknowledged; with a round their keys begin with it, and it waits for a line on its
 * standard input before it begins, warm by then.
 */
import { once } from 'node:events';
import { openStore } from '../../src/records/open.ts';
import { add, put } from '../../src/records/store.ts';
import { PATIENT } from '../records/patience.ts';

const [, , address = '', round] = process.argv;
const store = await openStore(address, PATIENT);
const named = (n: number) => (round === undefined ? String(n) : `${round}-${n}`);
let next = 0;

async function writeOnAndOn(): Promise<never> {
  while (true) {
    const n = next++;
    // The second is a member's, so it is noted whose it is: a third record of the same commit.
    await store.commit([add(`written/${named(n)}`, { n }), put(`season-vote/beside/${named(n)}`, { n })]);
    process.stdout.write(`${n}\n`);
  }
}
if (round !== undefined) await once(process.stdin, 'data');
await Promise.all(Array.from({ length: 8 }, writeOnAndOn));
