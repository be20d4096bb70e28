import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../../seed.ts';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { parseStock } from '../../../../src/engine/quantities/told/stock.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { isHarmlessWord } from '../../../../src/engine/text/amounts/everyday-words.ts';
import { portionsAmongWords } from '../../../../src/engine/text/amounts/portions/portions-among-words.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { toldAmount } from '../../../../src/engine/text/amounts/told-amount.ts';

/** What a reader gives, or the id of its refusal. */
const orRefusal = (read: () => unknown): unknown => {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal) return error.id;
    throw error;
  }
};

/* From memory of how makers tell amounts. */
describe('a figure and what it is of that stand apart', () => {
  test.each([
    ['at the 450 mark, ml that is', '450 ml'],
    // Repeated, the unit is the same one.
    ['2 cups, US cups', '473.18 ml'],
    ['1.2 kg of coconut and oils', '1200 g oils'],
    ['900 g of oils with avocado', '900 g oils'],
    ['1.2 kg of oils, no wait, I left out the coconut, 1.5 kg of oils', '1500 g oils'],
  ])('%s', (text, amount) => {
    expect(toldAmount(text)).toBe(amount);
  });

  test.each([
    ['two units', 'at the 450 mark, ml or grams that is'],
    ['two figures', 'from the 300 mark to the 450 mark, ml that is'],
    ['no figure', 'ml that is'],
    ['another amount', '3 cups, at the 450 mark, ml that is'],
    ['another unit', '2 cups, grams'],
    ['one oil alone', '900 g with avocado'],
    ['one oil of all, which may be out', '1.2 kg of oils, I had left out the coconut'],
    ['two parts', 'half of the third of 900 g batter'],
    ['a part of nothing', 'half'],
    ['nothing that is left', '600 g, gave 600 away, so 0 g'],
  ])('%s: undefined', (_, text) => {
    expect(toldAmount(text)).toBeUndefined();
  });
});

/* A scale's hundredth and a tenth of it are one amount told twice (common practice, no source). */
describe('figures that come out', () => {
  test.each([
    ['1000 g, 989 g', '989 g'],
    ['1000 g, 988 g', undefined],
    ['600 g and 200 g and 100 g, so 900', '900 g'],
    ['had 600 g, gave 200 away, so 400', '400 g'],
    ['900 g batter, a third, so 300 g', '300 g'],
    ['900 g batter, a third, so 600 g', '600 g'],
    ['900 g batter, a third, so 450 g', undefined],
    ['half of the 900 g batter', '450 g'],
    ['half 900 g', '450 g'],
  ])('%s: %s', (text, amount) => {
    expect(toldAmount(text)).toBe(amount);
  });
});

