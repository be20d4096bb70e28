import { describe, expect, test } from 'vitest';
import { offsetOf } from '../../../../src/engine/colour/calibration/joint/stated-error.ts';
import { opticsOf } from '../../../../src/engine/colour/jars/colourant-optics.ts';
import { targetMetric } from '../../../../src/engine/colour/matching/target-metric.ts';
import { barLab, barReflectance, predictBar } from '../../../../src/engine/colour/mixing/bar.ts';
import { baseSoap, plainBase, shadeOfOil } from '../../../../src/engine/colour/mixing/base-soap.ts';
import { emission, glow } from '../../../../src/engine/colour/mixing/fluorescence.ts';
import { ratioOfReflectance, reflectanceOfRatio } from '../../../../src/engine/colour/mixing/kubelka-munk.ts';
import type { MixPart, Optics } from '../../../../src/engine/colour/mixing/optics.ts';
import { previewMix } from '../../../../src/engine/colour/mixing/preview.ts';
import {
  colourDifference,
  hexOfLab,
  hueOf,
  isOnScreen,
  labOfHex,
  labResponse,
  labResponseSlope,
} from '../../../../src/engine/colour/spectra/cielab.ts';
import { D65_AT_BANDS } from '../../../../src/engine/colour/spectra/observer.ts';
import { spectrum } from '../../../../src/engine/colour/spectra/spectrum.ts';
import { colourantById } from '../../../../src/engine/colourants/catalogue.ts';
import { filmReflectance, hidingReflectance } from '../../../standards/characterisation/film-optics.ts';
import { resample } from '../../../standards/characterisation/resample.ts';

const cream = plainBase('cream', false);
const optics = (id: string) => opticsOf(colourantById(id)!);
const part = (id: string, grams: number): MixPart => ({ optics: optics(id), grams });

describe('a spectrum', () => {
  test('is drawn straight between samples and held beyond the outermost', () => {
    const drawn = resample([400, 420, 500], [1, 3, 11]);
    const at = (nanometres: number) => drawn[(nanometres - 380) / 10];
    expect([at(380), at(400), at(410), at(420), at(460), at(500), at(730)]).toEqual([1, 1, 2, 3, 7, 11, 11]);
    expect([...resample([500], [5])].every(value => value === 5)).toBe(true);
    expect(resample([], [])[0]).toBe(0);
  });
});

describe('CIELAB', () => {
  // CIE 15: cube root above (6/29)^3, a straight line of the same slope below.
  test('joins its line and its root, in value and in slope', () => {
    const join = (6 / 29) ** 3;
    expect(labResponse(join * 0.999999)).toBeCloseTo(labResponse(join * 1.000001), 5);
    expect(labResponseSlope(join * 0.999999)).toBeCloseTo(labResponseSlope(join * 1.000001), 3);
    for (const ratio of [0.001, 0.05, 0.4, 1]) {
      const slope = (labResponse(ratio + 1e-6) - labResponse(ratio - 1e-6)) / 2e-6;
      expect(labResponseSlope(ratio)).toBeCloseTo(slope, 4);
    }
  });
  test('has hue angles from 0 up to 360', () => {
    expect(hueOf({ l: 50, a: 1, b: 0 })).toBe(0);
    expect(hueOf({ l: 50, a: 0, b: 1 })).toBe(90);
    expect(hueOf({ l: 50, a: 0, b: -1 })).toBe(270);
  });
  test('is shown on screens where they can', () => {
    expect(isOnScreen(labOfHex('#3b4cae'))).toBe(true);
    expect(isOnScreen({ l: 60, a: -120, b: 60 })).toBe(false);
    expect(hexOfLab(labOfHex('#3b4cae'))).toBe('#3b4cae');
    expect(() => labOfHex('blue')).toThrow(RangeError);
  });
  test('near a colour, CIEDE2000 is a plain distance', () => {
    for (const hex of ['#3b4cae', '#c9b04a', '#808080', '#cc1f2a']) {
      const target = labOfHex(hex);
      for (const move of [
        { l: 0.4, a: 0, b: 0 },
        { l: 0, a: 0.4, b: 0 },
        { l: 0, a: 0, b: 0.4 },
        { l: -0.2, a: 0.3, b: -0.3 },
      ]) {
        const moved = { l: target.l + move.l, a: target.a + move.a, b: target.b + move.b };
        const length = Math.hypot(...offsetOf(targetMetric(target), moved, target));
        expect(length).toBeCloseTo(colourDifference(moved, target), 6);
        const [l, a, b] = [move.l, move.a, move.b];
        const m = targetMetric(target);
        const plain = Math.hypot(m[0]! * l + m[1]! * a + m[2]! * b, m[4]! * a + m[5]! * b, m[8]! * b);
        expect(plain / length).toBeGreaterThan(0.95);
        expect(plain / length).toBeLessThan(1.05);
      }
    }
  });
});

