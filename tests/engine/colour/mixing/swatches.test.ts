import { expect, test } from 'vitest';
import { swatches } from '../../../../src/engine/colour/mixing/swatches.ts';
import { candidates } from '../shelves.ts';

test('a swatch card shows eight fields, each strength darker than the one before, gelled ones deeper', () => {
  const [violet] = candidates('ultramarine-violet');
  const card = swatches([{ optics: violet!.optics, grams: 0.27 }], [{ shade: 'cream', share: 1 }]);
  expect(card.map(({ strength, gelled }) => `${strength}${gelled ? ' gelled' : ''}`)).toEqual([
    'tint',
    'pastel',
    'medium',
    'full',
    'tint gelled',
    'pastel gelled',
    'medium gelled',
    'full gelled',
  ]);
  const lightness = card.map(({ predicted }) => predicted.lab.l);
  for (const first of [0, 4]) {
    for (let at = first + 1; at < first + 4; at++) expect(lightness[at]!).toBeLessThan(lightness[at - 1]!);
  }
  for (let at = 0; at < 4; at++) expect(lightness[at + 4]!).toBeLessThan(lightness[at]!);
});

test('a white that stays is as strong in the tint as in the full colour', () => {
  const [violet, white] = candidates('ultramarine-violet', 'titanium-dioxide');
  const full = [{ optics: violet!.optics, grams: 0.27 }];
  const plain = swatches(full, [{ shade: 'cream', share: 1 }]);
  const whitened = swatches(full, [{ shade: 'cream', share: 1 }], [{ optics: white!.optics, grams: 0.4 }]);
  for (let at = 0; at < 8; at++) {
    expect(whitened[at]!.predicted.lab.l).toBeGreaterThan(plain[at]!.predicted.lab.l);
  }
});
