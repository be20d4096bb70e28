import { describe, expect, test } from 'vitest';
import { CAUSE_IDS } from '../../../src/engine/flaws/cause.ts';
import { WORDING_SHARE } from '../../../src/engine/flaws/consider.ts';
import { infer } from '../../../src/engine/flaws/inference.ts';
import written from '../../../src/engine/flaws/reading/wording.json' with { type: 'json' };
import { likeness, readWording } from '../../../src/engine/flaws/reading/wording.ts';
import { toldOfFlaws, wordingOf, writeWording } from './learned.ts';

const told = toldOfFlaws();

test('the wording on disk is that of the descriptions: else run npx node tests/engine/flaws/write-wording.ts', () => {
  expect(written).toEqual(writeWording(wordingOf(told)));
});

/** Makers are left out in so many groups. */
const GROUPS = 10;
const writers = [...new Set(told.flatMap(({ writer }) => writer ?? []))];
const groupOf = (writer: string) => writers.indexOf(writer) % GROUPS;

/** How likely the first cause of each is said to be, and at which place the right one comes: 0 is first. */
function judgedByOthers() {
  return Array.from({ length: GROUPS }, (_, group) => {
    const isLeftOut = ({ writer }: (typeof told)[number]) =>
      writer !== undefined && groupOf(writer) === group;
    const wording = wordingOf(told.filter(one => !isLeftOut(one)));
    return told.filter(isLeftOut).map(({ gist, evidence, cause }) => {
      const logs = likeness(gist, wording).map(log => log * WORDING_SHARE);
      const { causes } = infer(evidence, { wording: logs });
      const place = CAUSE_IDS.filter(id => causes[id] > causes[cause]).length;
      return { chance: Math.max(...Object.values(causes)), place };
    });
  }).flat();
}

describe('makers whose descriptions were left out of the counting', () => {
  const judged = judgedByOthers();
  const among = (places: number) => judged.filter(({ place }) => place < places).length / judged.length;

  test('are understood: the right cause comes first in 98 of 100, among three in 99', () => {
    console.info(`writers left out: first ${among(1)}, in three ${among(3)} of ${judged.length}`);
    expect(judged.length).toBeGreaterThan(2_000);
    expect(among(1)).toBeGreaterThan(0.98);
    expect(among(3)).toBeGreaterThan(0.99);
  });

  test('find that chances come true as often as they are told, or oftener', () => {
    for (const low of [0, 0.2, 0.4, 0.6, 0.8, 0.9]) {
      const high = low === 0.9 ? 1.01 : low === 0.8 ? 0.9 : low + 0.2;
      const band = judged.filter(({ chance }) => chance >= low && chance < high);
      if (band.length < 10) continue;
      const stated = band.reduce((sum, { chance }) => sum + chance, 0) / band.length;
      const right = band.filter(({ place }) => place === 0).length / band.length;
      console.info(`told ${stated.toFixed(2)}: came true ${right.toFixed(2)} of ${band.length}`);
      expect(right).toBeGreaterThan(stated - 0.05);
    }
  });
});

test('wording reads back as it was written', () => {
  expect(writeWording(readWording(written))).toEqual(written);
});

test('every cause has descriptions to learn from, and no word is counted oftener than its cause is told', () => {
  expect(written.cases).toHaveLength(CAUSE_IDS.length);
  expect(Math.min(...written.cases)).toBeGreaterThan(0);
  for (const row of readWording(written).seen.values())
    for (const [cause, count] of row) expect(count).toBeLessThanOrEqual(written.cases[cause] ?? 0);
});
