import { fc, test as property } from '@fast-check/vitest';
import { differenceCiede2000 } from 'culori';
import { describe, expect, test } from 'vitest';
import { usualTeaspoon } from '../../../src/engine/colour/jars/colourant-optics.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../src/engine/colour/mixing/base-soap.ts';
import type { Lab } from '../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { lineGrams } from '../../../src/engine/pouring/dusted-line.ts';
import { evenGradient } from '../../../src/engine/pouring/gradient.ts';
import { infusedShare } from '../../../src/engine/pouring/infused-oil.ts';
import { equalLayers, wedgedLayers } from '../../../src/engine/pouring/layers.ts';
import { readSwirlShares } from '../../../src/engine/pouring/swirl-shares.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

const reference = differenceCiede2000();
const apart = (one: Lab, other: Lab) => reference({ mode: 'lab65', ...one }, { mode: 'lab65', ...other });
const loaf = { lengthCm: 25, widthCm: 9, heightCm: 6 };

describe('layers', () => {
  test('of one height take one volume, and fill the mould', () => {
    const layers = equalLayers(loaf, 4);
    expect(layers.map(({ millilitres }) => millilitres)).toEqual([337.5, 337.5, 337.5, 337.5]);
    expect(layers.at(-1)!.topCm).toEqual([6, 6]);
  });

  // Geometry of a tilted box: the area under the wedge's top is that of a level layer, and its slope is that of the mould.
  const raised = fc.double({ min: 0.1, max: 2.8, noNaN: true });
  const count = fc.integer({ min: 2, max: 6 });
  property.prop([raised, count])(
    'a wedge holds what a level layer holds, at the slope of the mould',
    (block, layers) => {
      const each = loaf.heightCm / layers;
      const most = (() => {
        try {
          return wedgedLayers(loaf, layers, block)[0]!;
        } catch (refusal) {
          expect(refusal).toBeInstanceOf(Refusal);
          return undefined;
        }
      })();
      if (!most) return;
      expect(most.millilitres).toBeCloseTo(equalLayers(loaf, layers)[0]!.millilitres, 9);
      const [low, high] = most.topCm;
      expect((low + high) / 2).toBeCloseTo(each, 6);
      expect((high - low) / loaf.widthCm).toBeCloseTo(Math.tan(Math.asin(block / loaf.widthCm)), 6);
      expect(high).toBeLessThanOrEqual(2 * each + 1e-6);
      expect(low).toBeGreaterThanOrEqual(0);
    },
  );

  test('a block that is too high says how high it may be, and that height is taken', () => {
    const steep = () => wedgedLayers(loaf, 3, 8.9);
    let refusal: unknown;
    try {
      steep();
    } catch (thrown) {
      refusal = thrown;
    }
    expect(refusal).toBeInstanceOf(Refusal);
    const { most } = (refusal as Refusal<'layers-tilt-too-steep'>).values;
    expect(wedgedLayers(loaf, 3, most * 0.999)[0]!.topCm[1]).toBeCloseTo(4, 1);
    expect(wedgedLayers(loaf, 3, 0)).toEqual(equalLayers(loaf, 3));
  });
});

test('a wedge is one of as many layers, the others level above it', () => {
  const layers = wedgedLayers(loaf, 3, 1);
  expect(layers).toHaveLength(3);
  expect(layers.slice(1)).toEqual(equalLayers(loaf, 3).slice(1));
});

test('a line is by area', () => {
  expect(lineGrams({ areaCm2: 225, lines: 2, thickness: 'usual' })).toBeCloseTo(1.35, 9);
  // Common practice: about 1/2 tsp of mica on a loaf of 25 x 9 cm.
  const mica = colourantById('gold-mica')!;
  const spoons = lineGrams({ areaCm2: 225, lines: 1, thickness: 'usual' }) / usualTeaspoon(mica);
  expect(spoons).toBeGreaterThan(0.15);
  expect(spoons).toBeLessThan(0.75);
});

describe('shares of a swirl', () => {
  test('percents and parts', () => {
    expect(readSwirlShares('blue 50%, white 30%, gold 20%').map(({ share }) => share)).toEqual([
      0.5, 0.3, 0.2,
    ]);
    expect(readSwirlShares('blue 2, white 1, gold 1')).toEqual([
      { name: 'blue', share: 0.5 },
      { name: 'white', share: 0.25 },
      { name: 'gold', share: 0.25 },
    ]);
    expect(readSwirlShares('sky blue: 1/2; white 1.5').map(({ share }) => share)).toEqual([0.25, 0.75]);
  });

  test('percents that make more than all are told, those that make less leave the rest to the base', () => {
    expect(() => readSwirlShares('blue 70%, white 60%')).toThrow(
      expect.objectContaining({ id: 'swirl-shares-over', values: { percent: 130 } }),
    );
    expect(readSwirlShares('blue 50%, white 49%').map(({ share }) => share)).toEqual([0.5, 0.49]);
    expect(readSwirlShares('blue 60, white 60').map(({ share }) => share)).toEqual([0.5, 0.5]);
    expect(readSwirlShares(Array.from({ length: 8 }, () => 'blue 1').join(', '))).toHaveLength(8);
  });

  test.each(['', 'blue', 'blue 70%, white 60%', 'blue 2, white 50%', 'blue 0', 'blue -1, 2', '🧼', '50%'])(
    'not "%s"',
    text => {
      expect(() => readSwirlShares(text)).toThrow(Refusal);
    },
  );
});

