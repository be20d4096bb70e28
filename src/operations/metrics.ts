import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';

/** How a question ended: answered, told “no” with a reason, a fault of ours, or too late to be told anything. */
export type Outcome = 'answered' | 'refused' | 'fault' | 'lost';

/** What a host counts. Names of commands and outcomes only: nothing that a member wrote, and no member. */
export type Metrics = {
  answered(about: { readonly command: string; readonly outcome: Outcome; readonly seconds: number }): void;
  /** The platform told us to wait. */
  rateLimited(): void;
  storeFailed(about: { readonly during: string; readonly kind: string }): void;
  /** What is wrong with the records, if anything: since they last failed nothing has shown that they are sound. */
  storeTrouble(): string | undefined;
  /** A record was written since: the trouble is over. */
  storeSound(): void;
  /** What was due and has not been done, and how late the latest of it is, seconds. */
  dues(late: { readonly count: number; readonly seconds: number }): void;
  /** In the text format of Prometheus, with its media type. */
  text(): Promise<{ readonly body: string; readonly type: string }>;
};

/** Upper ends, seconds: from what a good answer takes up to the platform's three seconds and a long photo. */
const SECONDS = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 1.5, 2.5, 5, 15];

/** Failures that are the whole store's. */
const TROUBLE: ReadonlySet<string> = new Set(['unreachable', 'busy', 'full', 'closed']);

/** Metrics of this process. `load` is asked when somebody looks. */
export function openMetrics(load: () => { readonly waiting: number; readonly running: number }): Metrics {
  const registers = [new Registry()];
  const [registry] = registers as [Registry];
  collectDefaultMetrics({ register: registry });
  const answers = new Counter({
    name: 'tintmoot_answers_total',
    help: 'Questions that came to an end, by command and outcome',
    labelNames: ['command', 'outcome'],
    registers,
  });
  const seconds = new Histogram({
    name: 'tintmoot_answer_seconds',
    help: 'From the arrival of a question until its answer was taken, by command',
    labelNames: ['command'],
    buckets: SECONDS,
    registers,
  });
  const limited = new Counter({
    name: 'tintmoot_rate_limited_total',
    help: 'Requests that the platform told us to wait with (429)',
    registers,
  });
  const failures = new Counter({
    name: 'tintmoot_store_failures_total',
    help: 'Reads and writes of records that failed, by what went wrong',
    labelNames: ['during', 'kind'],
    registers,
  });
  const late = new Gauge({
    name: 'tintmoot_dues_late',
    help: 'What was due and has not been done',
    registers,
  });
  const lateBy = new Gauge({
    name: 'tintmoot_dues_late_seconds',
    help: 'How late the oldest of what was due is',
    registers,
  });
  new Gauge({
    name: 'tintmoot_work',
    help: 'Heavy work that waits for a thread or has one',
    labelNames: ['state'],
    registers,
    collect() {
      const { waiting, running } = load();
      this.set({ state: 'waiting' }, waiting);
      this.set({ state: 'running' }, running);
    },
  });
  let inTrouble = false;
  return {
    answered({ command, outcome, seconds: took }) {
      answers.inc({ command, outcome });
      seconds.observe({ command }, took);
    },
    rateLimited: () => limited.inc(),
    storeFailed({ during, kind }) {
      failures.inc({ during, kind });
      if (TROUBLE.has(kind)) inTrouble = true;
    },
    storeTrouble: () => (inTrouble ? 'the records cannot be written' : undefined),
    storeSound() {
      inTrouble = false;
    },
    dues({ count, seconds: by }) {
      late.set(count);
      lateBy.set(by);
    },
    text: async () => ({ body: await registry.metrics(), type: registry.contentType }),
  };
}
