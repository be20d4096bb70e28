import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { colourantById, colourants } from '../../../src/engine/colourants/catalogue.ts';
import type { Carrier } from '../../../src/engine/colourants/colourant.ts';
import { carrierFor } from '../../../src/engine/dispersion/carrier.ts';
import { US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { refused } from '../quantities/refused.ts';

const jar = (id: string) => colourantById(id)!;
const tsp = (count: number) => count * US_TEASPOON_ML;

describe('the carrier is one that wets the powder', () => {
  test('neons and lakes never go in water', () => {
    for (const colourant of colourants.filter(one => one.kind === 'neon' || one.kind === 'lake')) {
      expect(refused(() => carrierFor({ colourant, powderMillilitres: tsp(0.5), asked: 'water' }))).toBe(
        'carrier-cannot-work',
      );
      const { choice, why } = carrierFor({ colourant, powderMillilitres: tsp(0.5) });
      expect(choice).not.toBe('water');
      expect(why).toBe('never-in-water');
    }
  });

  test('a dish test of the lot decides for oxides and ultramarines', () => {
    for (const id of ['red-iron-oxide', 'ultramarine-blue']) {
      const ask = (dishTest: 'water' | 'oil' | 'neither') =>
        carrierFor({ colourant: jar(id), powderMillilitres: tsp(0.25), dishTest });
      expect(ask('water')).toMatchObject({ choice: 'water', why: 'dish-test-water', blend: 'whisk' });
      expect(ask('oil')).toMatchObject({ choice: 'oil', why: 'dish-test-oil', blend: 'whisk' });
      expect(ask('neither')).toMatchObject({
        choice: 'glycerin',
        why: 'dish-test-neither',
        blend: 'stick-blend',
      });
    }
  });

  test('without a dish test the advice says that one is missing', () => {
    expect(carrierFor({ colourant: jar('red-iron-oxide'), powderMillilitres: tsp(0.25) }).why).toBe(
      'untested-lot',
    );
  });

  test('a dish test does not talk a neon into water', () => {
    expect(
      carrierFor({ colourant: jar('neon-pink'), powderMillilitres: tsp(0.5), dishTest: 'water' }).choice,
    ).not.toBe('water');
  });

  test('what the maker asks for goes before the dish test, when it can work', () => {
    expect(
      carrierFor({
        colourant: jar('ultramarine-blue'),
        powderMillilitres: tsp(1),
        dishTest: 'water',
        asked: 'oil',
      }),
    ).toMatchObject({ choice: 'oil', why: 'asked' });
  });
});

describe('wetting is one step and blending another', () => {
  test('glycerin is always stick-blended, whatever it carries', () => {
    for (const colourant of colourants.filter(one => one.carriers.includes('glycerin'))) {
      expect(carrierFor({ colourant, powderMillilitres: tsp(0.5), asked: 'glycerin' }).blend).toBe(
        'stick-blend',
      );
    }
  });

  test('water-dispersible white is stick-blended out of water', () => {
    expect(
      carrierFor({ colourant: jar('titanium-dioxide-water-dispersible'), powderMillilitres: tsp(0.5) }),
    ).toMatchObject({ choice: 'water', blend: 'stick-blend' });
  });

  test('a mica in oil is stirred, then whisked', () => {
    expect(carrierFor({ colourant: jar('gold-mica'), powderMillilitres: tsp(1) })).toMatchObject({
      choice: 'oil',
      wet: 'stir',
      blend: 'whisk',
    });
  });

  test('an oxide soaks in a little oil and is frothed only in enough of it', () => {
    const wetOf = (teaspoons: number) =>
      carrierFor({ colourant: jar('red-iron-oxide'), powderMillilitres: tsp(teaspoons), asked: 'oil' });
    expect(wetOf(0.25).wet).toBe('soak');
    expect(wetOf(2)).toMatchObject({ wet: 'froth', millilitres: tsp(6) });
  });
});

describe('for any powder', () => {
  const anyJar = fc.constantFrom(...colourants);
  test.prop([anyJar, fc.double({ min: 0.001, max: 5000, noNaN: true })])(
    'the carrier is about three times it, and never less than a teaspoon',
    (colourant, teaspoons) => {
      const { millilitres, wet, choice } = carrierFor({ colourant, powderMillilitres: tsp(teaspoons) });
      const wanted = Math.max(1, 3 * teaspoons);
      expect(Math.abs(millilitres / tsp(1) - wanted)).toBeLessThanOrEqual(Math.max(0.126, wanted / 11));
      expect(colourant.carriers).toContain(choice);
      if (wet === 'froth') expect(millilitres).toBeGreaterThanOrEqual(tsp(6) - 1e-6);
    },
  );

  test.prop([anyJar, fc.constantFrom<Carrier>('water', 'oil', 'glycerin')])(
    'a carrier is either used as asked or refused',
    (colourant, asked) => {
      const said = refused(() => carrierFor({ colourant, powderMillilitres: 2, asked }));
      expect(said).toBe(colourant.carriers.includes(asked) ? 'answered' : 'carrier-cannot-work');
    },
  );
});

describe('of a portion so small that a teaspoon would thin it', () => {
  /** Teaspoons of carrier for a pinch of mica in a portion of so many teaspoons. */
  const teaspoonsFor = (powder: number, portion?: number) =>
    carrierFor({
      colourant: jar('gold-mica'),
      powderMillilitres: tsp(powder),
      ...(portion === undefined ? {} : { portionMillilitres: tsp(portion) }),
    }).millilitres / US_TEASPOON_ML;

  // A tenth of the portion at most, but never less than wets the powder: three times of it (common practice).
  test.each([
    [1 / 32, 5, 0.5],
    [1 / 32, 2.5, 0.25],
    [1 / 8, 2.5, 0.375],
    [1 / 32, 0.5, 0.125],
  ])('%d tsp of powder in %d tsp of batter take %d tsp', (powder, portion, carrier) => {
    expect(teaspoonsFor(powder, portion)).toBeCloseTo(carrier, 9);
  });

  test('a cup takes a teaspoon at least, and ten teaspoons of batter too', () => {
    for (const portion of [10, 48, undefined]) expect(teaspoonsFor(1 / 32, portion)).toBeCloseTo(1, 9);
    // Three times the powder in quarters of a teaspoon; beside the bound too, where eighths begin.
    expect(teaspoonsFor(0.36, 10)).toBeCloseTo(1, 9);
  });
});
