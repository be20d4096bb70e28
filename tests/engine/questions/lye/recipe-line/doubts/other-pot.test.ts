import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Refusal } from '../../../../../../src/engine/refusal.ts';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

const givenOf = (question: string): Readonly<Record<string, unknown>> => readInChat(question).given;
/** What is asked back about an oil, with the recipes that one press takes. */
function refusalOf(question: string): {
  names?: readonly string[];
  ways?: readonly { without: readonly string[] }[];
} {
  try {
    readInChat(question);
  } catch (error) {
    if (error instanceof Refusal && error.id === 'oil-in-pot') return error.values;
    throw error;
  }
  return {};
}
const grams = fc.integer({ min: 60, max: 900 });

describe('what goes into another pot, or into this one another day, is asked back', () => {
  // The first had been given the lye of both pots, 35 % too much.
  test.each([
    'Mañana le agrego a otra olla 200 g de coco; hoy en esta solo hay 800 g de oliva. ¿Cuánta soda para la de hoy, al 5%?',
    'Tomorrow I add 200 g coconut oil to another pot; today in this one there is only 800 g olive oil. How much lye at 5%?',
    'En esta olla 800 g de oliva, 200 g de coco van a la otra. ¿Cuánta soda al 5%?',
    'A otra olla 200 g de coco; en esta hay 800 g de oliva. ¿Cuánta soda al 5%?',
    'En otra olla 200 g de coco; en esta hay 800 g de oliva. ¿Cuánta soda al 5%?',
    'Tomorrow I’ll add 200 g of coconut; today there’s 800 g olive. How much lye at 5%?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));

  test('whatever vessel it is, and however much', () =>
    fc.assert(
      fc.property(
        grams,
        grams,
        fc.constantFrom('otra olla', 'otro balde', 'otra jarra', 'otro tazón', 'otra tina'),
        fc.constantFrom('en', 'a', 'para'),
        (a, b, vessel, to) => {
          const told = `${a} g de oliva, y ${to} ${vessel} ${b} g de coco. ¿Cuánta sosa al 5%?`;
          expect({ told, isAsked: isAskedBack(told) }).toEqual({ told, isAsked: true });
        },
      ),
    ));

  // The English of the first had been given the lye of both pots.
  const VESSELS = [
    ['another pot', 'otra olla'],
    ['the other bowl', 'el otro bol'],
    ['a second bucket', 'una segunda cubeta'],
    ['another big jar', 'otro frasco'],
    ['a separate tub', 'un recipiente aparte'],
    ['the other', 'la otra'],
    ['another', 'otro'],
  ] as const;
  test('whichever it is called, the oil is named and both answers are one press, in either language', () =>
    fc.assert(
      fc.property(
        grams,
        grams,
        fc.constantFrom(...VESSELS.filter(([, es]) => !es.includes('aparte'))),
        (a, b, [en, es]) => {
          for (const [told, oil] of [
            [`In ${en} ${b} g coconut oil; in this one ${a} g olive oil. How much lye at 5%?`, 'coconut oil'],
            [`En ${es} ${b} g de coco; en esta ${a} g de oliva. ¿Cuánta sosa al 5%?`, 'coco'],
            [`${a} g olive oil, and in ${en} ${b} g coconut oil. How much lye at 5%?`, 'coconut oil'],
            [`${a} g de oliva, y en ${es} ${b} g de coco. ¿Cuánta sosa al 5%?`, 'coco'],
          ] as const) {
            const values = refusalOf(told);
            expect({ told, names: values.names }).toEqual({ told, names: expect.arrayContaining([oil]) });
            expect(values.ways?.map(({ without }) => without)).toEqual(expect.arrayContaining([[], [oil]]));
          }
        },
      ),
    ));

  test.each([
    '800 g olive oil, 200 g coconut oil. I have another pot for the water. Lye at 5%?',
    '800 g de oliva, 200 g de coco. Tengo otra olla para el agua. ¿Sosa al 5%?',
  ])('a pot for the water holds no oil: %s', question => expect(isAskedBack(question)).toBe(false));

  test('a recipe for tomorrow is one for all that', () => {
    expect(givenOf('Mañana hago 500 g de oliva y 200 g de coco, ¿cuánta sosa al 5%?').oils).toContain('coco');
    expect(
      givenOf('Para mañana por la mañana: 500 g de oliva y 200 g de coco, ¿cuánta sosa al 5%?').oils,
    ).toContain('coco');
  });
});

describe('a weight that holds the water too is no weight of oils', () => {
  // The first had been given 44 % too much lye.
  test.each([
    'Entre agua y aceites hay 1500 g, 450 g son agua. De los aceites dos tercios son oliva y un tercio coco. ¿Cuánta soda al 5%?',
    'Between water and oils there is 1500 g, 450 g of it water. Of the oils two thirds is olive and one third coconut. How much lye at 5%?',
    'Los aceites y el agua juntos pesan 1400 g: mitad oliva, mitad coco. ¿Cuánta sosa?',
    'Oils and water come to 1400 g, half olive half coconut, how much lye?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));
});

describe('potash that is called pure is counted as pure', () => {
  // Counted at 90 %, it was 12 % too much. Beside a superfat: a percent from 50 on may be how pure it is, and is taken at its word.
  test.each([
    'Hola amigos. Potasa pura para 600 g de oliva y 200 g de coco, 3%. ¿Cuánto KOH?',
    'potasa pura, 600 g oliva 200 g coco, sobreengrasado 3%',
    'pure KOH for 600 g olive and 200 g coconut, 3% superfat, how much?',
  ])('%s', question => expect(givenOf(question).lye).toBe('KOH 100%'));

  test.each([
    ['KOH 90% pure for 600 g olive, 3% superfat, how much?', 'KOH 90%'],
    ['KOH al 85% de pureza para 600 g de oliva, 3% sobreengrasado, ¿cuánto?', 'KOH 85%'],
  ])('%s', (question, lye) => expect(givenOf(question).lye).toBe(lye));
});

describe('a pot that is told by its colour or size alone is another one', () => {
  // The first had been given the lye of both pots, 2.6 times what the green one takes.
  test.each([
    '400 g de oliva y 400 g de coco en la olla roja, 500 g de sebo en la verde. La soda es sólo para la verde, sobreengrasado 5 %. ¿Cuánta?',
    '400 g de oliva y 400 g de coco en la olla roja, 500 g de sebo en la verde. ¿Cuánta soda al 5%?',
    '400 g olive and 400 g coconut in the red pot, 500 g tallow in the green one. Lye at 5%?',
    'In the big pan 400 g olive and 400 g coconut; in the small 500 g tallow. Lye at 5%?',
    '400 g olive, 400 g coconut, 500 g tallow. The lye is only for the tallow. 5% superfat.',
    '400 g de oliva, 500 g de sebo. La sosa va solo para el sebo, al 5%.',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));

  test.each([
    ['400 g olive and 400 g coconut, all in the green pot. Lye at 5%?', '400 g olive, 400 g coconut'],
    ['400 g de oliva y 400 g de coco, todo en la olla verde. ¿Sosa al 5%?', '400 g oliva, 400 g coco'],
  ])('one pot is one: %s', (question, oils) => expect(givenOf(question).oils).toBe(oils));
});

describe('weights that are told for each of several moulds are asked', () => {
  // The first had been given the lye of one of the two.
  test.each([
    '500 g olive and 250 g coconut each for Ania’s mould and mine, one pot for both. 5% superfat. How much lye for the pot?',
    '500 g de oliva y 250 g de coco cada uno para mi molde y el de Ania. ¿Sosa al 5%?',
    '500 g olive and 250 g coconut per mould, lye at 5%?',
    '500 g de oliva y 250 g de coco por molde, tengo dos. ¿Sosa al 5%?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));

  test('so much of each oil for one mould is a recipe', () => {
    expect(givenOf('200 g each of olive, coconut and lard for my mould, lye at 5%?').oils).toBe(
      '200 g olive, 200 g coconut, 200 g lard',
    );
    expect(givenOf('200 g de cada uno: oliva, coco y sebo, para mi molde, ¿sosa al 5%?').oils).toBe(
      '200 g oliva, 200 g coco, 200 g sebo',
    );
  });
});
