import { describe, expect, test } from 'vitest';
import type { Pixels } from '../../src/photo/decode.ts';
import { findingsOf } from '../../src/photo/findings/found.ts';
import { TAUGHT_IDS, type TaughtId } from '../../src/photo/findings/ids.ts';
import { placesOf } from '../../src/photo/findings/places.ts';
import type { Seen } from '../../src/photo/network/passes.ts';
import { cutSquare, wholeSquare } from '../../src/photo/network/square.ts';
import { type Mask, maskWhere, type Plane, plane } from '../../src/photo/pixels/plane.ts';
import type { Pixel } from '../../src/photo/pixels/polygon.ts';

/** The area of a polygon. */
function polygonArea(points: readonly Pixel[]): number {
  let twice = 0;
  points.forEach((point, i) => {
    const next = points[(i + 1) % points.length]!;
    twice += point.x * next.y - next.x * point.y;
  });
  return Math.abs(twice) / 2;
}

const picture = (width: number, height: number, value: (x: number, y: number) => number): Pixels => {
  const rgb = new Uint8Array(width * height * 3);
  for (let i = 0; i < width * height; i++) {
    const v = value(i % width, Math.floor(i / width));
    rgb.set([v, 255 - v, 7], 3 * i);
  }
  return { width, height, rgb };
};

describe('a square cut from a picture', () => {
  test('keeps its places: a slope stays the slope, each channel its own', () => {
    const photo = picture(200, 100, x => x);
    const side = 32;
    const cut = cutSquare(photo, { x: 100, y: 50, half: 40 }, side);
    // Pixel 0 of 32 covers 60 to 62.5, its middle is 61.25; a pixel of the picture has its value at its middle.
    expect(cut[0]! * 255).toBeCloseTo(60.75, 1);
    expect(cut[31]! * 255).toBeCloseTo(138.25, 1);
    expect(cut[side * side]! * 255).toBeCloseTo(255 - 60.75, 1);
    expect(cut[2 * side * side]! * 255).toBeCloseTo(7, 5);
  });

  test('averages what is larger, and goes on with the edge beyond the picture', () => {
    const stripes = picture(256, 64, x => (x % 2 === 0 ? 0 : 200));
    const cut = cutSquare(stripes, wholeSquare(stripes), 32);
    for (const value of cut.subarray(0, 32 * 32)) expect(value * 255).toBeCloseTo(100, 0);
  });
});

const SIDE = 100;
const everywhere: Mask = maskWhere(SIDE, SIDE, () => true);
const mapOf = (inside: (x: number, y: number) => boolean): Plane => {
  const map = plane(SIDE, SIDE);
  for (let i = 0; i < map.data.length; i++) map.data[i] = inside(i % SIDE, Math.floor(i / SIDE)) ? 0.9 : 0.01;
  return map;
};
const asIs = (x: number, y: number) => ({ x: x / SIDE, y: y / SIDE });

describe('places on a map', () => {
  test('a patch is outlined along its edge: its area by the outline is the area it covers', () => {
    const map = mapOf((x, y) => x >= 20 && x < 60 && y >= 30 && y < 50 && !(x < 30 && y < 35));
    const { region, share, count } = placesOf(map, everywhere, SIDE, asIs, 1 / SIDE);
    expect(count).toBe(1);
    expect(share).toBeCloseTo(0.075, 10);
    expect(region.box).toEqual({
      x: 0.2,
      y: 0.3,
      width: expect.closeTo(0.4, 10),
      height: expect.closeTo(0.2, 10),
    });
    const [outline] = region.outlines;
    if (outline?.kind !== 'path') throw new Error('a patch is a path');
    expect(polygonArea(outline.points)).toBeCloseTo(0.075, 10);
  });

  test('dots get circles round them, of their size and number', () => {
    const map = mapOf((x, y) => x % 20 < 3 && y % 20 < 3);
    const { region, count, size } = placesOf(map, everywhere, SIDE, asIs, 1 / SIDE);
    expect(count).toBe(25);
    expect(region.outlines).toHaveLength(25);
    expect(region.outlines[0]).toMatchObject({ kind: 'circle', at: { x: 0.015, y: 0.015 } });
    // Nine pixels are a circle of diameter 3.39.
    expect(size).toBeCloseTo(0.0339, 3);
  });

  test('patches that touch at a corner, and one on the map’s rim, are followed to the end', () => {
    const map = mapOf(
      (x, y) => (x < 20 && y < 20) || (x >= 20 && x < 40 && y >= 20 && y < 40) || x === SIDE - 1,
    );
    const { region, count } = placesOf(map, everywhere, SIDE, asIs, 1 / SIDE);
    expect(count).toBe(2);
    const areas = region.outlines.map(one => (one.kind === 'path' ? polygonArea(one.points) : 0));
    expect(areas[0]).toBeCloseTo(0.08, 10);
  });

  test('nothing outside the bar counts', () => {
    const left = maskWhere(SIDE, SIDE, i => i % SIDE < 50);
    const { share } = placesOf(
      mapOf(() => true),
      left,
      50,
      asIs,
      1 / SIDE,
    );
    expect(share).toBe(1);
  });
});

/** What the network would have said: these logits and maps, the rest far below. */
function seen(told: Partial<Record<TaughtId, { logit: number; map: Plane }>>): Seen {
  return {
    square: { x: 50, y: 50, half: 50 },
    noSoap: -5,
    poor: -5,
    bar: mapOf(() => true),
    maps: TAUGHT_IDS.map(id => told[id]?.map ?? plane(SIDE, SIDE)),
    answers: TAUGHT_IDS.map(id => told[id]?.logit ?? -9),
  };
}

describe('a hole or a speck', () => {
  const photo = picture(100, 100, () => 90);
  const here = mapOf((x, y) => x % 20 < 3 && y < 40 && y % 20 < 3);
  const there = mapOf((x, y) => x % 20 < 3 && y > 60 && y % 20 < 3);

  test('both possible in the same places are told as one, which is evidence of neither', () => {
    const found = findingsOf(
      photo,
      seen({ pinholes: { logit: -1, map: here }, 'coloured-specks': { logit: -1, map: here } }),
    );
    expect(found.map(({ id }) => id)).toEqual(['pit-or-speck']);
    expect(found[0]).toMatchObject({ answer: 'possibly', ratio: 1 });
  });

  test('in different places they are two', () => {
    const found = findingsOf(
      photo,
      seen({ pinholes: { logit: 3, map: here }, 'coloured-specks': { logit: 3, map: there } }),
    );
    expect(found.map(({ id }) => id).toSorted()).toEqual(['coloured-specks', 'pinholes']);
    expect(found.find(({ id }) => id === 'pinholes')!.ratio).toBeGreaterThan(1);
  });

  test('where one is seen and the other hardly possible, it is that one', () => {
    const found = findingsOf(
      photo,
      seen({ pinholes: { logit: 3, map: here }, 'coloured-specks': { logit: -6, map: here } }),
    );
    expect(found.map(({ id }) => id)).toEqual(['pinholes']);
  });
});
