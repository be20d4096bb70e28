import { describe, expect, test } from 'vitest';
import { firm } from '../../src/photo/network/passes.ts';

const SIDE = 40;

/** Squares of ten pixels a side of which each pixel has the chance said, and one of sixteen: the largest. */
function withPieces(largest: number, others: readonly number[]) {
  const data = new Float32Array(SIDE * SIDE).fill(0.02);
  const fill = (left: number, top: number, side: number, chance: number) => {
    for (let y = top; y < top + side; y++) data.fill(chance, y * SIDE + left, y * SIDE + left + side);
  };
  fill(0, 0, 16, largest);
  for (const [i, chance] of others.entries()) fill(12 * i, 20, 10, chance);
  const { data: kept } = firm({ width: SIDE, height: SIDE, data });
  return { largest: kept[5 * SIDE + 5]!, others: others.map((_, i) => kept[25 * SIDE + 12 * i + 5]!) };
}

describe('the pieces of an outline', () => {
  test('stay where the network is sure of them, from a mean chance of 0.7 up (chosen on one picture)', () => {
    const { others } = withPieces(0.95, [0.69, 0.71, 0.9]);
    expect(others[0]).toBe(0);
    expect(others[1]).toBeCloseTo(0.71, 5);
    expect(others[2]).toBeCloseTo(0.9, 5);
  });

  test('the largest stays however unsure the network is of it', () => {
    const { largest, others } = withPieces(0.55, [0.55, 0.8]);
    expect(largest).toBeCloseTo(0.55, 5);
    expect(others[0]).toBe(0);
    expect(others[1]).toBeCloseTo(0.8, 5);
  });

  test('it is the mean of a piece that counts, not its surest pixel', () => {
    const data = new Float32Array(SIDE * SIDE).fill(0.02);
    for (let y = 0; y < 16; y++) data.fill(0.95, y * SIDE, y * SIDE + 16);
    for (let y = 20; y < 30; y++) data.fill(y === 25 ? 0.99 : 0.6, y * SIDE, y * SIDE + 10);
    expect(firm({ width: SIDE, height: SIDE, data }).data[25 * SIDE + 5]).toBe(0);
  });

  test('what is no piece is left as it is', () => {
    const data = new Float32Array(SIDE * SIDE).fill(0.3);
    expect([...firm({ width: SIDE, height: SIDE, data }).data]).toEqual([...data]);
  });
});
