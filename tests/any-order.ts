import { type RunnerTestFile, type RunnerTestSuite, TestRunner } from 'vitest';

/**
 * Whose tests hold in any order; a test of what is told in steps is a `story`. What is asked in plain words leans on the
 * question before by the same member: those of `/ask` keep theirs, as do bars of several jars, each of which is learnt
 * from beside those before.
 */
const FOLDERS = /^tests\/(?:commands\/(?!ask\/|calibrate\/mixed)|records\/)/u;

/** Has the tests and groups of a suite run in an order that is drawn, or in their own. */
function draw(suite: RunnerTestFile | RunnerTestSuite, isDrawn: boolean): void {
  suite.shuffle = isDrawn;
  for (const task of suite.tasks) if (task.type === 'suite') draw(task, isDrawn);
}

/**
 * Runs the tests of these folders in an order that the seed of the run draws (`vitest.config.ts`), so that none of them
 * comes to need what another left behind. The files keep the order of `longest-first.ts`. Said of each suite once it is
 * collected: what a group is given where it is declared comes from the first file of its process.
 */
export default class AnyOrder extends TestRunner {
  onCollected(files: readonly RunnerTestFile[]): void {
    for (const file of files) draw(file, FOLDERS.test(file.name));
  }
}
