import { describe, expect, test } from 'vitest';
import { readInChat, refusalOf } from '../read-in-chat.ts';

/*
 * Recipes as they are chatted (from memory of how makers write): a row that is told is what the lye is reckoned for; in one that is asked
 * something may be out of the pot, weighed otherwise or meant for another day, and no lye is told.
 */

const TOLD: readonly (readonly [text: string, given: object, beside?: object])[] = [
  ['600 g olive, 200 g coconut. My sister says hi. lye?', { oils: '600 g olive, 200 g coconut' }],
  [
    'Starting at 6 when the bus is gone, 600 g olive, 200 g coconut, lye?',
    { oils: '600 g olive, 200 g coconut' },
  ],
  [
    'Hola a todas, saludos desde Rosario. 600 g de oliva y 200 de coco, cuánta soda?',
    { oils: '600 g oliva, 200 g coco' },
  ],
  [
    "600 g olive, 200 g coconut, the olive came from my uncle's grove. lye?",
    { oils: '600 g olive, 200 g coconut' },
  ],
  ['600 g olive, 200 g coconut, it was strained twice. lye?', { oils: '600 g olive, 200 g coconut' }],
  ['600 g olive, 200 g coconut, the dog ate my biscuit. lye?', { oils: '600 g olive, 200 g coconut' }],
  ['600 g olive, 200 g coconut; I think it was more. lye?', { oils: '600 g olive, 200 g coconut' }],
  [
    'jabón líquido con 600 g de oliva y 200 g de coco, ¿cuánta potasa?',
    { oils: '600 g oliva, 200 g coco', lye: 'KOH' },
    { usualKoh: true },
  ],
  ['600 g olive, 200 g coconut, naoh 97% purity. lye?', { oils: '600 g olive, 200 g coconut', purity: 97 }],
  [
    '600 g olive (extra virgin), 200 g coconut (76 degrees). lye?',
    { oils: '600 g extra virgin olive, 200 g coconut' },
  ],
  [
    'olive (600 g), coconut (200 g), castor (50 g): lye?',
    { oils: '600 g olive, 200 g coconut, 50 g castor' },
  ],
  [
    '600 g olive, 200 g coconut and 300 ml goat milk in place of the water, 6% superfat. lye?',
    { oils: '600 g olive, 200 g coconut', superfat: 6, additives: 'goat milk 300 ml' },
  ],
  [
    '600 g olive, 200 g coconut, all the water is milk. lye?',
    { oils: '600 g olive, 200 g coconut', liquid: 'milk' },
  ],
  [
    'lye for 600 g olive, 200 g coconut, 50 g castor at 5% please and thanks',
    { oils: '600 g olive, 200 g coconut, 50 g castor', superfat: 5 },
  ],
  [
    'how much lye do I need for 1.2 lb olive and 0.8 lb coconut, 6% sf',
    { oils: '1.2 lb olive, 0.8 lb coconut', superfat: 6 },
  ],
  ['2 lb 4 oz olive, 12 oz coconut. lye?', { oils: '1020.58 g olive, 12 oz coconut' }],
  ['1 1/2 lb lard, 1/2 lb coconut. lye?', { oils: '1.5 lb lard, 0.5 lb coconut' }],
  ['one and a half pounds of lard, half a pound of coconut. lye?', { oils: '1.5 lb lard, 0.5 lb coconut' }],
  [
    '1,5 kg de oliva y 0,5 kg de coco, sobreengrasado 5%. sosa?',
    { oils: '1.5 kg oliva, 0.5 kg coco', superfat: 5 },
  ],
  ['mil gramos de oliva y doscientos de coco. sosa?', { oils: '1000 g oliva, 200 g coco' }],
  [
    '600 g olive, 200 g coconut, premixed lye at 50%. how much?',
    { oils: '600 g olive, 200 g coconut', lye: '50% lye solution' },
  ],
  ['600 g olive, 200 g coconut. lye and water please', { oils: '600 g olive, 200 g coconut' }],
  [
    '600 g olive, 200 g coconut. cuánta agua y sosa?',
    { oils: '600 g olive, 200 g coconut' },
    { asksWater: true },
  ],
  ['olive 600, coconut 200, lye?', { oils: '600 g olive, 200 g coconut' }],
  ['olive 60, coconut 40. lye?', { oils: '60% olive, 40% coconut' }],
  [
    'olive 60, coconut 40, 900 g oils. lye?',
    { oils: '60% olive, 40% coconut', size: '900 g oils' },
    { oilGrams: 900 },
  ],
  [
    '600 g olive, 200 g coconut, 30 g beeswax, 10 g stearic acid. lye?',
    { oils: '600 g olive, 200 g coconut, 30 g beeswax, 10 g stearic acid' },
  ],
  [
    '600 g olive, 200 g coconut, 1 tbsp sugar, 1 tsp salt. lye?',
    { oils: '600 g olive, 200 g coconut', additives: 'sugar, salt' },
  ],
  [
    '600 g olive, 200 g coconut, 20 g citric acid. lye?',
    { oils: '600 g olive, 200 g coconut', additives: 'citric acid 20 g' },
  ],
  [
    'last week 600 g olive, 200 g coconut; this week 500 g olive 300 g coconut. lye?',
    { oils: '500 g olive, 300 g coconut' },
  ],
  ['600 g olive, 200 g coconut, lye discount 5%. lye?', { oils: '600 g olive, 200 g coconut', superfat: 5 }],
  [
    '600 g olive, 200 g coconut, el superfat no sé. sosa?',
    { oils: '600 g olive, 200 g coconut' },
    { left: ['superfat'] },
  ],
  ['600 g olive, 200 g coconut, superfat five. lye?', { oils: '600 g olive, 200 g coconut', superfat: 5 }],
  [
    '600 g de oliva, 200 g de coco, al cinco por ciento. sosa?',
    { oils: '600 g oliva, 200 g coco', superfat: 5 },
  ],
  [
    '600 g olive, 200 g coconut, 5% superfat, 38% water. lye?',
    { oils: '600 g olive, 200 g coconut', superfat: 5, water: '38% of oils' },
  ],
  [
    '600 g olive, 200 g coconut, water 33% of oils. lye?',
    { oils: '600 g olive, 200 g coconut', water: '33% of oils' },
  ],
  [
    '600 g olive, 200 g coconut, lye concentration 33%. lye?',
    { oils: '600 g olive, 200 g coconut', water: '33% lye' },
  ],
  [
    '600 g olive, 200 g coconut, 60% NaOH 40% KOH. lye?',
    { oils: '600 g olive, 200 g coconut', lye: 'NaOH 60% + KOH 40%' },
  ],
  [
    '600 g olive, 200 g coconut. Forget the palm I told you about. lye?',
    { oils: '600 g olive, 200 g coconut' },
  ],
  ['the recipe calls for 600 g olive, 200 g coconut. lye?', { oils: '600 g olive, 200 g coconut' }],
  [
    'la receta de mi abuela: 600 g de oliva, 200 g de coco. sosa?',
    { oils: '600 g oliva, 200 g coco' },
    { left: ['abuela'] },
  ],
  [
    'my recipe card says olive 600 coconut 200 castor 50 grams superfat 6 percent, lye?',
    { oils: '600 g olive, 200 g coconut, 50 g castor', superfat: 6 },
  ],
  [
    'I have 300 g olive and 200 g coconut and want to add 100 g lard. lye?',
    { oils: '300 g olive, 200 g coconut, 100 g lard' },
    { left: ['add'] },
  ],
  ['about 600 g olive, 200 g coconut. lye?', { oils: '600 g olive, 200 g coconut' }],
  [
    "600 g olive, 200 g coconut, 100 g of my mum's cream. lye?",
    { oils: '600 g olive, 200 g coconut', additives: 'cream 100 g' },
    { left: ["mum's"] },
  ],
  ['600 g dripping, 200 g coconut. lye?', { oils: '600 g dripping, 200 g coconut' }],
  [
    '600 g de oliva, 200 g de coco, sosa al 97% de pureza. cuánta sosa?',
    { oils: '600 g oliva, 200 g coco', purity: 97 },
  ],
  [
    '600 g olive, 200 g coconut, KOH 90% purity. how much?',
    { oils: '600 g olive, 200 g coconut', lye: 'KOH 90%' },
  ],
];

