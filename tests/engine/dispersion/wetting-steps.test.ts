import { describe, expect, test } from 'vitest';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import type { Carrier, ColourantKind } from '../../../src/engine/colourants/colourant.ts';
import { carrierFor, howToBlend, howToWet } from '../../../src/engine/dispersion/carrier.ts';
import { US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { refusalOf } from '../batch/asked.ts';

const tsp = (count: number) => count * US_TEASPOON_ML;

describe('how a powder is wetted (common practice)', () => {
  test.for<[ColourantKind, Carrier, number, string]>([
    // Two tablespoons are the least that a small frother turns in.
    ['oxide', 'oil', 6, 'froth'],
    ['oxide', 'oil', 5.75, 'soak'],
    ['oxide', 'water', 3, 'soak'],
    ['oxide', 'glycerin', 3, 'stir'],
    ['white', 'water', 3, 'stir'],
    ['white', 'oil', 3, 'soak'],
    ['white', 'water', 6, 'froth'],
    ['mica', 'oil', 60, 'stir'],
    ['lake', 'oil', 60, 'stir'],
  ])('%s in %s, %d tsp: %s', ([kind, carrier, teaspoons, how]) => {
    expect(howToWet(kind, carrier, tsp(teaspoons))).toBe(how);
  });

  test.for<[ColourantKind, Carrier, string]>([
    ['white', 'water', 'stick-blend'],
    ['white', 'oil', 'whisk'],
    ['oxide', 'water', 'whisk'],
    ['oxide', 'glycerin', 'stick-blend'],
  ])('%s out of %s: %s', ([kind, carrier, how]) => {
    expect(howToBlend(kind, carrier)).toBe(how);
  });
});

test.for([
  // Three times the powder in what spoons measure: quarters to 3 tsp, halves to 12, wholes to 48, tablespoons beyond.
  [0.1, 1],
  [0.45, 1.25],
  [0.95, 2.75],
  [1, 3],
  [1.05, 3],
  [1.45, 4.5],
  [3.9, 11.5],
  [4, 12],
  [4.15, 12],
  [5.4, 16],
  [15.9, 48],
  [16.2, 48],
  [16.6, 51],
] as const)('%d tsp of powder is wetted in %d tsp', ([powder, carrier]) => {
  const colourant = colourantById('gold-mica')!;
  expect(carrierFor({ colourant, powderMillilitres: tsp(powder) }).millilitres).toBeCloseTo(tsp(carrier), 6);
});

test('a carrier that never wets it is refused with those that do', () => {
  const colourant = colourantById('neon-pink')!;
  const { id, values } = refusalOf(() => carrierFor({ colourant, powderMillilitres: 2, asked: 'water' }));
  expect({ id, values }).toEqual({
    id: 'carrier-cannot-work',
    values: { colourant: colourant.names, kind: 'neon', asked: 'water', allowed: colourant.carriers },
  });
});

test('what wets in water by itself needs no dish test, and says so', () => {
  const white = colourantById('titanium-dioxide-water-dispersible')!;
  expect(carrierFor({ colourant: white, powderMillilitres: 2 }).why).toBe('usual-for-kind');
  expect(carrierFor({ colourant: colourantById('gold-mica')!, powderMillilitres: 2 }).why).not.toBe(
    'untested-lot',
  );
});
