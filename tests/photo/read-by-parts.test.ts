import { describe, expect, test } from 'vitest';
import type { Pixels } from '../../src/photo/decode.ts';
import { findingsOf } from '../../src/photo/findings/found.ts';
import { TAUGHT_IDS, type TaughtId } from '../../src/photo/findings/ids.ts';
import { placesOf } from '../../src/photo/findings/places.ts';
import type { Seen } from '../../src/photo/network/passes.ts';
import { maskWhere, type Plane, plane } from '../../src/photo/pixels/plane.ts';
import { readingOf } from '../../src/photo/read.ts';
import { sceneOf } from '../../src/photo/scene/scene.ts';

const SIDE = 200;
type Where = (x: number, y: number) => boolean;
const isBar: Where = (x, y) => x >= 40 && x < 120 && y >= 50 && y < 150;

/** A picture in greys: `bright` where `there` holds, 20 elsewhere. */
function picture(bright: number, there: Where): Pixels {
  const rgb = new Uint8Array(3 * SIDE * SIDE);
  for (let i = 0; i < SIDE * SIDE; i++)
    rgb.fill(there(i % SIDE, Math.floor(i / SIDE)) ? bright : 20, 3 * i, 3 * i + 3);
  return { width: SIDE, height: SIDE, rgb };
}

function mapOf(chance: (x: number, y: number) => number): Plane {
  const map = plane(SIDE, SIDE);
  for (let i = 0; i < map.data.length; i++) map.data[i] = chance(i % SIDE, Math.floor(i / SIDE));
  return map;
}

/** What the network would have said of a bar at {@link isBar}. */
const seen = (poor: number, told: Partial<Record<TaughtId, Plane>> = {}, bar: Where = isBar): Seen => ({
  square: { x: SIDE / 2, y: SIDE / 2, half: SIDE / 2 },
  noSoap: -9,
  poor,
  bar: mapOf((x, y) => (bar(x, y) ? 0.9 : 0.01)),
  maps: TAUGHT_IDS.map(id => told[id] ?? plane(SIDE, SIDE)),
  answers: TAUGHT_IDS.map(id => (told[id] ? -1 : -9)),
});

describe('why a picture is not read', () => {
  test.each([
    // Brightest twentieth 0.35, 0.7 and 0.16 of white.
    [90, 20, 'dark'],
    [180, 20, 'blur'],
    [180, -20, undefined],
    [40, -20, 'dark'],
  ] as const)('a bar at %i of 255, poor %i: %s', (bright, poor, unread) => {
    expect(readingOf(picture(bright, isBar), seen(poor)).unread).toBe(unread);
  });
});

describe('holes and specks told as one', () => {
  const dots = (from: number, to: number) =>
    mapOf((x, y) => (x >= 50 && x < 110 && y >= from && y < to ? 0.9 : 0.01));
  const toldOf = (from: number) =>
    findingsOf(
      picture(180, isBar),
      seen(-20, { pinholes: dots(60, 100), 'coloured-specks': dots(from, from + 40) }),
    )
      .map(({ id }) => id)
      .toSorted();

  test('where a third of their places is in both, not where a tenth is', () => {
    expect(toldOf(86)).toEqual(['pit-or-speck']);
    expect(toldOf(96)).toEqual(['coloured-specks', 'pinholes']);
  });
});

test('a faint map is outlined from three fifths of its height', () => {
  const map = mapOf((x, y) => (y >= 100 ? 0 : x < 20 ? 0.4 : x < 60 ? 0.26 : x < 100 ? 0.2 : 0));
  const everywhere = maskWhere(SIDE, SIDE, () => true);
  const { share } = placesOf(map, everywhere, SIDE, (x, y) => ({ x, y }), 1);
  expect(share).toBeCloseTo((60 * 100) / (SIDE * SIDE), 10);
});

describe('white beside the bar', () => {
  const isSheet: Where = (x, y) => x >= 120 && x < 190 && y >= 40 && y < 160;
  const photo = picture(240, isSheet);
  const sheetWith = (part: number) =>
    sceneOf(
      photo,
      seen(-20, {}, (x, y) => isBar(x, y) || (isSheet(x, y) && x < 120 + 70 * part)),
    ).white;

  test('is paper while a fifth of it is outlined as soap, and the bar’s own from two fifths', () => {
    expect(sheetWith(0.2)).toBeDefined();
    expect(sheetWith(0.4)).toBeUndefined();
  });
});

test('an even picture from edge to edge is no bar, one with a texture is', () => {
  const everywhere: Where = () => true;
  expect(sceneOf(picture(150, everywhere), seen(-20, {}, everywhere)).bars).toHaveLength(0);
  const chequered = picture(150, (x, y) => (x >> 4) % 2 === (y >> 4) % 2);
  expect(sceneOf(chequered, seen(-20, {}, everywhere)).bars).toHaveLength(1);
});