const ASKED: readonly (readonly [text: string, id: string, values: object])[] = [
  [
    'Tallow 900 g weighed in its jar, jar is 300 g, so 600 g. castor 60 g. lye?',
    'vessel-weighed',
    { text: 'weighed in its jar' },
  ],
  ['400 g olive, 200 g coconut, the pot weighs 800 g. lye?', 'vessel-weighed', { text: 'pot weighs 800 g' }],
  ['500 g olive, 200 g coconut; I spilt some of the olive. lye?', 'oil-lost', { text: 'spilt' }],
  ['500 g oliva, 200 g coco; se me cayó un poco de oliva. sosa?', 'oil-lost', { text: 'se me cayo un poco' }],
  [
    '500 g olive, 200 g coconut, the first one is only half in. lye?',
    'oils-left-out',
    { text: 'the first one is only half in', names: ['coconut'], ways: ['500 g olive'] },
  ],
  [
    '500 g olive, 200 g coconut. Take 100 off each. lye?',
    'recipe-corrected',
    { text: 'take 100 off each', ways: ['500 g olive, 200 g coconut'] },
  ],
  [
    '500 g olive, 200 g coconut. Those weights are in ounces. lye?',
    'recipe-corrected',
    { text: 'weights are in ounces' },
  ],
  [
    '500 g olive, 200 g coconut. I measured it in cups. lye?',
    'recipe-words',
    { text: 'i measured it in cups' },
  ],
  ['500 g olive, 200 g coconut. I forgot to tare. lye?', 'recipe-corrected', { text: 'forgot to tare' }],
  ['500 g olive, 200 g coconut, my sums were out, 50 g less. lye?', 'recipe-words', { text: 'sums were' }],
  [
    'Pot A: 500 g olive, 200 g coconut. Pot B: 300 g lard. lye for each?',
    'recipe-words',
    { text: 'a: 500 g olive, 200 g coconut ; pot b:' },
  ],
  [
    'olla 1: 500 g oliva; olla 2: 300 g manteca de cerdo. sosa?',
    'recipe-words',
    { text: '1: 500 g oliva; olla 2:' },
  ],
  ['which needs more lye, 500 g olive or 500 g coconut?', 'pots-compared', { text: '500 g coconut ;' }],
  [
    '500 g olive, 200 g coconut, none of the solid ones are in yet. lye?',
    'oils-left-out',
    { text: 'none of the solid ones are in yet', names: [] },
  ],
  [
    '500 g olive, 200 g coconut, the liquid oils are still in the shed. lye?',
    'oils-left-out',
    { text: 'the liquid oils are still in the shed', names: [] },
  ],
  [
    '600 g de oliva, 200 g de coco, el coco estaba en oferta. sosa?',
    'oil-in-pot',
    { names: ['coco'], text: 'estaba', ways: ['600 g oliva, 200 g coco', '600 g oliva'] },
  ],
  [
    "600 g olive, 200 g coconut; I don't know if it's ounces or grams. lye?",
    'recipe-words',
    { text: "don't know if it's ounces" },
  ],
  [
    '600 g olive, 200 g coconut, not sure which lye I have. how much?',
    'lye-which-unknown',
    { text: 'not sure which lye' },
  ],
  ['liquid soap: 600 g olive, 200 g coconut. how much lye?', 'lye-of-soft-soap', { text: 'liquid soap' }],
  [
    '1 litre of olive oil, 200 g coconut. lye?',
    'oil-by-volume',
    { text: '1 litre of olive oil, 200 g coconut' },
  ],
  [
    'un litro de aceite de oliva y 200 g de coco. sosa?',
    'oil-by-volume',
    { text: '1 litro de aceite de oliva y 200 g de coco' },
  ],
  [
    '600 grms olive, 200 gms coconut oil, 4 tbsp lye. ok?',
    'oil-by-volume',
    { text: '600 g olive, 200 g coconut oil, 4 tbsp' },
  ],
  [
    '600g olive 200g coconut 1 tbsp castor. lye?',
    'oil-by-volume',
    { text: '600g olive 200g coconut 1 tbsp castor' },
  ],
  [
    '600 g olive, 200 g coconut, ready-made lye solution. how much?',
    'recipe-words',
    { text: 'solution', ways: ['600 g olive, 200 g coconut'] },
  ],
  [
    '600 g olive, 200 g coconut, the butter is in the fridge for my toast. lye?',
    'oil-unknown',
    { text: 'butter is in the fridge for my toast' },
  ],
  [
    'I usually do 600 g olive, 200 g coconut but today 500 g olive, 300 g coconut. lye?',
    'oil-told-twice',
    { name: 'olive', one: '600 g', other: '500 g' },
  ],
  [
    '600 g olive, 200 g coconut, what if I use 8% superfat instead of 5. lye?',
    'oil-in-pot',
    {
      names: ['olive', 'coconut'],
      text: 'if',
      ways: [
        '600 g olive, 200 g coconut ; superfat 8%',
        '200 g coconut ; superfat 8%',
        '600 g olive ; superfat 8%',
      ],
    },
  ],
  ['600 g olive, 200 g coconut, superfat from 5 to 8. lye?', 'recipe-words', { text: 'from to' }],
  [
    '600 g olive, 200 g coconut, keep it at 6. lye?',
    'oil-in-pot',
    {
      names: ['olive', 'coconut'],
      text: 'keep',
      ways: [
        '600 g olive, 200 g coconut ; superfat 6%',
        '200 g coconut ; superfat 6%',
        '600 g olive ; superfat 6%',
      ],
    },
  ],
  ['600 g olive, 200 g coconut, 5. lye?', 'oil-unknown', { text: '5' }],
  ['600 g olive, 200 g coconut of which 50 stays out. lye?', 'recipe-words', { text: 'of which' }],
  [
    '600 g olive, 200 g coconut, only half of the coconut. lye?',
    'oils-mixed-units',
    { isBare: false, share: '50% of the coconut', weight: '600 g olive' },
  ],
  ['600 g olive, 200 g coconut, minus 50 g coconut. lye?', 'recipe-words', { text: 'minus' }],
  ['600 g olive, 200 g coconut less 50 g of the coconut. lye?', 'recipe-words', { text: 'less' }],
  [
    '600 g olive, 200 g coconut, I ran out of coconut so used babassu. lye?',
    'oil-in-pot',
    { names: ['babassu'], text: 'used', ways: ['600 g olive, 200 g babassu', '600 g olive'] },
  ],
  ['no me quedaba coco: 600 g de oliva y 200 g de babasú. sosa?', 'recipe-words', { text: 'no me quedaba' }],
  [
    '600 g olive, 200 g coconut. The coconut I gave to Ana. lye?',
    'oil-in-pot',
    { names: ['coconut'], text: 'coconut', ways: ['600 g olive, 200 g coconut', '600 g olive'] },
  ],
  [
    '600 g olive, 200 g coconut. Tomorrow 300 g lard. lye?',
    'recipe-planned',
    { text: '600 g olive, 200 g coconut ; tomorrow 300 g lard ; lye ;' },
  ],
  ['600 g olive, 200 g coconut, I might add castor. lye?', 'recipe-words', { text: 'might add' }],
  [
    '600 g olive, 200 g coconut, if I add 50 g castor? lye',
    'oil-in-pot',
    {
      names: ['castor'],
      text: 'if',
      ways: ['600 g olive, 200 g coconut, 50 g castor', '600 g olive, 200 g coconut'],
    },
  ],
  ['600 g olive, 200 g coconut or maybe 250. lye?', 'recipe-words', { text: 'maybe 250' }],
  ['600 to 650 g olive, 200 g coconut. lye?', 'recipe-words', { text: 'to' }],
  ['600 g olive, 200 g coconut in the blue jug. lye?', 'recipe-words', { text: 'blue jug' }],
  [
    '600 g olive in the pot and 200 g coconut in another pot. lye?',
    'oil-in-pot',
    { names: ['coconut'], text: 'another pot', ways: ['600 g olive, 200 g coconut', '600 g olive'] },
  ],
  ['600 g olive for the base and 200 g coconut. lye?', 'recipe-words', { text: 'base' }],
  ['600 g sheep fat, not rendered yet, 200 g coconut. lye?', 'oil-unknown', { text: 'sheep fat' }],
  ['500 g 97% pure olive oil, 200 g coconut. lye?', 'oil-unknown', { text: '500 g' }],
];

/** The recipes that a question back may be answered with, by their lines; what lies near an unknown name is the oils' own matter. */
function asked(text: string): object {
  const { id, values } = refusalOf(text);
  const { ways, nearest: _, ...more } = values as { ways?: readonly { line: string }[]; nearest?: unknown };
  return { id, ...more, ...(ways && { ways: ways.map(({ line }) => line) }) };
}

const isTold = (value: unknown): boolean =>
  value !== undefined && value !== false && !(Array.isArray(value) && value.length === 0);

describe('a recipe beside whatever else is said', () => {
  test.each(
    TOLD.map(([text, recipe, beside = {}]): readonly [string, object, object] => [text, recipe, beside]),
  )('is read as it is in the pot: %s', (text, recipe, beside) => {
    const { given, lye: _lye, ...more } = readInChat(text);
    expect(given).toEqual(recipe);
    expect(Object.fromEntries(Object.entries(more).filter(([, value]) => isTold(value)))).toEqual(beside);
  });

  test.each(ASKED)('is asked, and no lye is told: %s', (text, id, values) => {
    expect(asked(text)).toEqual({ id, ...values });
  });
});
