import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { spaced, unbroken } from '../../src/engine/over-lines.ts';

const root = resolve(import.meta.dirname, '../..');
/** Characters: a change of one word has to show in a diff as that word's line. Generated weights are JSON, no source. */
const MOST = 160;

const lines = ['src', 'commands', 'packing'].flatMap(folder =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(path => /\.[jt]s$/.test(path) && !path.includes('node_modules'))
    .flatMap(path =>
      readFileSync(join(root, folder, path), 'utf8')
        .split('\n')
        .map((text, at) => ({ text, at: `${folder}/${path}:${at + 1}` })),
    ),
);

describe('what is written can be read and compared', () => {
  test('no line of source is longer than a diff can show', () => {
    expect(lines.length).toBeGreaterThan(100_000);
    expect(lines.filter(({ text }) => text.length > MOST).map(({ at }) => at)).toEqual([]);
  });

  test('no line ends in a space, which would be lost where a text goes over lines', () => {
    expect(lines.filter(({ text }) => /[ \t]$/u.test(text)).map(({ at }) => at)).toEqual([]);
  });
});

test('files keep to one subject: none is over 250 lines', () => {
  const lengths = Map.groupBy(lines, ({ at }) => at.slice(0, at.lastIndexOf(':')));
  const long = [...lengths].filter(
    ([path, all]) => /^(?:src|commands)\//u.test(path) && path.endsWith('.ts') && all.length - 1 > 250,
  );
  expect(long.map(([path]) => path)).toEqual([]);
});

describe('texts over lines', () => {
  const value = 'two\n  lines';

  test('a list of words has one space between its lines', () => {
    expect(spaced`
      lye, caustic soda,
      ${value}
      potash
    `).toBe('lye, caustic soda, two\n  lines potash');
    expect(spaced` begins and
      ends beside its mark `).toBe(' begins and ends beside its mark ');
  });

  test('a pattern has nothing between its lines, and its backslashes stay', () => {
    expect(unbroken`
      (?:lye|
      ${value}|caustic soda)\b
    `).toBe('(?:lye|two\n  lines|caustic soda)\\b');
  });
});
