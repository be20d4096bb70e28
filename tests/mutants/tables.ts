/**
 * Changes one figure or word of a table at a time, drawn from the tables of the engine: what is computed once, while a file is loaded,
 * no other run changes. `npm run mutants:tables -- --sample=20 hazards` so many of a room, without names of the whole engine.
 * Prints what no test of the room minded, and the share with its interval; that of the whole engine is kept in `scores.json` and may not
 * be surely below what is kept there.
 */
import { resolve } from 'node:path';
import { percentOf, surelyBelow } from './overall.ts';
import { ProjectCopy } from './project-copy.ts';
import { filesOf, ROOMS } from './rooms.ts';
import { interval } from './sample.ts';
import { Scores } from './scores.ts';
import { drawnEntries } from './table-entries.ts';

const root = resolve(import.meta.dirname, '../..');
const asked = process.argv.slice(2);
const names = asked.filter(name => !name.startsWith('--'));
const most = Number(asked.map(name => /^--sample=(\d+)$/.exec(name)?.[1]).find(Boolean) ?? 20);
const rooms = Object.entries(ROOMS).filter(([name]) => names.length === 0 || names.includes(name));
const roomOf = (file: string) => rooms.find(([, { sources }]) => filesOf(root, sources).includes(file))![1];

using copy = new ProjectCopy(root);
const files = rooms.flatMap(([, { sources }]) => filesOf(root, sources));
const entries = drawnEntries(root, files, most);
let noticed = 0;
for (const edit of entries) {
  const isNoticed = copy.minds(edit, filesOf(root, roomOf(edit.file).tests));
  if (isNoticed) noticed += 1;
  process.stdout.write(`${isNoticed ? 'noticed' : 'MISSED '}  ${edit.file}  ${edit.from}  ->  ${edit.to}\n`);
}
const { low, high } = interval(noticed, entries.length);
const percent = (share: number) => `${percentOf(share)} %`;
process.stdout.write(
  `tables: ${percent(noticed / Math.max(1, entries.length))} (${noticed} of ${entries.length}), 95 % from ${percent(low)} to ${percent(high)}\n`,
);

if (names.length === 0) {
  const kept = new Scores();
  const score = {
    noticed,
    of: entries.length,
    all: drawnEntries(root, files, Number.POSITIVE_INFINITY).length,
  };
  const bound = surelyBelow(score, kept.tables?.percent);
  if (bound === undefined) kept.keepTables(score);
  else {
    process.stdout.write(`tables: surely below ${bound} %\n`);
    process.exitCode = 1;
  }
}
