import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import '../../seed.ts';
import { readQuestion } from '../../../src/engine/questions/read.ts';
import { portionsIn } from './portions-in.ts';

const whole = fc.integer({ min: 2, max: 9 }).map(hundreds => 100 * hundreds);

describe('amounts of a question that are no further portion', () => {
  property.prop([whole, fc.constantFrom('jug', 'pot', 'bowl', 'tub')])(
    'how large a vessel is',
    (size, vessel) => {
      const part = size - 70;
      const { part: read, unclear } = portionsIn(
        `a ${size} ml ${vessel} with ${part} ml of batter in it, how much rose clay`,
      );
      expect({ read, unclear }).toEqual({ read: `${part} ml`, unclear: [] });
    },
  );

  property.prop([fc.integer({ min: 2, max: 6 }), fc.constantFrom(240, 250, 300)])(
    'how large a cup is',
    (cups, size) => {
      for (const text of [
        `${cups} cups, my cups are ${size} ml`,
        `${cups} tazas, mis tazas son de ${size} ml`,
      ])
        expect(portionsIn(`${text}, how much rose clay`)).toMatchObject({
          part: `${cups} x ${size} ml`,
          unclear: [],
        });
    },
  );

  test.each([
    [
      'the same in another unit',
      'one British pint of batter, 568 ml it says on the jug, how much rose clay',
      '1 british pint',
    ],
    ['the same in grams', '16 oz (454 g) of batter, how much rose clay', '16 oz'],
    ['of a cup of one’s own', 'a cup of batter, 280 ml, how much rose clay', '280 ml'],
  ])('%s', (_, question, part) => expect(portionsIn(question)).toMatchObject({ part, unclear: [] }));

  test('two portions are asked about', () =>
    expect(portionsIn('two cups of blue, 500 ml of pink, how much mica').unclear).toEqual([
      '2 cups',
      '500 ml',
    ]));

  test('what was weighed with its jug is no portion', () =>
    expect(portionsIn('615 g with the jug, how much rose clay').part).toBeUndefined());
});

describe('parts and rates', () => {
  test.each([
    ['what do you lot use of annatto seed powder per kilo of oils', '1 kilo oils'],
    ['cuánta cúrcuma por cada kilo de aceites', '1 kilo oils'],
    ['how much charcoal ppo for black', '1 lb oils'],
    ['how much spirulina per 500 g oils', '500 g oils'],
    ['how much charcoal for 2 lb (oils)', '2 lb oils'],
    ['900 g loaf, oils that is, how much rose clay', '900 g oils'],
    [
      'splitting 1 kg batter half half, one half purple mica. dose for the purple half?',
      '1/2 of 1 kg batter',
    ],
  ])('%s', (question, portion) => expect(readQuestion(question).facts.portion).toBe(portion));

  test('a rate of its own is none that is asked for', () => {
    const { facts } = readQuestion('1 tsp indigo per pound of oils, is that too much for 2 lb of oils');
    expect(facts).toMatchObject({ portion: '2 lb oils', strength: '1 tsp ppo' });
  });

  test('a jug that is full to a part is that part, and tells no strength', () => {
    const { facts } = readQuestion('500 ml jug two thirds full, how much mica');
    expect(facts).toMatchObject({ portion: '2/3 of 500 ml', strength: undefined });
  });

  test('of an amount beside a half both are asked: the half, or half of it', () =>
    expect(readQuestion('half my batter, about 400 ml, gets charcoal. how much').facts.unclear).toEqual([
      '1/2 of 400 ml',
      '400 ml',
    ]));

  test.each([
    ['350 ml of batter, activated charcoal, i want real black not grey', 'full'],
    ['900 g de aceites con cacao, que quede marrón medio', 'medium'],
  ])('%s', (question, strength) => expect(readQuestion(question).facts.strength).toBe(strength));
});
