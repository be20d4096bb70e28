import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { gramsOf } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { isAskedBack, readInChat } from '../../read-in-chat.ts';

/** What a line is read as: grams of each oil, or percents where nothing weighs; lye that was weighed; the superfat. */
function told(question: string) {
  const { given, weighed } = readInChat(question);
  const { shares, totalGrams = 100 } = parseOils(given.oils ?? '');
  const grams = given.size === undefined ? totalGrams : gramsOf(given.size);
  return {
    oils: Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * grams)])),
    ...(weighed && { lye: weighed.grams }),
    ...(given.superfat !== undefined && { superfat: given.superfat }),
  };
}

describe('a recipe by other hands that had been asked back', () => {
  test.each([
    [
      'Can someone run 450g olive oil 250 coconut 200 tallow 100 castor. I got 141 g lye at 5 percent but the other fella at the market says thats high',
      { oils: { olive: 450, coconut: 250, tallow: 200, castor: 100 }, lye: 141, superfat: 5 },
    ],
    [
      '70% olive 20% coconut 10% shea, 8% sf, whole lot of oils is 1000 g. lye and water?',
      { oils: { olive: 700, coconut: 200, shea: 100 }, superfat: 8 },
    ],
    [
      'what superfat do yous use for a shampoo-ish bar thats 40 coconut 40 olive 20 castor',
      { oils: { coconut: 40, olive: 40, castor: 20 } },
    ],
    [
      'si hago puro aceite de oliva 750 g al 7% cuanta sosa y cuanta agua',
      { oils: { olive: 750 }, superfat: 7 },
    ],
    [
      'mi receta dice 136 g de sosa para 1 kilo entre oliva 700 y coco 300, se me hace poquita, la checan porfa',
      { oils: { olive: 700, coconut: 300 }, lye: 136 },
    ],
    [
      'all coconut soap for sea water like we had aboard, 1000g coconut oil 20% superfat. lye?',
      { oils: { coconut: 1000 }, superfat: 20 },
    ],
    [
      'un litro no, 1000 gramos de aceite de oliva usado y ya filtrado, solo eso. sosa?',
      { oils: { olive: 1000 } },
    ],
    [
      'puedo bajar el sobreengrasado a 3% con 400 g de manteca de cerdo y 400 g de oliva o me va a raspar',
      { oils: { lard: 400, olive: 400 }, superfat: 3 },
    ],
    [
      'Me ha salido que necesito 71 g de sosa para 350 g de oliva, 100 de coco y 50 de ricino, ¿puedes comprobarlo?',
      { oils: { olive: 350, coconut: 100, castor: 50 }, lye: 71 },
    ],
    [
      'olive and coconut half and half, a kilo in all. superfat 8 because coconut dries my hands something awful',
      { oils: { olive: 500, coconut: 500 }, superfat: 8 },
    ],
    [
      'coco 250 oliva 400, perdón, oliva 450 que leí mal la báscula, girasol 100. sosa al 5%',
      { oils: { coconut: 250, olive: 450, sunflower: 100 }, superfat: 5 },
    ],
    [
      'arroz 200, oliva 400, coco 250, karité 150 — soda al 6% — agua?',
      { oils: { 'rice-bran': 200, olive: 400, coconut: 250, shea: 150 }, superfat: 6 },
    ],
    [
      'Para 1 kg de aceite de girasol alto oleico y 400 g de coco cuánta sosa, al 7%',
      { oils: { 'sunflower-high-oleic': 1000, coconut: 400 }, superfat: 7 },
    ],
    [
      'De palta 150, de oliva 450, de coco 200. Ricino no tengo. ¿Cuánta soda cáustica?',
      { oils: { avocado: 150, olive: 450, coconut: 200 } },
    ],
    [
      'I did 1000g olive with 128 lye and its still soft after 3 weeks, was the lye short? water was 380',
      { oils: { olive: 1000 }, lye: 128 },
    ],
    [
      'cuánta sosa si son 1250 de oliva virgen, 0.5 kg de coco, y 250 de sebo',
      { oils: { olive: 1250, coconut: 500, tallow: 250 } },
    ],
    [
      'grapeseed 120g olive 480g coconut 200g. I’ve 112g of lye left in the tub, enough? 5% superfat I’d like',
      { oils: { grapeseed: 120, olive: 480, coconut: 200 }, lye: 112, superfat: 5 },
    ],
    [
      'Con leche de cabra en vez de agua, 330 g; oliva 1 kilo, coco lo mismo que la leche. Sobreengrasado 7 %. ¿Soda?',
      { oils: { olive: 1000, coconut: 330 }, superfat: 7 },
    ],
    [
      'Goats milk instead of water, 200 g frozen. Olive 420, coconut 180 in grams. Lye at 5%?',
      { oils: { olive: 420, coconut: 180 }, superfat: 5 },
    ],
    [
      'Salt bars, my husband loves them after the ovens: 800 g coconut oil, 20% superfat, and 400 g sea salt at trace. How much sodium hydroxide?',
      { oils: { coconut: 800 }, superfat: 20 },
    ],
    [
      'Mi hija quiere jabón de cacao: 400 g de oliva, 300 g de coco, 200 g de palma y 100 g de manteca de cacao, sobreengrasado 5 %. ¿Cuánta soda?',
      { oils: { olive: 400, coconut: 300, palm: 200, 'cocoa-butter': 100 }, superfat: 5 },
    ],
    [
      '500 g de oliva, 300 g de coco y 100 g de lanolina que me dio el veterinario. 5 % de sobreengrasado. ¿Soda?',
      { oils: { olive: 500, coconut: 300, lanolin: 100 }, superfat: 5 },
    ],
    [
      '400 g de aceite de almendra de palma y 600 g de oliva, sobreengrasado 5%, ¿cuánta sosa?',
      { oils: { 'palm-kernel': 400, olive: 600 }, superfat: 5 },
    ],
  ] as const)('%s', (question, recipe) => expect(told(question)).toEqual(recipe));
});

