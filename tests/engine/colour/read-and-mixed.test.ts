import { describe, expect, test } from 'vitest';
import { darkened, darkerBy } from '../../../src/engine/colour/calibration/darker-base.ts';
import { dustOf, greyShare, jarOptics } from '../../../src/engine/colour/calibration/joint/jar-model.ts';
import {
  axisSpread,
  carried,
  isotropic,
  NOTHING,
  offsetOf,
  plus,
  statedRadius,
} from '../../../src/engine/colour/calibration/joint/stated-error.ts';
import { opticsOf } from '../../../src/engine/colour/jars/colourant-optics.ts';
import { type ComparedJar, compareJars } from '../../../src/engine/colour/jars/compare-jars.ts';
import { SubsetSolver } from '../../../src/engine/colour/matching/subset-solver.ts';
import { targetMetric } from '../../../src/engine/colour/matching/target-metric.ts';
import { leastAssignment } from '../../../src/engine/colour/measuring/assignment.ts';
import { portionColours } from '../../../src/engine/colour/measuring/portion-colours.ts';
import { barLab, barReflectance, predictBar } from '../../../src/engine/colour/mixing/bar.ts';
import { baseSoap, plainBase, shadeOfOil } from '../../../src/engine/colour/mixing/base-soap.ts';
import { emission, glow } from '../../../src/engine/colour/mixing/fluorescence.ts';
import {
  filmReflectance,
  hidingReflectance,
  ratioOfReflectance,
  reflectanceOfRatio,
} from '../../../src/engine/colour/mixing/kubelka-munk.ts';
import type { MixPart, Optics } from '../../../src/engine/colour/mixing/optics.ts';
import { previewMix } from '../../../src/engine/colour/mixing/preview.ts';
import { colourLast, parseBar, parseBarDose } from '../../../src/engine/colour/reading/bar-text.ts';
import { parseBase } from '../../../src/engine/colour/reading/base-text.ts';
import { parseMixedBar } from '../../../src/engine/colour/reading/mixed-bar-text.ts';
import { nearestWord } from '../../../src/engine/colour/reading/plain-words.ts';
import { parsePortionColours } from '../../../src/engine/colour/reading/portion-colours-text.ts';
import {
  colourDifference,
  hexOfLab,
  hueOf,
  isOnScreen,
  labOfHex,
  labResponse,
  labResponseSlope,
} from '../../../src/engine/colour/spectra/cielab.ts';
import { D65_AT_BANDS } from '../../../src/engine/colour/spectra/observer.ts';
import { resample, spectrum } from '../../../src/engine/colour/spectra/spectrum.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { refused } from '../quantities/refused.ts';
import { candidates } from './shelves.ts';

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
    const dark = mix.map(({ optics: { emission: _, ...rest }, grams }) => ({
      optics: rest as Optics,
      grams,
    }));
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

