import { getHeapSpaceStatistics, setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { expect, it } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import type { Given } from '../../src/conversation/question.ts';
import { receive, suggest } from '../../src/conversation/receive.ts';
import { openStore } from '../../src/records/open.ts';
import { openWorkers } from '../../src/workers/workers.ts';
import { registry } from '../loopback/room.ts';
import { howMany, isDue } from '../walk.ts';

/** Interactions; `SOAK=1000000` for so many. Of few the noise of the heap is larger than the bound. */
const interactions = Number(process.env.SOAK ?? howMany(16_000, 200_000));
const SAMPLES = 40;
/** The share of the run after which objects must have found their number. */
const WARM_UP = 0.5;
/** From so many on a run shows what is left of growth once all is warm. */
const LONG = 200_000;
/**
 * Bytes of objects that an interaction may leave: 4.5 ± 1.0 were seen between 5,000 and 20,000, 1.9 ± 0.3 up to 40,000,
 * 1.0 ± 0.4 between 63,000 and 84,000. What grew between two snapshots, 15,000 and 33,000, was code and lists of the
 * compilers: no text, no entry of a map.
 */
const MOST = interactions >= LONG ? 1 : 12;
/**
 * Spaces of the heap for machine code, bytecode and their tables. They grow while more is compiled and shrink where
 * code is dropped, by 100 KB from one look to the next, which hid everything else.
 */
const COMPILED: ReadonlySet<string> = new Set([
  'code_space',
  'code_large_object_space',
  'trusted_space',
  'trusted_large_object_space',
]);

/** Bytes that objects take, of whatever age and size. */
const objectsHeld = (): number =>
  getHeapSpaceStatistics()
    .filter(({ space_name }) => !COMPILED.has(space_name))
    .reduce((sum, { space_used_size }) => sum + space_used_size, 0);

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/** What members ask, in turns: reads, writes, refusals, nonsense and keystrokes. */
const asked: readonly (readonly [string, Given])[] = [
  ['dose', { colourant: 'ultramarine blue', portion: '2 cups' }],
  ['dose', { colourant: 'Dusk', portion: '500 ml', strength: 'pastel' }],
  ['shelf use', { item: 'Dusk', amount: '0.001 g' }],
  ['shelf list', {}],
  ['dose', { colourant: 'no such thing', portion: '2 cups' }],
  ['prefer', { spoons: 'metric' }],
  ['shelf restock', { item: 'Dusk', amount: '0.001 g' }],
  ['colourant check', { ingredients: 'Mica (CI 77019), Titanium Dioxide (CI 77891)' }],
  ['dose', { colourant: 'constructor', portion: '\u{1F9FC}' }],
  ['recipe list', {}],
];

/** Least squares through the points: the slope, and how far off it may be, 95 of 100 times. */
function slopeOf(points: readonly (readonly [x: number, y: number])[]) {
  const n = points.length;
  const mean = (pick: (point: readonly [number, number]) => number) =>
    points.reduce((sum, point) => sum + pick(point), 0) / n;
  const [x0, y0] = [mean(([x]) => x), mean(([, y]) => y)];
  const sxx = points.reduce((sum, [x]) => sum + (x - x0) ** 2, 0);
  const slope = points.reduce((sum, [x, y]) => sum + (x - x0) * (y - y0), 0) / sxx;
  const residual = points.reduce((sum, [x, y]) => sum + (y - y0 - slope * (x - x0)) ** 2, 0);
  // Student's t, two-sided 95 %, for some 28 degrees of freedom (NIST/SEMATECH e-Handbook, 1.3.6.7.2).
  const within = 2.048 * Math.sqrt(residual / (n - 2) / sxx);
  return { slope, within };
}

const whenDue = isDue('soak') ? it : it.todo;
whenDue(
  `${interactions} mixed interactions are all answered, and the heap does not grow`,
  {
    timeout: 60_000 + interactions * 20,
  },
  async () => {
    const faults: unknown[] = [];
    const unhandled: unknown[] = [];
    const note = (reason: unknown) => unhandled.push(reason);
    process.on('unhandledRejection', note);
    const services = { store: await openStore('sqlite::memory:', 30_000), workers: openWorkers() };
    const conversation: Conversation = {
      registry,
      services,
      key: new Uint8Array(32),
      onFault: fault => faults.push(fault),
    };
    const origin = (n: number) => ({
      id: String(2_000_000_000 + n),
      at: 1_700_000_000_000 + n,
      asker: { id: String(n % 50), name: 'Bram', manages: false, roles: [] },
      group: String(n % 7),
      channel: '3',
      language: n % 3 === 0 ? ('es' as const) : ('en' as const),
    });
    for (let n = 0; n < 50; n += 1)
      await receive(
        {
          ...origin(n),
          kind: 'command',
          path: ['shelf', 'add'],
          given: { item: 'Dusk', amount: '1 kg', colourant: 'ultramarine blue' },
        },
        conversation,
      );
    let answered = 0;
    const points: (readonly [number, number])[] = [];
    const every = Math.ceil(interactions / SAMPLES);
    for (let n = 100; answered < interactions; ) {
      const batch = Array.from({ length: 10 }, () => {
        n += 1;
        const [path, given] = asked[n % asked.length]!;
        const question = { ...origin(n), path: path.split(' '), given };
        return n % 11 === 0
          ? suggest(
              { ...question, kind: 'typing', option: 'colourant', typed: 'ultra', path: ['dose'] },
              conversation,
            )
          : receive({ ...question, kind: 'command' }, conversation);
      });
      const answers = await Promise.all(batch);
      answered += answers.filter(answer => answer !== undefined).length;
      // What is held before is not weighed, and to collect takes a fifth of a second.
      const isWeighed = answered > WARM_UP * interactions || process.env.SOAK !== undefined;
      if (isWeighed && answered % every < batch.length) {
        collect();
        points.push([answered, objectsHeld()]);
      }
    }
    await services.workers.close();
    await services.store.close();
    process.off('unhandledRejection', note);
    const { slope, within } = slopeOf(points.filter(([x]) => x > WARM_UP * interactions));
    if (process.env.SOAK)
      console.info(points.map(([x, y]) => `${x} ${(y / 1024).toFixed(0)} KiB`).join('\n'));
    console.info(
      `objects: ${slope.toFixed(2)} ± ${within.toFixed(2)} bytes an interaction over ${interactions}`,
    );
    expect({ answered, faults, unhandled }).toEqual({ answered: interactions, faults: [], unhandled: [] });
    // A long run must show that it is less; a short one only must not show that it is more.
    expect(interactions >= LONG ? slope + within : slope - within).toBeLessThan(MOST);
  },
);