// Kubelka and Munk, "Ein Beitrag zur Optik der Farbanstriche" (1931).
describe('two fluxes', () => {
  test('a hiding layer and its K/S are each other’s inverse', () => {
    for (const ratio of [0.001, 0.1, 1, 5, 20])
      expect(ratioOfReflectance(reflectanceOfRatio(ratio))).toBeCloseTo(ratio, 9);
    expect(reflectanceOfRatio(0)).toBe(1);
    expect(ratioOfReflectance(0.5)).toBe(0.25);
  });
  test('a thick film hides what lies behind, a thin one shows it', () => {
    expect(filmReflectance(200, 100, 0)).toBeCloseTo(reflectanceOfRatio(2), 9);
    expect(filmReflectance(200, 100, 1)).toBeCloseTo(reflectanceOfRatio(2), 9);
    expect(filmReflectance(1e-9, 1e-9, 0.7)).toBeCloseTo(0.7, 6);
    // Without absorption a film of scattering s over black turns back s / (1 + s).
    expect(filmReflectance(0, 1, 0)).toBeCloseTo(0.5, 4);
  });
  test('the hiding layer is found from a film over white and over black', () => {
    for (const [absorption, scattering] of [
      [0.2, 1],
      [1, 0.6],
      [0.05, 2],
    ] as const) {
      const [white, black] = [0.85, 0.05];
      const found = hidingReflectance({
        overWhite: filmReflectance(absorption, scattering, white),
        overBlack: filmReflectance(absorption, scattering, black),
        white,
        black,
      });
      expect(found).toBeCloseTo(reflectanceOfRatio(absorption / scattering), 3);
    }
  });
});

describe('a bar', () => {
  test('without colourant is its base, and its error the base’s', () => {
    const plain = predictBar([], cream);
    expect(colourDifference(plain.lab, labOfHex('#ece3cb'))).toBeLessThan(1);
    expect(plain.plusMinus).toBeCloseTo(cream.plusMinus, 9);
    expect(plain).toMatchObject({ pearl: false, fluorescent: false, onScreen: true });
    expect(predictBar([part('gold-mica', 0)], cream)).toEqual(plain);
  });
  test('is told for pearl and for glow by what is in it', () => {
    expect(predictBar([part('gold-mica', 1)], cream)).toMatchObject({ pearl: true, fluorescent: false });
    expect(predictBar([part('neon-pink', 1)], cream)).toMatchObject({ pearl: false, fluorescent: true });
  });
  test('is foretold less surely with a colourant that nobody tried, and no better with two', () => {
    const one = predictBar([part('ultramarine-blue', 0.5)], cream).plusMinus;
    expect(one).toBeGreaterThan(cream.plusMinus);
    // A trace moves the colour little, and brings little of its error.
    expect(predictBar([part('ultramarine-blue', 0.002)], cream).plusMinus).toBeLessThan(one);
    const { optics: known } = part('ultramarine-blue', 0.5);
    const sure = predictBar(
      [
        {
          grams: 0.5,
          optics: {
            ...known,
            belief: {
              kind: known,
              parameters: [0, 0, 0, 0],
              covariance: [0.01, 0.01, 0.01, 0.01].map((value, at) =>
                [0, 1, 2, 3].map(to => (to === at ? value ** 2 : 0)),
              ),
            },
          },
        },
      ],
      cream,
    ).plusMinus;
    expect(sure).toBeLessThan(one);
    expect(sure).toBeGreaterThanOrEqual(cream.plusMinus);
  });
  test('goes by its oils: shares of casts, and less scattered once gelled', () => {
    const half = baseSoap(
      [
        { shade: 'green', share: 3 },
        { shade: 'white', share: 3 },
      ],
      false,
    );
    const [green, white] = [plainBase('green', false), plainBase('white', false)];
    for (const band of [0, 17, 35])
      expect(half.k[band]).toBeCloseTo((green.k[band]! + white.k[band]!) / 2, 12);
    expect(half.s[0]).toBe(1);
    expect(plainBase('cream', true).s[0]).toBe(0.75);
    expect(barLab([], plainBase('cream', true)).l).toBeLessThan(barLab([], cream).l);
    expect(shadeOfOil({ id: 'olive-pomace', yellowness: 'yellow' })).toBe('green');
    expect(shadeOfOil({ id: 'palm', yellowness: 'cream' })).toBe('cream');
  });
});

