import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import { BroadcastChannel } from 'node:worker_threads';
import type { MutantCoverage } from '@stryker-mutator/api/core';
import { type TestResult, TestStatus } from '@stryker-mutator/api/test-runner';
import { type RunnerTask, type RunnerTestCase, type RunnerTestSuite, TestRunner } from 'vitest';
import { CHANNEL, type FromWorker, switches, type ToWorker } from './messages.ts';
import { nearestFirst } from './nearest-first.ts';
import { processorMillis } from './overrun.ts';
import { trace } from './trace.ts';

const testsIn = (task: RunnerTask): readonly RunnerTestCase[] =>
  task.type === 'test' ? [task] : task.tasks.flatMap(testsIn);

/**
 * Green tests of every file of this worker that are quick enough to be run for each of a thousand mutants; vitest makes a
 * runner anew for each file.
 */
const loaded: RunnerTestCase[] = [];
/** Processor time, ms, beyond which a test is asked about no mutant: fits, with every change of theirs built in, take minutes. */
const DEAR = 4000;
const used = new Map<string, number>();
let filesDone = 0;

/** So many times may changed code ask in which test it is before the processor time is looked at. */
const LOOKS_EVERY = 4096;
/** Processor time, ms, at which the test that runs began. */
let began: number | undefined;

/** Ends a test that proves dear while it still runs: changed code asks here, at every change that it comes by, in which test it is. */
function endDearTests(): void {
  let asked = 0;
  Object.defineProperty(switches(), 'currentTestId', {
    configurable: true,
    get() {
      asked += 1;
      if (asked % LOOKS_EVERY === 0 && began !== undefined && processorMillis() - began > DEAR)
        throw new Error('takes too long to be asked about any change');
      return undefined;
    },
  });
}
endDearTests();

type Measured = FromWorker & { says: 'ready' };
const keptAt = process.env.MUTANT_MEASURED!;
/** What the first worker of a run measured: a mutant that never ended takes its worker along, and the next one goes on. */
const measuredBefore = existsSync(keptAt)
  ? (JSON.parse(readFileSync(keptAt, 'utf8')) as Measured)
  : undefined;
const askedBefore = measuredBefore && new Set(measuredBefore.tests.map(({ id }) => id));
if (measuredBefore) switches().isCounted = true;

/** Property tests ask vitest which test they are in. */
let running: RunnerTestCase | undefined;
const inVitest = TestRunner.getCurrentTest;
TestRunner.getCurrentTest = (() => running ?? inVitest()) as typeof TestRunner.getCurrentTest;

/** Outermost first. */
function suitesOf(test: RunnerTestCase): readonly RunnerTestSuite[] {
  const suites: RunnerTestSuite[] = [];
  for (let suite: RunnerTestSuite | undefined = test.suite ?? test.file; suite; suite = suite.suite)
    suites.unshift(suite);
  return suites;
}

/** What `unremembered.ts` keeps is of one run of one test. */
function forgetWhatWasRead(): void {
  const context = switches();
  context.run = (context.run ?? 0) + 1;
}

/** The message of a red test, its hooks included. */
async function failureOf(test: RunnerTestCase): Promise<string | undefined> {
  const suites = suitesOf(test);
  running = test;
  forgetWhatWasRead();
  try {
    test.result = { state: 'run', startTime: performance.now(), retryCount: 0, repeatCount: 0 };
    for (const suite of suites)
      for (const hook of TestRunner.getSuiteHooks(suite).beforeEach) await hook(test.context, suite);
    await TestRunner.getTestFn(test)();
    for (const suite of suites.toReversed())
      for (const hook of TestRunner.getSuiteHooks(suite).afterEach) await hook(test.context, suite);
    return (test.result.state as string) === 'fail' ? (test.result.errors?.[0]?.message ?? 'red') : undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  } finally {
    running = undefined;
  }
}

/**
 * Every test a second time, to see what it reaches once all is loaded. What only loading or the first run reached is
 * computed once for the process: it stands under `static`, since no later run would notice a change there.
 */
async function measured(): Promise<Measured> {
  const context = switches();
  // The instrumented files hold on to this object.
  context.mutantCoverage ??= { static: {}, perTest: {} };
  const tests: TestResult[] = [];
  const processor: Record<string, number> = {};
  for (const test of loaded) {
    context.currentTestId = test.id;
    const began = performance.now();
    const before = processorMillis();
    const failureMessage = await failureOf(test);
    const timeSpentMs = performance.now() - began;
    processor[test.id] = processorMillis() - before;
    trace(`${Math.round(processor[test.id]!)} ms ${test.fullName}`);
    const result = { id: test.id, name: test.fullName, fileName: test.file.filepath, timeSpentMs };
    tests.push(
      failureMessage === undefined
        ? { ...result, status: TestStatus.Success }
        : { ...result, status: TestStatus.Failed, failureMessage },
    );
  }
  delete context.currentTestId;
  const { static: once, perTest } = context.mutantCoverage;
  const again = new Set(Object.values(perTest).flatMap(reached => Object.keys(reached)));
  const onlyOnce = Object.fromEntries(Object.entries(once).filter(([mutant]) => !again.has(mutant)));
  return { says: 'ready', tests, coverage: { static: onlyOnce, perTest }, processor };
}

