import { describe, expect, test } from 'vitest';
import { parseFragrance } from '../../../../src/engine/batch/additives/fragrance.ts';

/* Which scents speed batter: common practice (no source). */
describe('what a scent is said to do', () => {
  test.each([
    '3% accelerating',
    '3% floral that accelerates',
    '2%, it seizes',
    '3% que acelera',
    'fragrance 3%, moves fast',
  ])('%s: it speeds up', text => {
    expect(parseFragrance(text)).toMatchObject({
      percentOfOils: expect.any(Number),
      speeds: { how: 'told' },
    });
  });

  test.each([
    ['3% jasmine fragrance oil', 'jasmine'],
    ['lily of the valley 2%', 'lily'],
    ['3% de jazmín', 'jazmín'],
  ])('%s: its kind often does', (text, name) => {
    expect(parseFragrance(text).speeds).toEqual({ how: 'often', name });
  });

  test.each([
    '3%',
    '3% lavender',
    '2% of oils, vanillin 8%',
    '3% that does not accelerate',
    '3%, no acelera',
    'fragrance 3% of oils',
  ])('%s: nothing is said of it', text => {
    const { speeds, unknown } = parseFragrance(text);
    expect([speeds, unknown]).toEqual([undefined, undefined]);
  });

  test('words that nothing is known of are told, each once', () => {
    expect(parseFragrance('3% banana banana xyz').unknown).toBe('banana xyz');
    expect(parseFragrance('3% lavender and banana').unknown).toBe('banana');
  });
});