describe('a stated error', () => {
  // Chi-square with three degrees: 6.2514 holds nine in ten (NIST/SEMATECH e-Handbook, 1.3.6.7.4).
  test('of three equal axes holds nine in ten', () => {
    expect(statedRadius(isotropic(1))).toBeCloseTo(Math.sqrt(6.2514), 1);
    expect(statedRadius(isotropic(4))).toBeCloseTo(2 * statedRadius(isotropic(1)), 9);
    expect(statedRadius(isotropic(axisSpread(5) ** 2))).toBeCloseTo(5, 9);
  });
  // One axis alone: 1.645 standard deviations either way.
  test('of one axis is the two-sided quantile, about', () => {
    expect(
      statedRadius([
        [1, 0, 0],
        [0, 0, 0],
        [0, 0, 0],
      ]),
    ).toBeCloseTo(1.645, 1);
  });
  test('of a shift far beyond its spread is the shift and 1.28 of the spread along it', () => {
    expect(statedRadius(NOTHING, [3, 4, 0])).toBe(5);
    expect(statedRadius(isotropic(0.01), [10, 0, 0])).toBeCloseTo(10 + 1.28 * 0.1, 1);
    expect(statedRadius(plus(isotropic(1), isotropic(3)))).toBeCloseTo(statedRadius(isotropic(4)), 12);
  });
  test('is carried through what is linear as it is', () => {
    // Two parameters that move L* by 2 and 3 of theirs.
    const lab = ([one = 0, other = 0]: readonly number[]) => ({
      l: 50 + 0.02 * one + 0.03 * other,
      a: 0,
      b: 0,
    });
    const { covariance, shift } = carried(
      lab,
      [0, 0],
      [
        [1, 0.5],
        [0.5, 1],
      ],
    );
    const unit = colourDifference({ l: 50.01, a: 0, b: 0 }, { l: 50, a: 0, b: 0 }) / 0.01;
    // Var(2x + 3y) = 4 + 9 + 2 * 2 * 3 * 0.5.
    expect(covariance[0][0]).toBeCloseTo((4 + 9 + 6) * 1e-4 * unit ** 2, 6);
    expect(shift).toEqual([0, 0, 0]);
    const far = carried(
      lab,
      [0, 0],
      [
        [0, 0],
        [0, 0],
      ],
      { l: 48, a: 0, b: 0 },
    );
    expect(far.covariance).toEqual(NOTHING);
    expect(Math.hypot(...far.shift)).toBeCloseTo(
      colourDifference({ l: 50, a: 0, b: 0 }, { l: 48, a: 0, b: 0 }),
      9,
    );
  });
});

describe('a jar of a kind', () => {
  const kind = optics('ultramarine-blue');
  test('is as its kind where nothing differs', () => {
    const same = jarOptics(kind, [0, 0, 0, 0]);
    expect([...same.k]).toEqual([...kind.k]);
    expect([...same.s]).toEqual([...kind.s]);
  });
  test('twice as strong, half as covering, and a band along', () => {
    const strong = jarOptics(kind, [Math.log(2), Math.log(0.5), 0, 0]);
    expect(strong.k[20]).toBeCloseTo(2 * kind.k[20]!, 12);
    expect(strong.s[20]).toBeCloseTo(kind.s[20]! / 2, 12);
    const along = jarOptics(kind, [0, 0, 1, 0]);
    expect(along.k[20]).toBeCloseTo(kind.k[19]!, 12);
    expect(along.k[0]).toBeCloseTo(kind.k[0]!, 12);
    expect(jarOptics(kind, [0, 0, 0.5, 0]).k[20]).toBeCloseTo((kind.k[19]! + kind.k[20]!) / 2, 12);
  });
  test('with dirt in it is greyer in every band by the same', () => {
    expect(greyShare(0)).toBe(0);
    for (const grey of [0.05, 0.5, 2]) expect(greyShare(dustOf(grey))).toBeCloseTo(grey, 12);
    const dusty = jarOptics(kind, [0, 0, 0, 1]);
    const grey = dusty.k[5]! - kind.k[5]!;
    expect(grey).toBeGreaterThan(0);
    for (const band of [0, 15, 35]) expect(dusty.k[band]! - kind.k[band]!).toBeCloseTo(grey, 12);
  });
  test('two whites are held side by side by what they scatter, a white and a colour by what is seen', () => {
    const compared = (id: string): ComparedJar => {
      const [one] = candidates(id);
      return {
        jar: { colourant: id },
        gramsPerTeaspoon: one!.gramsPerTeaspoon,
        fullTspPerCup: colourantById(id)!.dose.fullTspPerCup,
        ceilingTspPerCup: one!.ceilingTspPerCup,
        white: one!.white,
      };
    };
    const whites = compareJars(compared('titanium-dioxide'), compared('zinc-oxide'));
    // S of titania and zinc oxide as measured: the grams that scatter alike.
    const s = (id: string) => optics(id).s[20]!;
    const scattered = s('titanium-dioxide') / s('zinc-oxide');
    expect(whites.grams[1] / whites.grams[0] / scattered).toBeGreaterThan(0.85);
    expect(whites.grams[1] / whites.grams[0] / scattered).toBeLessThan(1.15);
  });
});

