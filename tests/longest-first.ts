import { BaseSequencer, type TestSpecification } from 'vitest/node';

/**
 * Files that take longest, by computing or by waiting for browsers, other processes and clocks: begun last, they would have a
 * core to themselves. The hundreds of short ones after them keep all cores busy to the end.
 */
const LONGEST = [
  'engine/questions/technique/technique',
  'engine/questions/learned/learned',
  'sets/sets',
  'faults/start',
  'faults/upgrade',
  'photo/read',
  'browser/challenge',
  'browser/bench',
  'talks/talks',
  'faults/two-processes',
  'commands/plan/privacy',
  'browser/screens',
  'faults/process',
  'standards/recompute/nasty',
  'terminal/challenge',
  'faults/batch-kills',
  'page/start',
  'terminal/refusals',
  'standards/recompute/plausible',
  'records/sqlite',
  'discord/longest',
  'docker/image',
  'conversation/every-reply/every-reply',
  'photo/colours',
  'browser/access',
  'engine/questions/lye/topics/nearest/nearest-matter',
  'commands/calibrate/command',
  'browser/photo',
  'loopback/answering',
  'engine/hazards/emergencies/learned',
  'faults/slow-store',
  'commands/batch/command',
  'loopback/challenge-crowd',
  'loopback/limits',
  'commands/diagnose/command',
  'structure/third-language',
  'records/postgres',
  'records/backup/backup',
  'conversation/first-aid/hazards',
  'commands/challenge/command',
  'faults/kills',
  'conversation/faces/faces',
  'commands/ask/lye/lye',
  'demo/demo',
  'faults/operations',
].map(name => `/tests/${name}.test.ts`);

const placeOf = ({ moduleId }: TestSpecification): number => {
  const at = LONGEST.findIndex(end => moduleId.endsWith(end));
  return at === -1 ? LONGEST.length : at;
};

/**
 * Files that have a process each first, since a process shared by others would end and begin anew between them; then the
 * longest, also on a machine that has run none of them yet; else as vitest orders them.
 */
export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const shares = ({ project }: TestSpecification) => Number(project.config.isolate === false);
    return sorted.toSorted((a, b) => shares(a) - shares(b) || placeOf(a) - placeOf(b));
  }
}
