import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { weighComponents } from '../../../src/engine/stability/weigh-components.ts';

const powder = (text: string, grams: number) => ({ components: checkIngredients(text).components, grams });
const grams = (powders: Parameters<typeof weighComponents>[0]) =>
  Object.fromEntries(
    weighComponents(powders).map(({ id, grams: mass = 0 }) => [id, Number(mass.toFixed(6))]),
  );

describe('the ingredients of all powders in a bar', () => {
  test('weigh what the label says in percent, and the rest falls from first to last', () => {
    expect(grams([powder('Mica 60%, Titanium Dioxide 30%, Tin Oxide', 10)])).toEqual({
      mica: 6,
      'titanium-dioxide': 3,
      'tin-oxide': 1,
    });
    expect(grams([powder('Mica, Titanium Dioxide', 3)])).toEqual({ mica: 2, 'titanium-dioxide': 1 });
  });

  test('are counted together where two powders share one', () => {
    expect(grams([powder('Mica, Iron Oxides', 3), powder('Mica', 4)])).toEqual({ mica: 6, 'iron-oxides': 1 });
  });

  test('are there for certain when one powder says so', () => {
    const [mica] = weighComponents([powder('Carmine, May contain: Mica', 1), powder('Mica', 1)]).filter(
      ({ id }) => id === 'mica',
    );
    expect(mica?.ifPresent).toBe(false);
  });

  property.prop([fc.array(fc.double({ min: 0.01, max: 50, noNaN: true }), { minLength: 1, maxLength: 6 })])(
    'weigh together what the powders weigh',
    masses => {
      const parts = weighComponents(masses.map(mass => powder('Mica, Titanium Dioxide 20%, Carmine', mass)));
      const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);
      expect(sum(parts.map(part => part.grams ?? 0))).toBeCloseTo(sum(masses), 9);
    },
  );
});
