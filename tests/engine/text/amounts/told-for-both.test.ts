import { describe, expect, test } from 'vitest';
import { oilsOfBatch } from '../../../../src/engine/batch/oils/lists/bare-grams.ts';
import { parsePortions } from '../../../../src/engine/batch/portions/portion-list.ts';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { inPlainWords } from '../../../../src/engine/questions/options/in-plain-words.ts';
import { unlessRefused } from '../../../../src/engine/refusal.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';

/* Amounts that are told once for several things, or put right as they are told; the lines are our own. */

describe('two ends, two units, two tries', () => {
  test('a hundred behind the second end is one behind the first', () => {
    const { low, high } = parsePortionRange('three to four hundred ml');
    expect([low, high]).toMatchObject([{ millilitres: 300 }, { millilitres: 400 }]);
  });

  test('ounces behind pounds go without saying (16 oz a pound, NIST Handbook 44)', () => {
    expect(parsePortionRange('two pounds eight of oil').low).toMatchObject({
      grams: expect.closeTo(2.5 * 453.592, 0),
    });
  });

  test('what is put right counts', () => {
    expect(readPowder('three heaping... no, two level teaspoons of red oxide').low).toMatchObject({
      millilitres: expect.closeTo(2 * 4.929, 2),
    });
    expect(readPowder('2 of the half-teaspoon scoops').low).toMatchObject({
      millilitres: expect.closeTo(4.929, 2),
    });
  });

  test('a name behind a comma is the name', () => {
    expect(readPowder('el 2 % de los aceites, arcilla rosa')).toMatchObject({
      percentOfOils: 2,
      name: 'arcilla rosa',
    });
  });
});

describe('two fats and their shares behind both', () => {
  const oils = (text: string) => {
    const told = inPlainWords('oils', text);
    const read = unlessRefused(() => oilsOfBatch(told && 'text' in told ? told.text : text));
    return read?.shares.map(({ oil, share }) => `${oil.id} ${share.toFixed(2)}`);
  };
  test.each([
    ['tallow and coconut, 70/30', ['tallow 0.70', 'coconut 0.30']],
    ['lard n olive, 3 to 1', ['lard 0.75', 'olive 0.25']],
    ['oliva y coco mitad y mitad', ['olive 0.50', 'coconut 0.50']],
    ['all lard bar 10% castor', ['lard 0.90', 'castor 0.10']],
  ])('%s', (text, read) => {
    expect(oils(text)).toEqual(read);
  });

  test('what is no fat is left to be asked', () => {
    expect(oils('tallow and charcoal, 70/30')).toBeUndefined();
    expect(oils('all water bar 10% castor')).toBeUndefined();
  });
});

describe('shares', () => {
  const told = (text: string) => parsePortions(text).map(({ share }) => share);
  test('so much each is each colour’s', () => {
    expect(told('grey black and teal, a third each')).toHaveLength(3);
    expect(unlessRefused(() => told('grey and teal, a third each'))).toBeUndefined();
  });

  test('the other share is the other colour’s', () => {
    expect(told('rosa el 30 % y el otro 70 blanco')).toEqual([
      { by: 'percent', percent: 30 },
      { by: 'percent', percent: 70 },
    ]);
  });
});

describe('a paste', () => {
  test.each([
    ['equal, charcoal and water', 1],
    ['a spoon of clay in three same-size spoons of olive oil', 3],
  ])('%s', (text, ratio) => {
    const read = parsePremix(text);
    expect(read.by === 'spoons' && read.carrierMillilitres / read.powderMillilitres).toBeCloseTo(ratio, 3);
  });
});
