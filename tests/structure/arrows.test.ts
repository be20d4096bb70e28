import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

/** Which rooms each room may look into. `engine` and `loopback` look nowhere. */
const arrows: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  loopback: [],
  words: ['engine', 'records'],
  photo: ['engine'],
  pictures: ['engine'],
  workers: ['engine', 'photo', 'pictures'],
  records: ['engine'],
  conversation: ['engine', 'records', 'words', 'workers'],
  deadlines: ['engine', 'records', 'conversation'],
  operations: [],
  presenting: ['engine', 'records', 'words', 'conversation'],
  commands: ['engine', 'records', 'words', 'workers', 'conversation', 'presenting'],
  discord: ['engine', 'words', 'conversation'],
  terminal: ['engine', 'words', 'conversation'],
  page: ['engine', 'loopback', 'words'],
  demo: ['loopback', 'page', 'words'],
};

/**
 * The rooms of the engine from the ground up: each may look into those before it. What is read by itself, and what a room's own
 * table of names is read with, stands below the room, in a folder of its own; questions, which read all of it, stand on top.
 */
const FLOORS = [
  'colour/spectra',
  'text',
  'text/patterns',
  'text/spelling',
  'quantities',
  'hazards/scents',
  'hazards/colours',
  'batch/oils',
  'colourants',
  'text/colours/words',
  'text/spelling/trade',
  'text/names',
  'dispersion',
  'text/colours',
  'text/amounts',
  'batch/oils/lists',
  'quantities/told',
  'batch/additives',
  'heat',
  'stability',
  'hazards/no-colour',
  'colourants/asked',
  'text/learned',
  'colour',
  'dosing',
  'challenges',
  'batch',
  'cost',
  'flaws',
  'hazards/emergencies',
  'hazards',
  'palettes',
  'pouring',
  'questions',
] as const;

const files = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(file => /\.ts$/.test(file))
    .map(file => join(folder, file));

const roomOf = (path: string): string =>
  path.startsWith('commands/') ? 'commands' : (/^src\/([^/]+)\//.exec(path)?.[1] ?? path);

/** The room of the engine in which a file lies, the innermost of {@link FLOORS}; undefined for what all of them share. */
function floorOf(path: string): string | undefined {
  const [, inside] = /^src\/engine\/(.+)\/[^/]+$/.exec(path) ?? [];
  if (inside === undefined) return undefined;
  const within = FLOORS.filter(room => inside === room || inside.startsWith(`${room}/`));
  return within.toSorted((a, b) => b.length - a.length)[0] ?? inside;
}

const importsOf = (path: string): string[] =>
  [...readFileSync(join(root, path), 'utf8').matchAll(/(?:from|import|import\()\s*'(\.{1,2}\/[^']+)'/g)].map(
    match => relative(root, resolve(root, dirname(path), match[1] ?? '')),
  );

const sources = [...files('src'), ...files('commands')];

/** Files that lead back to themselves through their imports, those of types included: one list a circle. */
function circlesIn(imports: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const done = new Set<string>();
  const path: string[] = [];
  const circles: string[][] = [];
  const follow = (file: string): void => {
    const before = path.indexOf(file);
    if (before >= 0) circles.push([...path.slice(before), file]);
    if (before >= 0 || done.has(file)) return;
    path.push(file);
    for (const other of imports.get(file) ?? []) follow(other);
    path.pop();
    done.add(file);
  };
  for (const file of imports.keys()) follow(file);
  return circles;
}

describe('the rooms of the house', () => {
  test('every room is on the map', () => {
    const rooms = new Set(sources.map(roomOf).filter(room => !room.endsWith('.ts')));
    expect([...rooms].filter(room => !(room in arrows))).toEqual([]);
  });

  test.each(sources.filter(path => roomOf(path) in arrows))('%s looks only where it may', path => {
    const room = roomOf(path);
    const seen = importsOf(path).map(roomOf);
    expect(seen.filter(other => other !== room && !arrows[room]?.includes(other))).toEqual([]);
  });

  test('no file leads back to itself, by types either', () => {
    expect(
      circlesIn(
        new Map([
          ['a', ['b']],
          ['b', ['c']],
          ['c', ['b']],
        ]),
      ),
    ).toEqual([['b', 'c', 'b']]);
    expect(circlesIn(new Map(sources.map(path => [path, importsOf(path)])))).toEqual([]);
  });

  const ENGINE = sources.filter(path => path.startsWith('src/engine/'));

  test('every room of the engine has its floor, and what they share looks into none', () => {
    const rooms = new Set(ENGINE.map(floorOf).filter(room => room !== undefined));
    expect([...rooms].filter(room => !FLOORS.includes(room as never))).toEqual([]);
    const shared = ENGINE.filter(path => floorOf(path) === undefined && path !== 'src/engine/index.ts');
    expect(shared.filter(path => importsOf(path).some(other => floorOf(other)))).toEqual([]);
  });

  test('a room of the engine looks only into those below it', () => {
    const upwards = ENGINE.flatMap(path =>
      importsOf(path).map(other => [floorOf(path), floorOf(other)] as const),
    )
      .filter(([from, to]) => from !== undefined && to !== undefined)
      .filter(([from, to]) => FLOORS.indexOf(to as never) > FLOORS.indexOf(from as never))
      .map(([from, to]) => `${from} -> ${to}`);
    expect([...new Set(upwards)].toSorted()).toEqual([]);
  });

  test('a command looks into another only through its follow-ups', () => {
    const commandOf = (path: string) => /^commands\/([^/.]+)/.exec(path)?.[1];
    const offenders = sources
      .filter(path => commandOf(path))
      .flatMap(path => importsOf(path).map(other => ({ path, other })))
      .filter(({ path, other }) => commandOf(other) && commandOf(other) !== commandOf(path))
      .filter(({ other }) => !other.endsWith('/follow-ups.ts'));
    expect(offenders).toEqual([]);
  });

  test('the engine touches no clock, chance, disk, network or process', () => {
    const impure = /\bDate\.now\(|new Date\(\)|Math\.random\(|process\.|from 'node:|\bfetch\(/;
    const offenders = sources.filter(
      path => path.startsWith('src/engine/') && impure.test(readFileSync(join(root, path), 'utf8')),
    );
    expect(offenders).toEqual([]);
  });

  test('the chat platform is known to the discord room only, by types to the loopback host', () => {
    const offenders = sources.filter(path => {
      const text = readFileSync(join(root, path), 'utf8');
      return /from 'discord\.js'/.test(text) && roomOf(path) !== 'discord';
    });
    expect(offenders).toEqual([]);
  });
});
