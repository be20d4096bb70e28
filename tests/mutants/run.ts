/**
 * Mutation tests of the engine, room by room. Survivors are printed.
 * `npm run mutants` all rooms, `npm run mutants -- lye tally` some: a room's share of noticed changes may not fall below
 * the one kept in `scores.json`, which rises by itself, nor below what the room has to reach.
 * `npm run mutants -- --sample=60 lye` so many changes of a room, drawn by chance; without names of all rooms, with the share of the
 * whole engine. A sample's share may not be surely below the one that is kept. `--seed=WORD` draws another sample: one that was looked at
 * while tests were written judges them too well.
 * `npm run mutants -- src/engine/cost/money.ts` that file, or those lines of it (`FILE:3-7`), with the tests of its room.
 * `npm run mutants:changed` the lines of the engine that differ from the commit named by SINCE, else from the main branch, a
 * sample of them where they are many, for three minutes.
 * `npm run mutants -- --all` tries nothing and adds up what is kept of the rooms.
 * After every run but that of changed lines it is told what the rooms come to together: red where that is surely below what the engine
 * has to reach, or below what was kept.
 */
import { resolve } from 'node:path';
import { changedLines } from './changed.ts';
import { type Change, changesIn, drawnOf } from './changes.ts';
import { ALL_AT_LEAST, type Overall, overallOf, percentOf, type Score, surelyBelow } from './overall.ts';
import { inOwnProcess } from './own-process.ts';
import { filesOf, ROOMS, type Room } from './rooms.ts';
import { interval } from './sample.ts';
import { Scores } from './scores.ts';
import type { Outcome } from './try-mutants.ts';

const root = resolve(import.meta.dirname, '../..');
const kept = new Scores();
const keptBefore = kept.all;

const say = (line: string) => process.stdout.write(`${line}\n`);
const shareOf = ({ noticed, of }: { noticed: number; of: number }) => (of === 0 ? 1 : noticed / of);
const surely = ({ low, high }: { low: number; high: number }) => `95 % from ${low} % to ${high} %`;
const surelyOf = ({ noticed, of }: { noticed: number; of: number }) => {
  const { low, high } = interval(noticed, of);
  return surely({ low: percentOf(low), high: percentOf(high) });
};
type Tried = { readonly noticed: number; readonly of: number; readonly lines: readonly string[] };
const talliedOf = (outcomes: readonly Outcome[]): Tried => ({
  noticed: outcomes.filter(({ fate }) => fate !== 'missed').length,
  of: outcomes.length,
  lines: ['endless', 'missed'].flatMap(told =>
    outcomes.flatMap(({ fate, line }) => (fate === told ? [line] : [])),
  ),
});
function tell(name: string, tried: Tried, more = ''): void {
  for (const line of tried.lines) say(`  ${line}`);
  say(`${name}: ${percentOf(shareOf(tried))} % (${tried.noticed} of ${tried.of})${more}`);
}
function fail(line: string): void {
  say(line);
  process.exitCode = 1;
}

/** What becomes of these changes under all tests of these rooms: to begin takes longer than to try a dozen. */
const tryAll = (changes: readonly Change[], rooms: readonly Room[]): Promise<readonly Outcome[]> =>
  changes.length === 0
    ? Promise.resolve([])
    : inOwnProcess({
        root,
        changes,
        testFiles: [...new Set(rooms.flatMap(({ tests }) => filesOf(root, tests)))],
      });
const tryOf = async (changes: readonly Change[], room: Room) => talliedOf(await tryAll(changes, [room]));

/** All changes of a room: the kept share may not fall. */
async function whole(name: string, room: Room): Promise<void> {
  const tried = await tryOf(await changesIn(root, filesOf(root, room.sources)), room);
  tell(name, tried, `, kept ${kept.of(name)?.percent ?? 'none'}`);
  keepOrFail(name, { noticed: tried.noticed, of: tried.of }, room);
}

/** Keeps what a room reached, but where that is surely less than it has to reach or than was kept. */
function keepOrFail(name: string, score: Score, room: Room): void {
  const bound = kept.keepUnlessBelow(name, score, room.atLeast);
  if (bound !== undefined) fail(`${name}: ${score.all === undefined ? '' : 'surely '}below ${bound} %`);
}

/** What the whole engine reaches, and whether that is enough. */
function tellAll(what: string, all: Overall, before: Overall | undefined): void {
  say(`${what}: ${all.percent} %, ${surely(all)}, by ${all.of} of ${all.all} changes`);
  const bound = surelyBelow(all, ALL_AT_LEAST, before?.percent);
  if (bound !== undefined) fail(`${what}: surely below ${bound} %`);
}

