import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asksForLyeOfWeighed,
  weighsAnOilTwice,
} from '../../../../../../src/engine/questions/lye/recipe-line/recipe-asked.ts';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

const read = (question: string) => readInChat(question);
const RECIPE = { en: '600 g olive oil and 250 g coconut oil', es: '600 g de oliva y 250 g de coco' } as const;
const ASKS = { en: 'how much lye at 5%?', es: '¿cuánta sosa al 5%?' } as const;
type Language = keyof typeof RECIPE;

/** Chatted before a recipe: of the hour, the day's work, people, greetings, an oil that is praised. None moves an oil. */
const TALK: Readonly<Record<Language, readonly string[]>> = {
  en: [
    'Greetings from Halifax.',
    'Just off my night shift.',
    'Starting at 6 when the lamp comes on.',
    'After a long day soldering rings I fancy a quiet batch:',
    'My wife is off shift tonight so we finally get to soap together:',
    'Thinking',
    'That worked a treat. Another:',
    'Oh and',
    'Forget the palm I told you about.',
  ],
  es: [
    'Saludos desde Monterrey.',
    'Salgo recién de la guardia.',
    'Son las 2 de la mañana y no me cierra:',
    'A las 8 llega mi mujer del taller.',
    'A las 5 empiezo y a las 7 llega mi suegra.',
    'Por fin podemos jabonear juntas:',
    'Olvidate de la palma que te dije.',
  ],
};
const talked = (language: Language) =>
  fc.constantFrom(...TALK[language]).map(said => `${said} ${RECIPE[language]}, ${ASKS[language]}`);

describe('talk that can keep no oil out of the pot is passed by', () => {
  test.each(['en', 'es'] as const)('%s', language =>
    fc.assert(
      fc.property(talked(language), told => {
        const { oils, superfat } = read(told).given;
        expect({ told, oils, superfat }).toEqual({
          told,
          oils: language === 'en' ? '600 g olive oil, 250 g coconut oil' : '600 g oliva, 250 g coco',
          superfat: 5,
        });
      }),
    ),
  );

  /** Each keeps some of an oil out, or may: in whatever talk it stands, it is asked. */
  const ABSENT: Readonly<Record<Language, readonly string[]>> = {
    en: [
      'that I sold',
      'that my mate has',
      'which stays in the tin',
      'that I gave away',
      'for tomorrow',
      'in another pot',
      'my sister took',
    ],
    es: [
      'que vendí',
      'que tiene mi vecina',
      'que se queda en la lata',
      'que regalé',
      'para mañana',
      'en otra olla',
      'que se llevó mi hermana',
    ],
  };
  test.each(['en', 'es'] as const)('what may keep one out is asked beside any of it: %s', language =>
    fc.assert(
      fc.property(
        fc.constantFrom(...TALK[language]),
        fc.constantFrom(...ABSENT[language]),
        (said, absent) => {
          const told = `${said} ${RECIPE[language]} ${absent}, ${ASKS[language]}`;
          expect({ told, isAsked: isAskedBack(told) }).toEqual({ told, isAsked: true });
        },
      ),
    ),
  );

  test.each([
    // What has an oil, or a weight, in it is no talk.
    'After a day at work 200 g of the coconut went, 600 g olive oil and 250 g coconut oil, lye at 5%?',
    'Saludos desde la olla de coco. 600 g de oliva y coco, ¿sosa al 5%?',
    // Told with a weight, what is to be forgotten may still be in the pot.
    '500 olive 200 coconut 100 castor, leave the castor out, lye at 5%',
    'my mother swears by tallow, 800 g olive, 200 g coconut and tallow, lye at 5%?',
    // More of it, or all of it.
    'para más espuma subo el coco 350, oliva queda en 450, palma 200, ¿cuánta sosa al 5%?',
  ])('asked: %s', question => expect(isAskedBack(question)).toBe(true));
});

