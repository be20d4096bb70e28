import { describe, expect, test } from 'vitest';
import { otsu } from '../../src/photo/pixels/otsu.ts';
import { type Plane, plane } from '../../src/photo/pixels/plane.ts';
import { curvature, vesselness } from '../../src/photo/pixels/ridge.ts';
import { scaleSpace } from '../../src/photo/pixels/scale-space.ts';

const SIZE = 160;
const MIDDLE = SIZE / 2;
const drawn = (value: (x: number, y: number) => number): Plane => {
  const made = plane(SIZE, SIZE);
  for (let i = 0; i < made.data.length; i++)
    made.data[i] = value((i % SIZE) - MIDDLE + 0.5, Math.floor(i / SIZE) - MIDDLE + 0.5);
  return made;
};
const scaleOf = (responses: readonly { sigma: number; response: number }[]) =>
  responses.reduce((best, one) => (one.response > best.response ? one : best)).sigma;

describe('difference of Gaussians (Marr and Hildreth 1980; Lindeberg 1998: blobs answer at their own scale)', () => {
  // For a bell of variance t0 the scale-normalised Laplacian peaks at t = t0; for a disc of radius r at r / sqrt 2. A
  // difference of levels sigma and sqrt(2) sigma stands for the Laplacian between them, at sigma 2^(1/4).
  const between = 2 ** 0.25;
  const answering = (picture: Plane) =>
    scaleOf(
      scaleSpace(picture, 4).map(({ band, sigma, step }) => ({
        sigma: sigma * between,
        response: Math.abs(band.data[Math.floor(MIDDLE / step) * band.width + Math.floor(MIDDLE / step)]!),
      })),
    );

  test.each([2, 3, 4, 6, 8])('a bell of standard deviation %d peaks within a level of that scale', sigma => {
    const scale = answering(drawn((x, y) => 40 * Math.exp(-(x * x + y * y) / (2 * sigma * sigma))));
    expect(Math.abs(Math.log2(scale / sigma))).toBeLessThanOrEqual(0.5);
  });

  test.each([3, 5, 8, 12])('a disc of radius %d peaks within a level of radius over root 2', radius => {
    const scale = answering(drawn((x, y) => (Math.hypot(x, y) < radius ? 40 : 0)));
    expect(Math.abs(Math.log2((scale * Math.SQRT2) / radius))).toBeLessThanOrEqual(0.5);
  });

  test('an even field and an even slope answer nowhere', () => {
    for (const picture of [drawn(() => 50), drawn((x, y) => 50 + 0.1 * x - 0.2 * y)])
      for (const { band, step } of scaleSpace(picture, 3))
        expect(
          Math.abs(band.data[Math.floor(MIDDLE / step) * band.width + Math.floor(MIDDLE / step)]!),
        ).toBeLessThan(1e-3);
  });
});

describe('ridges (Frangi and others 1998; Lindeberg 1998: a ridge answers at a scale set by its width)', () => {
  // Across a ridge of Gaussian profile with variance t0, t^(3/4) times the curvature peaks at t = 1.5 t0 when
  // normalised by gamma 3/4, and t times it grows to t = 2 t0: sigma squared times curvature peaks at sqrt(2) s0.
  test.each([1.7, 2.4, 3.4])(
    'a ridge of profile %f is sharpest within a level of root 2 times that scale',
    width => {
      const picture = drawn((x, y) => 30 * Math.exp(-((0.8 * x + 0.6 * y) ** 2) / (2 * width * width)));
      const scale = scaleOf(
        scaleSpace(picture, 4).map(({ smooth, sigma, step }) => {
          const at = Math.floor(MIDDLE / step) * smooth.width + Math.floor(MIDDLE / step);
          return { sigma, response: (sigma / step) ** 2 * Math.abs(curvature(smooth, at).across) };
        }),
      );
      expect(Math.abs(Math.log2(scale / (Math.SQRT2 * width)))).toBeLessThan(0.51);
    },
  );

  test('the way across is square to the ridge, a dark ridge bends up and a light one down', () => {
    const profile = (x: number, y: number) => 30 * Math.exp(-((0.8 * x + 0.6 * y) ** 2) / 18);
    const at = MIDDLE * SIZE + MIDDLE;
    const light = curvature(drawn(profile), at);
    const dark = curvature(
      drawn((x, y) => 50 - profile(x, y)),
      at,
    );
    expect(Math.abs(light.dx * 0.8 + light.dy * 0.6)).toBeCloseTo(1, 2);
    expect(light.across).toBeLessThan(0);
    expect(dark.across).toBeGreaterThan(0);
  });

  test('a ridge is much more of a vessel than a blob as strong', () => {
    const seen = (across: number, along: number) => vesselness({ across, along, dx: 1, dy: 0 }, 2, 1);
    expect(seen(-2, 0)).toBeGreaterThan(0.9);
    expect(seen(-2, -2)).toBeLessThan(0.2);
    expect(seen(-0.01, 0)).toBeLessThan(0.01);
  });
});

describe('Otsu 1979', () => {
  test('two heaps of values are parted between them', () => {
    const values = Float32Array.from(
      { length: 3000 },
      (_, i) => (i % 3 === 0 ? 70 : 20) + ((i * 7919) % 100) / 10,
    );
    const threshold = otsu(values, 0, 100);
    expect(threshold).toBeGreaterThan(30);
    expect(threshold).toBeLessThan(70);
  });

  test('agrees with the criterion worked out the long way round', () => {
    const values = Float32Array.from(
      { length: 500 },
      (_, i) => ((i * i * 31) % 97) * (i % 4 === 0 ? 0.4 : 1),
    );
    const spread = (some: number[]) => {
      const mean = some.reduce((sum, value) => sum + value, 0) / some.length;
      return some.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    };
    const within = (threshold: number) => {
      const [low, high] = [[...values].filter(v => v < threshold), [...values].filter(v => v >= threshold)];
      return low.length && high.length ? spread(low) + spread(high) : Number.POSITIVE_INFINITY;
    };
    const least = Math.min(...Array.from({ length: 97 }, (_, i) => within(i + 0.5)));
    expect(within(otsu(values, 0, 97, 970))).toBeLessThan(1.01 * least);
  });
});
