import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { barLab } from '../../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../../src/engine/colour/mixing/base-soap.ts';
import { MixKernel } from '../../../../src/engine/colour/mixing/mix-kernel.ts';
import { candidates } from '../shelves.ts';

const base = plainBase('cream', true);
const shelf = candidates(
  'ultramarine-blue',
  'red-iron-oxide',
  'gold-mica',
  'activated-charcoal',
  'neon-pink',
  'titanium-dioxide',
);
const kernel = new MixKernel(
  shelf.map(({ optics, gramsPerTeaspoon }) => ({ optics, gramsPerUnit: gramsPerTeaspoon })),
  base,
);
const member = fc.integer({ min: 0, max: shelf.length - 1 });
const amount = fc.double({ min: 0.001, max: 0.4, noNaN: true });
const mix = fc.tuple(fc.tuple(member, member, member, member), fc.tuple(amount, amount, amount, amount));

describe('the kernel of the search', () => {
  test.prop([mix])('predicts the bar that the plain engine does', ([members, amounts]) => {
    const plain = barLab(
      members.map((at, i) => ({
        optics: shelf[at]!.optics,
        grams: amounts[i]! * shelf[at]!.gramsPerTeaspoon,
      })),
      base,
    );
    kernel.predict(members, amounts);
    expect(kernel.lab[0]).toBeCloseTo(plain.l, 9);
    expect(kernel.lab[1]).toBeCloseTo(plain.a, 9);
    expect(kernel.lab[2]).toBeCloseTo(plain.b, 9);
  });

  test.prop([fc.tuple(amount, amount, amount)])('knows how colour changes with each dose', amounts => {
    const members = [0, 1, 5, kernel.nothing];
    const at = (moved: readonly number[]) => {
      kernel.predict(members, [...moved, 0]);
      return Array.from(kernel.lab);
    };
    kernel.differentiate(members, [...amounts, 0], 3);
    const slopes = Array.from(kernel.slopes);
    for (let i = 0; i < 3; i++) {
      const step = 1e-6;
      const [next, last] = [step, -step].map(by =>
        at(amounts.map((value, j) => (i === j ? value + by : value))),
      );
      for (let row = 0; row < 3; row++) {
        const expected = (next![row]! - last![row]!) / (2 * step);
        expect(Math.abs(slopes[3 * i + row]! - expected)).toBeLessThan(0.01 + Math.abs(expected) * 1e-3);
      }
    }
  });

  test('takes no notice of an amount of what is not there', () => {
    kernel.predict([0, 1, kernel.nothing, kernel.nothing], [0.1, 0.2, 9, 9]);
    const two = Array.from(kernel.lab);
    kernel.predict([0, 1, kernel.nothing, kernel.nothing], [0.1, 0.2, 0, 0]);
    expect(Array.from(kernel.lab)).toEqual(two);
  });
});
