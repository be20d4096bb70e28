import { describe, expect, test } from 'vitest';
import { colourRange, drawPalette, reaches, withinReach } from '../../../src/engine/challenges/reach.ts';
import { gramsPerHundred } from '../../../src/engine/colour/jars/colourant-optics.ts';
import { matchColour } from '../../../src/engine/colour/matching/match.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../src/engine/colour/mixing/base-soap.ts';
import { colourDifference, labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { candidates, ONE_CUP } from '../colour/shelves.ts';
import { refused } from '../quantities/refused.ts';

const base = plainBase('white', false);
const blues = candidates('ultramarine-blue', 'titanium-dioxide');
const earths = candidates('red-iron-oxide', 'yellow-iron-oxide', 'titanium-dioxide');
const greens = candidates('chromium-oxide-green', 'yellow-iron-oxide', 'titanium-dioxide');
const draw = (seed: string, shelves = [blues, earths, greens], leastShare = 0.6) =>
  drawPalette({ seed, size: 2, leastShare, shelves, base });

describe('what a shelf reaches', () => {
  test('is what its colourants make, not what others would', () => {
    const range = colourRange(blues, base);
    const [blue, white] = blues;
    const inBetween = [
      { optics: blue!.optics, grams: 0.25 * gramsPerHundred(blue!.ceilingTspPerCup, blue!.gramsPerTeaspoon) },
      {
        optics: white!.optics,
        grams: 0.2 * gramsPerHundred(white!.ceilingTspPerCup, white!.gramsPerTeaspoon),
      },
    ];
    expect(reaches(range, barLab(inBetween, base))).toBe(true);
    expect(reaches(range, labOfHex('#a5402d'))).toBe(false);
  });

  test('invents nothing: whatever it claims, the search for recipes comes as near', () => {
    const claimed = draw('moss').colours;
    for (const target of claimed) {
      const shelves = [earths, greens, blues].filter(shelf => reaches(colourRange(shelf, base), target));
      expect(shelves.length).toBeGreaterThanOrEqual(2);
      for (const shelf of shelves) {
        const { recipes } = matchColour({ target, candidates: shelf, base, portion: ONE_CUP, most: 2 });
        expect(recipes[0]?.deltaE).toBeLessThanOrEqual(withinReach);
      }
    }
  });

  test('is found by comparing every colour, too: no short cut of ours loses one', () => {
    const range = colourRange(earths, base);
    for (const wanted of draw('any', [earths], 1).colours.concat(range.slice(0, 60)))
      for (const shift of [-6, -3, 0, 3, 6]) {
        const target = { l: wanted.l + shift, a: wanted.a - shift, b: wanted.b + shift };
        const plainly = range.some(colour => colourDifference(colour, target) <= withinReach);
        expect(reaches(range, target)).toBe(plainly);
      }
  });
});

describe('a palette drawn for shelves', () => {
  test('is the same for a seed, in whatever order the shelves come', () => {
    expect(draw('tide', [greens, blues, earths]).colours).toEqual(draw('tide').colours);
    expect(draw('other').colours).not.toEqual(draw('tide').colours);
  });

  test('is within reach of the share of shelves that it says', () => {
    const { colours, share } = draw('tide');
    const ranges = [blues, earths, greens].map(shelf => colourRange(shelf, base));
    const able = ranges.filter(range => colours.every(colour => reaches(range, colour))).length;
    expect(share).toBeCloseTo(able / 3);
    expect(share).toBeGreaterThanOrEqual(0.6);
  });

  test('is refused where there is no shelf, or no such palette', () => {
    expect(refused(() => draw('tide', []))).toBe('palette-no-shelves');
    expect(refused(() => draw('tide', [blues, candidates('red-iron-oxide')], 1))).toBe(
      'palette-out-of-reach',
    );
  });
});
