import { describe, expect, test } from 'vitest';
import {
  filledCm,
  lengthUnitOf,
  levelLayers,
  type PourMould,
  parsePourMould,
  pouredMillilitres,
  surfaceCm2,
  tiltable,
} from '../../../src/engine/pouring/pour-mould.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

const refusal = (act: () => unknown): Refusal => {
  try {
    act();
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error('nothing was refused');
};
const loaf: PourMould = { shape: 'loaf', lengthCm: 25, widthCm: 9, heightCm: 7 };
const tube: PourMould = { shape: 'cylinder', diameterCm: 8, heightCm: 25 };
const tray: PourMould = { shape: 'cavities', count: 12, eachMillilitres: 100, depthCm: 3 };

describe('a mould to pour into', () => {
  test.each([
    ['25x9x7 cm', loaf],
    ['cylinder 8x25 cm', tube],
    ['12 cavities x 100 ml, 3 cm deep', tray],
    ['12 cavities x 100 ml, 30 mm deep', tray],
    // An inch is 2.54 cm by definition (NIST Handbook 44, Appendix C).
    ['12 cavities x 100 ml, 2 inches deep', { ...tray, depthCm: 5.08 }],
    ['12 cavities x 100 ml', { ...tray, depthCm: undefined }],
    ['12 cavities x 100 ml, 0 cm deep', { ...tray, depthCm: undefined }],
    ['12 x 100 ml', { ...tray, depthCm: undefined }],
    // The depth of a tray is no third side, wherever it stands.
    ['12 x 100 ml; 3 cm deep', tray],
    ['12 cavities 3 cm deep x 100 ml', tray],
    // Three sides need no word for a mould, and a litre is one that holds it.
    ['25 9 7 cm', loaf],
    ['25 x 9 cm and 7 cm deep', loaf],
    ['1 l', { shape: 'cavities', count: 1, eachMillilitres: 1000, depthCm: undefined }],
  ])('is read from %s', (text, mould) => {
    expect(parsePourMould(text)).toEqual(mould);
  });

  test('is not so many grams of oil', () => {
    expect(refusal(() => parsePourMould('1000 g of oils mould'))).toMatchObject({ id: 'pour-not-a-mould' });
  });

  test('is measured in what its owner wrote', () => {
    expect(lengthUnitOf('10 x 3.5 inch')).toBe('in');
    expect(lengthUnitOf('25x9x7 cm')).toBe('cm');
  });

  test('holds what its inside measures, by geometry', () => {
    expect(pouredMillilitres(loaf)).toBe(25 * 9 * 7);
    expect(pouredMillilitres(tube)).toBeCloseTo(Math.PI * 4 ** 2 * 25, 9);
    expect(pouredMillilitres(tray)).toBe(1200);
    expect(surfaceCm2(loaf)).toBe(25 * 9);
    expect(surfaceCm2(tube)).toBeCloseTo(Math.PI * 4 ** 2, 9);
    expect(surfaceCm2(tray)).toBe(400);
    expect(filledCm(tray)).toBe(3);
    expect(filledCm(tube)).toBe(25);
  });

  test('has no surface where nobody said how deep its cavities are', () => {
    expect(refusal(() => surfaceCm2({ ...tray, depthCm: undefined })).id).toBe('pour-cavity-depth');
  });

  test('takes level layers alike, of cavities so much into each', () => {
    expect(levelLayers(tray, 3)).toEqual(
      [1, 2, 3].map(topCm => ({ millilitres: 400, eachMillilitres: 100 / 3, topCm })),
    );
    expect(levelLayers({ ...tray, depthCm: undefined }, 2)[1]).toEqual({
      millilitres: 600,
      eachMillilitres: 50,
      topCm: undefined,
    });
    expect(levelLayers(loaf, 2)).toEqual(
      [3.5, 7].map(topCm => ({ millilitres: 787.5, eachMillilitres: undefined, topCm })),
    );
  });

  test('is tilted only where it is a loaf', () => {
    expect(tiltable(loaf)).toBe(loaf);
    for (const mould of [tube, tray])
      expect(refusal(() => tiltable(mould))).toMatchObject({
        id: 'pour-tilt-round',
        values: { shape: mould.shape },
      });
  });
});
