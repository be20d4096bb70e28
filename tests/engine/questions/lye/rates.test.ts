import { expect, test } from 'vitest';
import { readLyeQuestion } from '../../../../src/engine/questions/lye/question.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';

/* What a rate is told to is not what is poured, and what stands behind a full stop was not weighed. */

test('a rate to so much batter is not one to so much oil', () => {
  expect(readPowder('1 tsp per 500 g of oils').perPound).toBe(true);
  for (const text of ['1 tsp per 500 g of batter', '1 cdta por cada 500 g de masa', '2 g per kilo of soap'])
    expect(() => readPowder(text)).toThrow(Refusal);
});

test.each([
  ['how much rose clay at 1 tsp per 500 g of batter for 1 kg of batter', '1 kg batter', undefined],
  ['is 1 tsp per 500 g of batter right for ultramarine', '500 g batter', '1 tsp'],
  ['show me indigo at 2 g per 500 g oils', '500 g oils', '2 g'],
  ['q color da el oxido rojo a 3 gramos por kilo de masa', '1 kilo batter', '3 gramos'],
  ['2 cdtas de arcilla rosa por cada 500 g de masa, tengo 1 kg de masa', '1 kg batter', undefined],
])('“%s” is for %s', (question, portion, powder) => {
  const { facts } = readQuestion(question);
  expect(facts.portion).toBe(portion);
  expect(facts.powder).toBe(powder);
});

test('a dose beside a list of weighed oils is for all of them', () => {
  const { facts } = readQuestion(
    'lleva 300 g de coco, 500 g de oliva y 200 g de palma, el azul ultramar cuánto',
  );
  expect(facts.portion).toBe('1000 g oils');
});

test('an oil’s weight before a full stop is no weighed lye', () => {
  for (const question of [
    'olive 700g coconut 300g. lye?',
    'PKO 1.5kg + palm oil 2.5kg. caustic soda quantity?',
  ])
    expect(readLyeQuestion(question).weighed).toBeUndefined();
  expect(readLyeQuestion('olive 700g coconut 300g. lye?').given.oils).toBe('olive 700g coconut 300g');
  expect(readLyeQuestion('500 g olive. 70 g lye. ok?').weighed).toMatchObject({ grams: 70 });
});

test('one half and another are two (half a kilo each)', () => {
  expect(readLyeQuestion('medio kilo de girasol y otro medio de oliva, cuánta sosa').given.oils).toBe(
    '1/2 kilo de girasol, 1/2 kilo de oliva',
  );
});
