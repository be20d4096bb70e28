import { describe, expect, test } from 'vitest';
import { mentions } from '../../../src/engine/flaws/reading/concepts.ts';
import { doseEvidence } from '../../../src/engine/flaws/reading/dose-evidence.ts';
import { measuredIn, numeralAt } from '../../../src/engine/flaws/reading/measured.ts';
import { carrierEvidence, settingEvidence } from '../../../src/engine/flaws/reading/setting-evidence.ts';
import { tokenise } from '../../../src/engine/text/tokens.ts';

/** Amounts of a text: what each is, `per` where it divides. */
const measured = (text: string) =>
  measuredIn(tokenise(text)).map(
    ({ value, measure, per, cups }) =>
      `${per ? 'per ' : ''}${Math.round(value * 100) / 100} ${measure === 'mass' ? 'g' : 'ml'}${cups ? ' cup' : ''}`,
  );

describe('amounts in a description', () => {
  // US kitchen measures: NIST Handbook 44, appendix C (a teaspoon 4.93 ml, a cup 236.59 ml), a pound 453.6 g.
  test.each([
    ['2 tsp', ['9.86 ml']],
    ['0,5 tsp', ['2.46 ml']],
    ['1/4 tsp', ['1.23 ml']],
    ['½ tsp', ['2.46 ml']],
    ['1 1/2 cups', ['354.88 ml cup']],
    ['1 ½ cups', ['354.88 ml cup']],
    ['two cups', ['473.18 ml cup']],
    ['half a cup', ['118.29 ml cup']],
    ['one and a half cups', ['354.88 ml cup']],
    ['one and half cups', ['354.88 ml cup']],
    ['uno y medio cups', ['354.88 ml cup']],
    ['two and a quarter cups', ['532.32 ml cup']],
    ['1 and ½ cups', ['354.88 ml cup']],
    ['three quarters cup', ['177.44 ml cup']],
    ['two thirds of a cup', ['157.73 ml cup']],
    ['a couple of cups', ['473.18 ml cup']],
    ['2 heaped tsp', ['9.86 ml']],
    ['2 big level tsp', ['9.86 ml']],
    ['2 big level heaped tsp', []],
    ['fifteen grams', ['15 g']],
    ['1 tsp per cup', ['4.93 ml', 'per 236.59 ml cup']],
    ['1 tsp/cup', ['4.93 ml', 'per 236.59 ml cup']],
    ['1 tsp ppo', ['4.93 ml', 'per 453.6 g']],
    ['500 g por taza', ['500 g', 'per 236.59 ml cup']],
    ['in a cup', ['236.59 ml cup']],
    ['for 500 g', ['500 g']],
    ['2 cups and 3 tsp', ['473.18 ml cup', '14.79 ml']],
    ['tsp of mica', []],
    ['10 zorks', []],
    ['a dozen cups', []],
    ['', []],
  ])('%s', (text, amounts) => {
    expect(measured(text)).toEqual(amounts);
  });

  test.each([
    ['1/0', undefined],
    ['1/2', [0.5, 3]],
    ['2 1/2', [2.5, 4]],
    ['2 1/0', [2, 1]],
    ['2.5 1/2', [2.5, 1]],
    ['2 y media', [2.5, 3]],
    ['two halves', [1, 2]],
    ['half quarter', [0.5, 1]],
    ['2 and', [2, 1]],
    ['2 and cups', [2, 1]],
    ['mica', undefined],
    ['/', undefined],
  ] as const)('%s as a number', (text, told) => {
    const found = numeralAt(tokenise(text), 0);
    expect(found && [found.value, found.to]).toEqual(told);
  });
});

/** What numbers say, each finding as there (+) or not (-). */
const says = (text: string) =>
  settingEvidence(tokenise(text)).map(
    ({ finding, probability }) => `${probability > 0.5 ? '+' : '-'}${finding}`,
  );

// Limits from both sides: common practice throughout (superfat 3 to 9 %, water at 30 to 31 % lye, pH under 11).
describe('numbers of the recipe and the calendar', () => {
  test.each([
    ['superfat 2 %', ['+low-superfat']],
    ['superfat 2.1 %', ['-low-superfat', '-high-superfat']],
    ['sf 9.9 percent', ['-low-superfat', '-high-superfat']],
    ['10% superfat', ['+high-superfat']],
    ['2 por ciento sobreengrasado', ['+low-superfat']],
    ['superfat. 1%', []],
    ['vanillin 0.5%', ['-fragrance-vanilla', '+fragrance-no-vanilla']],
    ['vanillin 0.6%', ['+fragrance-vanilla']],
    ['lye 29%', ['+much-water']],
    ['lye 29.1%', []],
    ['lye 31.9%', []],
    ['lye 32%', ['-much-water']],
    ['water 36%', ['+much-water']],
    ['water 35.9%', []],
    ['water 30.1%', []],
    ['water 30%', ['-much-water']],
    ['cocoa butter 8%', ['+hard-oils']],
    ['cocoa butter 7.9%', []],
    ['coconut 45%', ['+hard-oils']],
    ['coconut 44.9%', []],
    ['salt 50%', []],
  ])('%s', (text, findings) => {
    expect(says(text)).toEqual(findings);
  });

  test.each([
    ['ph 11', ['+high-ph']],
    ['ph 10.9', ['-high-ph']],
    ['ph 7', ['-high-ph']],
    ['ph 6.9', []],
    ['ph 14', ['+high-ph']],
    ['ph 15', []],
    ['the strip says 9', ['-high-ph']],
    // 52 C are 125.6 F, 30 C are 86 F.
    ['126 F', ['+ran-hot']],
    ['125 F', []],
    ['87 F', []],
    ['86 F', ['+ran-cool']],
    ['50 F', ['+ran-cool']],
    ['49 F', []],
    ['52 C', ['+ran-hot']],
    ['51.9 C', []],
    ['30.1 C', []],
    ['30 C', ['+ran-cool']],
    ['110 C', ['+ran-hot']],
    ['111 C', []],
    ['30 degrees', ['+ran-cool']],
    ['60 bars', []],
  ])('%s', (text, findings) => {
    expect(says(text)).toEqual(findings);
  });

  test.each([
    ['5 seconds', ['+at-once']],
    ['3 minutos', ['+at-once']],
    ['48 hours', ['+next-day']],
    ['49 hours', ['+after-days']],
    ['1 day', ['+next-day']],
    ['2 days', ['+after-days']],
    ['8 days', ['+after-days']],
    ['9 days', ['+after-weeks']],
    ['10 weeks', ['+after-weeks']],
    ['11 weeks', ['+after-months']],
    ['1 month', ['+after-weeks']],
    ['2 meses', ['+after-months']],
    ['1 year', ['+after-months']],
  ])('%s', (text, findings) => {
    expect(says(text)).toEqual(findings);
  });

  test('are quoted with their unit', () => {
    expect(settingEvidence(tokenise('after 3 weeks it'))[0]).toMatchObject({ from: 1, to: 3 });
    expect(settingEvidence(tokenise('at 30 C'))[0]).toMatchObject({ from: 1, to: 3 });
  });
});

