import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { gramsOf } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { Refusal } from '../../../../../src/engine/refusal.ts';
import * as english from '../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../src/words/es/index.ts';
import { readInChat } from '../../read-in-chat.ts';

const gramsIn = ({ given }: ReturnType<typeof readInChat>): Record<string, number> => {
  const { shares, totalGrams = 0 } = parseOils(given.oils ?? '');
  const all = given.size === undefined ? totalGrams : gramsOf(given.size);
  return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * all)]));
};
function readOr(question: string) {
  try {
    return readInChat(question);
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
}
const grams = fc.integer({ min: 60, max: 900 });
/** The right oils, or a question. */
function rightOrAsked(question: string, oils: Record<string, number>): 'right' | 'asked' {
  const told = readOr(question);
  if (told instanceof Refusal) return 'asked';
  expect(gramsIn(told)).toEqual(oils);
  return 'right';
}

describe('ready-made lye holds water', () => {
  test.each([
    [
      'I keep a lye masterbatch, equal weights NaOH and water. 1000 g olive oil, 5% superfat. How much masterbatch do I pour?',
      '50% lye solution',
    ],
    [
      'lye for 700 g olive 300 g coconut, I masterbatch my lye 50/50, how much masterbatch do I weigh',
      '50% lye solution',
    ],
    ['700 g oliva 300 g coco, tengo la sosa ya disuelta al 50 %. ¿cuánta?', '50% lye solution'],
    [
      'Mi sosa líquida viene al 33%. 900 g de oliva, sobregrasa 5%. ¿Cuánta solución echo?',
      '33% lye solution',
    ],
  ])('its grams are told by its strength: %s', (question, lye) => {
    const { given } = readInChat(question);
    expect(given.lye).toBe(lye);
    expect(given.water).toBeUndefined();
  });

  test('how strong it is, is asked where nobody told', () => {
    const told = readOr(
      "700 g olive 300 g coconut, I've a jug of masterbatched lye. how much do I pour?",
    ) as Refusal<'lye-ready-strength'>;
    expect(told.id).toBe('lye-ready-strength');
    expect(english.refusals['lye-ready-strength'](told.values)).toBe(
      '“masterbatched lye” is lye with water in it already, so it weighs more than dry lye: how strong is it? Ask with its percent, such as “50% lye solution”.',
    );
    expect(spanish.refusals['lye-ready-strength'](told.values)).toBe(
      '«masterbatched lye» ya lleva agua, así que pesa más que la sosa seca: ¿qué fuerza tiene? Pregunta con su porcentaje, como «solución de sosa al 50%».',
    );
  });

  test('weighed, it counts as the dry lye in it, or is asked', () => {
    let right = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 80, max: 400 }),
        fc.integer({ min: 20, max: 50 }),
        fc.constantFrom(
          (mass: number, percent: number) =>
            `I put ${mass} g of ${percent}% lye solution in 1 kg olive oil, ok?`,
          (mass: number, percent: number) =>
            `${mass} g de solución de sosa al ${percent}% para 1 kg de oliva, ¿bien?`,
          (mass: number, percent: number) => `check: olive 1 kg, lye ${mass} g of ${percent}% solution`,
        ),
        (mass, percent, line) => {
          const told = readOr(line(mass, percent));
          if (told instanceof Refusal || told.weighed === undefined) return;
          right += 1;
          expect(told.weighed.grams * told.weighed.purity).toBeCloseTo((mass * percent) / 100, 1);
        },
      ),
    );
    expect(right).toBeGreaterThan(40);
  });
});

describe('potash is as pure as it is said to be', () => {
  test.each([
    'Liquid soap today: 600 g sunflower oil, 400 g coconut oil, 3% superfat, how much KOH (pure)?',
    'Jabón líquido: 600 g de girasol y 400 g de coco, sobregrasa 3%, ¿cuánta potasa pura (KOH)?',
    'pure KOH (100%) for 600 g sunflower 400 g coconut, how much',
  ])('%s', question => {
    expect(readInChat(question).given.lye).toBe('KOH 100%');
  });
  test('pure oil is no pure potash', () => {
    expect(readInChat('KOH for 500 g pure olive oil, how much').given.lye).toBe('KOH');
    expect(readInChat('koh for 500 g sunflower and 100 g coconut, my koh says 90%').given.lye).toBe(
      'KOH 90%',
    );
  });
});

describe('a superfat that is put right', () => {
  test.each([
    ['600 g lard, 200 g coconut oil, superfat at 5, no make that 8. Lye?', 8],
    ['600 g de manteca de cerdo, 200 g de coco, sobregrasa 5, digo 8. ¿Sosa?', 8],
  ])('is the second, and no weight: %s', (question, superfat) => {
    const told = readInChat(question);
    expect(told.given.superfat).toBe(superfat);
    expect(gramsIn(told)).toEqual({ lard: 600, coconut: 200 });
  });

  test('a figure far from the weight that it would put right is asked for', () => {
    for (const figure of [3, 8, 12, 30])
      expect(readOr(`600 g lard, 200 g coconut oil, no make that ${figure}, lye?`)).toBeInstanceOf(Refusal);
  });
});