async function measuredOnce(): Promise<Measured> {
  if (measuredBefore) return measuredBefore;
  const ready = await measured();
  writeFileSync(keptAt, JSON.stringify(ready));
  return ready;
}

/** So many times as often as without it may a test come by a mutant, or by one that it hardly meets: more is no end. */
const MORE_OFTEN = 10;
const HARDLY = 1000;

/**
 * Processor time, ms, of all tests of one change: what thousands of tests come by and none of those near it minds would take minutes. A
 * change that none of those tests minds counts as missed.
 */
const MOST_MILLIS = 20_000;

/**
 * Tests that ran in this worker without a mutant, and whether they were green: tables that are built from lists when they are first asked
 * for must not be built with a mutant switched on, since they stay.
 */
const isSound = new Map<string, boolean>();
async function hasRunSoundly(test: RunnerTestCase): Promise<boolean> {
  const known = isSound.get(test.id) ?? (measuredBefore ? (await failureOf(test)) === undefined : true);
  isSound.set(test.id, known);
  return known;
}

/**
 * Runs these tests with the mutant switched on, until one is red, and tells when each begins: who asked ends this thread
 * where one never ends. Stryker's limit of how often a change is met is of all tests together, which a loop of one takes
 * longer to reach than the time it has.
 */
async function tried(
  { mutant, hitLimit = Number.POSITIVE_INFINITY }: ToWorker & { asks: 'try' },
  tests: readonly RunnerTestCase[],
  { perTest }: MutantCoverage,
  begins: (test: string) => void,
): Promise<FromWorker> {
  const context = switches();
  // Changed code compares names of changes, at once where both are the same object: as names of properties are.
  const [active] = Object.keys({ [mutant]: true });
  let hits = 0;
  const switchOn = ({ id }: RunnerTestCase) => {
    const usual = Math.max(HARDLY, perTest[id]?.[mutant] ?? 0);
    const most = Math.min(hitLimit, MORE_OFTEN * usual);
    Object.assign(context, { activeMutant: active, hitCount: 0, hitLimit: most });
  };
  const told = (ran: number, failed?: { test: string; message: string }): FromWorker => ({
    says: 'tried',
    failed,
    ran,
    hits,
  });
  try {
    const until = processorMillis() + MOST_MILLIS;
    for (const [before, test] of tests.entries()) {
      if (processorMillis() > until) return told(before);
      begins(test.id);
      if (!(await hasRunSoundly(test))) continue;
      switchOn(test);
      begins(test.id);
      const message = await failureOf(test);
      hits += context.hitCount ?? 0;
      delete context.activeMutant;
      if (message !== undefined) return told(before + 1, { test: test.id, message });
    }
    return told(tests.length);
  } finally {
    delete context.activeMutant;
  }
}

/**
 * A vitest runner that stays when its files are done and then runs single tests over and over, a mutant switched on
 * each time. Stryker's own runner for vitest loads all files anew for every mutant, which takes a second or two; this
 * takes as long as the tests themselves, milliseconds.
 */
export default class SwitchingRunner extends TestRunner {
  override async onBeforeRunTask(test: RunnerTestCase): Promise<void> {
    // What was measured before runs when it is asked.
    if (askedBefore) test.mode = 'skip';
    await super.onBeforeRunTask(test);
    trace(`begins ${test.fullName}`);
    began = processorMillis();
    used.set(test.id, -began);
  }

  override onAfterRunTask(test: RunnerTestCase): void {
    super.onAfterRunTask(test);
    used.set(test.id, used.get(test.id)! + processorMillis());
    began = undefined;
  }

  override async onAfterRunSuite(suite: RunnerTestSuite): Promise<void> {
    await super.onAfterRunSuite(suite);
    if (suite.id !== suite.file.id) return;
    const isQuick = ({ id }: RunnerTestCase) => used.get(id)! < DEAR;
    loaded.push(
      ...testsIn(suite).filter(test =>
        askedBefore ? askedBefore.has(test.id) : test.result?.state === 'pass' && isQuick(test),
      ),
    );
    filesDone += 1;
    if (filesDone === Number(process.env.MUTANT_FILES)) await this.#serve();
  }

  async #serve(): Promise<void> {
    const channel = new BroadcastChannel(CHANNEL);
    const ended = Promise.withResolvers<void>();
    const context = switches();
    // Here what is dear was ended.
    delete context.currentTestId;
    const ready = await measuredOnce();
    context.isCounted = true;
    const millis = new Map(ready.tests.map(({ id, timeSpentMs }) => [id, timeSpentMs]));
    const root = process.cwd();
    const known = loaded.map(test => ({
      test,
      file: relative(root, test.file.filepath),
      millis: millis.get(test.id)!,
    }));
    const answer = async (asked: ToWorker & { asks: 'try' }) => {
      const wanted = asked.tests && new Set(asked.tests);
      channel.postMessage(
        await tried(
          asked,
          nearestFirst(known, asked.file).flatMap(({ test }) =>
            wanted?.has(test.id) === false ? [] : [test],
          ),
          ready.coverage,
          test => channel.postMessage({ says: 'begins', test } satisfies FromWorker),
        ),
      );
    };
    channel.onmessage = event => {
      const message = (event as { data: ToWorker }).data;
      if (message.asks === 'end') ended.resolve();
      else void answer(message);
    };
    channel.postMessage(ready);
    await ended.promise;
    channel.close();
  }
}
