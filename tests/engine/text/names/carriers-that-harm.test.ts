import { describe, expect, test } from 'vitest';
import { parseWetting } from '../../../../src/engine/batch/portions/carrier.ts';
import { parseCarrier, parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';

/** The refusal that `ask` throws. */
function refused(ask: () => unknown): Refusal {
  try {
    ask();
  } catch (problem) {
    if (problem instanceof Refusal) return problem;
    throw problem;
  }
  throw new Error('answered');
}

// Which liquids harm is general chemistry and trade practice (common practice).
describe('a liquid is not water or oil because its name holds the word', () => {
  test.each([
    ['lemon water', 'acid'],
    ['vinegar water', 'acid'],
    ['water with lemon', 'acid'],
    ['orange juice', 'acid'],
    ['agua de limón', 'acid'],
    ['vinagre', 'acid'],
    ['bleach water', 'bleach'],
    ['lejía', 'bleach'],
    ['lye water', 'lye'],
    ['agua con sosa', 'lye'],
    ['motor oil', 'petroleum'],
    ['lamp oil', 'petroleum'],
    ['mineral oil', 'petroleum'],
    ['baby oil', 'petroleum'],
    ['aceite de bebé', 'petroleum'],
  ])('%s is refused: %s', (text, why) => {
    expect(refused(() => parseCarrier(text))).toMatchObject({ id: 'carrier-harms', values: { why } });
    expect(refused(() => parsePremix(`1 tsp in 1 Tbsp ${text}`))).toMatchObject({ values: { why } });
  });

  test.each(['peppermint oil', 'tea tree oil', 'aceite de lavanda', 'lemon oil'])('%s is a scent', text => {
    expect(refused(() => parseCarrier(text))).toMatchObject({ id: 'carrier-is-fragrance' });
  });

  test.each([
    ['rose water', 'water'],
    ['agua de rosas', 'water'],
    ['aloe', 'water'],
    ['light oil', 'oil'],
    ['sweet almond oil', 'oil'],
    ['rosehip oil', 'oil'],
    ['aceite de oliva', 'oil'],
    ['glicerina', 'glycerin'],
  ])('%s is still %s', (text, carrier) => {
    expect(parseCarrier(text)).toBe(carrier);
  });

  test.each([
    '1 tsp in 1 Tbsp banana',
    '1 tsp in 1 Tbsp goat milk',
    '30% in banana',
    '1 cdta en 1 cda de plátano',
  ])('%s: what nobody knows is not taken for oil', text => {
    expect(refused(() => parsePremix(text))).toMatchObject({ id: 'carrier-unknown' });
  });

  test('nor in a plan', () => {
    expect(refused(() => parseWetting('1 tsp lemon water'))).toMatchObject({ values: { why: 'acid' } });
  });
});
