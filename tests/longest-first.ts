import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that wait longest, for browsers, other processes and clocks: begun last, they would have a core to themselves. */
const LONGEST = [
  'faults/two-processes',
  'browser/challenge',
  'photo/read',
  'browser/screens',
  'browser/access',
  'browser/bench',
  'faults/process',
  'page/start',
  'sets/sets',
  'browser/photo',
  'discord/longest',
  'loopback/challenge-crowd',
  'records/postgres',
  'terminal/refusals',
  'structure/third-language',
  'engine/hazards/learned',
  'engine/questions/nearest-matter',
].map(name => `/tests/${name}.test.ts`);

const placeOf = ({ moduleId }: TestSpecification): number => {
  const at = LONGEST.findIndex(end => moduleId.endsWith(end));
  return at === -1 ? LONGEST.length : at;
};

/** The longest files of each project first, also on a machine that has run none of them yet; else as vitest orders them. */
export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const byProject = Map.groupBy(sorted, ({ project }) => project.name);
    return [...byProject.values()].flatMap(own => own.toSorted((a, b) => placeOf(a) - placeOf(b)));
  }
}
