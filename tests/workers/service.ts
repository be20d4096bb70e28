import { createHash } from 'node:crypto';
import { createServer } from 'node:http';
import { buffer } from 'node:stream/consumers';
import { deserialize, serialize } from 'node:v8';
import { Refusal } from '../../src/engine/refusal.ts';
import { MOST } from '../../src/workers/budget.ts';
import { openWorkers } from '../../src/workers/workers.ts';
import type { AskedOfService, ToldByService } from './ask-service.ts';

/*
 * The threads of a whole run of tests, in a process that `run.ts` starts: to start a thread, compile the network that looks
 * at photos and warm up the code that paints takes ten seconds of processor time, and each process of tests would do
 * it again. A job is a pure function of its input: what was computed for one is known to all.
 */

const [, , socket = ''] = process.argv;
// What one process may have under way is its own matter; here they come together.
const workers = openWorkers({ most: { ...MOST, all: Number.POSITIVE_INFINITY } });
const known = new Map<string, Promise<unknown>>();

async function told({ name, input, more }: AskedOfService): Promise<ToldByService> {
  const key = `${name} ${createHash('sha256').update(serialize(input)).digest('base64')}`;
  const running = known.get(key) ?? workers.run(name, input, more);
  known.set(key, running);
  // A "no" may hang on how much else was asked: whoever asks again is answered anew.
  running.catch(() => known.delete(key));
  try {
    return { output: await running };
  } catch (error) {
    if (error instanceof Refusal) return { refused: { id: error.id, values: error.values } };
    return { fault: String((error as Error).stack ?? error) };
  }
}

createServer((request, response) => {
  void buffer(request)
    .then(body => told(deserialize(body) as AskedOfService))
    .then(answer => response.end(serialize(answer)));
}).listen(socket, () => process.send?.('listening'));

// Whoever started it is gone, however it ended.
process.once('disconnect', () => process.exit());
