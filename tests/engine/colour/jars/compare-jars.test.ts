import { describe, expect, test } from 'vitest';
import { usualTeaspoon } from '../../../../src/engine/colour/jars/colourant-optics.ts';
import { type ComparedJar, compareJars } from '../../../../src/engine/colour/jars/compare-jars.ts';
import { colourantById } from '../../../../src/engine/colourants/catalogue.ts';

const jar = (id: string, scale = 1, more: Partial<ComparedJar> = {}): ComparedJar => {
  const colourant = colourantById(id)!;
  return {
    jar: { colourant: id, ...(scale !== 1 && { measured: { k: scale, s: scale, plusMinus: 3 } }) },
    gramsPerTeaspoon: usualTeaspoon(colourant),
    fullTspPerCup: colourant.dose.fullTspPerCup,
    ceilingTspPerCup: colourant.dose.ceilingTspPerCup,
    white: colourant.kind === 'white',
    ...more,
  };
};

describe('two jars at the same depth', () => {
  // Kubelka and Munk: K and S add by the gram, so a jar whose K and S are both f times another's needs 1/f of it.
  test.each([0.5, 0.8, 1, 1.6])(
    'a jar %f times as strong takes that much less, and looks the same',
    times => {
      const found = compareJars(jar('ultramarine-blue'), jar('ultramarine-blue', times));
      expect(found.spoonsOfOther).toBeCloseTo(1 / times, 6);
      expect(found.deltaE).toBeCloseTo(0, 5);
      expect(found.turns).toEqual([]);
    },
  );

  test('a fluffier powder takes more spoons and the same grams', () => {
    const fluffy = jar('red-iron-oxide', 1, {
      gramsPerTeaspoon: usualTeaspoon(colourantById('red-iron-oxide')!) / 2,
    });
    const found = compareJars(jar('red-iron-oxide'), fluffy);
    expect(found.spoonsOfOther).toBeCloseTo(2, 6);
    expect(found.grams[1]).toBeCloseTo(found.grams[0], 8);
  });

  test('is the same the other way round', () => {
    const [blue, violet] = [jar('ultramarine-blue'), jar('ultramarine-violet')];
    const there = compareJars(blue, { ...violet, fullTspPerCup: 2 * compareJars(blue, violet).teaspoons[1] });
    const back = compareJars({ ...violet, fullTspPerCup: 2 * there.teaspoons[1] }, blue);
    expect(back.teaspoons[1]).toBeCloseTo(there.teaspoons[0], 6);
  });

  test('says which way the hue turns', () => {
    const { turns } = compareJars(jar('ultramarine-blue'), jar('ultramarine-violet'));
    expect(turns).toContain('redder');
    expect(compareJars(jar('ultramarine-violet'), jar('ultramarine-blue')).turns).toContain('bluer');
  });

  test('whites go by what they scatter', () => {
    const found = compareJars(jar('titanium-dioxide'), jar('titanium-dioxide', 0.5));
    expect(found.spoonsOfOther).toBeCloseTo(2, 6);
  });

  test('a jar too weak for it is out of reach', () => {
    expect(compareJars(jar('ultramarine-blue'), jar('ultramarine-blue', 0.1)).outOfReach).toBe(true);
  });
});