// Two tablespoons of liquid soften a cup or two (common practice): from 28 ml to a cup.
describe('liquid that went in with a colour', () => {
  test.each([
    ['2 tbsp oil for the mica', true],
    ['mixed the mica in 2 tbsp oil', true],
    ['wet the colour with 28 ml water', true],
    ['wet the colour with 27.9 ml water', false],
    ['wet the colour with 240 ml water', true],
    ['wet the colour with 241 ml water', false],
    ['1 tbsp oil for the mica', false],
    ['2 tbsp of the oil', false],
    ['30 g oil for the mica', false],
    ['2 tbsp honey for the mica', false],
    ['2 tbsp oil. the mica was dry', false],
    ['the mica was dry. 2 tbsp oil', false],
  ])('%s: %s', (text, isMuch) => {
    const tokens = tokenise(text);
    const found = carrierEvidence(tokens, measuredIn(tokens));
    expect(found.map(({ finding }) => finding)).toEqual(isMuch ? ['much-carrier'] : []);
  });
});

describe('spoons of colour against what its kind bears', () => {
  const judged = (text: string) => {
    const tokens = tokenise(text);
    return doseEvidence(tokens, mentions(tokens), measuredIn(tokens)).map(
      ({ finding, probability }) => `${probability > 0.5 ? '+' : '-'}${finding}`,
    );
  };
  const rateOf = (text: string) => {
    const tokens = tokenise(text);
    return doseEvidence(tokens, mentions(tokens), measuredIn(tokens))[0]?.rate;
  };
  const [MUCH, LITTLE, USUAL] = [
    ['+much-colour', '-little-colour'],
    ['+little-colour', '-much-colour'],
    ['-much-colour', '-little-colour'],
  ];
  // Full mica is a teaspoon to the cup (common practice); a weight of it counts by its bulk.
  test.each([
    ['mica 1 tsp per cup', USUAL],
    ['mica 2 tsp in 1 cup', MUCH],
    ['mica 1 tsp in 2 cups', LITTLE],
    ['1/8 tsp mica for 2 cups', LITTLE],
    ['1 cup batter, 2 tsp mica', MUCH],
    ['5 g mica in 500 g batter', USUAL],
    ['20 g mica in 500 g batter', MUCH],
    ['3 tsp titanium dioxide in 1 cup', ['+much-white-pigment', '-little-colour']],
    // Where no portion is told, a home batch of five cups is taken, and less is said.
    ['3 tbsp mica', MUCH],
    ['5 tsp mica', []],
    ['used 1/8 tsp for the whole loaf', LITTLE],
    // Spoons of oil, honey or fragrance are none of colour.
    ['2 tsp oil with the mica in 1 cup', []],
    ['2 tsp of honey with the mica in 1 cup', []],
  ])('%s', (text, findings) => {
    expect(judged(text)).toEqual(findings);
  });

  test('the nearest colour is meant, rather the one behind the spoons than the one before', () => {
    expect(rateOf('oxide 1 tsp mica in 1 cup')?.colourant).toBe('mica-unknown-coat');
    expect(rateOf('oxide 1 tsp in 1 cup')?.colourant).toBe('red-iron-oxide');
    expect(rateOf('neon 1 tsp in 1 cup')?.colourant).toBe('neon-pink');
    expect(rateOf('charcoal 1 tsp in 1 cup')?.colourant).toBe('activated-charcoal');
    // A white oxide is the white.
    expect(rateOf('titanium dioxide 1 tsp in 1 cup')?.colourant).toBe('titanium-dioxide');
  });

  test('and its rate is spoons over cups, batter by weight near 1.47 ml to a gram of oils', () => {
    expect(rateOf('mica 2 tsp in 4 cups')?.perCup).toBeCloseTo(0.5, 6);
    expect(rateOf('mica 2 tsp for 500 g')?.perCup).toBeCloseTo((2 * 236.588) / (500 * 1.47), 3);
    // Farther off than a sentence goes, a portion is another's.
    expect(
      rateOf(
        `mica 2 tsp ${'and then we all went home to have some tea and cake with my lovely sister there '.repeat(1)}1 cup`,
      ),
    ).toBeUndefined();
  });
});
