import { describe, expect, test } from 'vitest';
import { parseCarrier, parsePremix } from '../../../src/engine/dosing/parse-premix.ts';
import { US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { refusalOf } from '../batch/asked.ts';

const tsp = (count: number) => count * US_TEASPOON_ML;

describe('parts, by volume as spoons are', () => {
  test.for<[string, number, number, string]>([
    ['1:2 in water', 1, 2, 'water'],
    ['1 tsp mica to 3 tsp oil', 1, 3, 'oil'],
    ['2 parts oil to one of mica', 1, 2, 'oil'],
    ['double the oil to mica', 1, 2, 'oil'],
    ['1 1/2:3 in water', 1.5, 3, 'water'],
    ['1/2 : 2 in oil', 0.5, 2, 'oil'],
    ['1 scoop to 3 scoops water', 1, 3, 'water'],
    ['a scoop to 3 scoops water', 1, 3, 'water'],
    ['2 heaped scoops clay to 3 scoops water', 2, 3, 'water'],
    ['una cucharadita de arcilla con tres de agua', 1, 3, 'water'],
    ['1/2 tsp of clay in 2 of water', 0.5, 2, 'water'],
    ['1 tsp of clay in 3 of water', 1, 3, 'water'],
    ['equal parts in oil', 1, 1, 'oil'],
    ['mitad y mitad en agua', 1, 1, 'water'],
    ['double its weight in oil', 1, 2, 'oil'],
    ['tres veces su peso en aceite', 1, 3, 'oil'],
    ['1 part to 3 parts water', 1, 3, 'water'],
    ['a part to 2 parts in water', 1, 2, 'water'],
    ['1 de arcilla por 3 de agua', 1, 3, 'water'],
    ['carbon en glicerina 1 a 2', 1, 2, 'glycerin'],
    ['mixed 1 to 3 in oil', 1, 3, 'oil'],
  ])('%s', ([text, powder, liquid, carrier]) => {
    const read = parsePremix(text);
    expect(read).toMatchObject({ by: 'spoons', carrier });
    if (read.by !== 'spoons') return;
    expect(read.powderMillilitres).toBeCloseTo(tsp(powder), 9);
    expect(read.carrierMillilitres).toBeCloseTo(tsp(liquid), 9);
  });
});

describe('shares', () => {
  test.for([
    ['30%', 0.3, 'glycerin'],
    ['95%', 0.95, 'glycerin'],
    ['0.1% in oil', 0.001, 'oil'],
    ['5 g in 15 g glycerin', 0.25, 'glycerin'],
    ['5 g in 15 g', 0.25, 'oil'],
  ] as const)('%s', ([text, pigmentShare, carrier]) => {
    expect(parsePremix(text)).toEqual({
      by: 'percent',
      pigmentShare: expect.closeTo(pigmentShare, 12),
      carrier,
    });
  });

  test('unknown, in glycerin unless said (common practice of bought dispersions)', () => {
    expect(parsePremix('unknown')).toEqual({ by: 'unknown', carrier: 'glycerin' });
    expect(parsePremix('desconocido en agua')).toEqual({ by: 'unknown', carrier: 'water' });
  });

  test('the liquid may be left open, and its spoon may go without a number', () => {
    const paste = { by: 'spoons', powderMillilitres: tsp(1), carrierMillilitres: tsp(3) };
    expect(parsePremix('1 tsp in 1 Tbsp liquid')).toMatchObject({ ...paste, carrier: 'oil' });
    expect(parsePremix('1 tsp in tbsp of water')).toMatchObject({ ...paste, carrier: 'water' });
  });

  test('what is no amount beside the two that are is left out', () => {
    expect(parsePremix('a blue: 1 tsp in 3 tsp oil')).toMatchObject({
      by: 'spoons',
      powderMillilitres: tsp(1),
      carrierMillilitres: tsp(3),
    });
  });

  // No drier than two parts to one, no thinner than one in a thousand.
  test('the driest and the thinnest paste', () => {
    expect(parsePremix('2 tsp in 1 tsp oil')).toMatchObject({ powderMillilitres: tsp(2) });
    expect(parsePremix('1 tsp in 1000 tsp oil').by).toBe('spoons');
  });
});

describe('is refused, with what was written', () => {
  test.for([
    ['1 tsp in 1 Tbsp banana', 'carrier-unknown', 'banana'],
    ['30% en leche', 'carrier-unknown', 'leche'],
    ['96% in oil', 'premix-out-of-range', '96% in oil'],
    ['0.05%', 'premix-out-of-range', '0.05%'],
    ['2.1 tsp in 1 tsp oil', 'premix-out-of-range', '2.1 tsp in 1 tsp oil'],
    ['1 tsp in 1001 tsp oil', 'premix-out-of-range', '1 tsp in 1001 tsp oil'],
    ['5 g in 1 Tbsp oil', 'premix-unreadable', '5 g in 1 Tbsp oil'],
    ['1 tsp in 15 g oil', 'premix-unreadable', '1 tsp in 15 g oil'],
    ['in oil', 'premix-unreadable', 'in oil'],
    ['1 tsp oil', 'premix-unreadable', '1 tsp oil'],
    ['1 tsp in 2 tsp in 3 tsp', 'premix-unreadable', '1 tsp in 2 tsp in 3 tsp'],
  ] as const)('%s: %s', ([text, id, said]) => {
    const { id: told, values } = refusalOf(() => parsePremix(text));
    expect({ id: told, values }).toEqual({ id, values: { text: said } });
  });

  test('more than a line, and a line to its last character is read', () => {
    expect(parsePremix('1 tsp in 1 Tbsp oil'.padEnd(200)).by).toBe('spoons');
    expect(refusalOf(() => parsePremix('1 tsp in 1 Tbsp oil'.padEnd(201))).values).toEqual({
      text: expect.stringContaining('1 tsp in 1 Tbsp oil'),
    });
    expect(refusalOf(() => parsePremix('1 tsp in 1 Tbsp oil'.padEnd(201, ' x'))).id).toBe(
      'premix-unreadable',
    );
  });

  test('a carrier of no known name', () => {
    expect(refusalOf(() => parseCarrier('milk'))).toMatchObject({
      id: 'carrier-unknown',
      values: { text: 'milk' },
    });
  });

  test('parts of nothing are no paste', () => {
    expect(refusalOf(() => parsePremix('0:2 in water')).id).toBe('amount-unit-unknown');
  });

  test('an amount that no kitchen has is told as what it is, whatever stands beside it', () => {
    expect(refusalOf(() => parsePremix('1.500 g mica in 3 g oil'))).toMatchObject({
      id: 'amount-ambiguous',
      values: { text: '1.500 g' },
    });
    expect(refusalOf(() => parsePremix('0 g mica in 3 g oil')).id).toBe('amount-out-of-range');
  });

  test('an amount that may be read in two ways is asked back, not guessed', () => {
    expect(refusalOf(() => parsePremix('1.500 g in 3 g oil'))).toMatchObject({
      id: 'amount-ambiguous',
      values: { text: '1.500 g', small: '1.5', large: '1500' },
    });
  });
});