describe('the linear start of a match', () => {
  const at = (l: number, a: number, b: number) => {
    const plain = barLab([], cream);
    return { l: plain.l + l, a: plain.a + a, b: plain.b + b };
  };
  const solverFor = (target: ReturnType<typeof at>) =>
    new SubsetSolver([{ optics: optics('ultramarine-blue'), gramsPerUnit: 1 }], cream, target);
  test.each([
    [-1, 0, 0],
    [0, 1, 0],
    [0, -1, 0],
    [0, 0, 1],
    [0, 0, -1],
  ] as const)('promises of the plain base how far it is off: %s %s %s', (l, a, b) => {
    const target = at(l, a, b);
    const solver = solverFor(target);
    const none = solver.kernel.nothing;
    const promised = solver.start([none, none, none, none], 0);
    expect(promised / colourDifference(barLab([], cream), target)).toBeGreaterThan(0.85);
    expect(promised / colourDifference(barLab([], cream), target)).toBeLessThan(1.15);
  });
  test('finds about the dose that made a colour, and the solution finds it exactly', () => {
    const target = barLab([part('ultramarine-blue', 0.03)], cream);
    const solver = solverFor(target);
    const none = solver.kernel.nothing;
    solver.start([0, none, none, none], 1);
    expect(solver.amounts[0]! / 0.03).toBeGreaterThan(0.8);
    expect(solver.amounts[0]! / 0.03).toBeLessThan(1.2);
    expect(solver.solve([0, none, none, none], 1)).toBeLessThan(0.05);
    expect(solver.amounts[0]).toBeCloseTo(0.03, 3);
  });
});

