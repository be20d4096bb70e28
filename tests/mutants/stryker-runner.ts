import { readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { BroadcastChannel } from 'node:worker_threads';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  type DryRunResult,
  DryRunStatus,
  determineHitLimitReached,
  type MutantRunOptions,
  type MutantRunResult,
  MutantRunStatus,
  type TestRunner,
} from '@stryker-mutator/api/test-runner';
import { startVitest, type Vitest } from 'vitest/node';
import { keyOf } from './changes.ts';
import { CHANNEL, type FromWorker, type ToWorker } from './messages.ts';
import { Overrun } from './overrun.ts';
import { trace } from './trace.ts';

/** Built in are also changes within the place of one that is wanted. */
const wanted = new Set(JSON.parse(readFileSync(process.env.MUTANT_WANTED!, 'utf8')) as readonly string[]);
/** This process runs in a copy of the project. */
const original = process.env.MUTANT_ROOT!;
const graceMillis = process.env.MUTANT_GRACE_MILLIS ? Number(process.env.MUTANT_GRACE_MILLIS) : undefined;

/** Where Stryker's counting of changes begins in each file that it changed: three look-ups by name for each change that is come by. */
const COUNTS = 'function cover() {';

/** Lets the counting be switched off in what Stryker changed here: with it a test of fits takes ten times as long. */
function makeCountingOptional(): void {
  for (const file of (process.env.MUTANT_SOURCES ?? '').split(',').filter(Boolean)) {
    const path = join(process.cwd(), file);
    const text = readFileSync(path, 'utf8');
    writeFileSync(path, text.replace(COUNTS, `${COUNTS}\n    if (ns.isCounted) return;`));
  }
}

const isWanted = ({ fileName, location: { start, end }, replacement }: MutantRunOptions['activeMutant']) =>
  wanted.has(
    keyOf({
      file: relative(original, fileName),
      start: { line: start.line + 1, column: start.column },
      end: { line: end.line + 1, column: end.column },
      replacement,
    }),
  );

/** Stryker's side of `switching-runner.ts`: starts vitest once and asks its worker for one mutant after another. */
class SwitchingTestRunner implements TestRunner {
  readonly #channel = new BroadcastChannel(CHANNEL);
  #vitest: Vitest | undefined;
  #ready: Promise<FromWorker & { says: 'ready' }> | undefined;
  /** Settles where the worker ends unasked: a mutant that takes all memory takes it along. */
  #ended: Promise<undefined> | undefined;
  #overrun: Overrun | undefined;
  #isStuck = false;

  capabilities() {
    return { reloadEnvironment: false };
  }

  async init(): Promise<void> {
    makeCountingOptional();
    this.#ready = this.#next('ready');
    const vitest = startVitest('test', [], { config: 'tests/mutants/vitest.config.ts', watch: false });
    this.#ended = vitest.then(
      started => {
        this.#vitest = started;
        return undefined;
      },
      () => undefined,
    );
    const broken = vitest.then(() => {
      throw new Error('vitest ended before its worker was ready');
    });
    const ready = await Promise.race([this.#ready, broken]);
    // From here on it ends when it is told to.
    broken.catch(() => {});
    trace(`${ready.tests.length} tests are ready`);
    this.#overrun = new Overrun(ready.processor, graceMillis);
  }

  async dryRun(): Promise<DryRunResult> {
    const { tests, coverage } = await this.#ready!;
    return { status: DryRunStatus.Complete, tests: [...tests], mutantCoverage: coverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }: MutantRunOptions): Promise<MutantRunResult> {
    // Whoever asked counts only those that are wanted.
    if (!isWanted(activeMutant)) return { status: MutantRunStatus.Survived, nrOfTests: 0 };
    // Nothing else ends a thread that vitest holds, in a loop: Stryker starts another process for one that was killed, and asks it.
    if (this.#isStuck) process.kill(process.pid, 'SIGKILL');
    const overrun = this.#overrun!;
    const { id, fileName, location } = activeMutant;
    trace(`mutant ${id} at ${fileName}:${location.start.line + 1}, tests: ${testFilter?.length ?? 'all'}`);
    const answer = this.#next('tried', test => overrun.begins(test));
    this.#ask({ asks: 'try', mutant: id, file: relative(original, fileName), tests: testFilter, hitLimit });
    const tried = await overrun.orOver(Promise.race([answer, this.#ended!]));
    this.#isStuck = tried === undefined;
    trace(`mutant ${id} ${tried ? `${tried.failed ? 'killed' : 'survived'} after ${tried.ran}` : 'endless'}`);
    if (tried === undefined || determineHitLimitReached(tried.hits, hitLimit))
      return { status: MutantRunStatus.Timeout };
    const { failed, ran } = tried;
    return failed
      ? {
          status: MutantRunStatus.Killed,
          killedBy: [failed.test],
          failureMessage: failed.message,
          nrOfTests: ran,
        }
      : { status: MutantRunStatus.Survived, nrOfTests: ran };
  }

  async dispose(): Promise<void> {
    this.#ask({ asks: 'end' });
    await this.#vitest?.close();
    this.#channel.close();
  }

  #ask(message: ToWorker): void {
    this.#channel.postMessage(message);
  }

  #next<Says extends FromWorker['says']>(
    says: Says,
    begins?: (test: string) => void,
  ): Promise<FromWorker & { says: Says }> {
    return new Promise(resolve => {
      this.#channel.onmessage = event => {
        const message = (event as { data: FromWorker }).data;
        if (message.says === says) resolve(message as FromWorker & { says: Says });
        else if (message.says === 'begins') begins?.(message.test);
      };
    });
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'switching', SwitchingTestRunner)];
