import { request } from 'node:http';
import { buffer } from 'node:stream/consumers';
import { deserialize, serialize } from 'node:v8';
import { Refusal } from '../../src/engine/refusal.ts';
import type { JobName, Jobs } from '../../src/workers/jobs.ts';
import type { WorkFor } from '../../src/workers/workers.ts';

export type AskedOfService = {
  readonly name: JobName;
  readonly input: Parameters<Jobs[JobName]>[0];
  readonly more: Omit<WorkFor, 'moves'>;
};
export type ToldByService =
  | { readonly output: unknown }
  | { readonly refused: { readonly id: Refusal['id']; readonly values: object } }
  | { readonly fault: string };

/** A job done by the threads of the run (`service.ts`), which listen at `socket`. Throws the job's Refusals. */
export async function askService(socket: string, asked: AskedOfService): Promise<unknown> {
  const body = serialize(asked);
  const told = await new Promise<ToldByService>((resolve, reject) => {
    // A connection of its own: one that is kept may be closed by the other side while a busy process begins to write.
    const asking = request({ socketPath: socket, method: 'POST', agent: false }, response => {
      buffer(response).then(answer => resolve(deserialize(answer) as ToldByService), reject);
    });
    asking.on('error', reject);
    asking.end(body);
  });
  if ('output' in told) return told.output;
  if ('refused' in told) throw new Refusal(told.refused.id, told.refused.values as never);
  throw new Error(told.fault);
}
