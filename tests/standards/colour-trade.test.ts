import { describe, expect, test } from 'vitest';
import { fullDose, opticsOf } from '../../src/engine/colour/jars/colourant-optics.ts';
import { barLab, predictBar } from '../../src/engine/colour/mixing/bar.ts';
import { type BaseShade, plainBase } from '../../src/engine/colour/mixing/base-soap.ts';
import type { MixPart } from '../../src/engine/colour/mixing/optics.ts';
import { chromaOf, hueOf, labOfHex } from '../../src/engine/colour/spectra/cielab.ts';
import { colourantById, colourants } from '../../src/engine/colourants/catalogue.ts';

/** Common practice among makers; no published source. */
function part(id: string, ofFull: number): MixPart {
  const colourant = colourantById(id);
  if (colourant === undefined) throw new Error(`no ${id} in the catalogue`);
  return { optics: opticsOf(colourant), grams: fullDose(colourant) * ofFull };
}

const bar = (mix: readonly MixPart[], shade: BaseShade = 'white', gelled = false) =>
  barLab(mix, plainBase(shade, gelled));

describe('what makers see in their bars (common practice)', () => {
  test('a touch of ultramarine blue deepens violet and leaves it violet', () => {
    const violet = bar([part('ultramarine-violet', 1)]);
    const deepened = bar([part('ultramarine-violet', 1), part('ultramarine-blue', 0.2)]);
    expect(deepened.l).toBeLessThan(violet.l - 1);
    expect(hueOf(deepened)).toBeGreaterThan(275);
    expect(hueOf(deepened)).toBeLessThan(320);
  });

  test('an olive base pulls blue toward green', () => {
    const blue = [part('ultramarine-blue', 0.25)];
    expect(hueOf(bar(blue, 'green'))).toBeLessThan(hueOf(bar(blue, 'white')) - 3);
    const blueMica = [part('blue-1-lake-mica', 0.25)];
    expect(hueOf(bar(blueMica, 'green'))).toBeLessThan(hueOf(bar(blueMica, 'white')) - 3);
  });

  const vivid = ['ultramarine-blue', 'red-iron-oxide', 'chromium-oxide-green', 'neon-pink'];
  test.each(vivid)('more white lowers the chroma of %s and raises its lightness', id => {
    const series = [0, 0.25, 0.5, 1].map(white => bar([part(id, 0.5), part('titanium-dioxide', white)]));
    for (let step = 1; step < series.length; step++) {
      expect(chromaOf(series[step]!)).toBeLessThan(chromaOf(series[step - 1]!));
      expect(series[step]!.l).toBeGreaterThan(series[step - 1]!.l);
    }
  });

  const colourful = colourants.filter(colourant => chromaOf(bar([part(colourant.id, 1)])) > 30);

  test('most of the catalogue is colourful enough to ask', () => {
    expect(colourful.length).toBeGreaterThan(40);
  });

  test.each(colourful.map(({ id }) => id))('%s grows in chroma up to its full dose', id => {
    const chromas = [1 / 8, 1 / 4, 1 / 2, 1].map(share => chromaOf(bar([part(id, share)])));
    // Half a unit of chroma is beyond anybody's eye.
    for (let step = 1; step < 4; step++) expect(chromas[step]!).toBeGreaterThan(chromas[step - 1]! - 0.5);
    expect(chromas[3]!).toBeGreaterThan(chromas[0]!);
  });

  test('a gelled bar is deeper than one that did not gel', () => {
    for (const id of ['ultramarine-violet', 'red-iron-oxide', 'gold-mica']) {
      expect(bar([part(id, 0.5)], 'cream', true).l).toBeLessThan(bar([part(id, 0.5)], 'cream', false).l);
    }
  });

  test('titanium dioxide whitens a cream base', () => {
    const cream = bar([], 'cream');
    const whitened = bar([part('titanium-dioxide', 1)], 'cream');
    expect(whitened.l).toBeGreaterThan(cream.l + 1);
    expect(chromaOf(whitened)).toBeLessThan(chromaOf(cream) - 2);
  });

  test('a colour that lye destroys is foretold as what is left of it, with a wide error', () => {
    const beet = predictBar([part('beetroot', 1)], plainBase('white', false));
    expect(hueOf(beet.lab)).toBeGreaterThan(60);
    expect(hueOf(labOfHex('#8c1c4a'))).toBeLessThan(10 + 360);
    expect(beet.plusMinus).toBeGreaterThan(10);
  });
});

describe('a prediction', () => {
  const base = plainBase('white', false);

  test('of nothing is the base, with the base error only', () => {
    const plain = predictBar([], base);
    expect(plain.plusMinus).toBeCloseTo(base.plusMinus, 9);
    expect(plain.lab.l).toBeGreaterThan(93);
    expect(plain).toMatchObject({ pearl: false, fluorescent: false });
  });

  test('names what eyes would call it', () => {
    expect(predictBar([part('ultramarine-blue', 1)], base).word).toMatch(/blue/);
    expect(predictBar([part('activated-charcoal', 1)], base).word).toMatch(/charcoal|black/);
    expect(predictBar([part('ultramarine-pink', 1 / 8)], base).word).toMatch(/pink/);
  });

  test('flags pearl and glow', () => {
    expect(predictBar([part('gold-mica', 1)], base).pearl).toBe(true);
    expect(predictBar([part('neon-green', 1)], base).fluorescent).toBe(true);
  });

  test('is less sure of a full dose than of a tint', () => {
    const tint = predictBar([part('neon-orange', 1 / 8)], base).plusMinus;
    expect(predictBar([part('gold-mica', 1)], base).plusMinus).toBeGreaterThan(base.plusMinus);
    expect(predictBar([part('neon-orange', 1)], base).plusMinus).toBeGreaterThanOrEqual(tint);
  });
});
