import { describe, expect, test } from 'vitest';
import { fullDose, opticsOf, usualTeaspoon } from '../../../../src/engine/colour/jars/colourant-optics.ts';
import { type ComparedJar, compareJars } from '../../../../src/engine/colour/jars/compare-jars.ts';
import {
  barGrams,
  ceilingPerCup,
  fullGrams,
  pigmentIn,
  pigmentPerTeaspoon,
} from '../../../../src/engine/colour/jars/jar-spoons.ts';
import { matchColour } from '../../../../src/engine/colour/matching/match.ts';
import { explainMiss } from '../../../../src/engine/colour/matching/match-miss.ts';
import { barLab } from '../../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../../src/engine/colour/mixing/base-soap.ts';
import { colourDifference, labOfHex } from '../../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../../src/engine/colourants/catalogue.ts';
import { MEASURES, US_CUP_ML, US_TEASPOON_ML } from '../../../../src/engine/quantities/units.ts';
import { refused } from '../../quantities/refused.ts';
import { candidates, ONE_CUP } from '../shelves.ts';

const blue = colourantById('ultramarine-blue')!;
const us = MEASURES.us;
const powder = { colourant: blue };

// Batter weighs about a gram a millilitre (common practice), so that a cup is 236.6 g of it.
describe('the pigment in a bar', () => {
  const spoon = blue.bulkDensity.typical * US_TEASPOON_ML;
  test('of a powder is its spoon, weighed where its owner weighed it', () => {
    expect(pigmentPerTeaspoon(powder, us)).toBeCloseTo(spoon, 9);
    expect(pigmentPerTeaspoon({ ...powder, gramsPerTeaspoon: 3 }, us)).toBe(3);
    expect(pigmentIn({ measure: 'mass', grams: 5 }, powder, us)).toBe(5);
    expect(pigmentIn({ measure: 'volume', millilitres: 2 * US_TEASPOON_ML }, powder, us)).toBeCloseTo(
      2 * spoon,
      9,
    );
  });
  test('of a dispersion is its share, by the volumes of powder and liquid', () => {
    const wet = { ...powder, pigmentFraction: 0.4 };
    expect(pigmentPerTeaspoon({ ...wet, gramsPerTeaspoon: 5 }, us)).toBeCloseTo(2, 12);
    // 0.4 g of pigment and 0.6 g of glycerin at 1.26 g/ml fill so many millilitres.
    const perGram = 0.4 / blue.density.typical + 0.6 / 1.26;
    expect(pigmentPerTeaspoon(wet, us)).toBeCloseTo((0.4 * US_TEASPOON_ML) / perGram, 2);
    expect(pigmentIn({ measure: 'mass', grams: 5 }, wet, us)).toBe(2);
    expect(fullGrams(wet, us)).toBe(fullDose(blue));
  });
  test('is none in a plain bar, and by the cup as it is told', () => {
    const cup = US_CUP_ML;
    expect(barGrams({ by: 'plain' }, powder, us)).toBe(0);
    expect(barGrams({ by: 'grams-a-cup', grams: 2 }, powder, us)).toBeCloseTo(200 / cup, 9);
    expect(barGrams({ by: 'grams-a-cup', grams: 2 }, { ...powder, pigmentFraction: 0.5 }, us)).toBeCloseTo(
      100 / cup,
      9,
    );
    expect(barGrams({ by: 'cup', tspPerCup: 0.5 }, powder, us)).toBeCloseTo((50 * spoon) / cup, 9);
  });
  test('by the oils is less in the batter that they make: a pound of oils is about 1.47 pounds of it', () => {
    const percent = barGrams({ by: 'percent-of-oils', percent: 1 }, powder, us);
    expect(percent).toBeCloseTo(1 / 1.47, 1);
    expect(barGrams({ by: 'percent-of-oils', percent: 2 }, powder, us)).toBeCloseTo(2 * percent, 9);
    const pound = barGrams({ by: 'pound-of-oils', tspPerPound: 1 }, powder, us);
    expect(pound).toBeCloseTo((100 * spoon) / (1.47 * 453.59237), 1);
  });
  test('by a strength is a share of the full dose, by the owner’s own spoon where it was weighed', () => {
    const full = fullDose(blue);
    expect(barGrams({ by: 'name', name: 'full' }, powder, us)).toBeCloseTo(full, 9);
    expect(barGrams({ by: 'name', name: 'pastel' }, powder, us)).toBeCloseTo(full / 4, 9);
    expect(barGrams({ by: 'share', ofFull: 0.3 }, powder, us)).toBeCloseTo(0.3 * full, 9);
    const heavy = { ...powder, gramsPerTeaspoon: 2 * spoon };
    expect(fullGrams(heavy, us)).toBeCloseTo(2 * fullGrams({ ...powder, gramsPerTeaspoon: spoon }, us), 9);
    expect(fullGrams(powder, us)).toBe(full);
  });
  test('never more spoons than the ceiling, in whatever teaspoon', () => {
    expect(ceilingPerCup(powder, us)).toBeCloseTo(blue.dose.ceilingTspPerCup, 9);
    const metric = { teaspoon: 5 };
    expect(ceilingPerCup(powder, metric) * 5).toBeCloseTo(blue.dose.ceilingTspPerCup * US_TEASPOON_ML, 9);
    // A dispersion at the ceiling holds as much pigment as the powder does.
    const wet = { ...powder, pigmentFraction: 0.4 };
    expect(ceilingPerCup(wet, us) * pigmentPerTeaspoon(wet, us)).toBeCloseTo(
      blue.dose.ceilingTspPerCup * pigmentPerTeaspoon(powder, us),
      9,
    );
  });
});