describe('a bar as it is written', () => {
  const violet = labOfHex('#6b5aa8');
  test.each([
    ['blue 1 tsp: #6b5aa8', ['blue 1 tsp']],
    ['blue 1 tsp → #6b5aa8', ['blue 1 tsp']],
    ['full lab(52 20 -31)', ['full ']],
    ['blue 1 tsp', []],
    ['#6b5aa8', []],
  ])('%s: what stands before its colour', (text, before) => {
    expect(colourLast(text).map(one => one.before)).toEqual(before);
  });
  test('names of colours of three words and two are tried before one', () => {
    const tried = colourLast('blue 1 tsp dark slate blue');
    expect(tried.map(({ before }) => before)).toEqual(
      ['blue 1 tsp', 'blue 1 tsp dark', 'blue 1 tsp dark slate'].filter((_, index) => index < tried.length),
    );
    expect(colourDifference(tried[0]!.lab, labOfHex('#483d8b'))).toBeCloseTo(0, 6);
  });
  test.each([
    [
      'blue 1 tsp + white 1/2 tsp per cup: #6b5aa8',
      [
        ['blue', 1],
        ['white', 0.5],
      ],
    ],
    ['blue 1 tsp: #6b5aa8', [['blue', 1]]],
  ] as const)('%s', (text, parts) => {
    const bar = parseMixedBar(text, MEASURES.us, () => false)!;
    expect(
      bar.parts.map(({ name, dose }) => [name, dose.by === 'cup' && Math.round(dose.tspPerCup * 1e6) / 1e6]),
    ).toEqual(parts);
    expect(colourDifference(bar.lab, violet)).toBeCloseTo(0, 9);
  });
  test('of jars by weight, and none where no colour ends it', () => {
    expect(parseMixedBar('blue 2 g: #6b5aa8', MEASURES.us, () => false)?.parts).toEqual([
      { name: 'blue', dose: { by: 'grams-a-cup', grams: 2 } },
    ]);
    expect(parseMixedBar('blue 2 g', MEASURES.us, () => false)).toBeUndefined();
    expect(refused(() => parseMixedBar('a+b+c+d+e+f: #6b5aa8', MEASURES.us, () => false))).toBe(
      'mix-too-many',
    );
  });
  test.each([
    ['plain', { by: 'plain' }],
    ['sin color', { by: 'plain' }],
    ['0 tsp', { by: 'plain' }],
    ['0.8 g', { by: 'grams-a-cup', grams: 0.8 }],
    ['0.8 gramos por taza', { by: 'grams-a-cup', grams: 0.8 }],
    ['pastel =', { by: 'name', name: 'pastel' }],
    ['', undefined],
    ['zork', undefined],
  ])('the dose %s', (text, dose) => {
    expect(parseBarDose(text)).toEqual(dose);
  });
  test.each([
    ['full lab(100 128 -128)', 'answered'],
    ['full lab(100.1 0 0)', 'lab-out-of-range'],
    ['full lab(50 129 0)', 'lab-out-of-range'],
    ['full lab(50 0 -129)', 'lab-out-of-range'],
    ['zork lab(50 0 0)', 'test-bar-unreadable'],
    ['full', 'test-bar-unreadable'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => parseBar(text))).toBe(id);
  });

  test.each([
    ['cream', 'cream'],
    ['the green soap', 'green'],
    ['una base amarilla', 'yellow'],
    ['coconut', undefined],
    ['olive 60%, coconut 40%', undefined],
  ])('the base %s', (text, shade) => {
    expect(parseBase(text).shade).toBe(shade);
  });
  test.each([
    ['olive', 'green'],
    ['coconut', 'white'],
  ])('one oil alone: %s', (text, shade) => {
    expect(parseBase(`${text} oil`).shades).toEqual([{ shade, share: 1 }]);
  });
  test.each([
    ['purple', 'base-unreadable'],
    ['', 'base-unreadable'],
    [', 1', 'oil-unknown'],
    ['zork 60%, coconut 40%', 'oil-unknown'],
    ['olive 60%, coconut 30%', 'oils-percent-sum'],
  ])('the base %s is refused: %s', (text, id) => {
    expect(refused(() => parseBase(text))).toBe(id);
  });
});

