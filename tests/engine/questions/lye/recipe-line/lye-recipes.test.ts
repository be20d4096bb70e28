import { describe, expect, test } from 'vitest';
import { readLyeQuestion } from '../../../../../src/engine/questions/lye/question.ts';
import { checkLye } from '../../../../../src/engine/questions/lye/sums/check.ts';
import * as english from '../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../src/words/es/index.ts';

/*
 * Whole recipes to be looked over, told among other words. Asked by a tutor who had seen nothing of the reader; superfats
 * by saponification values of Codex CXS 33 and 210 (olive 0.1355, coconut 0.183 g NaOH a gram), reckoned by hand.
 */
const superfatOf = (question: string) => {
  const { given, weighed } = readLyeQuestion(question);
  return checkLye(weighed!, { oils: given.oils! }).superfat.typical;
};

const oilGrams = (list: string) =>
  [...list.matchAll(/([\d.]+) ?(g|lb|pounds?|oz|ounces?)\b/gu)].reduce(
    (sum, [, figure, unit = '']) =>
      sum + Number(figure) * (unit === 'g' ? 1 : /^[lp]/u.test(unit) ? 453.59237 : 28.349523125),
    0,
  );

describe('a recipe told among other words', () => {
  test.each([
    ['a recipe I found online: 500 g olive oil, 90 g lye, 150 g water. good?', -33],
    ['recipe from book: 16 oz coconut, 16 oz olive, 4.9 oz lye, 10 oz water, check it please', 4],
    ['receta: 1 kg coco, 120 g sosa, 300 agua. esta bien?', 34],
    ['i put 65 g lye in 300 g olive and 100 g coconut, 150 g water', -10],
    ['puse 64 g de sosa y 40 g de agua en 500 g de oliva', 6],
  ])('is checked: %s', (question, percent) => {
    expect(Math.abs(superfatOf(question) - percent)).toBeLessThan(1.5);
  });

  test('tells its water, and which words were passed by', () => {
    const told = readLyeQuestion('recipe from auntie: 500 g olive oil, 90 g lye, 150 g water. good?');
    expect(told.waterGrams).toBe(150);
    expect(told.left).toEqual(['auntie']);
    expect(readLyeQuestion('receta: 1 kg coco, 120 g sosa, 300 agua').waterGrams).toBe(300);
  });

  // By the same values: 2 lb lard and 8 oz coconut are 907.2 and 226.8 g, and so on; what is weighed is read to the gram.
  test.each([
    ['I have 2 pounds of lard and 8 ounces of coconut oil on the scale. How much lye do I need?', 1134],
    ['tengo 500 g de oliva y 200 g de coco en la olla ya, cuanta sosa', 700],
    ['lye n watr fr 500g olive 300 coconut 200 palm 5% sf', 1000],
    ['how much lye for olive 700g coconut 300g', 1000],
    [
      'Kindly work out the sodium hydroxide for 450 g olive oil, 300 g coconut oil and 250 g shea butter with a superfat of 6 %.',
      1000,
    ],
  ])('tells its oils, wherever they stand: %s', (question, grams) => {
    const { given } = readLyeQuestion(question);
    expect(oilGrams(given.oils ?? '')).toBeCloseTo(grams, 0);
  });

  test.each([
    'how much lye for olive 700g coconut 300g palm',
    'how much lye for 500 g olive in the bananaberry',
    'how much lye for 500 g olive on the soft side',
  ])('that leaves a word which may be an oil is asked back: %s', question => {
    expect(() => readLyeQuestion(question)).toThrow(expect.objectContaining({ name: 'Refusal' }));
  });

  // Each may be an oil, or change the amount of one: nothing of the kind is passed by. Lye that is not weighed yet wants
  // every word understood.
  test.each([
    'how much lye for 500 g olive found online',
    'I put 64 g lye in 500 g olive and some coconut and bananaberry oil',
    'I put 64 g lye in 500 g olive instead of 500 g coconut',
    'I put 64 g lye in 500 g olive and 300 g of the other one',
    'I put 64 g lye in half of 500 g olive from the shop',
    'puse 64 g de sosa en 500 g de manteca (soy de argentina)',
    'puse 64 g de sosa en 500 g de girasol en pipas',
    'I put 64 g lye in 500 g used olive oil mixed',
  ])('is refused where a word may change its lye: %s', question => {
    expect(() => readLyeQuestion(question)).toThrow(/^oils?-/u);
  });
});

describe('lye', () => {
  test('is as pure as it is told to be', () => {
    const potash = readLyeQuestion('potasa al 85 para 600 g de girasol y 200 de coco, sobreengrasado 3');
    expect(potash.given).toMatchObject({ lye: 'KOH 85%', superfat: 3 });
    const soda = readLyeQuestion('300 g de manteca de cacao, 200 g de aguacate, sosa al 98%');
    expect(soda.given.purity).toBe(98);
  });

  test('by a share of every oil and one weight is for that weight', () => {
    expect(readLyeQuestion('100% coconut superfat 20 500 g').given).toMatchObject({
      oils: '100% coconut',
      size: '500 g oils',
      superfat: 20,
    });
    expect(readLyeQuestion('lye for 500 g olive and 500 g lard 10% lye discount').given.superfat).toBe(10);
  });
});

describe('water that was weighed beside lye', () => {
  test.each([english, spanish])('is told by its strength, or as too little', ({ lyeQuestions }) => {
    expect(lyeQuestions.waterBeside({ water: 150, lye: 90 })).toMatch(/38 %/u);
    expect(lyeQuestions.waterBeside({ water: 63, lye: 64 })).toMatch(/^(?:Too little water|Poca agua)/u);
    expect(lyeQuestions.waterBeside({ water: 400, lye: 64 })).toMatch(/late|tarde/u);
  });
});
