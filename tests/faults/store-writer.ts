/*
 * A process that writes until it is killed: `store-writer.ts ADDRESS`. Each number it prints is one whose
 * two records the store has acknowledged.
 */
import { openStore } from '../../src/records/open.ts';
import { add, put } from '../../src/records/store.ts';

const store = await openStore(process.argv[2]!);
let next = 0;

async function writeOnAndOn(): Promise<never> {
  while (true) {
    const n = next++;
    await store.commit([add(`written/${n}`, { n }), put(`beside/${n}`, { n })]);
    process.stdout.write(`${n}\n`);
  }
}
await Promise.all(Array.from({ length: 8 }, writeOnAndOn));