/* Turns of phrase of makers of two sets by other hands, and others of their kinds. A cup is 236.59 ml, a quart four of them. */
describe('of several amounts, the one that is meant', () => {
  test.each([
    ['one that puts another right', '4 cups, no wait, 3 cups', '709.76 ml'],
    [
      'one that is left when some was poured away',
      'I had 600 grams and gave 200 to the white, so it is 400',
      '400 g',
    ],
    [
      'a jar weighed empty and full',
      'the jug weighs 210 g empty and 760 with the soap in it, so 550',
      '550 g',
    ],
    ['what a third leaves', 'eran 900 g y ya gasté un tercio, quedan 600', '600 g'],
    ['one told twice', 'medio litro, bueno, 500 ml', '500 ml'],
    ['a part of what is told', "it's half of the 900 gram batter", '450 g'],
    ['a part that was kept', 'it was 1.2 kg and I have kept a quarter for the pink', '300 g'],
    ['one measured with water', 'the form has 1200 ml, I filled it with water for measure', '1200 ml'],
    ['hundreds told once', 'my jug says 3-400 ml', '300-400 ml'],
    ['one of oils', 'sorry, yes, 650 grams of oil, I was on the phone', '650 g oils'],
  ])('%s', (_, text, amount) => {
    expect(toldAmount(text)).toBe(amount);
  });

  test.each([
    ['figures that do not come out', 'I had 600 grams and gave 200 to the white, so it is 350'],
    ['two amounts and nothing that tells which', '300 g here, 400 g there'],
    ['another weight in the pot', '500 g and the milk'],
    ['less of it than told', '500 g, less what stuck to the bowl'],
    ['a word that may be a slip of one that changes it', '500 g doubel'],
    ['an oil by name', '500 g of the olive'],
    ['weights and volumes', '500 g, sorry, 2 cups and 300'],
    ['a third that may be what was given or what was kept', 'it was 900 g and a third went to my sister'],
  ])('%s is asked about', (_, text) => {
    expect(toldAmount(text)).toBeUndefined();
  });

  test('a litre and eight hundred are 1,800 ml, and a portion is 200 l at the most', () => {
    expect(parsePortionRange('one litre eight hundred').low).toMatchObject({ millilitres: 1800 });
    expect(parsePortionRange('200000 ml').low).toMatchObject({ millilitres: 200_000 });
    expect(orRefusal(() => parsePortionRange('200001 ml'))).toBe('amount-out-of-range');
    expect(orRefusal(() => parsePortionRange('200001 ml of batter'))).toBe('amount-out-of-range');
  });

  test('who kept a fourth of 1.2 kg is not given a dose for all of it', () => {
    expect(
      orRefusal(() => parsePortionRange('total was 1.2 kg and I have kept one fourth for the pink')),
    ).not.toMatchObject({
      low: { grams: 1200 },
    });
    expect(orRefusal(() => parsePortionRange('one an a quarter kilo near enough'))).toMatchObject({
      low: { grams: 1250 },
    });
  });

  test('words that change nothing leave an amount as it is, wherever they stand', () => {
    const idle = fc.constantFrom(
      'well',
      'froth',
      'grandma',
      'boat',
      'siguro',
      'pues',
      'pequeño',
      'spose',
      'mark',
      'chipped',
    );
    fc.assert(
      fc.property(
        fc.array(idle, { maxLength: 5 }),
        fc.array(idle, { maxLength: 5 }),
        fc.integer({ min: 20, max: 900 }),
        (before, behind, grams) => {
          const text = [...before, `${grams} g`, ...behind].join(' ');
          expect(parsePortionRange(text).low).toStrictEqual({ measure: 'mass', grams, of: 'batter' });
        },
      ),
    );
  });

  test('a word that may change it is never passed over', () => {
    const changing = [
      'half',
      'double',
      'without',
      'less',
      'plus',
      'each',
      'mitad',
      'doble',
      'sin',
      'cada',
      'lye',
      'water',
      'leche',
      'miel',
    ];
    expect(changing.filter(isHarmlessWord)).toStrictEqual([]);
    expect(
      ['olive', 'coco', 'ricino', 'titanium', 'mica', 'grams', 'cups'].filter(isHarmlessWord),
    ).toStrictEqual([]);
  });
});

describe('amounts of other things among words', () => {
  test.each([
    ['le puse dos cucharaditas de carbón, che', 2 * 4.929, 'carbón'],
    ['ten grams it was, of the kaolin, weighed on the letter scales', 10, 'kaolin'],
    ['a quarter teaspoon, no more, red oxide', 4.929 / 4, 'red oxide'],
  ])('powder: %s', (text, amount, name) => {
    const { low, name: got } = readPowder(text);
    expect(low?.measure === 'mass' ? low.grams : low?.millilitres).toBeCloseTo(amount, 2);
    expect(got).toBe(name);
  });

  test('a spoon and another half of one is no single spoon', () => {
    expect(readPowder('put in 1 tsp then thought no and put in another half').low).toEqual({
      measure: 'volume',
      millilitres: expect.closeTo(1.5 * 4.92892159375, 6),
    });
    expect(orRefusal(() => readPowder('put in 1 tsp then another of something'))).toBe(
      'powder-without-amount',
    );
  });

  test('a jar’s grams are read out of a sentence, as they stand on the scale', () => {
    expect(parseStock('it says 25 g on the label')).toStrictEqual({ measure: 'mass', grams: 25 });
    expect(orRefusal(() => parseStock('half of what was left'))).toBe('amount-unit-unknown');
  });

  test.each([
    ['tres cajitas de leche de litro', 3000],
    ['slab, 30cm square n i fill it 3 cm deep', 2700],
    ['un molde de 800 gramos y uno de 400, los dos llenos', 1200],
  ])('size: %s', (text, wanted) => {
    const size = parseSize(text);
    const got =
      size.by === 'mould'
        ? size.mould.shape === 'loaf'
          ? size.mould.lengthCm * size.mould.widthCm * size.mould.heightCm
          : size.mould.shape === 'cavities'
            ? size.mould.count * size.mould.eachMillilitres
            : 0
        : size.by === 'batter-volume'
          ? size.millilitres
          : size.grams;
    expect(got).toBeCloseTo(wanted, 0);
  });

  test.each([
    ['clay one part, water three parts. As usual', 3, 'water'],
    ['Un gramo de óxido por cada tres de glicerina', 3, 'glycerin'],
    ['one spoon of the indigo and four of the same spoon of castor oil', 4, 'oil'],
    ['mitad polvo mitad agua', 1, 'water'],
  ])('premix: %s', (text, ratio, carrier) => {
    const premix = parsePremix(text);
    expect(premix.carrier).toBe(carrier);
    expect(
      premix.by === 'spoons' ? premix.carrierMillilitres / premix.powderMillilitres : Number.NaN,
    ).toBeCloseTo(ratio, 6);
  });

  test.each([
    [
      'bottom burgandy. top cream. in the middle that dusty rose',
      '1 parts burgundy; 1 parts dusty rose; 1 parts cream',
    ],
    ['primero el negro, encima rojo y para terminar naranja', '1 parts negro; 1 parts rojo; 1 parts naranja'],
    ['white sits on teal, teal sits on navy', '1 parts navy; 1 parts teal; 1 parts white'],
    ['I divide 3:2:1 as yellow, orange, red', '3 parts yellow; 2 parts orange; 1 parts red'],
    ['took half out for green, then half of what was left went black', undefined],
  ])('division: %s', (text, division) => {
    expect(portionsAmongWords(text)).toBe(division);
  });
});

