import { describe, expect, test } from 'vitest';
import {
  gramsOrMillilitres,
  lyeAndOilsAlone,
  toldAmounts,
  wordsOfBatch,
} from '../../../../../src/engine/questions/lye/slips/told-amounts.ts';

/*
 * Whose each weight is, as a careful reader takes what makers write (from memory of how they write). An ounce is 28.349523125 g and a
 * pound 16 of them (NIST Handbook 44, appendix C); a millilitre of water weighs a gram (common practice).
 */

const told = (text: string): string =>
  toldAmounts(wordsOfBatch(text))
    .map(({ role, grams, oil, isBatch }) =>
      [role, oil?.id, isBatch ? 'batch' : undefined, Math.round(10 * grams) / 10].filter(Boolean).join(' '),
    )
    .join(', ');

describe('whose a weight is', () => {
  test.each([
    ['I put in 150 g lye and 300 g water for 1 kg of oils', 'put 150, water 300, whole 1000'],
    ['puse 150 g de sosa y 300 ml de agua para 1 kg de aceites', 'put 150, water 300, whole 1000'],
    ['added 95 g lye, the recipe called for 120 g', 'put 95, meant 120'],
    ['used 95 g lye instead of 120 g', 'put 95, meant 120'],
    ['usé 95 g de sosa en vez de 120 g', 'put 95, meant 120'],
    ['eché 95 g de sosa en lugar de 120', 'put 95, meant 120'],
    ['poured 300 g of the water, 140 g of the lye', 'water 300, lye 140'],
    ['the formula says 140 g lye', 'meant 140'],
    ['it should have been 140 g of lye', 'meant 140'],
    ['supposed to be 140 g lye and I weighed 104 g', 'meant 140, put 104'],
    ['la fórmula pedía 140 g de sosa y pesé 104 g', 'meant 140, put 104'],
    ['tenía que ser 140 g y vacié 190 g', 'meant 140, put 190'],
    ['decía 134 g y metí 143 g', 'meant 134, put 143'],
    ['134 g decía la receta', 'meant 134'],
    ['143 g is what it said', 'meant 143'],
    ['agregué 20 g más de sosa', 'more 20'],
    ['le añadí 20 g de sosa de más', 'more 20'],
    ['20 g too much lye', 'more 20'],
    ['20 g of lye too much', 'more 20'],
    ['20 g way too much lye', 'more 20'],
    ['20 g extra lye', 'more 20'],
    ['20 g over, 1 kg of oils', 'more 20, whole 1000'],
    ['20 g over on the lye', 'more 20'],
    ['20 g lye over', 'more 20'],
    ['20 g excess of the lye', 'more 20'],
    ['20 g de sobra de sosa', 'more 20'],
    ['20 g more lye than the recipe', 'more 20'],
    ['20 g more than the recipe', 'more 20'],
    ['20 g más de lo que decía', 'more 20'],
    ['20 g less than the recipe', 'less 20'],
    ['20 g menos de lo que decía', 'less 20'],
    ['20 g short of lye', 'less 20'],
    ['20 g too little lye', 'less 20'],
    ['20 g under on the lye', 'less 20'],
    ['20 g less lye', 'less 20'],
    ['20 g of lye less', 'less 20'],
    ['20 g menos de sosa', 'less 20'],
    ['20 g de menos, 800 g de oliva', 'less 20, oil olive 800'],
    ['over by 20 g of lye', 'more 20'],
    ['too high by 20 g lye', 'more 20'],
    ['I was short by 20 g of lye', 'less 20'],
    ['sobraron 20 g de sosa', 'more 20'],
    ['me sobró 20 g', 'more 20'],
    ['me faltó 20 g de sosa', 'less 20'],
    ['faltan 20 g', 'less 20'],
    ['me pasé de 20 g', 'more 20'],
    ['me pasé con 20 g de sosa', 'more 20'],
    ['quedé corto por 20 g', 'less 20'],
    ['the scale was 20 g over', 'unknown 20'],
    ['the olive was 20 g short', 'unknown 20'],
    ['20 g more olive', 'unknown 20'],
    ['20 g extra water', 'water 20'],
    ['50 g más de aceite de oliva', 'unknown 50'],
    ['la báscula marcaba 20 g de más', 'unknown 20'],
    ['the jar of coconut oil is 20 g over, lye 140 g', 'unknown 20, lye 140'],
    ['the lye jar was 20 g short', 'less 20'],
    ['20 g more of the shea butter', 'unknown 20'],
    ['200 g of oils', 'whole 200'],
    ['200 g of the oils', 'whole 200'],
    ['200 g total fat', 'whole 200'],
    ['200 g de las grasas', 'whole 200'],
    ['200 g de aceite de coco', 'oil coconut 200'],
    ['200 g de grasas de cerdo', 'oil lard 200'],
    ['1 kg batch', 'whole batch 1000'],
    ['1 kg of batch', 'whole batch 1000'],
    ['1 kg size batch', 'whole batch 1000'],
    ['1 kg loaf', 'whole batch 1000'],
    ['2 lb recipe', 'whole batch 907.2'],
    ['un lote de 1 kg', 'whole batch 1000'],
    ['1 kg lote', 'whole batch 1000'],
    ['1 kg de receta', 'whole batch 1000'],
    ['1 kg tanda', 'whole batch 1000'],
    ['batch of 1 kg, 140 g lye', 'whole batch 1000, lye 140'],
    ['la tanda era 1 kg', 'whole batch 1000'],
    ['receta de 900 g', 'whole batch 900'],
    ['oils 900 g, lye 120 g, water 240 g', 'whole 900, lye 120, water 240'],
    ['aceites: 900 g; sosa: 120 g; agua: 240 g', 'whole 900, lye 120, water 240'],
    ['fats 900 g', 'whole 900'],
    ['lye 120, water 240, olive 900', 'lye 120, water 240, oil olive 900'],
    ['aceite de oliva: 900 g', 'oil olive 900'],
    ['receta sosa 120 g', 'meant 120'],
    ['water: 240 g', 'water 240'],
    ['el agua 240', 'water 240'],
    ['50 g de un kilo', 'unknown 50, whole 1000'],
    ['50 g out of 1 kg', 'unknown 50, whole 1000'],
    ['50 g from 1 kg', 'unknown 50, whole 1000'],
    ['160 g for 600 g', 'lye 160, unknown 600'],
    ['160 g para 600 g', 'lye 160, unknown 600'],
    ['160 g en 600 g de manteca', 'lye 160, oil lard 600'],
    ['put 160 g into 600 g', 'put 160, unknown 600'],
    ['200 g of water instead of 300', 'water 200, water 300'],
    ['200 g agua en vez de 300', 'water 200, water 300'],
    ['200 g water rather than 300 g, 140 g lye', 'water 200, water 300, lye 140'],
    ['200 g lye instead of 300', 'lye 200, meant 300'],
    ['4 oz lye for 2 lb lard', 'lye 113.4, oil lard 907.2'],
    ['140 lye at 33%, 900 olive', 'lye 140, oil olive 900'],
    ['140 lye, 900 olive, cures 6 weeks', 'lye 140, oil olive 900'],
    ['8 bars, 900 olive', 'oil olive 900'],
    ['cut in 10 bars at 40 degrees, 900 g olive', 'oil olive 900'],
    ['2 tbsp sugar, 900 g olive', 'oil olive 900'],
    ['3 times, 900 g olive', 'oil olive 900'],
    ['5 am, 900 g olive', 'oil olive 900'],
    ['350 ml water', 'water 350'],
    ['350 cc de agua', 'water 350'],
    ['1 litro de agua', 'water 1000'],
    ['1.5 litres of water', 'water 1500'],
    ['half a litre of water', 'water 500'],
    ['medio litro de agua y 150 g de sosa', 'water 500, lye 150'],
    ['1 kilo de oliva', 'oil olive 1000'],
    ['un kilo de oliva y 130 g de soda', 'oil olive 1000, lye 130'],
    ['kilo de oliva, 128 g de sosa', 'oil olive 1000, lye 128'],
    ['mi soda 130 g', 'lye 130'],
    ['900 g of the same lye', 'lye 900'],
    ['900 g de la manteca de cacao', 'oil cocoa-butter 900'],
    ['300 g mango butter and 100 g cocoa butter', 'oil mango 300, oil cocoa-butter 100'],
    ['babassu 300 g, castor 50 g', 'oil babassu 300, oil castor 50'],
    ['300 g high oleic sunflower oil', 'oil sunflower-high-oleic 300'],
    ['100 g of bees wax', 'oil beeswax 100'],
    ['300 g of something', 'unknown 300'],
    ['300', 'unknown 300'],
  ])('%s: %s', (text, whose) => {
    expect(told(text)).toBe(whose);
  });

  test.each([
    'cut into 8 bars',
    '5 % superfat',
    '5 percent',
    '5 por ciento',
    'a ratio of 2:1',
    '40 degrees',
    '40 grados',
    '40 c',
    '104 f',
    '8 bars',
    '8 pastillas',
    '8 barras',
    '3 days',
    '3 dias',
    '6 weeks',
    '6 semanas',
    '12 hours',
    '12 horas',
    '20 minutes',
    '20 minutos',
    '2 months',
    '2 meses',
    '3 years',
    '3 años',
    '5 am',
    '5 pm',
    '3 times',
    '3 veces',
    '2 tablespoons',
    '2 table spoons',
    '2 teaspoons',
    '2 tea spoons',
    '2 spoons',
    '2 tbsp',
    '2 tsps',
    '2 cucharadas',
    '2 cucharitas',
    '2 cups',
    '2 tazas',
    '2 vasos',
    '2 a 1',
    '2 a uno',
  ])('no weight is: %s', text => {
    expect(toldAmounts(wordsOfBatch(text)).filter(({ grams }) => grams !== 1)).toEqual([]);
  });

  test('a bare figure is in ounces where all that have a unit are, else in grams', () => {
    expect(told('4 oz lye, 9 water, 32 lard')).toBe('lye 113.4, water 255.1, oil lard 907.2');
    expect(told('4 oz lye, 250 g water, 900 lard')).toBe('lye 113.4, water 250, oil lard 900');
    expect(told('140 lye, 280 water, 1000 lard')).toBe('lye 140, water 280, oil lard 1000');
  });

  test('each stands where it was told, from left to right', () => {
    const plain = wordsOfBatch('140 g lye, 280 g water');
    expect(toldAmounts(plain).map(({ at }) => plain.slice(at))).toEqual([
      '140 g lye, 280 g water',
      '280 g water',
    ]);
  });
});

