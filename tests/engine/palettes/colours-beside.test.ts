import { expect, test } from 'vitest';
import { hexOfLab, labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { coloursBeside } from '../../../src/engine/palettes/colours-beside.ts';
import { hueApart, hueOfLab } from '../../../src/engine/palettes/hue-schemes.ts';

test('beside a colour stand its neighbours and its opposite, as light as it is (Itten, Kunst der Farbe, 1961)', () => {
  for (const hex of ['#b39ddb', '#c8323a', '#4a9a4c', '#f2b95c']) {
    const own = hueOfLab(labOfHex(hex));
    const [before, after, opposite] = coloursBeside(labOfHex(hex)).map(one => hueOfLab(labOfHex(one)));
    expect(hueApart(before!.hue, own.hue)).toBeCloseTo(30, -0.7);
    expect(hueApart(after!.hue, own.hue)).toBeCloseTo(30, -0.7);
    // One on either side of it.
    expect(hueApart(before!.hue, after!.hue)).toBeCloseTo(60, -1);
    expect(hueApart(opposite!.hue, own.hue)).toBeGreaterThan(170);
    expect(opposite!.chroma).toBeLessThan(0.6 * own.chroma);
    for (const one of [before, after, opposite]) expect(one!.lightness).toBeCloseTo(own.lightness, 1);
  }
});

test('greys have no opposite', () => {
  expect(coloursBeside(labOfHex('#808080'))).toEqual([]);
  expect(hexOfLab(labOfHex('#808080'))).toBe('#808080');
});
