import { describe, expect, test } from 'vitest';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

const first = (question: string) => readQuestion(question).readings[0];

test.each([
  ['show me 1 tsp red oxide in 500 ml', '1 tsp red oxide'],
  ['Muéstreme 5 g de óxido amarillo en 1 kilo de aceites', '5 g oxido amarillo'],
  ['What will 6 grams of ultramarine violet look like in 1 lb of batter', '6 grams ultramarine violet'],
  ['si le pongo 2 g de óxido negro a 1 kg de masa, de qué tono queda', '2 g oxido negro'],
])('an amount that is to be looked at is shown: %s', (question, mix) => {
  expect(first(question)).toMatchObject({ job: 'preview', given: { mix } });
});

test('three parts of one to one of another are shown three to one', () => {
  expect(first('3 parts yellow oxide + 1 part red oxide, what colour does it give')?.given.mix).toBe(
    'yellow oxide 100% of full + red oxide 33% of full',
  );
});

test.each([
  'qué colores tenemos anotados en el armario del taller',
  'what powders have we got in the cupboard',
  'which micas do I have left in the drawer',
])('what is kept where colours are kept is a shelf: %s', question => {
  expect(first(question)?.job).toBe('shelf-show');
});

test.each([
  'three colours, light grey, soft yellow and forest green, 5 lb of oils, whole plan please',
  'jabón rojo, blanco y azul, 3 kg de aceites. ¿Nos arma todo el plan, cuánto polvo y en qué orden?',
])('a whole plan is planned: %s', question => {
  expect(first(question)?.job).toBe('plan');
});

describe('what wets a powder', () => {
  test.each([
    ['does glycerin work for wetting mica', 'mica', 'glycerin'],
    ['Mica roja en glicerina, se puede?', 'mica roja', 'glicerina'],
    ['can I wet charcoal in water?', 'charcoal', 'water'],
  ])('%s', (question, colourant, carrier) => {
    expect(first(question)).toMatchObject({ job: 'wet', given: { colourant, carrier } });
  });
});

test.each(['dulse', 'sea lettuce', 'kombu', 'cochayuyo'])(
  '%s is a plant of its own, and no slip of a spice',
  name => {
    expect(readQuestion(`does ${name} hold its colour in cold process`).corrections).toEqual([]);
  },
);

test('candles that are dyed with what goes into soap are asked about for soap', () => {
  const question = 'I want to dye candles and my soap with the same mica, will it hold?';
  expect(readQuestion(question).outside).toBeUndefined();
  expect(readQuestion('I want to dye my candles with blue mica').outside).toBe('candles');
});

test.each([
  ['2 tspn of ultramarine in 500 g oils', '2 tsp'],
  ['3 tbls of rose clay in 1 kg oils', '3 tbls'],
])('spoons as they are cut off: %s', (question, powder) => {
  expect(readQuestion(question).facts.powder).toBe(powder);
});
