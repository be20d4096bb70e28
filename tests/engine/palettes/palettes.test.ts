import { differenceCiede2000 } from 'culori';
import { describe, expect, test } from 'vitest';
import { opticsOf, usualTeaspoon } from '../../../src/engine/colour/jars/colourant-optics.ts';
import type { JarCandidate } from '../../../src/engine/colour/matching/match-jars.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../src/engine/colour/mixing/base-soap.ts';
import { type Lab, labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { evenAlong } from '../../../src/engine/palettes/even-steps.ts';
import {
  HUE_SCHEMES,
  hueApart,
  hueOfLab,
  MOST_OFF,
  paletteOf,
} from '../../../src/engine/palettes/hue-schemes.ts';
import { makeablePalettes } from '../../../src/engine/palettes/makeable.ts';
import { readPalette } from '../../../src/engine/palettes/read-palette.ts';
import { THEMES } from '../../../src/engine/palettes/themes.ts';
import { whatToBuy } from '../../../src/engine/palettes/what-to-buy.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

const reference = differenceCiede2000();
const apart = (one: Lab, other: Lab) => reference({ mode: 'lab65', ...one }, { mode: 'lab65', ...other });
const candidate = (id: string): JarCandidate => {
  const colourant = colourantById(id)!;
  return {
    id,
    jar: { colourant: id },
    gramsPerTeaspoon: usualTeaspoon(colourant),
    ceilingTspPerCup: colourant.dose.ceilingTspPerCup,
    white: colourant.kind === 'white',
    risk: 0,
  };
};
const soap = {
  shades: [{ shade: 'cream', share: 1 }],
  gelled: false,
  portion: { cups: 1, grams: 236.6 },
} as const;

describe('a palette in words', () => {
  test.for([' ', 'teal, '.repeat(70)])('“%s” is no palette', text => {
    expect(() => readPalette(text)).toThrow(expect.objectContaining({ id: 'palette-unreadable' }));
  });

  test.each([
    ['sunset, four layers', 'sunset', 4],
    ['atardecer, cinco capas', 'sunset', 5],
    ['ocean 3 colours', 'ocean', 3],
    ['forest', 'forest', 4],
    ['teal, #f2b95c, dusty rose', undefined, 3],
    ['sage and plum', undefined, 2],
  ])('%s', (text, theme, count) => {
    const read = readPalette(text);
    expect(read.theme).toBe(theme);
    expect(read.colours).toHaveLength(count);
  });

  test('of nothing between two commas has no colour there, and of more than eight is refused', () => {
    expect(readPalette('teal, , plum').colours).toHaveLength(2);
    const many = (count: number) => Array.from({ length: count }, () => 'teal').join(', ');
    expect(readPalette(many(8)).colours).toHaveLength(8);
    for (const text of [many(9), ';, ;'])
      expect(() => readPalette(text)).toThrow(
        expect.objectContaining({ id: 'palette-size', values: { least: 1, most: 8 } }),
      );
  });

  test('one colour is a palette of one, and a text is read up to 400 signs', () => {
    expect(readPalette('teal').colours).toHaveLength(1);
    expect(readPalette(`teal${' '.repeat(396)}`).colours).toHaveLength(1);
    expect(() => readPalette(`teal${' '.repeat(397)}`)).toThrow(Refusal);
    // An article, or nothing before it, is no number of layers.
    expect(readPalette('a sunset').colours).toHaveLength(4);
    expect(readPalette('sunset').colours).toHaveLength(4);
    expect(readPalette('sunset, two layers').colours).toHaveLength(2);
  });

  test('a mood tells its colours and how they look on a screen, top to bottom', () => {
    const { colours } = readPalette('sunset');
    expect(colours.map(({ hex }) => hex)).toEqual([
      '#4b3a78',
      expect.any(String),
      expect.any(String),
      '#f2b95c',
    ]);
    for (const { hex, lab } of colours) expect(apart(labOfHex(hex), lab)).toBeLessThan(0.5);
  });

  test('a line needs two ends', () => {
    const ends = ['#000000', '#ffffff'].map(labOfHex);
    expect(() => evenAlong(ends, 1)).toThrow(RangeError);
    expect(() => evenAlong(ends.slice(1), 3)).toThrow(RangeError);
    const [, middle] = evenAlong([ends[0]!, ends[1]!, ends[0]!], 3);
    expect(apart(middle!, ends[1]!)).toBeLessThan(0.5);
    expect(evenAlong([ends[0]!, ends[0]!], 3)).toHaveLength(3);
  });

  test.each(['', '🧼', 'sunset, 99 layers', 'sunset, one layer', 'x'.repeat(5000), 'constructor'])(
    'is not %s',
    text => {
      expect(() => readPalette(text)).toThrow(Refusal);
    },
  );

  test('a mood beside a colour is no palette of moods, and colours have their Lab', () => {
    expect(readPalette('sunset, teal').theme).toBeUndefined();
    const { colours } = readPalette('teal, #f2b95c');
    for (const { hex, lab } of colours) expect(apart(lab, labOfHex(hex))).toBe(0);
    expect(colours[1]!.hex).toBe('#f2b95c');
  });

  test('a mood keeps its ends, and its steps are even by the reference library', () => {
    for (const { stops } of THEMES) {
      const colours = evenAlong([stops[0]!, stops.at(-1)!].map(labOfHex), 6);
      const steps = colours.slice(1).map((lab, at) => apart(colours[at]!, lab));
      expect(Math.max(...steps) / Math.min(...steps)).toBeLessThan(1.25);
      expect(apart(colours[0]!, labOfHex(stops[0]!))).toBeLessThan(1e-6);
      expect(apart(colours.at(-1)!, labOfHex(stops.at(-1)!))).toBeLessThan(1e-6);
    }
  });
});

describe('hues that hold together', () => {
  test('the turns divide the circle as Itten has them', () => {
    // Opposites, an equilateral triangle, a square: equal arcs. The split leaves equal arms about the opposite.
    for (const scheme of ['complementary', 'triadic', 'tetradic'] as const) {
      const turns = HUE_SCHEMES[scheme];
      for (const [at, turn] of turns.entries()) expect(turn).toBeCloseTo((360 * at) / turns.length, 9);
    }
    expect(MOST_OFF).toBe(360 / 12 / 2);
    const [, left, right] = HUE_SCHEMES['split-complementary'];
    expect(left + right).toBe(360);
  });

  test('are found among colours, each hue within half a step of the circle', () => {
    const wheel = ['#c8323a', '#c98a2e', '#4a9a4c', '#2f8f9a', '#3565b8', '#8a45a0'].map(labOfHex);
    const found = paletteOf('triadic', wheel)!;
    const [first, ...others] = found.places.map(place => hueOfLab(wheel[place]!));
    for (const [at, one] of others.entries())
      expect(hueApart(one.hue, first!.hue + HUE_SCHEMES.triadic[at + 1]!)).toBeLessThanOrEqual(MOST_OFF);
    const errors = others.map((one, at) => hueApart(one.hue, first!.hue + HUE_SCHEMES.triadic[at + 1]!));
    expect(found.off).toBe(Math.max(...errors));
    expect(found.off).toBeGreaterThan(0);
    expect(paletteOf('complementary', ['#c8323a', '#c83a32'].map(labOfHex))).toBeUndefined();
    expect(paletteOf('complementary', ['#808080', '#909090'].map(labOfHex))).toBeUndefined();
  });

  test('a grey begins none, and what is far lighter or duller joins none', () => {
    const lch = (l: number, c: number, h: number) => ({
      l,
      a: c * Math.cos((h * Math.PI) / 180),
      b: c * Math.sin((h * Math.PI) / 180),
    });
    const [red, green] = [lch(55, 50, 30), lch(55, 50, 210)];
    const turn = hueApart(hueOfLab(red).hue, hueOfLab(green).hue);
    expect(turn).toBeGreaterThan(180 - MOST_OFF);
    expect(paletteOf('complementary', [red, green])?.places).toEqual([0, 1]);
    expect(paletteOf('complementary', [red, lch(95, 20, 210)])).toBeUndefined();
    expect(paletteOf('complementary', [red, lch(55, 3, 210)])).toBeUndefined();
    expect(paletteOf('complementary', [lch(55, 3, 30), lch(55, 3, 210)])).toBeUndefined();
    // The liveliest of several, and each place once.
    const dull = lch(55, 25, 210);
    expect(paletteOf('complementary', [red, dull, green])?.places).toEqual([0, 2]);
    expect(paletteOf('complementary', [dull, red, lch(55, 25, 30)])?.places.toSorted()).toEqual([0, 1]);
    expect(paletteOf('complementary', [red])).toBeUndefined();
  });

  test('of several near a turn the one that stands on it is taken, and the palette is as lively as its mean', () => {
    const lch = (h: number, c = 50) => ({
      l: 55,
      a: c * Math.cos((h * Math.PI) / 180),
      b: c * Math.sin((h * Math.PI) / 180),
    });
    const [first, off, on, other] = [lch(100), lch(118), lch(130), lch(70)];
    const found = paletteOf('analogous', [first, off, on, other]);
    const hues = [first, off, on, other].map(hueOfLab);
    const apartFromTurn = (at: number) =>
      Math.min(...[30, 330].map(turn => hueApart(hues[at]!.hue, hues[found!.places[0]!]!.hue + turn)));
    for (const place of found!.places.slice(1)) expect(apartFromTurn(place)).toBeLessThanOrEqual(MOST_OFF);
    const mean = found!.places.reduce((sum, place) => sum + hues[place]!.chroma, 0) / found!.places.length;
    expect(found!.chroma).toBeCloseTo(mean, 12);
    expect(found!.off).toBeLessThan(10);
  });

  test('what a palette is made of is what its spoons of jars make', () => {
    const candidates = ['ultramarine-blue', 'yellow-iron-oxide'].map(candidate);
    const palettes = makeablePalettes({ candidates, ...soap });
    const colours = palettes.flatMap(one => one.colours);
    expect(colours.length).toBeGreaterThan(0);
    for (const { doses, predicted } of colours) {
      for (const { teaspoons } of doses) expect(teaspoons).toBeGreaterThan(0);
      const mix = doses.map(({ id, teaspoons }) => ({
        optics: opticsOf(colourantById(id)!),
        grams: (100 * teaspoons * usualTeaspoon(colourantById(id)!)) / soap.portion.grams,
      }));
      expect(apart(predicted.lab, barLab(mix, plainBase('cream', false)))).toBeLessThan(1e-6);
    }
    // Blue and yellow lie opposite; what stands between them is mixed of both.
    const mixed = makeablePalettes({
      candidates: ['ultramarine-blue', 'yellow-iron-oxide', 'red-iron-oxide'].map(candidate),
      ...soap,
    }).flatMap(one => one.colours);
    expect(mixed.some(({ doses }) => doses.length === 2)).toBe(true);
  });

  test('one scheme alone may be asked for, and a jar that runs short is left out', () => {
    const all = ['ultramarine-blue', 'yellow-iron-oxide', 'red-iron-oxide', 'titanium-dioxide'].map(
      candidate,
    );
    const asked = makeablePalettes({ candidates: all, ...soap, scheme: 'complementary' });
    expect(asked.map(({ scheme }) => scheme)).toEqual(['complementary']);
    const short = all.map(one => (one.id === 'ultramarine-blue' ? { ...one, stockTeaspoons: 0.01 } : one));
    const used = makeablePalettes({ candidates: short, ...soap }).flatMap(({ colours }) =>
      colours.flatMap(({ doses }) => doses.map(({ id }) => id)),
    );
    expect(used).not.toContain('ultramarine-blue');
    // An empty jar gives nothing, and a spoon that nobody owns measures nothing.
    const owned = makeablePalettes({ candidates: all, ...soap, owned: ['1 tsp'] });
    for (const { colours } of owned)
      for (const { doses } of colours) for (const { teaspoons } of doses) expect(teaspoons % 1).toBe(0);
  });

  test('hueApart goes the short way round', () => {
    expect(hueApart(350, 10)).toBe(20);
    expect(hueApart(10, 350)).toBe(20);
    expect(hueApart(0, 540)).toBe(180);
  });

  test('a shelf makes palettes of real spoons under the ceilings', () => {
    const candidates = ['ultramarine-blue', 'yellow-iron-oxide', 'red-iron-oxide', 'titanium-dioxide'].map(
      candidate,
    );
    const palettes = makeablePalettes({ candidates, ...soap });
    expect(palettes.map(({ scheme }) => scheme)).toContain('complementary');
    for (const { colours, off } of palettes) {
      expect(off).toBeLessThanOrEqual(MOST_OFF);
      for (const { doses } of colours) {
        const fullness = doses.reduce(
          (sum, { id, teaspoons }) => sum + teaspoons / colourantById(id)!.dose.ceilingTspPerCup,
          0,
        );
        expect(fullness).toBeLessThanOrEqual(1 + 1e-9);
        for (const { teaspoons } of doses) expect((teaspoons * 32) % 1).toBe(0);
      }
    }
  });
});

describe('what to buy', () => {
  const own = ['red-iron-oxide', 'titanium-dioxide'].map(candidate);
  const offered = ['ultramarine-blue', 'yellow-iron-oxide', 'black-iron-oxide', 'chromium-oxide-green'].map(
    candidate,
  );
  const ask = { own, offered, ...soap };

  test('a blue wants the blue, a green and a blue want both', () => {
    const blue = whatToBuy({ ...ask, targets: [labOfHex('#5467b8')] });
    expect(blue.one[0]!.ids).toEqual(['ultramarine-blue']);
    expect(blue.one[0]!.off).toBeLessThan(blue.now.off);
    const both = whatToBuy({ ...ask, targets: ['#5467b8', '#7f9a72'].map(labOfHex) });
    expect(both.two!.ids.toSorted()).toContain('ultramarine-blue');
    expect(both.two!.off).toBeLessThan(both.one[0]!.off);
  });

  test('the best single jar stands first, wherever it is on offer', () => {
    const { one } = whatToBuy({ ...ask, offered: offered.toReversed(), targets: [labOfHex('#5467b8')] });
    expect(one[0]!.ids).toEqual(['ultramarine-blue']);
    expect(one.map(({ off }) => off)).toEqual(one.map(({ off }) => off).toSorted((a, b) => a - b));
  });

  test('without any jar there is the soap itself', () => {
    const target = labOfHex('#5467b8');
    const [plain] = whatToBuy({ ...ask, own: [], offered: [], targets: [target] }).now.reach;
    expect(plain!.hex).toMatch(/^#[\da-f]{6}$/);
    expect(plain!.deltaE).toBeCloseTo(apart(labOfHex(plain!.hex), target), 0);
  });

  test('at most three are shown, each worth its money, and how far off is the mean of what is not reached', () => {
    const targets = ['#5467b8', '#d8b456'].map(labOfHex);
    const found = whatToBuy({ ...ask, targets });
    expect(found.one.length).toBeLessThanOrEqual(3);
    for (const one of found.one) expect(found.now.off - one.off).toBeGreaterThanOrEqual(0.5);
    for (const { reach, off, mean } of [found.now, ...found.one]) {
      const beyond = reach.map(({ deltaE }) => Math.max(0, deltaE - 3));
      expect(off).toBeCloseTo((beyond[0]! + beyond[1]!) / 2, 9);
      expect(mean).toBeCloseTo((reach[0]!.deltaE + reach[1]!.deltaE) / 2, 9);
    }
    const many = [
      'ultramarine-blue',
      'ultramarine-violet',
      'phthalocyanine-blue',
      'ultramarine-blue-mica',
      'neon-blue',
    ];
    const blues = whatToBuy({ ...ask, offered: many.map(candidate), targets: [labOfHex('#5467b8')] });
    expect(blues.one).toHaveLength(3);
  });

  test('a white on offer is used where there is none of one’s own, and one’s own where there is', () => {
    const [red, white] = own;
    const pale = [labOfHex('#d9a79c')];
    const dark = { ...ask, shades: [{ shade: 'deep', share: 1 }], gelled: true } as const;
    const bought = whatToBuy({ ...dark, own: [red!], offered: [white!], targets: pale });
    expect(bought.one.map(({ ids }) => ids)).toEqual([['titanium-dioxide']]);
    const owned = whatToBuy({
      ...dark,
      own: [red!, white!],
      offered: [candidate('zinc-oxide')],
      targets: pale,
    });
    expect(owned.now.off).toBeCloseTo(bought.one[0]!.off, 9);
    expect(owned.one).toEqual([]);
    // As much of the jar as its ceiling allows, and no more, so that twice the ceiling reaches farther.
    const weak = { ...red!, ceilingTspPerCup: red!.ceilingTspPerCup / 50 };
    const deep = [labOfHex('#9a4a3a')];
    expect(whatToBuy({ ...ask, own: [weak], offered: [], targets: deep }).now.off).toBeGreaterThan(
      whatToBuy({ ...ask, own: [red!], offered: [], targets: deep }).now.off,
    );
  });

  test('a white alone is a mix, too', () => {
    const white = candidate('titanium-dioxide');
    const dark = { ...ask, shades: [{ shade: 'deep', share: 1 }], gelled: true } as const;
    const found = whatToBuy({ ...dark, own: [], offered: [white], targets: [labOfHex('#f5f3ee')] });
    expect(found.one.map(({ ids }) => ids)).toEqual([['titanium-dioxide']]);
  });

  test('what is reached already wants nothing', () => {
    const answer = whatToBuy({ ...ask, targets: [labOfHex('#ece3cb')] });
    expect(answer.one).toEqual([]);
    expect(answer.two).toBeUndefined();
  });

  test('the best two are the best of every two, each tried alone beside the shelf', () => {
    const targets = ['#5467b8', '#d8b456', '#7f9a72'].map(labOfHex);
    const found = whatToBuy({ ...ask, targets });
    const offOf = (bought: readonly JarCandidate[]) =>
      whatToBuy({ ...ask, own: [...own, ...bought], offered: [], targets }).now.off;
    const pairs = offered.flatMap((one, at) => offered.slice(at + 1).map(other => offOf([one, other])));
    expect(found.two!.off).toBeCloseTo(Math.min(...pairs), 1);
    expect(found.one[0]!.off).toBeCloseTo(Math.min(...offered.map(one => offOf([one]))), 1);
  });

  test('what the shelf was found to make already is the least that is told of it, with any purchase too', () => {
    const targets = [labOfHex('#5467b8')];
    const bare = whatToBuy({ ...ask, targets });
    const made = { hex: '#5568b6', deltaE: bare.now.reach[0]!.deltaE / 2 };
    const found = whatToBuy({ ...ask, targets, made: [made] });
    expect(found.now.reach).toEqual([made]);
    for (const one of [...found.one, ...(found.two ? [found.two] : [])])
      expect(one.mean).toBeLessThanOrEqual(made.deltaE);
    const worse = { hex: '#000000', deltaE: 90 };
    expect(whatToBuy({ ...ask, targets, made: [worse] }).now).toEqual(bare.now);
  });
});