describe('what portions became', () => {
  const portions = [{ names: ['violet', 'ultramarine violet'] }, { names: ['gold mica'] }];
  const read = (text: string, of = portions) => parsePortionColours(text, of).map(({ portion }) => portion);
  test.each([
    ['violet #6b5aa8; gold mica lab(70 5 40)', [0, 1]],
    ['2 #6b5aa8', [1]],
    ['gold #6b5aa8', [1]],
    ['gold mica rebeccapurple', [1]],
    ['violet #6b5aa8, gold mica #c9b04a', [0, 1]],
  ])('%s', (text, numbers) => {
    expect(read(text)).toEqual(numbers);
  });
  test.each([
    ['3 #6b5aa8', 'batch-colours-unreadable'],
    ['go #6b5aa8', 'batch-colours-unreadable'],
    ['#6b5aa8', 'batch-colours-unreadable'],
    ['violet', 'batch-colours-unreadable'],
    ['violet lab(120 0 0)', 'lab-out-of-range'],
    // It is in the names of both.
    ['mica #6b5aa8', 'answered'],
    ['ultramarine #6b5aa8', 'answered'],
  ])('%s: %s', (text, id) => {
    expect(refused(() => read(text))).toBe(id);
  });
  test('one portion needs no name, and a name that two hold is nobody’s', () => {
    expect(read('#6b5aa8', [portions[0]!])).toEqual([0]);
    const both = [{ names: ['gold mica'] }, { names: ['blue mica'] }];
    expect(refused(() => read('mica #6b5aa8', both))).toBe('batch-colours-unreadable');
  });

  const sought = (hex: string, share: number) => ({ predicted: { lab: labOfHex(hex), plusMinus: 5 }, share });
  const seen = (hex: string, share: number) => ({ lab: labOfHex(hex), share, plusMinus: 3 });
  test('are given their colours so that all together lie nearest', () => {
    const found = portionColours(
      [sought('#3b4cae', 0.5), sought('#c9b04a', 0.5)],
      [seen('#c4a845', 0.5), seen('#4050a8', 0.5)],
    );
    expect(found.map(({ lab }) => hexOfLab(lab))).toEqual(['#4050a8', '#c4a845']);
    expect(found.map(({ unsure, plusMinus }) => [unsure, plusMinus])).toEqual([
      [false, 3],
      [false, 3],
    ]);
  });
  test('of like colours go by their shares, and are unsure where these are alike', () => {
    const two = [sought('#3b4cae', 0.8), sought('#3b4cae', 0.2)];
    const apart = portionColours(two, [seen('#3b4cae', 0.2), seen('#3b4cad', 0.8)]);
    expect(apart.map(({ lab }) => hexOfLab(lab))).toEqual(['#3b4cad', '#3b4cae']);
    expect(apart[0]!.unsure).toBe(false);
    const alike = portionColours(
      [sought('#3b4cae', 0.5), sought('#3b4cae', 0.5)],
      [seen('#3b4cae', 0.5), seen('#3b4cad', 0.5)],
    );
    expect(alike.every(({ unsure }) => unsure)).toBe(true);
  });
  test('of one portion are unsure where a second colour takes a quarter of the face', () => {
    const one = [sought('#3b4cae', 1)];
    expect(portionColours(one, [seen('#3b4cae', 0.75), seen('#c9b04a', 0.25)])[0]!.unsure).toBe(false);
    expect(portionColours(one, [seen('#3b4cae', 0.7), seen('#c9b04a', 0.3)])[0]!.unsure).toBe(true);
    expect(portionColours(one, [])).toEqual([]);
    expect(portionColours([], [seen('#3b4cae', 1)])).toEqual([]);
  });
  // By hand: the cheapest of the six ways.
  test('each row has a column of its own, at the least cost', () => {
    const costs = [
      [4, 1, 3],
      [2, 0, 5],
      [3, 2, 2],
    ];
    expect(leastAssignment(costs)).toEqual({ columnOf: [1, 0, 2], total: 5 });
    expect(leastAssignment([[4], [2], [3]])).toEqual({ columnOf: [undefined, 0, undefined], total: 2 });
    expect(leastAssignment([[4, 1, 3]])).toEqual({ columnOf: [1], total: 1 });
    expect(leastAssignment([])).toEqual({ columnOf: [], total: 0 });
  });
  test('what has hardly any hue is called grey unless it is pale', () => {
    expect(nearestWord({ l: 50, a: 3, b: -8 })).toBe('grey');
    expect(nearestWord({ l: 50, a: 8, b: -24 })).not.toBe('grey');
    expect(nearestWord({ l: 85, a: 2, b: 5 })).not.toBe('grey');
    expect(nearestWord({ l: 10, a: 0, b: 0 })).toBe('black');
  });
});

test('soap that came out darker is darker by about what makes its plain bar', () => {
  const foundDarker = (bars: Parameters<typeof darkerBy>[1]) => darkerBy(cream, bars);
  expect(foundDarker([])).toBe(0);
  for (const factor of [0.5, 1, 2]) {
    const lab = barLab([], darkened(cream, Math.log(factor)));
    expect(Math.exp(foundDarker([{ grams: 0, lab, plusMinus: 0.3 }]))).toBeCloseTo(factor, 0);
  }
  // Bars with colour in them say nothing of it.
  expect(foundDarker([{ grams: 1, lab: labOfHex('#222222'), plusMinus: 1 }])).toBe(0);
});
