import { expect, test } from 'vitest';
import { rewritten } from '../../../../src/engine/text/patterns/fitting.ts';
import { MISSPELT_ACEITE, UNIT_SPELLINGS } from '../../../../src/engine/text/spelling/unit-spelling.ts';

/* From memory of how makers write on phones; the words are our own. */

test.each([
  ['2 cupps batter', '2 cups batter'],
  ['2 tasas de masa', '2 tazas de masa'],
  ['1 tspn gold mica', '1 tsp gold mica'],
  ['1 tea spoon of clay', '1 tsp of clay'],
  ['2 tablespons', '2 tbsp'],
  ['1 cuchara sopera', '1 cucharada'],
  ['2 cucharditas', '2 cucharaditas'],
  ['16 onsas de coco', '16 onzas de coco'],
  ['500 gramoz de oliva', '500 gramos de oliva'],
  ['12 ouces of lard', '12 ounces of lard'],
  ['2 ponds of lard', '2 pounds of lard'],
  ['250 mils of water', '250 ml of water'],
  ['30 per cent', '30 percent'],
  ['1/8th tsp', '1/8 tsp'],
  ['between 2 and 3 g', 'between 2 and 3 g'],
  ['btwn 2 and 3 g', 'between 2 and 3 g'],
  // As a tablespoon is called in much of America.
  ['1 cuchara de arcilla', '1 cucharada de arcilla'],
  ['dos cucharas de arcilla', 'dos cucharadas de arcilla'],
  ['cuchara y media de carbón', 'cuchara y media de carbón'],
  ['una cuchara de madera', 'una cuchara de madera'],
  // How pure lye is, of a hundred, is no weight.
  ['superfat 2 KOH purity 99', 'superfat 2 KOH purity 99%'],
  ['potasa de pureza 90', 'potasa de pureza 90%'],
  ['purity is 97.5', 'purity 97.5%'],
  ['purity 99 %', 'purity 99 %'],
  // As oil and flour are bought in Spain.
  ['cuarto y mitad de kilo de coco', '375 g de coco'],
  ['250 c.c. of water', '250 cc of water'],
])('“%s” is told as “%s”', (typed, meant) => {
  expect(rewritten(typed, UNIT_SPELLINGS)).toBe(meant);
});

test.each(['cuppa tea', 'mil gracias', '2 ounces', 'tasajo', 'millimetres'])('“%s” is no slip', text => {
  expect(rewritten(text, UNIT_SPELLINGS)).toBe(text);
});

test.each(['aseite', 'haceite', 'aceyte', 'azeite'])('“%s” is oil', word => {
  expect(`${word} de oliva`.replace(MISSPELT_ACEITE, 'aceite')).toBe('aceite de oliva');
});
