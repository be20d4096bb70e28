import { describe, expect, test } from 'vitest';
import { oilsTold } from '../../../../src/engine/questions/options/oils-told.ts';
import { isIdle, namesOilIn } from '../../../../src/engine/questions/options/recipe-phrases.ts';

/* How makers list the oils of a batch (from memory of how they write); shares, halves and sums are arithmetic. */

const listOf = (text: string) => {
  const told = oilsTold(text);
  return told && 'text' in told ? told.text : told;
};

describe('the shares of two fats are told behind both', () => {
  test.each([
    ['olive and coconut 70/30', '70% olive, 30% coconut'],
    ['olive oil and coconut oil, 75 to 25', '75% olive oil, 25% coconut oil'],
    ['olive and coconut, 3 to 1', '75% olive, 25% coconut'],
    ['lard and coconut, 50/50', '50% lard, 50% coconut'],
    ['olive y coco a medias', '50% olive, 50% coco'],
    ['all olive but 10% castor', '90% olive, 10% castor'],
    ['todo oliva menos un 5% de ricino', '95% oliva, 5% ricino'],
  ])('“%s”', (text, list) => {
    expect(listOf(text)).toBe(list);
  });

  test.each([
    'olive and honey 3 to 1',
    'honey and olive 3 to 1',
    'olive and honey half and half',
    'honey and olive half and half',
    'all honey but 10% castor',
    'all olive but 10% honey',
    'olive and coconut 0 to 0',
    'olive, coconut and castor, 3 to 1',
  ])('but not where one of them is no fat, or a third stands there: “%s”', text => {
    expect(listOf(text)).toBeUndefined();
  });
});

describe('the same again is as much as before, half of that is half', () => {
  test.each([
    ['olive 300, coconut the same', '300 g olive, 300 g coconut'],
    ['olive 300 g, lard half that', '300 g olive, 150 g lard'],
    ['olive 1,5 kg, coco la mitad de eso', '1.5 kg olive, 0.75 kg coco'],
    ['1/2 kilo olive, coconut same again', '0.5 kg olive, 0.5 kg coconut'],
    ['olive 400 g, lard half that, castor half that', '400 g olive, 200 g lard, 100 g castor'],
  ])('“%s”', (text, list) => {
    expect(listOf(text)).toBe(list);
  });
});

describe('what a fat is called', () => {
  test.each([
    ['coco nut 200 g, sun flower 300 g', '200 g coconut, 300 g sunflower'],
    ['ricebran 100 g, olive 400 g', '100 g rice bran, 400 g olive'],
    ['almendras 100 g, oliva 400 g', '100 g aceite de almendras dulces, 400 g oliva'],
    // The milk of almonds is no fat, and bitter almonds have another oil.
    ['leche de almendras 100 g, oliva 400 g', undefined],
    ['almendras amargas 100 g, oliva 400 g', undefined],
    ['olive 300 g +150 g coconut', '300 g olive, 150 g coconut'],
  ])('“%s”', (text, list) => {
    expect(listOf(text)).toBe(list);
  });
});

describe('what tells nothing of the recipe is passed by, what may is not', () => {
  test.each([
    'olive 300 g, and 100 g coconut (dont ask)',
    'olive 300 g cos i had no lard, coconut 100 g',
    'olive 300 g because it was going off, coconut 100 g',
    'olive 300 g (the organic one), coconut 100 g',
    'olive 300 g (from my sister), coconut 100 g',
  ])('“%s”', text => {
    expect(listOf(text)).toBe('300 g olive, 100 g coconut');
  });

  test.each([
    // A fat that is told beside the reason may be in the pot.
    'olive 300 g because lard is dear, coconut 100 g',
    // Hydrogenated and high oleic oils take other amounts of lye.
    'olive 300 g (the hydrogenated one), coconut 100 g',
    'olive 300 g (the oleic one), coconut 100 g',
    'olive 300 g (the lard one), coconut 100 g',
    'olive 300 g (the other one), coconut 100 g',
    'olive 300 g (the lost one), coconut 100 g',
    'olive 300 g (the cream one), coconut 100 g',
  ])('“%s” is read by nobody', text => {
    expect(listOf(text)).toBeUndefined();
  });

  test('an everyday word is idle; one that takes away, turns or names something is not', () => {
    expect(isIdle(['from', 'the', 'shop'])).toBe(true);
    expect(isIdle([])).toBe(true);
    for (const said of [['lost'], ['instead'], ['no', 'olive'], ['some', 'lard']])
      expect(isIdle(said)).toBe(false);
  });

  test('an oil is found by a name of up to four words', () => {
    expect(namesOilIn(['i', 'had', 'olive', 'left'])).toBe(true);
    expect(namesOilIn(['cocoa', 'butter'])).toBe(true);
    expect(namesOilIn(['aceite', 'de', 'almendras', 'dulces'])).toBe(true);
    expect(namesOilIn(['from', 'the', 'shop'])).toBe(false);
    expect(namesOilIn([])).toBe(false);
  });
});
