/**
 * Mutation tests of the engine, room by room. Survivors are printed.
 * `npm run mutants` all rooms, `npm run mutants -- lye tally` some: a room's share of noticed changes may not fall below
 * the one kept in `scores.json`, which rises by itself, nor below what the room has to reach.
 * `npm run mutants -- src/engine/cost/money.ts` that file, or those lines of it (`FILE:3-7`), with the tests of its room.
 * `npm run mutants -- --sample=300` so many mutants of the whole engine, drawn by chance, for its share and how surely.
 * `npm run mutants:changed` the lines of the engine that differ from the commit named by SINCE, else from the main branch, a
 * sample of them where they are many, for three minutes.
 */
import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { join, matchesGlob, resolve } from 'node:path';
import { changedLines } from './changed.ts';
import { inOwnProcess } from './own-process.ts';
import { ROOMS, type Room } from './rooms.ts';
import { ALL, interval } from './sample.ts';
import type { Tried } from './try-mutants.ts';

const root = resolve(import.meta.dirname, '../..');
const scoresFile = join(import.meta.dirname, 'scores.json');

type Score = { readonly percent: number; readonly noticed: number; readonly of: number };
const kept = JSON.parse(readFileSync(scoresFile, 'utf8')) as Record<string, Score>;

/** Files by globs; one that begins with `!` takes away. */
function filesOf(globs: readonly string[]): readonly string[] {
  const away = globs.filter(glob => glob.startsWith('!')).map(glob => glob.slice(1));
  const files = globSync(
    globs.filter(glob => !glob.startsWith('!')),
    { cwd: root },
  );
  return files.filter(file => !away.some(glob => matchesGlob(file, glob))).toSorted();
}

const percentOf = (part: number, whole: number) =>
  whole === 0 ? 100 : Math.floor((1000 * part) / whole) / 10;
const say = (line: string) => process.stdout.write(`${line}\n`);
function tell(name: string, { noticed, of, missed, endless }: Tried, more = ''): void {
  for (const line of [...endless, ...missed]) say(`  ${line}`);
  say(`${name}: ${percentOf(noticed, of)} % (${noticed} of ${of})${more}`);
}
function fail(line: string): void {
  say(line);
  process.exitCode = 1;
}

const roomTests = ({ tests }: Room) => filesOf(tests);

/** All mutants of a room: the kept share may not fall. */
async function whole(name: string, room: Room): Promise<void> {
  const tried = await inOwnProcess({
    root,
    places: filesOf(room.sources),
    testFiles: roomTests(room),
    draw: ALL,
  });
  const { noticed, of } = tried;
  const percent = percentOf(noticed, of);
  const before = Math.max(room.atLeast, kept[name]?.percent ?? 0);
  tell(name, tried, `, kept ${kept[name]?.percent ?? 'none'}`);
  if (percent < before) fail(`${name}: below ${before} %`);
  else {
    kept[name] = { percent, noticed, of };
    writeFileSync(scoresFile, `${JSON.stringify(kept, undefined, 2)}\n`);
  }
}

/** A sample over these rooms, each mutant as likely as any other; `lines` is how many lines of code there are in all. */
async function sampled(rooms: readonly (readonly [string, Room])[], count: number): Promise<void> {
  const linesIn = (room: Room) =>
    filesOf(room.sources).reduce(
      (sum, file) => sum + readFileSync(join(root, file), 'utf8').split('\n').length,
      0,
    );
  const lines = Object.values(ROOMS).reduce((sum, room) => sum + linesIn(room), 0);
  const share = Math.min(1, count / (MUTANTS_PER_LINE * lines));
  let [noticed, of] = [0, 0];
  for (const [name, room] of rooms) {
    const draw = { share, word: `sample of ${name}` };
    const tried = await inOwnProcess({
      root,
      places: filesOf(room.sources),
      testFiles: roomTests(room),
      draw,
    });
    tell(name, tried);
    noticed += tried.noticed;
    of += tried.of;
  }
  const { low, high } = interval(noticed, of);
  say(
    `in all: ${percentOf(noticed, of)} % (${noticed} of ${of}), 95 % from ${percentOf(low, 1)} to ${percentOf(high, 1)} %`,
  );
}

/** As seen in this engine; only for how large a sample becomes. */
const MUTANTS_PER_LINE = 1;
/** All mutants of one file, or of some lines of it: what its room keeps is not touched. */
async function ofFile(place: string): Promise<void> {
  const file = place.replace(/:[\d-]+$/u, '');
  const room = Object.values(ROOMS).find(({ sources }) => filesOf(sources).includes(file));
  if (room === undefined) throw new Error(`${file} is in no room of tests/mutants/rooms.ts`);
  tell(place, await inOwnProcess({ root, places: [place], testFiles: roomTests(room), draw: ALL }));
}

/** What `--changed` tries and how long it goes on to another room: it is part of every check. */
const MOST_CHANGED = 200;
const CHANGED_SECONDS = 180;

/** Lines that changed: no room may fall below what it should reach, as surely as so few can tell. */
async function changed(rooms: readonly (readonly [string, Room])[]): Promise<void> {
  const lines = changedLines(root, process.env.SINCE);
  const all = [...lines.values()].flat().reduce((sum, [first, last]) => sum + last - first + 1, 0);
  const share = Math.min(1, MOST_CHANGED / Math.max(1, MUTANTS_PER_LINE * all));
  const began = performance.now();
  for (const [name, room] of rooms) {
    const places = filesOf(room.sources).flatMap(file =>
      (lines.get(file) ?? []).map(([first, last]) => `${file}:${first}-${last}`),
    );
    if (places.length === 0) continue;
    if (performance.now() - began > CHANGED_SECONDS * 1000) {
      say(
        `${name}: not tried, ${CHANGED_SECONDS} s are over; \`npm run mutants -- ${name.includes(' ') ? `'${name}'` : name}\` tries it`,
      );
      continue;
    }
    const draw = { share, word: `changed in ${name}` };
    const tried = await inOwnProcess({ root, places, testFiles: roomTests(room), draw });
    tell(name, tried, share < 1 ? `, a sample of ${percentOf(share, 1)} %` : '');
    const floor = Math.min(room.atLeast, kept[name]?.percent ?? room.atLeast);
    if (100 * interval(tried.noticed, tried.of).high < floor) fail(`${name}: surely below ${floor} %`);
  }
}

const asked = process.argv.slice(2);
const names = asked.filter(name => !name.startsWith('--'));
const places = names.filter(name => name.startsWith('src/'));
const unknown = names.filter(name => !ROOMS[name] && !places.includes(name));
if (unknown.length > 0)
  throw new Error(`no such room: ${unknown.join(', ')}; there are ${Object.keys(ROOMS).join(', ')}`);
const rooms = Object.entries(ROOMS).filter(([name]) => names.length === 0 || names.includes(name));
const count = asked.map(name => /^--sample=(\d+)$/.exec(name)?.[1]).find(Boolean);

if (asked.includes('--changed')) await changed(rooms);
else if (count !== undefined) await sampled(rooms, Number(count));
else for (const [name, room] of rooms) await whole(name, room);
for (const place of places) await ofFile(place);
