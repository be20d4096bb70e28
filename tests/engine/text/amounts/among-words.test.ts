import { describe, expect, test } from 'vitest';
import { parseSize } from '../../../../src/engine/batch/batch-size.ts';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import { portionsAmongWords } from '../../../../src/engine/text/amounts/portions/portions-among-words.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { sharesPhrase } from '../../../../src/engine/text/amounts/shares/share-phrases.ts';

/* Turns of phrase of makers of two sets by other hands, and others of their kinds. */
describe('a division told among words that change nothing of it', () => {
  test.each([
    ['just the two dear, brown under and tan over', '1 parts brown; 1 parts tan'],
    ['top is white bottom is navy', '1 parts navy; 1 parts white'],
    ['abajo verde, al medio crema, arriba rosado', '1 parts verde; 1 parts crema; 1 parts rosado'],
    ['five of them from the bottom up red blue green', undefined],
    [
      'cuatro, morao, azul, celeste y blanco',
      '1 parts morado; 1 parts azul; 1 parts celeste; 1 parts blanco',
    ],
    ['ten percent red for the drizzle and what is left stays plain', '10% red; rest plain'],
    ['60 20 20, blue pink uncoloured', '60% blue; 20% pink; 20% uncoloured'],
    ['thirds - red, yellow, green', '1 parts red; 1 parts yellow; 1 parts green'],
  ])('%s', (text, division) => {
    expect(portionsAmongWords(text)).toBe(division);
  });

  test.each([
    ['a word nobody knows', 'blue, glorbish, white'],
    ['one colour that goes into another', 'azul y verde con ultramar'],
    ['a gradient from one to another', 'from blue to white'],
    ['what is not to be there', 'red, not blue, white'],
    ['figures that make no hundred', '60 20 blue pink'],
    ['shares beyond the whole', 'I want 80% red and 70% blue please'],
    ['less than nothing', 'blue -50%, white 50% and the rest plain'],
    ['more parts than colours', 'thirds: red and blue'],
  ])('%s keeps it from being guessed', (_, text) => {
    expect(portionsAmongWords(text)).toBeUndefined();
  });

  test('a division that was read before is read as before', () => {
    expect(sharesPhrase('1/3 red; 1/3 white; rest blue')).toBe('33.333333% red; 33.333333% white; rest blue');
    expect(sharesPhrase('Charcoal base, gold line, then lavender')).toBe(
      '1 parts Charcoal; 1 parts gold; 1 parts lavender',
    );
  });
});

const grams = (text: string) => {
  const { low } = parsePortionRange(text);
  return low.measure === 'mass' ? [Math.round(low.grams), low.of] : [Math.round(low.millilitres), 'ml'];
};

/** The amount that is read, or the id of its refusal. */
const readOr = (text: string): unknown => {
  try {
    return grams(text);
  } catch (error) {
    return error instanceof Refusal ? error.id : error;
  }
};

describe('an amount among words that change nothing of it', () => {
  test.each([
    ['wee jug, up tae the 250ml line', [250, 'ml']],
    ['half a pint on the glass measuring cup', [237, 'ml']],
    ['400 gramo de la mezcla', [400, 'batter']],
    ['3 lbs 4 oz a oil mi have', [1474, 'oils']],
    ['oils come to 900 g before the lye', [900, 'oils']],
    ['1 kg oils not counting the lye water', [1000, 'oils']],
    ['una taza de las americanas, rasa', [237, 'ml']],
  ])('%s', (text, amount) => {
    expect(grams(text)).toEqual(amount);
  });

  test.each([
    ['half of the 500 g jug', [500, 'batter']],
    ['300 g twice', [300, 'batter']],
    ['2 cups less 1 Tbsp honey', [473, 'ml']],
    ['500 g oils and 64 g lye', [500, 'oils']],
  ])('%s is not taken for one amount', (text, one) => {
    expect(readOr(text)).not.toEqual(one);
  });

  test.each([
    ['20 pcs 85 grams po', { by: 'batter-mass', grams: 1700 }],
    ["I want 24 and they're to be 100 g", { by: 'batter-mass', grams: 2400 }],
    ['5kg at a go', { by: 'oils', grams: 5000 }],
    ['di 2 kilo mould', { by: 'batter-mass', grams: 2000 }],
    ['Tubo de PVC, volumen útil 1.57 L', { by: 'batter-volume', millilitres: 1570 }],
  ])('a size: %s', (text, size) => {
    expect(parseSize(text)).toEqual(size);
  });

  test('cavities of so much each, however they are told', () => {
    expect(parseSize('silicón de 6 huecos, a 90 ml cada hueco')).toEqual({
      by: 'mould',
      mould: { shape: 'cavities', count: 6, eachMillilitres: 90 },
    });
  });
});

test.each([
  ['por cada cucharada de polvo pongo cuatro de aceite de girasol', 4],
  ['I do be mixing a spoon of the powder to four spoons of olive oil', 4],
  ['mita y mita con aceite', 1],
  ['por cada 5 g de óxido 10 g de glicerina', 2],
])('a paste: %s', (text, liquidToPowder) => {
  const read = parsePremix(text);
  const ratio =
    read.by === 'spoons'
      ? read.carrierMillilitres / read.powderMillilitres
      : read.by === 'percent'
        ? (1 - read.pigmentShare) / read.pigmentShare
        : Number.NaN;
  expect(ratio).toBeCloseTo(liquidToPowder, 6);
});

test('a powder by its share of the oils, its name first, and a remark that is no part of its name', () => {
  expect(readPowder('kaolin, 2% of oil weight')).toMatchObject({ percentOfOils: 2, name: 'kaolin' });
  expect(readPowder('15 gramos de caolín, me los pesó mi nuera').name).toBe('caolín');
  expect(readPowder('15 g kaolin, half of it in water').name).toBe('kaolin, half of it in water');
});