test.each([
  ['300 ml', 300],
  ['300 cc', 300],
  ['1 l', 1000],
  ['1.5 litros', 1500],
  ['2 litres', 2000],
  ['2 liter', 2000],
  ['300 g', 300],
  ['1 kg', 1000],
  ['1 oz', 28.349523125],
])('%s of water weigh %d g', (amount, grams) => {
  expect(gramsOrMillilitres(amount)).toBeCloseTo(grams, 9);
});

describe('lye and oils that nobody named', () => {
  test.each([
    ['140 g lye for 1000 g oils', 140, 1000],
    ['I put 140 g lye in 1000 g oils and 300 g water', 140, 1000],
    ['aceites 1 kg, sosa 140 g, agua 300 g', 140, 1000],
    ['5 oz lye for 2 lb of fat', 141.75, 907.18],
  ])('%s', (text, lye, oils) => {
    const alone = lyeAndOilsAlone(text)!;
    expect(alone.lye).toBeCloseTo(lye, 1);
    expect(alone.oils).toBeCloseTo(oils, 1);
  });

  test.each([
    ['no sodium hydroxide', '140 g potash for 1000 g oils, koh'],
    ['a batch is more than its oils', '140 g lye for a 1 kg batch'],
    ['a named oil', '140 g lye for 1000 g olive'],
    ['two weights of oils', '140 g lye, 500 g oils, 500 g fats'],
    ['two weights of lye', '140 g lye or 130 g lye for 1000 g oils'],
    ['something else that is weighed', '140 g lye, 1000 g oils, 50 g of something'],
    ['lye that was meant', 'the recipe said 140 g lye for 1000 g oils'],
    ['no oils', '140 g lye in 300 g water'],
  ])('not where there is %s: %s', (_, text) => {
    expect(lyeAndOilsAlone(text)).toBeUndefined();
  });
});
