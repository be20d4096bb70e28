import { expect, test } from 'vitest';
import { infer } from '../../../src/engine/flaws/inference.ts';
import { photographed } from '../../../src/engine/flaws/photo-evidence.ts';

test('what a picture is sure of to the usual share says nothing, surer says more, never everything', () => {
  expect(photographed('orange-spots', 0.15).probability).toBeCloseTo(0.5, 10);
  const rising = [0.5, 0.66, 0.85, 0.97].map(sure => photographed('orange-spots', sure).probability);
  expect(rising).toEqual(rising.toSorted((a, b) => a - b));
  expect(photographed('orange-spots', 1).probability).toBe(0.98);
});

test('Bayes over the usual share gives the picture its own confidence back', () => {
  const { probability } = photographed('powdery-film', 0.8);
  const odds = (0.15 / 0.85) * (probability / (1 - probability));
  expect(odds / (1 + odds)).toBeCloseTo(0.8, 10);
});

test('picture and words on one finding agree more than either alone', () => {
  const words = { finding: 'orange-spots', probability: 0.9, via: 'words', from: 'orange' } as const;
  const picture = photographed('orange-spots', 0.7);
  const both = infer([words, picture]).causes.rancidity;
  expect(both).toBeGreaterThan(infer([words]).causes.rancidity);
  expect(both).toBeGreaterThan(infer([picture]).causes.rancidity);
});
