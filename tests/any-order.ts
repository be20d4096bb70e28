import { type RunnerTestFile, TestRunner } from 'vitest';

/**
 * Whose tests hold in any order; a test of what is told in steps is a `story`. What is asked in plain words leans on the
 * question before by the same member: those of `/ask` keep theirs, as do bars of several jars, each of which is learnt
 * from beside those before.
 */
const FOLDERS = /^tests\/(?:commands\/(?!ask\/|calibrate\/mixed)|records\/)/u;

/**
 * Runs the tests of these folders in an order that the seed of the run draws (`vitest.config.ts`), so that none of them
 * comes to need what another left behind. The files keep the order of `longest-first.ts`.
 */
export default class AnyOrder extends TestRunner {
  override onCollectStart(file: RunnerTestFile): void {
    file.shuffle = FOLDERS.test(file.name);
    // Whatever is declared within it looks here.
    this.config.sequence.shuffle = file.shuffle;
    super.onCollectStart(file);
  }
}
