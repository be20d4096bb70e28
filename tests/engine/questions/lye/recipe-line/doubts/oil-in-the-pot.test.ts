import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownOil } from '../../../../../../src/engine/batch/oils/find-oil.ts';
import { parseOils } from '../../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { gramsOf } from '../../../../../../src/engine/questions/lye/amounts/words.ts';
import { Refusal } from '../../../../../../src/engine/refusal.ts';
import * as english from '../../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../../src/words/es/index.ts';
import { englishWords, spanishWords } from '../../../../text/spelling/common-lists.ts';
import { readInChat } from '../../../read-in-chat.ts';

const oilsOf = (question: string): Record<string, number> => {
  const { given } = readInChat(question);
  const { shares, totalGrams = gramsOf(given.size ?? '') } = parseOils(given.oils ?? '');
  return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * totalGrams)]));
};
function answeredOr(question: string): Record<string, number> | string {
  try {
    return oilsOf(question);
  } catch (error) {
    if (error instanceof Refusal) return error.id;
    throw error;
  }
}

describe('an oil that a message says is not in the pot is never counted', () => {
  // Lured by a chemistry teacher who makes soap: each had been given lye for the oil that stays out.
  test.each([
    'I have olive 500 g, coconut 200 g and castor 50 g on the bench, but the castor stays in the cupboard this time, 5% superfat. How much lye?',
    "I'd planned 300 g palm but the shop was shut, so just 500 g olive oil and 250 g coconut oil. 5% superfat. Lye?",
    'I borrowed 200 g coconut oil from Siobhan and gave it back unused. Pot: 600 g olive oil, 150 g palm oil. 5% superfat, NaOH?',
    "500 g olive oil, 180 g coconut oil and 40 g of castor that I'm only thinking of adding. 5% superfat, lye?",
    'All of my 500 g olive oil goes in, none of my 300 g coconut oil, and 250 g palm oil. 5% superfat. Lye?',
    'Ayer hice uno de 400 g de palma. Hoy llevo 700 g de oliva y 200 g de coco, sobreengrasado 6%. ¿Cuánta sosa para el de hoy?',
    '500 g de oliva y 250 g de coco; la manteca de karité, 40 g, la echo después de cocinar. Sobregrasa 0% sobre lo primero. ¿Cuánta sosa?',
    'Pensaba echar 200 g de aguacate, pero se lo llevó mi hermano. Quedan 500 g de oliva y 200 g de coco en la olla. Sobregrasa 5%. ¿Sosa?',
    // Of the same class, in words that no list here has.
    '500 g olive and 200 g coconut that my flatmate ate, lye?',
    '500 g de oliva y 200 g de coco que el gato volcó, cuánta sosa',
    '700 g olive, 300 g coconut for my hair, lye?',
    'lye for 700 g olive and 300 g coconut that arrives on friday',
  ])('%s', question => {
    expect(answeredOr(question)).toEqual(expect.any(String));
  });

  /** Everyday words of lists that are not the reader's own: SCOWL sizes 10 to 35 and the 4,000 commonest Spanish ones. */
  const everyday = fc.constantFrom(...englishWords([10, 20, 35]), ...spanishWords(4000));
  const ABSENT = [
    'which I sold',
    'that got binned',
    'that he nicked',
    'I shelved',
    'que regalé',
    'que vendí',
    'que no cupo',
    'which leaked',
    'that melted away',
  ] as const;
  test('whatever is said of it, by whatever words around', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ABSENT),
        fc.integer({ min: 50, max: 900 }),
        fc.integer({ min: 50, max: 900 }),
        everyday,
        (absent, olive, coconut, word) => {
          expect(() =>
            readInChat(`${olive} g olive and ${coconut} g coconut ${absent} ${word}, how much lye`),
          ).toThrow(Refusal);
        },
      ),
    );
  });

  test('a strange word in the clause of an oil asks, a harmless one gives the right sum', () => {
    let answered = 0;
    fc.assert(
      fc.property(
        fc.constantFrom('from the butcher', 'for my sister', 'de mi tía', 'virgin', 'melted', 'strained', ''),
        everyday,
        fc.integer({ min: 50, max: 900 }),
        (harmless, word, grams) => {
          const plain = answeredOr(`lye for ${grams} g lard ${harmless} and 200 g olive`);
          expect(plain).toEqual({ lard: grams, olive: 200 });
          const strange = answeredOr(`lye for ${grams} g lard ${harmless} ${word} and 200 g olive`);
          if (typeof strange !== 'string') answered += 1;
          expect([plain, expect.any(String)]).toContainEqual(strange);
        },
      ),
      { numRuns: 150 },
    );
    // Of the commonest words most tell more of an oil than that it is in.
    expect(answered).toBeLessThan(60);
  });

  test.each([
    ["Lard from t'butcher, 700g, and 300g coconut. Lye at 6% superfat", { lard: 700, coconut: 300 }],
    ['check this before I mix: 500 g olive, 250 g coconut, how much lye', { olive: 500, coconut: 250 }],
    [
      'mi suegra me regaló 2 kilos de sebo y tengo 500 g de coco, cuánta sosa',
      { tallow: 2000, coconut: 500 },
    ],
    ['900 g olive oil and 100 g castor oil for my sister in law, lye please', { olive: 900, castor: 100 }],
    [
      'My sister’s recipe has 300 g palm oil. Mine has 600 g olive oil and 200 g coconut oil, 5% superfat. How much NaOH do I need for mine?',
      { olive: 600, coconut: 200 },
    ],
    [
      'igual que el de mayo pero sin la cera: manteca 700, coco 250, cera de abeja 30. cuanta sosa',
      { lard: 700, coconut: 250 },
    ],
  ])('where it comes from or whom it is for keeps no oil out: %s', (question, oils) => {
    expect(answeredOr(question)).toEqual(oils);
  });

  test('the question names the oil and the words that leave it open', () => {
    const [refusal] = ['lye for 500 g olive and 200 g coconut that the dog ate'].map(question => {
      try {
        readInChat(question);
      } catch (error) {
        return error as Refusal<'oil-in-pot'>;
      }
      throw new Error('answered');
    });
    expect(refusal!.id).toBe('oil-in-pot');
    expect(english.refusals['oil-in-pot'](refusal!.values)).toBe(
      'Is “coconut” in the pot, all of it? I cannot tell from “dog ate”. Write only what is or goes in: “500 g olive, 200 g coconut, superfat 5%”.',
    );
    expect(spanish.refusals['oil-in-pot'](refusal!.values)).toBe(
      '¿Está «coconut» en la olla, todo? No lo sé por «dog ate». Escribe solo lo que hay o va dentro: «500 g oliva, 200 g coco, sobreengrasado 5%».',
    );
  });
});