describe('a list of oils among words', () => {
  const shares = (text: string) =>
    orRefusal(() =>
      Object.fromEntries(parseOils(text).shares.map(({ oil, share }) => [oil.id, Number(share.toFixed(3))])),
    );

  test.each([
    [
      'Three quarters of it is olive and the last quarter coconut, which is how I have always made it',
      { olive: 0.75, coconut: 0.25 },
    ],
    ['500g rapeseed, 300g coconut and 200g lard from the butcher', { canola: 0.5, coconut: 0.3, lard: 0.2 }],
    ['grapeseed 300g and avo 300g and 200g coconut', { grapeseed: 0.375, avocado: 0.375, coconut: 0.25 }],
    [
      'black castor 80 gram, coconut 600, olive 320. Water mi still a measure',
      { castor: 0.08, coconut: 0.6, olive: 0.32 },
    ],
  ])('%s', (text, wanted) => {
    expect(shares(text)).toStrictEqual(wanted);
  });

  test.each([
    ['a fat without its weight', '400 g olive, 200 g coconut, and the butter'],
    ['cocoa butter or coconut, which differ by a quarter in lye', '400 g olive, 100 g coco butter'],
    ['a weight of something else', 'lemon 20 g, olive 400 g, coconut 200 g'],
    ['an oil nobody knows', '400 g olive, 200 g glorbish'],
    ['a word between a weight and its oil', '400 g kitchen olive, 200 g coconut, 100 g castor oil and oats'],
  ])('%s keeps it from being read', (_, text) => {
    expect(shares(text)).toEqual(expect.any(String));
  });
});

// A point or a comma before three figures parts thousands where batter or oils are counted in single grams.
test.each([
  ['los aceites me suman 1.050 g', '1050 g oils'],
  ['mis aceites son 12,500 g', '12500 g oils'],
  ['los aceites me suman 1.05 kg', '1050 g oils'],
])('a kilo of oils is no gram: %s', (text, amount) => {
  expect(toldAmount(text)).toBe(amount);
});

describe('a figure that is none', () => {
  test('a fraction over nothing is refused or read as another amount, and breaks nothing', () => {
    const texts = fc.tuple(
      fc.constantFrom('', 'about ', '2 cups, no ', 'the jug holds 1 l, '),
      fc.nat({ max: 99 }),
      fc.constantFrom('cups', 'g', 'oz', 'tazas', 'kg', 'l of oils'),
    );
    fc.assert(
      fc.property(texts, ([before, over, unit]) => {
        const text = `${before}${over}/0 ${unit}`;
        const read = JSON.stringify([orRefusal(() => parsePortionRange(text)), toldAmount(text)]);
        // What is not finite is written as null.
        expect(read).not.toMatch(/(?:grams|millilitres)":null|Infinity|NaN/u);
      }),
    );
  });

  test('“1/0 cups” is no portion', () => {
    expect(orRefusal(() => parsePortionRange('1/0 cups'))).toMatch(/^amount-/u);
    expect(toldAmount('1/0 cups')).toBeUndefined();
  });
});