describe('the whole that is told is no lye', () => {
  test('a whole that is off by a rounding', () => {
    const told = readInChat('Olive 400 g, coconut 200 g, water 228.4 g, so 828 g all together. Lye amount?');
    expect(gramsIn(told)).toEqual({ olive: 400, coconut: 200 });
    expect(readOr('Olive 400 g, coconut 200 g, water 228 g, so 900 g all together. Lye?')).toBeInstanceOf(
      Refusal,
    );
  });

  test('oils with their water, before the lye', () => {
    const told = readInChat(
      'Olive oil 400 g, coconut 200 g, water 228 g, so 828 g all together before the lye. Superfat 5. Lye amount?',
    );
    expect(told.weighed).toBeUndefined();
    expect(gramsIn(told)).toEqual({ olive: 400, coconut: 200 });
  });
});

describe('turns of phrase, with any weights, give the right sum or a question', () => {
  /** What a line tells for two weights of olive and coconut. */
  const TURNS: readonly (readonly [
    string,
    (a: number, b: number) => string,
    (a: number, b: number) => Record<string, number>,
  ])[] = [
    [
      'a multiple told before and after',
      (a, b) => `double this for me: ${a} g olive, ${b} g coconut. whats the lye doubled`,
      (a, b) => ({ olive: 2 * a, coconut: 2 * b }),
    ],
    [
      'three times this one',
      (a, b) => `triple de esta receta: ${a} g oliva, ${b} g coco, cuánta sosa en total saldría`,
      (a, b) => ({ olive: 3 * a, coconut: 3 * b }),
    ],
    [
      'one in the place where another was',
      (a, b) =>
        `no coconut this week so I'm putting lard where the coconut was. was ${a} g olive ${b} g coconut. lye?`,
      (a, b) => ({ olive: a, lard: b }),
    ],
    [
      'struck out and replaced',
      (a, b) => `oliva ${a} g, y palma ${b} g, no, tacha la palma, es sebo los ${b}. Cuánta sosa`,
      (a, b) => ({ olive: a, tallow: b }),
    ],
    [
      'typed and meant',
      (a, b) => `ok so i typed ${a + b} g coconut, meant ${b} g. olive is ${a} g. thats it, 2 oils. lye`,
      (a, b) => ({ olive: a, coconut: b }),
    ],
    [
      'not so much but so much',
      (a, b) => `no son ${a + 10} sino ${a} g de oliva, con ${b} g de coco. ¿Cuánta sosa?`,
      (a, b) => ({ olive: a, coconut: b }),
    ],
    [
      'batch B of two',
      (a, b) =>
        `Batch A: 500 g lard, 200 g coconut. Batch B: ${a} g olive, ${b} g coconut. How much lye for batch B?`,
      (a, b) => ({ olive: a, coconut: b }),
    ],
    [
      'the first one and this one',
      (a, b) =>
        `first one i did was just coconut 300 g, this one is olive ${a} g coconut ${b} g. naoh for this one`,
      (a, b) => ({ olive: a, coconut: b }),
    ],
    [
      'their number told',
      (a, b) => `oliva ${a}, coco ${b}, gramos los dos, cuánta sosa`,
      (a, b) => ({ olive: a, coconut: b }),
    ],
    [
      'the lye water by its strength',
      (a, b) => `sosa al 33%: oliva ${a} g, coco ${b} g. cuánta sosa`,
      (a, b) => ({ olive: a, coconut: b }),
    ],
    [
      'somebody else’s, and one’s own',
      (a, b) =>
        `Mi mamá usa 300 g de manteca de cerdo, yo no: yo uso ${a} g de oliva y ${b} g de coco. ¿Cuánta sosa?`,
      (a, b) => ({ olive: a, coconut: b }),
    ],
  ];
  test.each(TURNS)('%s', (_, line, oils) => {
    let right = 0;
    fc.assert(
      fc.property(grams, grams, (a, b) => {
        if (rightOrAsked(line(a, b), oils(a, b)) === 'right') right += 1;
      }),
      { numRuns: 40 },
    );
    expect(right).toBeGreaterThan(20);
  });

  test('ounces go on to be told behind a pound', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 15 }), fc.integer({ min: 1, max: 15 }), (coconut, castor) => {
        const line = `a pound and a half of lard, ${coconut} ounces coconut, ${castor} of castor. how much lye`;
        rightOrAsked(line, {
          lard: Math.round(1.5 * 453.59237),
          coconut: Math.round(coconut * 28.349523),
          castor: Math.round(castor * 28.349523),
        });
      }),
      { numRuns: 30 },
    );
  });

  test.each([
    'double this, and I doubled the lye already: 200 g olive, 100 g coconut. lye?',
    '700 g olive, 300 g coconut, strike the coconut, 200 g coconut. lye?',
    '700 g olive, 200 g coconut, 100 g castor, that is 2 oils. lye?',
    'Batch A: 500 g olive. Batch B: the same without 100 g of it, plus 50 g castor. Lye for batch B?',
    'Batch A: 500 g olive, 100 g coconut. Batch B: 600 g lard. How much lye for batch A?',
    '10 oz lard, 2 lb tallow, 20 of castor, lye?',
    // More than a pound is no longer told in ounces by itself.
    '2 lb lard, 10 oz coconut, 20 of castor, lye?',
  ])('but it is asked where that is not plain: %s', question => {
    expect(readOr(question)).toBeInstanceOf(Refusal);
  });
});
