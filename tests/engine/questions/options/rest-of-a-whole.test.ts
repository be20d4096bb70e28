import { describe, expect, test } from 'vitest';
import { OILS } from '../../../../src/engine/batch/oils/index.ts';
import { inPlainWords } from '../../../../src/engine/questions/options/in-plain-words.ts';

describe('oils of a told whole', () => {
  test.each([
    ['rice bran 320g, coco 180, lard the rest to make 700', '320 g rice bran, 180 g coco, 200 g lard'],
    ['coconut 200, castor 50, rest olive to make 1000', '200 g coconut, 50 g castor, 750 g olive'],
    ['olive the rest up to 1kg, coconut 250, shea 100', '250 g coconut, 100 g shea, 650 g olive'],
    ['oliva 400, coco 200 y manteca lo que falte para un kilo', '400 g oliva, 200 g coco, 400 g manteca'],
  ])('“%s”', (text, oils) => {
    expect(inPlainWords('oils', text)).toEqual({ text: oils });
  });

  test('what is left of a bare whole of fewer than 300 may be ounces, and is asked', () => {
    expect(inPlainWords('oils', 'coconut 8, castor 2, rest olive to make 32')).not.toMatchObject({
      text: expect.stringContaining(' g '),
    });
  });

  test.each([
    [
      '300g tallow +150 coco nut + 150 hi oleic sunflower',
      '300 g tallow, 150 g coconut, 150 g high oleic sunflower',
    ],
    ['1kg macadamia (dont ask) + 400 coconut', '1 kg macadamia, 400 g coconut'],
  ])('names in two words, glued signs and remarks: “%s”', (text, oils) => {
    expect(inPlainWords('oils', text)).toEqual({ text: oils });
  });
});

/*
 * Brazil nut oil, KOH of 192 to 202 mg/g and iodine 93 to 106 in handbooks of fats (from memory); its fatty acids alone give what is
 * taken for lye, which must lie in that range.
 */
test('Brazil nut oil takes as much lye as its handbooks tell', () => {
  const { saponification } = OILS.find(({ id }) => id === 'brazil-nut')!;
  expect(saponification.typical).toBeGreaterThan(190);
  expect(saponification.typical).toBeLessThan(197);
});