describe('light given back', () => {
  const light = emission(600, 20, 0.5);
  const flat = (k: number): Optics => ({
    ...optics('gold-mica'),
    k: spectrum(() => k),
    s: spectrum(() => 0),
    emission: light,
  });
  const plain = { k: spectrum(() => 0), s: spectrum(() => 1), plusMinus: 3 };
  const given = (mix: readonly MixPart[]) =>
    glow(mix, plain).reduce((sum, value, band) => sum + value * D65_AT_BANDS[band]!, 0);
  test('is a bell about its peak that sums to one', () => {
    expect(light.shape.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12);
    expect(light.shape.indexOf(Math.max(...light.shape))).toBe((600 - 380) / 10);
    expect(light.shape[21]).toBeCloseTo(light.shape[23]!, 12);
    // A standard deviation off, e to the minus a half.
    expect(light.shape[24]! / light.shape[22]!).toBeCloseTo(Math.exp(-0.5), 12);
  });
  test('is the yield of what was absorbed below the peak', () => {
    const mix = [{ optics: flat(1), grams: 2 }];
    // K/S is 2 in every band, so that 1 - R is taken of what falls below 600 nm.
    const absorbed =
      D65_AT_BANDS.slice(0, 22).reduce((sum, power) => sum + power, 0) * (1 - reflectanceOfRatio(2));
    expect(given(mix)).toBeCloseTo(0.5 * absorbed, 6);
    // Beside as much of another absorber it takes half, of a little more.
    const beside = [...mix, { optics: { ...flat(1), emission: undefined } as unknown as Optics, grams: 2 }];
    const both =
      D65_AT_BANDS.slice(0, 22).reduce((sum, power) => sum + power, 0) * (1 - reflectanceOfRatio(4));
    expect(given(beside)).toBeCloseTo(0.25 * both, 6);
  });
  test('is none of what does not glow or is not there, and adds to what is seen', () => {
    expect(given([part('gold-mica', 1)])).toBe(0);
    expect(given([{ optics: flat(1), grams: 0 }])).toBe(0);
    expect(given([{ optics: flat(0), grams: 1 }])).toBe(0);
    const mix = [part('neon-pink', 1)];
    const dark = mix.map(({ optics: lit, grams }) => {
      const { emission: given, ...rest } = lit;
      expect(given).toBeDefined();
      return { optics: rest as Optics, grams };
    });
    const added = glow(mix, cream);
    const [seen, unlit] = [barReflectance(mix, cream), barReflectance(dark, cream)];
    for (const band of [10, 22, 30]) expect(seen[band]! - unlit[band]!).toBeCloseTo(added[band]!, 12);
  });
});

describe('a card of a mix', () => {
  const jar = (id: string) => ({ jar: { colourant: id } });
  const shades = [{ shade: 'cream', share: 1 }] as const;
  const blue = { ...jar('ultramarine-blue'), grams: 0.2, full: 0.8, white: false };
  const red = { ...jar('red-iron-oxide'), grams: 0.1, full: 0.8, white: false };
  const white = { ...jar('titanium-dioxide'), grams: 0.4, full: 0.8, white: true };
  test('is full of the strongest colour, the others in proportion, and a white beside colours stays', () => {
    const { fullShares } = previewMix({ parts: [blue, red, white], shades, gelled: false });
    expect(fullShares.map(share => Math.round(share * 1e9) / 1e9)).toEqual([1, 0.5, 0.5]);
  });
  test('a white alone is a colour like any', () => {
    expect(previewMix({ parts: [white], shades, gelled: false }).fullShares).toEqual([1]);
    const both = [white, { ...white, ...jar('zinc-oxide'), grams: 0.2 }];
    expect(previewMix({ parts: both, shades, gelled: false }).fullShares.map(Math.round)).toEqual([1, 1]);
  });
  test('shows the mix, the other base, and the base alone', () => {
    const { predicted, otherwise, plain, swatches, plusMinus } = previewMix({
      parts: [blue],
      shades,
      gelled: false,
    });
    const mix = [part('ultramarine-blue', 0.2)];
    expect(colourDifference(predicted.lab, barLab(mix, cream))).toBeCloseTo(0, 9);
    expect(colourDifference(otherwise.lab, barLab(mix, plainBase('cream', true)))).toBeCloseTo(0, 9);
    expect(colourDifference(plain.lab, barLab([], cream))).toBeCloseTo(0, 9);
    expect(swatches).toHaveLength(8);
    expect(plusMinus).toEqual([optics('ultramarine-blue').plusMinus]);
  });
});
