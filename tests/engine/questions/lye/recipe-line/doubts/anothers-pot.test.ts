import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { Refusal } from '../../../../../../src/engine/refusal.ts';
import * as english from '../../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../../src/words/es/index.ts';
import { readInChat, refusalOf } from '../../../read-in-chat.ts';

/** Grams of each oil that is counted; undefined where something is asked back. */
function countedIn(question: string): Readonly<Record<string, number>> | undefined {
  try {
    const { oils } = readInChat(question).given;
    if (oils === undefined) return undefined;
    const { shares, totalGrams = 0 } = parseOils(oils);
    return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * totalGrams)]));
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

const grams = fc.integer({ min: 60, max: 900 });
const OWNERS_EN = [
  'my wife',
  'my neighbour',
  'my mother-in-law',
  'Gran',
  'Ana',
  'the lady next door',
  'Old Tom',
];
const OWNERS_ES = ['mi suegra', 'mi vecina', 'mi amiga', 'mi abuela', 'la profe', 'Ana', 'doña Lupe'];
const THEIRS_EN: readonly ((who: string, lard: number) => string)[] = [
  (who, lard) => `${who}'s batch has ${lard} g lard`,
  (who, lard) => `${who}'s pot: ${lard} g lard`,
  (who, lard) => `${who} makes hers with ${lard} g lard`,
  (who, lard) => `In ${who}'s pot there is ${lard} g of lard`,
];
const THEIRS_ES: readonly ((who: string, lard: number) => string)[] = [
  (who, lard) => `La tanda de ${who} lleva ${lard} g de manteca de cerdo`,
  (who, lard) => `La olla de ${who}: ${lard} g de manteca de cerdo`,
  (who, lard) => `${who} hace la suya con ${lard} g de manteca de cerdo`,
  (who, lard) => `La de ${who} va con ${lard} g de manteca de cerdo`,
];
const MINE_EN: readonly ((coconut: number) => string)[] = [
  coconut => `Mine, half of that lard and ${coconut} g coconut oil. How much lye for mine at 5%?`,
  coconut => `Mine has ${coconut} g coconut oil and 500 g olive oil. Lye at 5%?`,
  coconut => `The one I make takes ${coconut} g coconut oil and 500 g olive oil. Lye at 5%?`,
  coconut => `My pot has ${coconut} g coconut oil and 500 g olive oil. Lye at 5%?`,
];
const MINE_ES: readonly ((coconut: number) => string)[] = [
  coconut =>
    `La mía, la mitad de esa manteca y ${coconut} g de aceite de coco. ¿Cuánta soda para la mía, al 5%?`,
  coconut => `La mía, ${coconut} g de aceite de coco y 500 g de oliva. ¿Cuánta soda al 5%?`,
  coconut => `La que hago yo lleva ${coconut} g de aceite de coco y 500 g de oliva. ¿Cuánta soda al 5%?`,
  coconut => `Mi olla lleva ${coconut} g de aceite de coco y 500 g de oliva. ¿Cuánta soda al 5%?`,
];

describe('what goes into another’s pot is never counted into the asker’s', () => {
  // It had been given the lye of both, 2.1 times what the asker's takes.
  test('a mother-in-law’s lard, and half of it in the asker’s', () => {
    const { id, values } = refusalOf(
      'La tanda de mi suegra lleva 1 kg de manteca de cerdo. La mía, la mitad de esa manteca y 300 g de aceite de coco. Sobreengrasado 5%. ¿Cuánta soda para la mía?',
    );
    expect({ id, values }).toEqual({
      id: 'recipe-of-another',
      values: { text: 'la tanda de mi suegra lleva 1 kg de manteca de cerdo' },
    });
  });

  test.each([
    ['English', OWNERS_EN, THEIRS_EN, MINE_EN],
    ['Spanish', OWNERS_ES, THEIRS_ES, MINE_ES],
  ] as const)('whoever it is, and in whatever words, in %s', (_, owners, theirs, mine) =>
    fc.assert(
      fc.property(
        fc.constantFrom(...owners),
        fc.constantFrom(...theirs),
        fc.constantFrom(...mine),
        grams,
        grams,
        (who, told, own, lard, coconut) => {
          const question = `${told(who, lard)}. ${own(coconut)}`;
          const counted = countedIn(question);
          expect({ question, lard: counted?.lard ?? 0 }).toEqual({ question, lard: 0 });
        },
      ),
      { numRuns: 300 },
    ),
  );

  test.each([
    'Mine has 300 g coconut oil and 500 g olive oil. My wife’s pot has 400 g lard. Lye for mine at 5%?',
    'La mía lleva 300 g de coco y 500 g de oliva. La olla de mi mujer lleva 400 g de manteca de cerdo. ¿Soda para la mía?',
  ])('nor where it is told behind: %s', question => expect(countedIn(question)?.lard ?? 0).toBe(0));

  test.each([
    [
      'My gran’s recipe: 500 g olive, 200 g coconut. My pot is steel. Lye at 5%?',
      { olive: 500, coconut: 200 },
    ],
    [
      'Receta de mi abuela: 500 g de oliva y 200 g de coco. ¿Cuánta sosa para la mía, al 5%?',
      { olive: 500, coconut: 200 },
    ],
    ['500 g olive oil, 200 g coconut oil, all of it mine. Lye at 5%?', { olive: 500, coconut: 200 }],
    [
      'In my pot 500 g olive oil and 200 g coconut oil. My neighbour says hello. Lye at 5%?',
      { olive: 500, coconut: 200 },
    ],
  ])('one pot is one, whoever is named beside it: %s', (question, oils) => {
    expect(countedIn(question)).toEqual(oils);
  });

  test('is asked in one sentence, in either language', () => {
    const refusal = refusalOf(
      'My wife’s batch has 400 g lard. My pot has 300 g coconut oil and 500 g olive. Lye at 5%?',
    );
    expect(english.refusals['recipe-of-another'](refusal.values as never)).toBe(
      "Another pot is told beside yours (“my wife's batch has 400 g lard…”), and each needs a lye of its own. Write only what is or goes in the one that you ask for: “500 g olive, 200 g coconut, superfat 5%”.",
    );
    expect(spanish.refusals['recipe-of-another'](refusal.values as never)).toBe(
      "Junto a tu olla cuentas otra («my wife's batch has 400 g lard…»), y cada una lleva su propia sosa. Escribe solo lo que hay o va en la que preguntas: «500 g oliva, 200 g coco, sobreengrasado 5%».",
    );
  });
});
