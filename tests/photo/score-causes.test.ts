import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { answers, shareOf } from '../../src/photo/training/counting.ts';
import { type Read, readTold, shownBy, tableOf, toldIn } from '../../src/photo/training/score-causes.ts';
import { readPhoto } from './in-a-thread.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'set-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

type Finding = Read['reading']['findings'][number];
const seen = (id: Finding['id'], answer: Finding['answer']): Finding => ({
  id,
  answer,
  strength: 0.1,
  confidence: 0.6,
  ratio: 3,
  region: { box: { x: 0, y: 0, width: 1, height: 1 }, outlines: [] },
  measures: { share: 0.1, count: 1, size: 0.1 },
});
const read = (cause: Read['cause'], findings: readonly Finding[], bars = 1): Read => ({
  file: 'a.jpg',
  cause,
  reading: {
    width: 10,
    height: 10,
    unread: undefined,
    bars: Array.from({ length: bars }, () => ({
      box: { x: 0, y: 0, width: 1, height: 1 },
      outline: [],
      rectangularity: 1,
    })),
    whiteReference: undefined,
    colours: [],
    findings,
    quality: { blur: 0, noise: 0, glare: 0, light: 1, resolution: 500 },
  },
});

describe('a set that members gave', () => {
  test('is read from its lines, those of several parts together, and its pictures by the reader', async () => {
    copyFileSync(new URL('heif/bar-with-crackle.heic', import.meta.url), join(folder, 'a.jpg'));
    writeFileSync(
      join(folder, 'labels-1.jsonl'),
      '{"file":"a.jpg","cause":"white-pigment-crackle","width":9}\n',
    );
    const [one, ...more] = (await readTold(folder, readPhoto)) ?? [];
    expect([one?.cause, one?.reading.bars.length, more.length]).toEqual(['white-pigment-crackle', 1, 0]);
    writeFileSync(join(folder, 'labels-2.jsonl'), '{"file":"b.jpg","cause":"something-else"}\n\n');
    expect(toldIn(folder)?.map(({ file }) => file)).toEqual(['a.jpg', 'b.jpg']);
  });

  test('without lines is none; with a wrong one is refused', () => {
    expect(toldIn(folder)).toBeUndefined();
    writeFileSync(join(folder, 'x.jsonl'), '{"file":"a.jpg","cause":"gremlins"}');
    expect(() => toldIn(folder)).toThrow(/cause/);
    writeFileSync(join(folder, 'x.jsonl'), '{"file":"../a.jpg","cause":"soda-ash"}');
    expect(() => toldIn(folder)).toThrow(/file/);
  });

  test('is counted by what each cause brings', () => {
    expect(shownBy('soda-ash')).toEqual(['powdery-film']);
    const table = tableOf([
      read('soda-ash', [seen('powdery-film', 'seen')]),
      read('soda-ash', [seen('powdery-film', 'possibly'), seen('crack', 'seen')]),
      read('soda-ash', [], 0),
      read('something-else', [seen('crack', 'seen')]),
    ]);
    expect(table).toContain('bar found: 3 of 4');
    expect(table).toMatch(/\| soda-ash \| 3 \| powdery-film \| 1 of 3, .* \| 2 of 3, .* \|/);
    expect(table).toContain('| something-else | 1 | nothing taught | | |');
  });
});

test('intervals are Wilson’s', () => {
  // R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I: 81 of 263, 0.2553 to 0.3662; 15 of 148, 0.0624 to 0.1605.
  expect(shareOf(81, 263)).toBe('81 of 263, 31 % (26 % to 37 %)');
  expect(shareOf(15, 148)).toBe('15 of 148, 10 % (6 % to 16 %)');
});

test('a hole or speck told as one counts for both', () => {
  const reading = { findings: [seen('pit-or-speck', 'possibly')] };
  expect(['pinholes', 'coloured-specks', 'crack'].map(id => answers(reading, id, ['possibly']))).toEqual([
    true,
    true,
    false,
  ]);
  expect(answers(reading, 'pinholes', ['seen'])).toBe(false);
});
