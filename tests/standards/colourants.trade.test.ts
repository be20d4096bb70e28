import { describe, expect, test } from 'vitest';
import { findColourant } from '../../src/engine/colourants/asked/find-colourant.ts';
import { colourants } from '../../src/engine/colourants/catalogue.ts';

const dosesOf = (kind: string) =>
  new Set(
    colourants
      .filter(colourant => colourant.kind === kind)
      .map(({ dose }) => `${dose.fullTspPerCup}/${dose.ceilingTspPerCup}`),
  );

/** Common practice: level US teaspoons per US cup of raw batter, full colour and the most. */
describe('doses are those of the trade (common practice)', () => {
  test.each([
    ['oxide', '0.25/0.5'],
    ['chromium', '0.25/0.5'],
    ['ultramarine', '0.25/0.5'],
    ['mica', '1/1'],
    ['neon', '0.5/0.5'],
    ['white', '0.5/1'],
  ])('every %s: %s', (kind, doses) => {
    expect(dosesOf(kind)).toEqual(new Set([doses]));
  });

  test('the true red takes a teaspoon; no other lake inherits that', () => {
    expect(findColourant('D&C Red 30').dose).toEqual({ fullTspPerCup: 1, ceilingTspPerCup: 1 });
    const others = colourants.filter(({ kind, id }) => kind === 'lake' && id !== 'red-30-lake');
    expect(others.filter(({ dose }) => dose.fullTspPerCup > 0.25)).toEqual([]);
  });
});

describe('wetting and hints are those of the trade (common practice)', () => {
  test.each([
    ['ultramarine violet', 'deepen-violet-with-blue'],
    ['red 30', 'deepen-red-with-red-mica'],
    ['titanium dioxide', 'white-brittle'],
    ['titanium dioxide', 'white-crackles-when-hot'],
    ['cocoa powder', 'cocoa-for-brown'],
    ['neon pink', 'never-in-water'],
  ])('%s: %s', (text, hint) => {
    expect(findColourant(text).hints).toContain(hint);
  });

  test('a dish test decides for oxides, chromiums and ultramarines', () => {
    const untested = colourants.filter(
      ({ kind, dishTestDecides }) => ['oxide', 'chromium', 'ultramarine'].includes(kind) && !dishTestDecides,
    );
    expect(untested).toEqual([]);
  });

  test('white is sold water- or oil-dispersible', () => {
    expect(findColourant('water-dispersible titanium dioxide').carriers[0]).toBe('water');
    expect(findColourant('oil-dispersible titanium dioxide').carriers).not.toContain('water');
  });
});

describe('alkali behaviour agrees with the published chemistry', () => {
  test.each([
    ['ultramarine blue', 'stable', 'Ullmann, cited by Haz-Map: acid destroys it; fairly resistant to alkali'],
    ['chromium oxide green', 'stable', 'Gettens and Stout, Painting Materials, p. 107'],
    ['red iron oxide', 'stable', 'pigment handbooks, from memory'],
    ['iron blue mica', 'destroyed', 'Field and Salter, Chromatography'],
    ['manganese violet mica', 'destroyed', 'Buxbaum'],
    ['carmine', 'shifts', 'JECFA'],
    ['ultramarine violet', 'conditional', 'Kirk-Othmer and Buxbaum, from memory'],
    ['charcoal', 'stable', 'Encyclopaedia Britannica 1911'],
  ])('%s is %s (%s)', (text, behaviour) => {
    expect(findColourant(text).alkali.behaviour).toBe(behaviour);
  });
});

describe('densities agree with Gettens and Stout, Painting Materials (specific gravity)', () => {
  test.each([
    ['ultramarine blue', 2.34],
    ['chromium hydroxide green', 3.32],
    ['zinc oxide', 5.65],
    ['kaolin', 2.6],
    ['bone black', 2.29],
  ])('%s: %d', (text, specificGravity) => {
    expect(findColourant(text).density.typical).toBeCloseTo(specificGravity, 2);
  });

  test('titanium dioxide spans anatase 3.9 and rutile 4.2', () => {
    const { low, high } = findColourant('titanium dioxide').density;
    expect(low).toBeLessThanOrEqual(3.9);
    expect(high).toBeGreaterThanOrEqual(4.2);
  });
});
