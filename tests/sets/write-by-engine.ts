/*
 * `node tests/sets/write-by-engine.ts [PART...]`: chooses, for these parts or all, of the lines that the engine alone reads as their writers labelled them, some that come by
 * every place of it that any of them comes by, several times where there are so many; quick ones first. A quarter of an hour.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { Session } from 'node:inspector/promises';
import { switches } from '../mutants/messages.ts';
import '../mutants/setup.ts';
import type { Line, Read } from './by-engine.ts';

/** So many lines should come by each place, where there are so many. */
const TIMES = 10;
/** Milliseconds of processor time that the lines of a part may take together, as measured with coverage. */
const MOST_MILLIS: Readonly<Record<Read, number>> = {
  amounts: 2800,
  colours: 500,
  questions: 2500,
  portions: 2000,
  scope: 350,
  recipes: 2200,
  standing: 500,
  altered: 1300,
};
/** What of the engine each part is asked of. */
const ROOMS: Readonly<Record<Read, RegExp>> = {
  amounts: /\/src\/engine\/(?:text|quantities|questions\/options)\//u,
  colours: /\/src\/engine\/text\//u,
  questions: /\/src\/engine\/(?:text|quantities|questions|colourants)\//u,
  portions: /\/src\/engine\/questions\/(?:portion-line|plans|options|found)\//u,
  scope: /\/src\/engine\/(?:text|questions)\//u,
  recipes: /\/src\/engine\/(?:text|quantities|questions|batch)\//u,
  standing: /\/src\/engine\/(?:text|questions)\//u,
  altered: /\/src\/engine\/(?:text|questions)\//u,
};

const { linesOf, READ } = await import('./by-engine.ts');
const session = new Session();
session.connect();
await session.post('Profiler.enable');
await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });

/** Places that a line came by, and those that it came to and passed. */
async function placesOf(line: Line, of: RegExp) {
  const context = switches();
  context.run = (context.run ?? 0) + 1;
  await session.post('Profiler.takePreciseCoverage');
  const before = process.cpuUsage();
  const wrong = line.wrong();
  const { user } = process.cpuUsage(before);
  const { result } = await session.post('Profiler.takePreciseCoverage');
  const places: string[] = [];
  for (const { url, functions } of result)
    if (of.test(url))
      for (const { ranges, isBlockCoverage } of functions)
        if (isBlockCoverage && ranges[0]!.count > 0)
          for (const { startOffset, endOffset, count } of ranges)
            places.push(`${url} ${startOffset} ${endOffset} ${count > 0}`);
  return { wrong, micros: user, places };
}

const numbers = new Map<string, number>();
const numberOf = (place: string) => {
  const known = numbers.get(place) ?? numbers.size;
  numbers.set(place, known);
  return known;
};
type Known = { readonly line: Line; readonly micros: number; readonly places: Uint32Array };
const file = new URL('held/by-engine.json', import.meta.url);
const asked = process.argv.slice(2);
const held: Record<string, Record<string, number[]>> = asked.length === 0
  ? {}
  : JSON.parse(readFileSync(file, 'utf8'));
for (const part of READ.filter(one => asked.length === 0 || asked.includes(one))) {
  const times: number[] = [];
  const known: Known[] = [];
  let right = 0;
  held[part] = {};
  // What is asked for its portion is another line than those that are asked for all that they tell.
  const others = part === 'portions' ? (held.questions ?? {}) : {};
  const all = linesOf(part).filter(line => !others[line.file]?.includes(line.at));
  for (const line of all) {
    const { wrong, micros, places } = await placesOf(line, ROOMS[part]);
    if (wrong !== undefined) continue;
    right += 1;
    known.push({ line, micros: Math.max(micros, 300), places: new Uint32Array(places.map(numberOf)) });
  }
  // Each place weighs less with each line that came by it.
  const worthOf = ({ micros, places }: Known) => {
    let sum = 0;
    for (const place of places) if ((times[place] ?? 0) < TIMES) sum += 1 / (1 + (times[place] ?? 0));
    return sum / Math.sqrt(micros);
  };
  // What a line is worth only falls: the best by an older figure is looked at anew until it stays the best.
  const heap = known.map(one => ({ one, worth: worthOf(one) })).sort((a, b) => b.worth - a.worth);
  let millis = 0;
  while (heap.length > 0 && millis < MOST_MILLIS[part]) {
    const top = heap.shift()!;
    const worth = worthOf(top.one);
    if (worth <= 0) continue;
    if (heap.length > 0 && worth < heap[0]!.worth) {
      let at = heap.findIndex(other => other.worth < worth);
      if (at < 0) at = heap.length;
      heap.splice(at, 0, { one: top.one, worth });
      continue;
    }
    millis += top.one.micros / 1000;
    for (const place of top.one.places) times[place] = (times[place] ?? 0) + 1;
    const { line } = top.one;
    const own: Record<string, number[]> = held[part] ?? {};
    held[part] = { ...own, [line.file]: [...(own[line.file] ?? []), line.at] };
  }
  const chosen = Object.values(held[part] ?? {}).flat().length;
  process.stdout.write(
    `${part}: ${right} of ${all.length} read, ${chosen} held, ${Math.round(millis)} ms, ${numbers.size} places\n`,
  );
}
const sorted = Object.fromEntries(
  READ.map(part => [
    part,
    Object.fromEntries(
      Object.entries(held[part] ?? {})
        .toSorted(([one], [other]) => (one < other ? -1 : 1))
        .map(([file, ats]) => [file, ats.toSorted((one, other) => one - other)]),
    ),
  ]),
);
writeFileSync(file, `${JSON.stringify(sorted)}\n`);
