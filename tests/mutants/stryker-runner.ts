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
import { CHANNEL, type FromWorker, type ToWorker } from './messages.ts';
import { ALL, type Draw, isDrawn } from './sample.ts';

const draw = JSON.parse(process.env.MUTANT_DRAW ?? JSON.stringify(ALL)) as Draw;

/** Stryker's side of `switching-runner.ts`: starts vitest once and asks its worker for one mutant after another. */
class SwitchingTestRunner implements TestRunner {
  readonly #channel = new BroadcastChannel(CHANNEL);
  #vitest: Vitest | undefined;
  #ready: Promise<FromWorker & { says: 'ready' }> | undefined;

  capabilities() {
    return { reloadEnvironment: false };
  }

  async init(): Promise<void> {
    this.#ready = this.#next('ready');
    const broken = startVitest('test', [], { config: 'tests/mutants/vitest.config.ts', watch: false }).then(
      vitest => {
        this.#vitest = vitest;
        throw new Error('vitest ended before its worker was ready');
      },
    );
    await Promise.race([this.#ready, broken]);
    // From here on it ends when it is told to.
    broken.catch(() => {});
  }

  async dryRun(): Promise<DryRunResult> {
    const { tests, coverage } = await this.#ready!;
    return { status: DryRunStatus.Complete, tests: [...tests], mutantCoverage: coverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }: MutantRunOptions): Promise<MutantRunResult> {
    // Whoever asked counts only those that were drawn.
    if (!isDrawn(activeMutant.id, draw)) return { status: MutantRunStatus.Survived, nrOfTests: 0 };
    const answer = this.#next('tried');
    this.#ask({ asks: 'try', mutant: activeMutant.id, tests: testFilter, hitLimit });
    const { failed, ran, hits } = await answer;
    if (determineHitLimitReached(hits, hitLimit)) return { status: MutantRunStatus.Timeout };
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

  #next<Says extends FromWorker['says']>(says: Says): Promise<FromWorker & { says: Says }> {
    return new Promise(resolve => {
      this.#channel.onmessage = event => {
        const message = (event as { data: FromWorker }).data;
        if (message.says === says) resolve(message as FromWorker & { says: Says });
      };
    });
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'switching', SwitchingTestRunner)];