describe('a name that is not an oil’s is read as none', () => {
  /** Plants, spices, foods and fats that lie near an oil's name, or whose oil is a scent (from memory). */
  const OTHERS =
    'cedro cedar canela cinnamon cassia anis clavo salvia pino pine romero tomillo hinojo comino lavanda sandalo vetiver neroli jazmin geranio eucalipto palmarosa incienso mirra nuez albahaca enebro camelia nopal higo pavo turkey yak goat ciervo deer bear oso horse caballo salmon coquito corozo cohune coyol seje macauba copra mowrah mahua karanja pongam tung amapola castana arandano escaramujo'.split(
      ' ',
    );
  test.each(OTHERS.filter(name => knownOil(name) === undefined && knownOil(`${name} oil`) === undefined))(
    '%s',
    name => {
      expect(answeredOr(`how much lye for 500 g ${name} oil and 500 g olive oil`)).toEqual(
        expect.any(String),
      );
      expect(answeredOr(`sosa para 500 g de aceite de ${name} y 500 g de oliva`)).toEqual(expect.any(String));
    },
  );

  test('bare "manteca" is told as the lard that it was read as', () => {
    const told = readInChat('500 g de manteca, 200 g de coco, sobregrasa 5%. ¿Cuánta sosa?');
    expect(told.respelt).toEqual([{ typed: 'manteca', read: 'manteca de cerdo' }]);
    expect(spanish.lyeQuestions.respelt({ respelt: told.respelt! })).toContain('«manteca»');
    expect(readInChat('500 g de manteca de cacao, 200 g de coco. ¿Cuánta sosa?').respelt).toEqual([]);
  });
});

describe('what turns the whole recipe is asked for', () => {
  // Found by a nurse of a burns unit who had not seen what reads them; each with its twin in the other language.
  test.each([
    '500 g de oliva, 300 g de coco y 200 g de sebo, sobreengrasado 5%... no, el doble de sobreengrasado. ¿Soda?',
    '500 g olive, 300 g coconut, 200 g tallow, superfat 5%... no, twice the superfat. Lye?',
    'Mi masa pesa 1000 g en total contando 250 g de agua. Los aceites son 60% oliva y 40% coco. Sobreengrasado 5%',
    'My batter weighs 1000 g in all counting 250 g of water. The oils are 60% olive and 40% coconut. Superfat 5%',
    '¿Están bien 150 g de soda para 1 kg de oliva? Ojo que de ese kilo dejé un cuarto en la botella.',
    'Is 150 g lye right for 1 kg olive? I left a quarter of it in the bottle.',
    'Double this for me but not the castor: 300 g olive, 200 g coconut, 40 g castor. 5% superfat',
    'El doble de esto pero no el ricino: 300 g de oliva, 200 g de coco, 40 g de ricino. Sobreengrasado 5%',
  ])('%s', text => {
    expect(typeof answeredOr(text)).toBe('string');
  });

  test('a recipe that is doubled whole, or has twice the water, is answered', () => {
    expect(
      readInChat('Double this for me: 300 g olive, 200 g coconut, 40 g castor. 5% superfat').given.size,
    ).toBe('1080 g oils');
    expect(answeredOr('600 g olive and 300 g coconut, water twice the lye, superfat 5')).toEqual({
      olive: 600,
      coconut: 300,
    });
  });
});

test('the oil of which it is said that it stays out is the one that is asked about', () => {
  const asked = (question: string) => {
    try {
      return oilsOf(question);
    } catch (error) {
      return error instanceof Refusal ? error.values : error;
    }
  };
  expect(
    asked('500 g olive, 250 g coconut, 50 g castor, the castor stays in the cupboard, lye?'),
  ).toMatchObject({
    names: ['castor'],
    text: 'cupboard stays',
    ways: [
      { without: [], line: '500 g olive, 250 g coconut, 50 g castor' },
      { without: ['castor'], line: '500 g olive, 250 g coconut' },
    ],
  });
});