describe('what lies near it and may keep an oil out, or is another weight, is asked', () => {
  test.each([
    '500 g olive; if I use 200 g coconut too, lye at 5%?',
    '500 g olive, 200 g coconut that stays aboard, lye at 5%?',
    '500 g olive and 200 g coconut left in the tub, lye at 5%?',
    '500 g olive, 200 g coconut is still in the cupboard, lye at 5%?',
    '500 g de oliva, 200 g de coco no tengo, ¿sosa al 5%?',
    '500 g de oliva, 100 g de palma, 200 g coco no hay, ¿sosa al 5%?',
    '500 g olive, 200 g coconut I don’t have, lye at 5%?',
    '500 g olive, 200 g coconut I haven’t got, lye at 5%?',
    '500 g olive, 300 g coconut and 100 g lanolin that the vet has, lye at 5%?',
    '500 g de oliva, 300 g de coco y 100 g de lanolina que tiene el veterinario, ¿sosa al 5%?',
    'My husband loves them after the wash, 500 g olive, 200 g coconut after the cook, lye at 5%?',
    '1 kilo entre oliva 700 y coco 200, ¿sosa al 5%?',
    '500 g de aceite de girasol alto oleico no, del normal, y 200 g de coco. ¿Sosa al 5%?',
    'un litro no, 1000 ml de aceite de oliva. ¿sosa al 5%?',
    '500 g olive, 200 g coconut but the other fella at the market says he wants the coconut, lye at 5%?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));
});

test.each([
  'La soda que conseguí es al 96 %. 900 g de sebo vacuno y 100 g de ricino, 5 % de sobreengrasado. ¿Cuánta peso?',
  'The lye I got is 96%. 900 g tallow and 100 g castor, 5% superfat. How much do I weigh?',
])('how pure the lye is that was had is no superfat: %s', question => {
  const { given, weighed } = readInChat(question);
  expect(given).toMatchObject({ superfat: 5, purity: 96 });
  expect(weighed).toBeUndefined();
});
