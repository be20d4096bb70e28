import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import {
  type BarColour,
  colourPlaces,
  missingDifference,
  scoreColours,
  surelyNearer,
} from '../../../src/engine/challenges/measured.ts';
import type { Target } from '../../../src/engine/challenges/terms.ts';
import { colourDifference, labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';

const target = (hex: string, share?: number): Target => ({ hex, lab: labOfHex(hex), share });
const colour = (hex: string, share: number, plusMinus = 2): BarColour => ({
  lab: labOfHex(hex),
  share,
  plusMinus,
});
const violet = '#5b3a8c';
const teal = '#1f7a78';
const cream = '#f0e6d0';
const apart = (one: string, other: string) => colourDifference(labOfHex(one), labOfHex(other));

describe('a bar measured against a palette', () => {
  test('scores 0 when each palette colour is there and nothing else, in whatever order', () => {
    const score = scoreColours([target(violet), target(teal)], [colour(teal, 0.6), colour(violet, 0.4)]);
    expect(score).toMatchObject({ score: 0, stray: { share: 0, adds: 0 } });
    expect(score!.matches.map(match => match.bar)).toEqual([1, 0]);
  });

  test('gives each palette colour a bar colour of its own, even where one bar colour would serve both', () => {
    const score = scoreColours([target(violet), target('#6b4a9c')], [colour(violet, 0.5), colour(teal, 0.5)]);
    expect(new Set(score!.matches.map(match => match.bar)).size).toBe(2);
  });

  test('has no score where nothing is asked for', () => {
    expect(scoreColours([], [colour(teal, 1)])).toBeUndefined();
  });

  test('charges black against white for a colour the bar lacks', () => {
    const score = scoreColours([target(violet), target(teal)], [colour(violet, 1)]);
    expect(score!.matches).toEqual([
      { target: 0, bar: 0, difference: 0, weight: 0.5 },
      { target: 1, bar: undefined, difference: missingDifference, weight: 0.5 },
    ]);
    expect(score!.score).toBe(missingDifference / 2);
    expect(apart('#000000', '#ffffff')).toBeCloseTo(missingDifference, 6);
  });

  test('adds stray colour by how much of the face it takes and how far it is from the nearest', () => {
    const little = scoreColours([target(violet)], [colour(violet, 0.9), colour(cream, 0.1)])!;
    const much = scoreColours([target(violet)], [colour(violet, 0.5), colour(cream, 0.5)])!;
    expect(little.score).toBeCloseTo(0.1 * apart(violet, cream), 9);
    expect(much.score).toBeCloseTo(0.5 * apart(violet, cream), 9);
    expect(much.stray.share).toBeCloseTo(0.5, 9);
  });

  test('takes no speck for a colour of the bar', () => {
    const bar = [colour(cream, 0.981), colour(violet, 0.019)];
    expect(scoreColours([target(violet)], bar)!.matches[0]).toMatchObject({ bar: 0 });
    expect(scoreColours([target(violet)], [colour(violet, 0.019)])).toBeUndefined();
    expect(
      scoreColours([target(violet)], [colour(cream, 0.98), colour(violet, 0.02)])!.matches[0],
    ).toMatchObject({
      bar: 1,
    });
  });

  test('weighs palette colours by the share they were wanted in', () => {
    const bar = [colour(violet, 0.5), colour('#2f8a88', 0.5)];
    const mostlyViolet = scoreColours([target(violet, 3), target(teal, 1)], bar)!;
    const mostlyTeal = scoreColours([target(violet, 1), target(teal, 3)], bar)!;
    expect(mostlyTeal.score).toBeCloseTo(3 * mostlyViolet.score, 9);
  });

  test('carries the errors of the colours into the score, less for each the more there are', () => {
    const one = scoreColours([target(violet)], [colour(violet, 1, 3)])!;
    const two = scoreColours([target(violet), target(teal)], [colour(violet, 0.5, 3), colour(teal, 0.5, 3)])!;
    expect(one.plusMinus).toBeCloseTo(3, 9);
    expect(two.plusMinus).toBeCloseTo(3 / Math.SQRT2, 9);
  });

  const anyLab = fc.record({
    l: fc.integer({ min: 5, max: 95 }),
    a: fc.integer({ min: -60, max: 60 }),
    b: fc.integer({ min: -60, max: 60 }),
  });
  const anyTarget = anyLab.map((lab): Target => ({ hex: '#000000', lab }));
  const anyColour = fc.record({
    lab: anyLab,
    share: fc.double({ min: 0.05, max: 1, noNaN: true }),
    plusMinus: fc.constant(2),
  });

  test.prop([
    fc.array(anyTarget, { minLength: 1, maxLength: 4 }),
    fc.array(anyColour, { minLength: 1, maxLength: 6 }),
  ])('does not depend on the order of palette or bar', (palette, bar) => {
    const there = scoreColours(palette, bar)!;
    const back = scoreColours([...palette].reverse(), [...bar].reverse())!;
    expect(back.plusMinus).toBeGreaterThan(0);
    expect(back.score - back.stray.adds).toBeCloseTo(there.score - there.stray.adds, 6);
  });
});

describe('places by measured colour', () => {
  const bar = (entry: string, score: number, plusMinus: number) => ({
    entry,
    score: { score, plusMinus, matches: [], stray: { share: 0, adds: 0 } },
  });

  test('are shared by bars within their errors of one another', () => {
    expect(colourPlaces([bar('c', 9, 1), bar('b', 4.5, 1), bar('a', 4, 1)])).toEqual([['a', 'b'], ['c']]);
  });

  test('are told apart when the difference is beyond both errors together', () => {
    const [near, far] = [bar('a', 4, 1).score, bar('b', 5.5, 1).score];
    expect(surelyNearer(near, far)).toBe(true);
    expect(surelyNearer(near, bar('b', 5.4, 1).score)).toBe(false);
    expect(surelyNearer(far, near)).toBe(false);
  });

  test('leave out what could not be scored', () => {
    expect(colourPlaces([{ entry: 'neon', score: undefined }, bar('a', 4, 1)])).toEqual([['a']]);
  });

  const anyBars = fc.array(
    fc.tuple(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true })),
  );
  test.prop([anyBars])('never put a bar behind one that it is surely nearer than', scores => {
    const bars = scores.map(([score, plusMinus], i) => bar(`${i}`, score, plusMinus));
    const places = new Map(
      colourPlaces(bars).flatMap((tied, place) => tied.map(entry => [entry, place] as const)),
    );
    for (const one of bars)
      for (const other of bars)
        if (surelyNearer(one.score, other.score))
          expect(places.get(one.entry)).toBeLessThan(places.get(other.entry)!);
  });
});
