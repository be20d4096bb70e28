import { describe, expect, test } from 'vitest';
import { portionsIn } from '../portions-in.ts';

/*
 * How makers tell how much soap there is by its pieces and by what holds it (from memory of how they write). A bar is 20 to 300 g (common
 * practice, no source): so many bars of less are no whole, and of more none are bars. The rest is arithmetic.
 */

const wholeOf = (question: string) => portionsIn(question).whole;
const openIn = (question: string) => portionsIn(question).unclear;

describe('a vessel is not what is in it', () => {
  test.each([
    ['mica for a 2 kg bucket, 900 g of batter in it', '900 g batter'],
    ['2 litre jug, 700 ml inside, how much mica', '700 ml'],
    ['mica for a 1 litre jarra, hay 700 ml', '700 ml'],
    ['mica for a 1 kg tub holding 800 g', '800 g'],
  ])('%s: %s', (question, whole) => {
    expect(wholeOf(question)).toBe(whole);
    expect(openIn(question)).toEqual([]);
  });

  test('what is more than a vessel holds is in another, and which is meant is asked', () => {
    expect(openIn('a 500 ml jug, 900 ml of batter in the pot')).toEqual(['500 ml', '900 ml']);
  });
});

describe('so many pieces of so much are one amount', () => {
  test.each([
    ['mica for 12 bars of 110 g', '12 x 110 g batter'],
    ['12 pastillas 100 g cada una', '12 x 100 g batter'],
    ['mica for 6 cavities, 90 ml each', '6 x 90 ml'],
    ['mica for 2 loaves of 1.2 kg', '2 x 1.2 kg batter'],
    ['mica for 20 x 85 g', '20 x 85 g batter'],
    ['mica for 8 duckies of 80 ml each', '8 x 80 ml'],
    ['6 holes and each takes 75 ml', '6 x 75 ml'],
    ['mica for 9 bars at 350 g of batter in each', '9 x 350 g batter'],
    ['100 g bars, 12 of them, how much mica', '12 x 100 g batter'],
  ])('%s: %s', (question, whole) => {
    expect(wholeOf(question)).toBe(whole);
  });

  test('of one piece there is nothing to reckon', () => {
    expect(wholeOf('100 g bars, 1 of them, how much mica')).toBe('100 g');
    expect(wholeOf('mica for 1 duck of 80 ml each')).toBe('80 ml');
  });

  test('how they were counted is told with the portion', () => {
    expect(portionsIn('mica for 12 bars of 110 g').reckoned).toMatchObject({
      by: 'count',
      count: 12,
      noun: 'bars',
      each: '110 g',
    });
  });
});

describe('an amount behind a count is of each, of all, or asked about', () => {
  test.each([
    // 5 g and 19.8 g are no bars, so it is what each weighs.
    ['mica for 20 bars 110 g', '20 x 110 g batter'],
    ['mica for 5 bars 99 g', '5 x 99 g batter'],
    // Nobody makes a bar of 301 g.
    ['mica for 4 bars 301 g', '301 g'],
    ['mica for 6 moulds, 400 g batter', '400 g batter'],
    ['mica for 12 bars, 900 g of batter in all', '900 g batter'],
    ['mica for 12 bars; 900 g of batter', '900 g batter'],
  ])('%s: %s', (question, whole) => {
    expect(wholeOf(question)).toBe(whole);
    expect(openIn(question)).toEqual([]);
  });

  test.each([
    ['mica for 5 bars 100 g', ['100 g', '5 x 100 g batter']],
    ['mica for 4 bars 200 g', ['200 g', '4 x 200 g batter']],
    ['mica for 4 bars 300 g', ['300 g', '4 x 300 g batter']],
  ])('%s: either', (question, either) => {
    expect(openIn(question)).toEqual(either);
  });
});

describe('of several amounts one is the portion', () => {
  test('a bag of powder is none', () => {
    expect(wholeOf('500 g of charcoal, 900 g of batter')).toBe('900 g batter');
  });

  test('oils and the batter that they make are one portion', () => {
    expect(wholeOf('mica for 500 g oils, 700 g in all')).toBe('500 g oils');
    expect(openIn('mica for 500 g oils, 700 g in all')).toEqual([]);
  });

  test('parts that come to the whole are parts of it', () => {
    const { whole, part, unclear } = portionsIn(
      'mica for 1000 g of batter, 600 g for the base and 400 g for the top',
    );
    expect([whole, part, unclear]).toEqual(['1000 g batter', '600 g', []]);
  });
});
