import { describe, expect, test } from 'vitest';
import { edgeBlur } from '../../src/photo/pixels/edge-blur.ts';
import { blurred } from '../../src/photo/pixels/gaussian.ts';
import { kMeans } from '../../src/photo/pixels/kmeans.ts';
import { nearest } from '../../src/photo/pixels/nearest.ts';
import { maskWhere, type Plane, plane } from '../../src/photo/pixels/plane.ts';
import { corners, hull, smallestRectangle } from '../../src/photo/pixels/polygon.ts';

const drawn = (width: number, height: number, value: (x: number, y: number) => number): Plane => {
  const made = plane(width, height);
  for (let i = 0; i < made.data.length; i++) made.data[i] = value(i % width, Math.floor(i / width));
  return made;
};

describe('the blur of a picture', () => {
  test.each([1.2, 2, 3])('a step seen through a bell of %f pixels is read as that blur', sigma => {
    const step = blurred(
      drawn(120, 160, x => (x < 60 ? 20 : 70)),
      sigma,
    );
    expect(Math.abs(edgeBlur(step) - sigma)).toBeLessThan(0.15);
  });

  test('a picture without an edge has no blur to read', () => {
    expect(edgeBlur(drawn(120, 60, () => 50))).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('shapes', () => {
  test('a turned rectangle is found again by its corners', () => {
    const given = { x: 40, y: 30, width: 50, height: 20, angle: 0.3 };
    const found = smallestRectangle(hull(corners(given)));
    for (const side of ['x', 'y', 'width', 'height', 'angle'] as const)
      expect(found[side]).toBeCloseTo(given[side], 6);
  });

  test('distance to a point is right to within the 8 % of the chamfer it is counted by', () => {
    const { distance, index } = nearest(maskWhere(81, 81, i => i === 40 * 81 + 40));
    for (const [x, y] of [
      [80, 40],
      [70, 55],
      [60, 60],
      [5, 33],
    ] as const) {
      const true_ = Math.hypot(x - 40, y - 40);
      expect(Math.abs(distance[y * 81 + x]! - true_)).toBeLessThan(0.08 * true_);
      expect(index[y * 81 + x]).toBe(40 * 81 + 40);
    }
  });
});

describe('main colours', () => {
  test('three well-parted colours are found with their shares, whatever the order', () => {
    const points = Array.from({ length: 1000 }, (_, i) =>
      i % 10 < 5 ? [80, 5, 10] : i % 10 < 8 ? [40, 30, -40] : [60, -20, 30],
    );
    const found = kMeans(Float32Array.from(points.flat()), 3, 3);
    expect(found.map(({ share }) => share)).toEqual([0.5, 0.3, 0.2]);
    expect(kMeans(Float32Array.from(points.toReversed().flat()), 3, 3)).toEqual(found);
  });
});
