import { expect, test } from 'vitest';
import { FINDINGS, type FindingId } from '../../../src/engine/flaws/findings.ts';
import { infer } from '../../../src/engine/flaws/inference.ts';
import { MOST_RATIO, photographed } from '../../../src/engine/flaws/photo-evidence.ts';

test('an answer given as often with the finding as without says nothing, a rarer false one says more', () => {
  expect(photographed('orange-spots', 1).probability).toBe(0.5);
  expect(photographed('orange-spots', 4).probability).toBeCloseTo(0.8, 10);
});

test('Bayes with that evidence moves the odds by the ratio', () => {
  const { probability } = photographed('powdery-film', 3);
  const odds = (chance: number) => chance / (1 - chance);
  const before = 0.2;
  const after = (probability * before) / (probability * before + (1 - probability) * (1 - before));
  expect(odds(after) / odds(before)).toBeCloseTo(3, 10);
});

test('a picture never outweighs a plain yes or no of the maker', () => {
  const { probability } = photographed('pinholes', 1e9);
  const seen = Object.values(FINDINGS).filter(({ group }) => group === 'seen');
  for (const { said, denied } of seen) {
    expect(probability).toBeLessThan(said);
    expect(probability * denied).toBeLessThan((1 - probability) * (1 - denied));
  }
});

test('what the maker denies stays about as unlikely as it was, whatever the picture shows', () => {
  const finding: FindingId = 'orange-spots';
  const no = { finding, probability: FINDINGS[finding].denied, via: 'answer', from: 'no' } as const;
  const both = infer([no, photographed(finding, MOST_RATIO)]).causes.rancidity;
  const picture = infer([photographed(finding, MOST_RATIO)]).causes.rancidity;
  expect(both).toBeLessThan(1.5 * infer([]).causes.rancidity);
  expect(picture).toBeGreaterThan(2 * infer([]).causes.rancidity);
});

test('picture and words on one finding agree more than either alone', () => {
  const words = { finding: 'orange-spots', probability: 0.9, via: 'words', from: 'orange' } as const;
  const picture = photographed('orange-spots', 5);
  const both = infer([words, picture]).causes.rancidity;
  expect(both).toBeGreaterThan(infer([words]).causes.rancidity);
  expect(both).toBeGreaterThan(infer([picture]).causes.rancidity);
});