describe('gradients', () => {
  const pots = [
    ['ultramarine-blue', 0.3, undefined, 0],
    ['ultramarine-blue', 0.3, 'yellow-iron-oxide', 0.4],
    ['red-iron-oxide', 0.5, 'titanium-dioxide', 0.6],
  ] as const;
  const pot = (id: string | undefined, grams: number) =>
    id === undefined ? [] : [{ jar: { colourant: id }, grams }];

  test.each(pots)(
    '%s %f to %s %f: steps are even by the reference library, spoons are not',
    (one, a, other, b) => {
      const found = evenGradient({
        from: pot(one, a),
        to: pot(other, b),
        steps: 5,
        shades: [{ shade: 'cream', share: 1 }],
        gelled: false,
      });
      const labs = found.steps.map(({ lab }) => lab);
      const steps = labs.slice(1).map((lab, at) => apart(labs[at]!, lab));
      expect(Math.max(...steps) / Math.min(...steps)).toBeLessThan(1.005);
      expect(found.byParts.most / found.byParts.least).toBeGreaterThan(1.3);
      const shares = found.steps.map(({ share }) => share);
      expect(shares.toSorted((x, y) => x - y)).toEqual(shares);
      expect([shares[0], shares.at(-1)]).toEqual([0, 1]);
    },
  );
});

describe('an infused oil', () => {
  const ask = { shades: [{ shade: 'white', share: 1 }], gelled: false } as const;
  // Beer's law: twice the share is twice the absorption, so the bar of twice the share is found at twice the share.
  test.each([0.1, 0.25, 0.45])('a bar of %f finds its own share, and the double of it', share => {
    const base = plainBase('white', false);
    const dye = base.k.map((_, band) => 3 * Math.exp(-((band - 5) ** 2) / 20));
    const barOf = (of: number) => barLab([], { ...base, k: base.k.map((k, band) => k + of * dye[band]!) });
    const bar = { share, lab: barOf(share) };
    expect(infusedShare({ ...ask, bar, target: barOf(share) }).share).toBeCloseTo(share, 1);
    expect(infusedShare({ ...ask, bar, target: barOf(2 * share) }).share).toBeCloseTo(2 * share, 1);
    expect(infusedShare({ ...ask, bar, target: barOf(2 * share) }).deltaE).toBeLessThan(2);
  });

  test('one that gives the colour says neither, though it takes all of the oils', () => {
    const bar = { share: 1, lab: { l: 88, a: 1, b: 14 } };
    const all = infusedShare({ ...ask, bar, target: bar.lab });
    expect(all).toMatchObject({ share: 1, tooWeak: false, otherColour: false });
    const half = infusedShare({ ...ask, bar: { ...bar, share: 0.5 }, target: bar.lab });
    expect(half).toMatchObject({ share: 0.5, tooWeak: false, otherColour: false });
    expect(infusedShare({ ...ask, bar, target: { l: 50, a: 10, b: 50 } }).otherColour).toBe(false);
    expect(infusedShare({ ...ask, bar, target: { l: 40, a: 5, b: -40 } }).tooWeak).toBe(false);
  });

  test('in gelled soap, which scatters less, a bar finds its own share too', () => {
    const base = plainBase('white', true);
    const dye = base.k.map((_, band) => 3 * Math.exp(-((band - 5) ** 2) / 20));
    const lab = barLab([], { ...base, k: base.k.map((k, band) => k + 0.25 * dye[band]!) });
    const found = infusedShare({ ...ask, gelled: true, bar: { share: 0.25, lab }, target: lab });
    expect(found.share).toBeCloseTo(0.25, 1);
    expect(found.deltaE).toBeLessThan(0.5);
  });

  test('one too weak says so', () => {
    const bar = { share: 1, lab: { l: 88, a: 1, b: 14 } };
    expect(infusedShare({ ...ask, bar, target: { l: 50, a: 10, b: 50 } }).tooWeak).toBe(true);
    expect(infusedShare({ ...ask, bar, target: { l: 40, a: 5, b: -40 } }).otherColour).toBe(true);
  });
});

test('from a colour to the same one every step is that colour', () => {
  const gold = colourantById('gold-mica')!;
  const pot = [{ jar: { colourant: gold.id }, grams: usualTeaspoon(gold) }];
  const { steps } = evenGradient({
    from: pot,
    to: pot,
    steps: 4,
    shades: [{ shade: 'cream', share: 1 }],
    gelled: false,
  });
  for (const { share, deltaE } of steps) {
    expect(share).toBeGreaterThanOrEqual(0);
    expect(share).toBeLessThanOrEqual(1);
    expect(deltaE).toBeCloseTo(0, 9);
  }
  // Nothing tells one place from another: the pots are mixed in even parts, from all of the first to all of the second.
  expect(steps.map(({ share }) => share)).toEqual([0, 1 / 3, 2 / 3, 1]);
});

test.each(['blue', '', ';', 'blue 50%, white 2', 'blue .', Array(9).fill('blue 1').join(', ')])(
  'shares of a top are not in “%s”',
  text => {
    expect(() => readSwirlShares(text)).toThrow(expect.objectContaining({ id: 'swirl-shares-unreadable' }));
  },
);
