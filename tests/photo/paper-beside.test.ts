import { describe, expect, test } from 'vitest';
import type { Pixels } from '../../src/photo/decode.ts';
import type { Seen } from '../../src/photo/network/passes.ts';
import { wholeSquare } from '../../src/photo/network/square.ts';
import { sceneOf } from '../../src/photo/scene/scene.ts';

const SIDE = 256;
type Rectangle = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
type Colour = readonly [number, number, number];
const TABLE: Colour = [140, 110, 80];
const VIOLET: Colour = [120, 90, 160];
const WHITE: Colour = [242, 241, 238];

const within = ({ x, y, width, height }: Rectangle, i: number): boolean => {
  const [px, py] = [i % SIDE, Math.floor(i / SIDE)];
  return px >= x && px < x + width && py >= y && py < y + height;
};

/** Even rectangles on a table, all of which the network takes for soap; and `unsure`, where it is in two minds. */
function scene(things: readonly (readonly [Rectangle, Colour])[], unsure?: Rectangle) {
  const rgb = new Uint8Array(3 * SIDE * SIDE);
  const soap = new Float32Array(SIDE * SIDE);
  for (let i = 0; i < SIDE * SIDE; i++) {
    const thing = things.find(([where]) => within(where, i));
    rgb.set(thing?.[1] ?? TABLE, 3 * i);
    soap[i] = unsure && within(unsure, i) ? 0.6 : thing && thing[0] !== sheetInPart ? 1 : 0;
  }
  const photo: Pixels = { width: SIDE, height: SIDE, rgb };
  const seen: Seen = {
    square: wholeSquare(photo),
    noSoap: -9,
    poor: -9,
    bar: { width: SIDE, height: SIDE, data: soap },
    maps: [],
    answers: [],
  };
  return sceneOf(photo, seen);
}

const bar = { x: 30, y: 60, width: 100, height: 110 };
const sheet = { x: 170, y: 60, width: 60, height: 110 };
/** Another such sheet, which the network does not take for soap. */
const sheetInPart = { x: 20, y: 20, width: 200, height: 40 };

describe('a white sheet that passes for soap', () => {
  test('is paper where it lies by itself beside a darker bar', () => {
    const { bars, white } = scene([
      [bar, VIOLET],
      [sheet, WHITE],
    ]);
    expect(bars).toHaveLength(1);
    expect(white?.data[100 * SIDE + 200]).toBe(1);
  });

  test('is paper where a part of it passes, and what joins it to the bar: the outline is the bar', () => {
    const below = { x: 60, y: 76, width: 100, height: 120 };
    const joins = { x: 90, y: 24, width: 40, height: 52 };
    const { bars, white } = scene(
      [
        [below, VIOLET],
        [sheetInPart, WHITE],
      ],
      joins,
    );
    expect(bars).toHaveLength(1);
    expect(bars[0]!.rectangle.height).toBeLessThan(135);
    expect(white?.data[40 * SIDE + 30]).toBe(1);
  });

  test('is a bar where the other bar is as white', () => {
    const { bars, white } = scene([
      [bar, WHITE],
      [sheet, WHITE],
    ]);
    expect(bars).toHaveLength(2);
    expect(white).toBeUndefined();
  });

  test('is a bar where there is no other, or hardly any other', () => {
    expect(scene([[sheet, WHITE]]).bars).toHaveLength(1);
    const crumb = { x: 60, y: 100, width: 14, height: 14 };
    const { white } = scene([
      [sheet, WHITE],
      [crumb, VIOLET],
    ]);
    expect(white).toBeUndefined();
  });

  test('is half of the bar where the other half lies along one side of it', () => {
    const { bars, white } = scene([
      [{ x: 30, y: 60, width: 90, height: 120 }, WHITE],
      [{ x: 120, y: 60, width: 90, height: 120 }, VIOLET],
    ]);
    expect(bars).toHaveLength(1);
    expect(white).toBeUndefined();
  });

  test('is part of the bar where soap lies all along it', () => {
    const { bars, white } = scene([
      [{ x: 30, y: 90, width: 200, height: 40 }, WHITE],
      [{ x: 30, y: 50, width: 200, height: 120 }, VIOLET],
    ]);
    expect(bars).toHaveLength(1);
    expect(white).toBeUndefined();
  });
});
