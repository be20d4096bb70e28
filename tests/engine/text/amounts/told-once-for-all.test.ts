import { describe, expect, test } from 'vitest';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { figuresOf } from '../../../../src/engine/quantities/spoken/number-words.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { US_TEASPOON_ML } from '../../../../src/engine/quantities/units.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { sharesPhrase } from '../../../../src/engine/text/amounts/shares/share-phrases.ts';

/* What is said once and goes for all: common practice (no source); the sums are arithmetic. */

describe('a hundred that goes without saying', () => {
  test.each([
    ['six fifty g', '650 g'],
    ['nine eighty-five grams', '985 grams'],
    ['twelve fifty g of oils', '1250 g of oils'],
    ['seis cincuenta gramos', '650 gramos'],
    ['ocho treinta y cinco ml', '835 ml'],
    // So many of so much.
    ['two fifty g bars', '2 50 g bars'],
    ['dos cincuenta g pastillas', '2 50 g pastillas'],
    ['two twenty', '2 20'],
  ])('%s is %s', (spelt, figures) => expect(figuresOf(spelt)).toBe(figures));
});

test.each([
  ['oils come to 1 kilo 50', 1050],
  ['2 kilos 80 de aceite', 2080],
  ['un kilo cincuenta', 1050],
  ['1 kilo 500 de aceites', 1500],
])('%s: the grams go without saying', (text, grams) =>
  expect(parsePortionRange(text).low).toMatchObject({ measure: 'mass', grams }),
);

test.each([
  ['medio litro escaso, pon 480 ml', 480],
  ['a scant half litre, put 480 ml', 480],
  ['un litro generoso, apunta 1050 ml', 1050],
])('%s: the round one was only near it', (text, millilitres) =>
  expect(parsePortionRange(text).low).toMatchObject({ measure: 'volume', millilitres }),
);

describe('an amount of powder', () => {
  const tsp = (text: string) => {
    const { low } = readPowder(text);
    return low?.measure === 'volume' ? low.millilitres / US_TEASPOON_ML : undefined;
  };
  test.each([
    ['2 heaping... no, I levelled them. 2 tsp cocoa', 2],
    ['3 colmadas, no, las rasé. 2 cucharaditas de cacao', 2],
    ['1 heaped, no wait I flattened it, 1 tsp spirulina', 1],
    ['media cucharilla', 0.5],
    ['cucharilla y media de índigo', 1.5],
    ['una cucharadica de ultramar', 1],
  ])('%s', (text, spoons) => expect(tsp(text)).toBeCloseTo(spoons, 6));

  test.each([
    ['dos gramicos y medio de ultramar', 2.5],
    ['tres gramillos de mica', 3],
  ])('%s', (text, grams) => expect(readPowder(text).low).toEqual({ measure: 'mass', grams }));
});

test.each([
  ['green 2 parts, gold 1, black 1', '2 parts green; 1 parts gold; 1 parts black'],
  ['azul 3 partes, blanco 2 y negro 1', '3 parts azul; 2 parts blanco; 1 parts negro'],
  ['rosa 40, verde 40 y lo que queda (20) blanco', '40% rosa; 40% verde; 20% blanco'],
  ['pink 30, white 50 and whatever is left (20) green', '30% pink; 50% white; 20% green'],
])('%s', (text, shares) => expect(sharesPhrase(text)).toBe(shares));

test('what is left has to be what the others leave', () => {
  expect(sharesPhrase('rosa 40, verde 40 y lo que queda (30) blanco')).not.toContain('30% blanco');
});

describe('a paste that is told with what it went into first', () => {
  test.each([
    ['lo mezclé con glicerina, una parte de mica y cuatro de glicerina', 4, 'glycerin'],
    ['I mixed it with water: one part clay and three of water', 3, 'water'],
    ['la mojé en agua, una parte de arcilla y tres de agua', 3, 'water'],
  ])('%s', (text, times, carrier) => {
    const read = parsePremix(text);
    if (read.by !== 'spoons') throw new Error(`read by ${read.by}`);
    expect({ times: read.carrierMillilitres / read.powderMillilitres, carrier: read.carrier }).toEqual({
      times: expect.closeTo(times, 6),
      carrier,
    });
  });
});