/** A sample of these rooms: none may be surely below what is kept of it, nor below what it has to reach. */
async function sampled(rooms: readonly (readonly [string, Room])[], most: number): Promise<void> {
  const samples = [];
  for (const [name, room] of rooms) {
    const files = filesOf(root, room.sources);
    samples.push({ name, room, files, ...drawnOf(root, await changesIn(root, files), most, seed) });
  }
  const outcomes = await tryAll(
    samples.flatMap(({ drawn }) => drawn),
    rooms.map(([, room]) => room),
  );
  const parts: Score[] = [];
  for (const { name, room, files, of: all } of samples) {
    const tried = talliedOf(outcomes.filter(({ file }) => files.includes(file)));
    tell(name, tried, `, ${surelyOf(tried)}, of ${all} in all`);
    const score = { noticed: tried.noticed, of: tried.of, all };
    parts.push(score);
    keepOrFail(name, score, room);
  }
  if (parts.length === Object.keys(ROOMS).length) tellAll('of this sample', overallOf(parts), keptBefore);
}

/** All changes of one file, or of some lines of it: what its room keeps is not touched. */
async function ofFile(place: string): Promise<void> {
  const [, file = place, first = '1', last = 'Infinity'] = /^(.*?)(?::(\d+)-(\d+))?$/.exec(place)!;
  const room = Object.values(ROOMS).find(({ sources }) => filesOf(root, sources).includes(file));
  if (room === undefined) throw new Error(`${file} is in no room of tests/mutants/rooms.ts`);
  const changes = await changesIn(root, [file]);
  const there = changes.filter(({ start, end }) => start.line >= Number(first) && end.line <= Number(last));
  tell(place, await tryOf(there, room));
}

/** What `--changed` tries and how long it goes on to another room: it is part of every check. */
const MOST_CHANGED = 200;
const CHANGED_SECONDS = 180;

/** Lines that changed: no room may fall below what it should reach, as surely as so few can tell. */
async function changed(rooms: readonly (readonly [string, Room])[]): Promise<void> {
  const lines = changedLines(root, process.env.SINCE);
  const isChanged = ({ file, start, end }: Change) =>
    lines.get(file)!.some(([first, last]) => start.line >= first && end.line <= last);
  const changes = (await changesIn(root, [...lines.keys()])).filter(isChanged);
  const { drawn, of } = drawnOf(root, changes, MOST_CHANGED);
  const began = performance.now();
  for (const [name, room] of rooms) {
    const files = new Set(filesOf(root, room.sources));
    const own = drawn.filter(({ file }) => files.has(file));
    if (own.length === 0) continue;
    if (performance.now() - began > CHANGED_SECONDS * 1000) {
      say(
        `${name}: not tried, ${CHANGED_SECONDS} s are over; \`npm run mutants -- ${name.includes(' ') ? `'${name}'` : name}\` tries it`,
      );
      continue;
    }
    const tried = await tryOf(own, room);
    tell(name, tried, drawn.length < of ? `, a sample of ${percentOf(drawn.length / of)} %` : '');
    const floor = Math.min(room.atLeast, kept.of(name)?.percent ?? room.atLeast);
    const score = { noticed: tried.noticed, of: tried.of, all: of };
    if (surelyBelow(score, floor) !== undefined) fail(`${name}: surely below ${floor} %`);
  }
}

const asked = process.argv.slice(2);
const names = asked.filter(name => !name.startsWith('--'));
const places = names.filter(name => name.startsWith('src/'));
const unknown = names.filter(name => !ROOMS[name] && !places.includes(name));
if (unknown.length > 0)
  throw new Error(`no such room: ${unknown.join(', ')}; there are ${Object.keys(ROOMS).join(', ')}`);
const rooms = Object.entries(ROOMS).filter(([name]) => names.length === 0 || names.includes(name));
const seed = asked.map(name => /^--seed=(.+)$/.exec(name)?.[1]).find(Boolean);
const count = asked.map(name => /^--sample=(\d+)$/.exec(name)?.[1]).find(Boolean);

if (asked.includes('--changed')) await changed(rooms);
else if (count !== undefined) await sampled(rooms, Number(count));
else if (!asked.includes('--all')) for (const [name, room] of rooms) await whole(name, room);
for (const place of places) await ofFile(place);
if (asked.includes('--all') || (!asked.includes('--changed') && rooms.length > 0))
  tellAll('in all', kept.addUp(), keptBefore);
