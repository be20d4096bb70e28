import { expect, test } from 'vitest';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import { parseStrength } from '../../../src/engine/quantities/strength.ts';

const mica = colourantById('gold-mica')!;
const doseOf = (strength: string, oilsGrams: number) =>
  answerDose({
    portion: { of: 'oils', measure: 'mass', grams: oilsGrams },
    colourants: [{ colourant: mica, strength: parseStrength(strength), gramsPerTeaspoon: 2.5 }],
  });

// Common practice: a usage rate in percent is of the oils. 1 % of 500 g is 5 g: 2 level teaspoons of 2.5 g.
test('0.5 % and 1 % are of the oils in the portion, and the answer says so', () => {
  const one = doseOf('1%', 500);
  expect(one.doses[0]!.grams.typical).toBeCloseTo(5, 6);
  expect(one.doses[0]!.teaspoons).toBeCloseTo(2, 6);
  expect(doseOf('0.5%', 500).doses[0]!.teaspoons).toBeCloseTo(1, 6);
  const said = one.cautions.find(({ id }) => id === 'percent-of-oils');
  expect(said?.values).toMatchObject({ percent: 1, oilsGrams: 500 });
});

test('half is half of full colour, double is held at the ceiling', () => {
  const full = doseOf('full', 500).doses[0]!.teaspoons;
  expect(doseOf('half', 500).doses[0]!.teaspoons).toBeCloseTo(full / 2, 9);
  expect(doseOf('double', 500).doses[0]!.teaspoons).toBeLessThanOrEqual(
    doseOf('full', 500).doses[0]!.ceilingTeaspoons * (1 + 1e-9),
  );
});