describe('what is told at the bench', () => {
  test.each([
    [
      "I've weighed out 139 g of caustic for 600 g tallow and 400 g olive, is that right before I tip it in?",
      139,
    ],
    ['La sosa ya está pesada, 139 g, para 600 g de oliva y 400 g de coco. ¿Sirve?', 139],
    ['600 g girasol, 400 g coco, yo saqué 139 g de soda con 5%. ¿Está bien?', 139],
    [
      "I've 139 g of caustic soda already dissolved in 250 g of water. The pot has 500 g olive and 200 g coconut. Is it right?",
      139,
    ],
    [
      'Tengo 139 g de sosa ya disuelta en 250 g de agua. La olla tiene 500 g de oliva y 200 g de coco. ¿Está bien?',
      139,
    ],
  ])('lye that was weighed is checked: %s', (question, grams) =>
    expect(read(question).weighed?.grams).toBe(grams),
  );

  test.each([
    [
      'Two pounds of olive oil, one of coconut and a half of one of castor. Lye at 5%?',
      '2 lb olive oil, 1 lb coconut, 0.5 lb castor',
    ],
    ['Dos kilos de sebo, uno de coco y medio de oliva. ¿Sosa al 5%?', '2 kg sebo, 1 kg coco, 0.5 kg oliva'],
    ['58% oliva 27% coco 15% sebo sobre 1100 g, 5 de sobreengrasado, sosa', '58% oliva, 27% coco, 15% sebo'],
    [
      '1 kg of oils, 60% of it olive, a quarter of it coconut and the rest castor, lye at 5%?',
      '60% olive, 25% coconut, 15% castor',
    ],
    [
      'no conseguí palma, uso grasa de vaca en su lugar, 300 g. Lo otro queda: 400 oliva, 200 coco. ¿sosa al 5%?',
      '400 g oliva, 200 g coco, 300 g grasa de vaca',
    ],
    [
      "I've 375 g palm kernel oil where it says coconut, 500 g olive 125 g castor. lye at 6%",
      '375 g palm kernel oil, 500 g olive, 125 g castor',
    ],
    ['600 oliva 250 coco 150 tártago, ¿sosa al 5%?', '600 g oliva, 250 g coco, 150 g tartago'],
  ])('%s', (question, oils) => expect(read(question).given.oils).toBe(oils));

  test.each([
    "400 g lard, 400 g olive oil, superfat 5. No wait, I've dry hands, make it 8. How much lye?",
    '400 g de manteca de cerdo, 400 g de oliva, sobreengrasado 5. No, espera, tengo las manos secas, mejor 8. ¿Cuánta sosa?',
  ])('a superfat is put right, its reason told: %s', question =>
    expect(read(question).given.superfat).toBe(8),
  );
  test('of two digits, too', () =>
    expect(
      read('400 g lard, 400 g olive, superfat 5. No wait, I have dry hands, make it 10. How much lye?').given
        .superfat,
    ).toBe(10));
  test.each([
    '500 g lard, 300 g olive oil, superfat 5%, no, the lard I have less of, make that 8. NaOH?',
    '500 g lard, 300 g olive oil, superfat 5%, no, half the batch, make that 8. NaOH?',
  ])('a reason that is of an oil is asked: %s', question => expect(isAskedBack(question)).toBe(true));

  // 87 % of goat’s milk is water (USDA FoodData Central; from memory): 300 g bring 261 g, 29 % of 900 g oils.
  test.each([
    'Frozen goat milk 300 g in place of all the water, 600 g olive, 300 g coconut, 7%. How much lye?',
    'Leche de cabra congelada 300 g en vez de agua, 600 g de oliva, 300 g de coco, 7%. ¿Cuánta soda?',
  ])('milk weighed in place of the water is its water: %s', question =>
    expect(read(question).given.water).toBe('29% of oils'),
  );
  test('milk that is far more or far less than the water is left to be told', () => {
    const of = (grams: number) =>
      read(`goat milk ${grams} g instead of water, 600 g olive, 300 g coconut, lye at 5%?`).given.water;
    // 26 to 45 % of the oils, of which 87 % is water: 269 to 465 g for 900 g.
    expect([268, 270, 465, 467].map(of)).toEqual([undefined, '26.1% of oils', '44.95% of oils', undefined]);
  });

  test.each([
    ['500 g olive, 200 g coconut, 5% superfat, oh and my lye tub says 97%. How much NaOH?', 97],
    ['500 g de oliva, 200 g de coco, 5%, ah y la bolsa de sosa dice 97%. ¿Cuánta sosa?', 97],
  ])('how pure the lye is: %s', (question, purity) => expect(read(question).given.purity).toBe(purity));
});

describe('who weighs an oil and asks for its lye waits for that weight', () => {
  test.each([
    ['Reciclo aceite: 1 kg de girasol ya colado y limpio, sobreengrasado 5%. ¿Cuánta sosa?', true],
    ['I recycle oil: 1 kg sunflower, filtered and clean, 5% superfat. How much lye?', true],
    ['1 kg of sunflower, how do I clean up lye?', false],
  ])('%s', (question, isWaitedFor) => expect(asksForLyeOfWeighed(question)).toBe(isWaitedFor));

  test.each([
    ['the book says 800 g olive, I weighed 600 g olive, lye 103 g, is that safe', true],
    ['el libro dice 800 g de oliva, yo pesé 600 g de oliva, sosa 103 g, ¿es seguro?', true],
    ['For 1 kg of olive oil the book says 135 g lye and my friend says 128 g, which is right?', false],
  ])('%s', (question, isTwice) => expect(weighsAnOilTwice(question)).toBe(isTwice));
});
