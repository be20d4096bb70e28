import { expect, test } from 'vitest';
import { labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { parseInfusedBar } from '../../../src/engine/pouring/infused-bar.ts';

test.each([
  ['30% = #c9a44b', 0.3],
  ['12,5 %: #c9a44b', 0.125],
  [' 12.5% #c9a44b', 0.125],
  ['100%, #c9a44b', 1],
])('“%s” is a bar with its share of infused oil and its colour', (text, share) => {
  expect(parseInfusedBar(text)).toEqual({ share, lab: labOfHex('#c9a44b') });
});

test.each(['0% = #c9a44b', '101% = #c9a44b', '30 = #c9a44b', '#c9a44b', '..% red', ''])(
  '“%s” is refused as a bar',
  text => {
    expect(() => parseInfusedBar(text)).toThrow(expect.objectContaining({ id: 'infusion-bar-unreadable' }));
  },
);

test('a bar of no colour is refused by its colour', () => {
  expect(() => parseInfusedBar('30% = qwxz')).toThrow(expect.objectContaining({ id: 'colour-unreadable' }));
});