// CIELAB lightness, chroma and hue differences: ISO 11664-4.
describe('where the nearest colour falls short', () => {
  const at = (l: number, a: number, b: number) => ({ l, a, b });
  test.each([
    [at(80, 10, 0), at(60, 10, 0), 'not-light-enough'],
    [at(40, 10, 0), at(60, 10, 0), 'not-dark-enough'],
    [at(60, 50, 0), at(60, 10, 0), 'not-vivid-enough'],
    [at(60, 10, 0), at(60, 50, 0), 'too-vivid'],
    [at(60, 0, 40), at(60, 40, 0), 'other-hue'],
  ])('of %o the nearest is %o: %s', (target, nearest, why) => {
    const miss = explainMiss(target, nearest);
    expect(miss.why).toBe(why);
    expect(miss.lightness).toBe(target.l - nearest.l);
    // All three together are the distance in CIELAB.
    expect(Math.hypot(miss.lightness, miss.chroma, miss.hue)).toBeCloseTo(
      Math.hypot(target.l - nearest.l, target.a - nearest.a, target.b - nearest.b),
      9,
    );
  });
});

describe('two jars beside one another', () => {
  const jar = (id: string, more: Partial<ComparedJar> = {}): ComparedJar => {
    const colourant = colourantById(id)!;
    return {
      jar: { colourant: id },
      gramsPerTeaspoon: usualTeaspoon(colourant),
      fullTspPerCup: colourant.dose.fullTspPerCup,
      ceilingTspPerCup: colourant.dose.ceilingTspPerCup,
      white: colourant.kind === 'white',
      ...more,
    };
  };
  test.each([
    ['yellow-iron-oxide', 'red-iron-oxide', 'redder'],
    ['red-iron-oxide', 'yellow-iron-oxide', 'yellower'],
    ['ultramarine-pink', 'ultramarine-blue', 'bluer'],
    ['red-iron-oxide', 'black-iron-oxide', 'duller'],
    ['black-iron-oxide', 'red-iron-oxide', 'livelier'],
  ])('from %s to %s it turns %s', (one, other, turn) => {
    const { turns } = compareJars(jar(one), jar(other));
    expect(turns).toContain(turn);
    expect(turns.length).toBeLessThanOrEqual(2);
  });
  test('lighter one way is darker the other', () => {
    const [there, back] = [
      compareJars(jar('ultramarine-blue'), jar('yellow-iron-oxide')).turns,
      compareJars(jar('yellow-iron-oxide'), jar('ultramarine-blue')).turns,
    ];
    expect(there.includes('lighter')).toBe(back.includes('darker'));
    expect(there.includes('darker')).toBe(back.includes('lighter'));
  });
});

describe('a match on a small shelf', () => {
  const base = plainBase('cream', false);
  const ask = (ids: readonly string[], target: ReturnType<typeof labOfHex>, most = 2) =>
    matchColour({ candidates: candidates(...ids), base, target, portion: ONE_CUP, most });
  const optics = (id: string) => opticsOf(colourantById(id)!);
  /** A colour that these teaspoons to the cup make. */
  const made = (spoons: Readonly<Record<string, number>>) =>
    barLab(
      Object.entries(spoons).map(([id, teaspoons]) => ({
        optics: optics(id),
        grams: (100 * teaspoons * usualTeaspoon(colourantById(id)!)) / ONE_CUP.grams,
      })),
      base,
    );
  test.each([
    [{ 'ultramarine-blue': 1 / 8 }],
    [{ 'yellow-iron-oxide': 1 / 16, 'ultramarine-blue': 1 / 8 }],
    [{ 'red-iron-oxide': 1 / 32, 'titanium-dioxide': 1 / 8 }],
    [{ 'ultramarine-blue': 1 / 16, 'zinc-oxide': 1 / 4 }],
  ])('finds again what %o made', spoons => {
    const shelf = [
      'ultramarine-blue',
      'yellow-iron-oxide',
      'red-iron-oxide',
      'titanium-dioxide',
      'zinc-oxide',
    ];
    const target = made(spoons);
    const [best] = ask(shelf, target).recipes;
    expect(colourDifference(best!.predicted.lab, target)).toBeLessThan(0.5);
    // No jar idles, and none is named twice.
    expect(best!.doses.every(({ teaspoons }) => teaspoons > 0)).toBe(true);
    expect(new Set(best!.doses.map(({ id }) => id)).size).toBe(best!.doses.length);
  });
  test('one white at a time, and no more colours than asked', () => {
    const shelf = [
      'ultramarine-blue',
      'yellow-iron-oxide',
      'red-iron-oxide',
      'titanium-dioxide',
      'zinc-oxide',
    ];
    for (const most of [1, 2])
      for (const { doses } of ask(shelf, labOfHex('#b0a0c0'), most).recipes) {
        const whites = doses.filter(({ id }) => colourantById(id)!.kind === 'white');
        expect(whites.length).toBeLessThanOrEqual(1);
        expect(doses.length - whites.length).toBeLessThanOrEqual(most);
      }
  });
  test('a shelf of whites matches a white, and none is refused', () => {
    const target = made({ 'titanium-dioxide': 1 / 4 });
    const [best] = ask(['titanium-dioxide', 'zinc-oxide'], target).recipes;
    expect(best!.doses.map(({ id }) => id)).toEqual(['titanium-dioxide']);
    expect(refused(() => ask([], target))).not.toBe('answered');
  });
});
