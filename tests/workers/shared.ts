import { createHash } from 'node:crypto';
import { serialize } from 'node:v8';
import type { JobName, Jobs } from '../../src/workers/jobs.ts';
import { openWorkers, type WatchedWorkers, type WorkFor } from '../../src/workers/workers.ts';
import { WHOLE } from '../walk.ts';
import { askService } from './ask-service.ts';

type Output<Name extends JobName> = Awaited<ReturnType<Jobs[Name]>>;

/** What pictures are to tests of what is said: a single point. */
const POINT = Uint8Array.from(
  Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAsTj2FAAAAABJRU5ErkJggg==',
    'base64',
  ),
);
/** Jobs that paint what is known already, for the eye alone: half of the processor time of most answers. */
const DRAWN: ReadonlySet<JobName> = new Set<JobName>([
  'batchCard',
  'batchPairs',
  'challengeBars',
  'challengeCard',
  'challengeMeasured',
  'challengeResults',
  'classHandout',
  'fitPlot',
  'labelSheet',
  'matchCard',
  'paletteStrips',
  'photoPalette',
  'swatchCard',
  'timeline',
]);

let pool: WatchedWorkers | undefined;
/** Threads of this process, where a file is run by itself or watched. */
const here = () => {
  pool ??= openWorkers();
  return pool;
};
const known = new Map<string, Promise<unknown>>();
let views = 0;

/**
 * Workers for one test, over threads that all tests of a run share (`service.ts`): to start one, with the network that looks
 * at photos, takes longer than most tests. Members of one test are nobody in another. A job is a pure function of its
 * input, so what was computed once is known; the pool itself, its queue and its budgets have tests of their own.
 * `draws` is for files that look at pictures; what else is asked gets a point for each, unless all is walked through.
 */
export function sharedWorkers({ draws = false }: { readonly draws?: boolean } = {}): WatchedWorkers {
  views += 1;
  const view = `${process.pid} ${views}`;
  const place = (id: string) => `${view} ${id}`;
  const underWay = new Set<Promise<unknown>>();
  const compute = async <Name extends JobName>(
    name: Name,
    input: Parameters<Jobs[Name]>[0],
    { owner, group = owner, moves }: WorkFor,
  ): Promise<Output<Name>> => {
    if (!draws && !WHOLE && DRAWN.has(name)) return POINT as Output<Name>;
    const key = `${name} ${createHash('sha256').update(serialize(input)).digest('base64')}`;
    const more = { owner: place(owner), group: place(group) };
    const socket = process.env.WORKERS_OF_THIS_RUN;
    const running =
      known.get(key) ??
      (socket
        ? askService(socket, { name, input, more })
        : here().run(name, input, { ...more, ...(moves && { moves }) }));
    known.set(key, running);
    // A "no" may hang on how much else was asked: whoever asks again is answered anew.
    running.catch(() => known.delete(key));
    return structuredClone((await running) as Output<Name>);
  };
  return {
    run(name, input, more) {
      const running = compute(name, input, more);
      underWay.add(running);
      const done = () => underWay.delete(running);
      running.then(done, done);
      return running;
    },
    load: () => ({ waiting: 0, running: underWay.size }),
    isStuck: () => false,
    async close() {
      await Promise.allSettled(underWay);
    },
  };
}
