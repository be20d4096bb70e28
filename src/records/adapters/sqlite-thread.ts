import { type MessagePort, parentPort, receiveMessageOnPort, workerData } from 'node:worker_threads';
import { type Call, type Opening, SqliteDatabase } from './sqlite-database.ts';

/*
 * The thread that owns the database in a file: waiting for another process's lock (`busy_timeout`), or for the disk, would
 * stop whatever loop it runs on, and here that hurts nobody.
 */

const db = new SqliteDatabase(workerData as Opening);

function serve(port: MessagePort): void {
  port.on('message', (first: Call | 'close') => {
    const waiting: (Call | 'close')[] = [first];
    for (let more = receiveMessageOnPort(port); more; more = receiveMessageOnPort(port)) {
      waiting.push(more.message);
    }
    const calls = waiting.filter(call => call !== 'close');
    for (const done of db.answers(calls)) port.postMessage(done);
    if (calls.length < waiting.length) {
      db.close();
      port.close();
    }
  });
}

if (parentPort) serve(parentPort);
