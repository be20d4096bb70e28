import { type MessagePort, parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads';
import { type Call, type Opening, SqliteDatabase } from './sqlite-database.ts';

/*
 * The thread that owns the database in a file: waiting for another process's lock (`busy_timeout`), or for the disk, would
 * stop whatever loop it runs on, and here that hurts nobody.
 */

const db = new SqliteDatabase(workerData as Opening);

/** What one turn of the other thread asked. */
type Message = readonly Call[] | 'close';

function serve(port: MessagePort): void {
  port.on('message', (first: Message) => {
    const waiting = [first];
    for (let more = receiveMessageOnPort(port); more; more = receiveMessageOnPort(port)) {
      waiting.push(more.message);
    }
    const calls = waiting.flatMap(message => (message === 'close' ? [] : message));
    // Who reads does not wait for the disk.
    for (const isCommit of [false, true]) {
      const together = calls.filter(({ task }) => (task === 'commit') === isCommit);
      if (together.length > 0) port.postMessage([...db.answers(together)]);
    }
    if (waiting.includes('close')) {
      db.close();
      port.close();
    }
  });
}

if (parentPort) serve(parentPort);
