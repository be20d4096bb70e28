import { describe, expect, test } from 'vitest';
import * as english from '../../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../../src/words/es/index.ts';
import { isAskedBack, readInChat, refusalOf } from '../../../read-in-chat.ts';

describe('a soap that stays soft takes another alkali than a bar (common practice)', () => {
  test.each([
    'lye for liquid hand soap, 500 g coconut 500 g olive, superfat 2',
    'shaving soap: 300 g stearic acid, 200 g coconut, 3% superfat, how much lye',
    'jabón líquido con 700 g de girasol y 300 g de coco, cuánta sosa',
    'jabón blando con 700 g de girasol y 300 g de coco, ¿cuánta sosa?',
  ])('and is asked which, where none is told: %s', question =>
    expect(refusalOf(question).id).toBe('lye-of-soft-soap'),
  );
  test('in both languages', () => {
    const refusal = refusalOf('liquid soap, 500 g coconut 500 g olive, how much lye');
    expect(english.refusals['lye-of-soft-soap'](refusal.values as never)).toContain(
      '“liquid soap” is made with potassium hydroxide (KOH), a bar with sodium hydroxide (NaOH)',
    );
    expect(spanish.refusals['lye-of-soft-soap'](refusal.values as never)).toContain(
      '«liquid soap» se hace con hidróxido de potasio (KOH)',
    );
  });
  test.each([
    ['liquid soap, KOH, 500 g coconut 500 g olive, how much', 'KOH'],
    ['how much potash for 600 g olive oil', 'KOH'],
    ['shaving soap, 200 g stearic acid 120 g coconut, potash for it? sf 3', 'KOH'],
  ])('but for who tells it: %s', (question, lye) => expect(readInChat(question).given.lye).toBe(lye));
});

describe('weights that are other weights are asked', () => {
  test.each([
    // A litre, a cup, or an ounce of a jug is no weight (common practice).
    '12 oz olive, 6 oz coconut, in the measuring jug, how much lye',
    '12 onzas de oliva y 6 onzas de coco, con el vasito medidor, ¿cuánta sosa?',
    '16 oz olive 8 oz coconut, all by the cup, never touched the kitchen scale. lye?',
    // A scale that is wrong.
    '250 g olive 250 g coconut. My scale reads a bit high. lye?',
    '250 g de oliva y 250 g de coco. La balanza anda mal. ¿sosa?',
    '500 g de oliva y 250 g de coco. La báscula le suma unos gramos. ¿sosa?',
    // Milk within the weight of the oils.
    '1 kilo de aceites con la leche incluida, mitad oliva y mitad coco, ¿sosa?',
    '38 oz of oils with the milk in, 70% olive 30% coconut, how much lye',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));
  test.each([
    '250 g olive 250 g coconut. My scale is new. lye?',
    '250 g de oliva y 250 g de coco. La balanza ya tiene pilas. ¿sosa?',
    '1 kg of oils with milk in place of the water, 50% olive 50% coconut. lye?',
  ])('and a good scale, or milk as the liquid, is not: %s', question =>
    expect(isAskedBack(question)).toBe(false),
  );
});

describe('a pound of its own is what it is told to have', () => {
  // The pound of markets in much of Latin America and of old in Europe (general knowledge, from memory).
  test.each([
    [
      '2 libras de 500 g de manteca de cerdo y 1 libra de coco, ¿sosa?',
      '1000 g manteca de cerdo, 500 g coco',
    ],
    [
      'Dos libras de sebo, una de coco y media de oliva, libras de 500 g como acá. 5%. ¿Cuánta sosa?',
      '1000 g sebo, 500 g coco, 250 g oliva',
    ],
    ['3 pounds of 500 g of lard and 1.5 pounds of coconut, how much lye', '1500 g lard, 750 g coconut'],
    ['2 libras de manteca de cerdo y 1 libra de coco, ¿sosa?', '2 lb manteca de cerdo, 1 lb coco'],
  ])('%s', (question, oils) => expect(readInChat(question).given.oils).toBe(oils));
  test.each([
    'Dos libras de sebo y una de coco. La libra del mercado es de 500 pero mi pesa es gringa. ¿Sosa?',
    '2 libras de 500 g de sebo y 1 libra de 460 g de coco, ¿sosa?',
    '2 pounds of lard, 1 pound of coconut, pounds of 500 g I think. lye?',
  ])('and in doubt it is asked: %s', question => expect(isAskedBack(question)).toBe(true));
});

describe('pure castile is olive oil alone (common practice)', () => {
  test.each([
    'straight castile, 900 g. lye?',
    '900 g pure castile, how much lye',
    'castilla pura 900 g, ¿sosa?',
  ])('%s', question => expect(readInChat(question).given.oils).toBe('900 g olive'));
  test('and of nothing where its oils are told', () => {
    const { oils, liquid } = readInChat('pure castile, 800 g olive 100 g castor, how much lye').given;
    expect([oils, liquid]).toEqual(['800 g olive, 100 g castor', undefined]);
  });
});

describe('the letter of a batch is of no oil', () => {
  test.each([
    'Batch B: 600 g lard 300 g coconut. lye?',
    'sosa para la receta C: 600 g de sebo, 300 g de coco',
  ])('%s', question => expect(isAskedBack(question)).toBe(false));
  test('and two of them are two pots', () =>
    expect(isAskedBack('Batch A: 500 g olive 200 g coconut. Batch B: 600 g lard. lye?')).toBe(true));
});
