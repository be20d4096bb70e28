import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { ratioOfReflectance, reflectanceOfRatio } from '../../../../src/engine/colour/mixing/kubelka-munk.ts';
import { inverseSaunderson, saundersonReflectance } from '../../../../src/engine/colour/mixing/saunderson.ts';
import { filmReflectance, hidingReflectance } from '../../../standards/characterisation/film-optics.ts';
import { ORDINARY_SURFACE } from '../../../standards/characterisation/settings.ts';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a hiding layer', () => {
  test('that absorbs nothing reflects everything', () => {
    expect(reflectanceOfRatio(0)).toBe(1);
  });

  test.prop([share(0.005, 0.999)])('has the K/S that its reflectance says', reflectance => {
    expect(reflectanceOfRatio(ratioOfReflectance(reflectance))).toBeCloseTo(reflectance, 9);
  });
});

describe('a film', () => {
  test.prop([share(0.01, 3), share(0.2, 3), share(0, 1)])(
    'without depth shows its backing',
    (k, s, backing) => {
      expect(filmReflectance(k * 1e-9, s * 1e-9, backing)).toBeCloseTo(backing, 6);
    },
  );

  test.prop([share(0.01, 3), share(0.2, 3), share(0, 1)])(
    'of great depth hides its backing',
    (k, s, backing) => {
      expect(filmReflectance(k * 200, s * 200, backing)).toBeCloseTo(reflectanceOfRatio(k / s), 6);
    },
  );

  test.prop([share(0.02, 2), share(0.3, 2)])('tells its hiding reflectance from two backings', (k, s) => {
    const pair = {
      overWhite: filmReflectance(k, s, 0.8),
      overBlack: filmReflectance(k, s, 0.02),
      white: 0.8,
      black: 0.02,
    };
    expect(hidingReflectance(pair)).toBeCloseTo(reflectanceOfRatio(k / s), 3);
  });
});

describe('the surface', () => {
  test.prop([share(0.001, 1)])('takes back what it did', within => {
    const seen = saundersonReflectance(within, ORDINARY_SURFACE);
    expect(inverseSaunderson(seen, ORDINARY_SURFACE)).toBeCloseTo(within, 9);
  });

  test('leaves a perfect white white and lends black its gloss', () => {
    expect(saundersonReflectance(1, ORDINARY_SURFACE)).toBeCloseTo(1, 12);
    expect(saundersonReflectance(0, ORDINARY_SURFACE)).toBe(0.04);
  });
});
