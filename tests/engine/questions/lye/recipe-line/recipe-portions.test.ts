import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownOil } from '../../../../../src/engine/batch/oils/find-oil.ts';
import { parseOils } from '../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { gramsOf } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { Refusal } from '../../../../../src/engine/refusal.ts';
import * as english from '../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../src/words/es/index.ts';
import { englishWords, spanishWords } from '../../../text/spelling/common-lists.ts';
import { readInChat, refusalOf } from '../../read-in-chat.ts';

/** Grams of each oil, or the question that comes back. */
function oilsOf(question: string): Record<string, number> | string {
  try {
    const { given } = readInChat(question);
    const { shares, totalGrams = 0 } = parseOils(given.oils ?? '');
    const all = given.size === undefined ? totalGrams : gramsOf(given.size);
    return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * all)]));
  } catch (error) {
    if (error instanceof Refusal) return error.id;
    throw error;
  }
}
const grams = fc.integer({ min: 10, max: 90 }).map(tens => tens * 12);
/** Everyday words of lists that are not the reader's own: SCOWL sizes 10 to 35 and the 4,000 commonest Spanish ones. */
const everyday = fc.constantFrom(...englishWords([10, 20, 35]), ...spanishWords(4000));

describe('who makes a part of a recipe, or more of it, is told the lye of that', () => {
  test.each([
    [
      'Recipe says 1 kg olive oil, 500 g coconut oil, 500 g palm oil. I make half. 5% superfat. Lye for my half?',
      { olive: 500, coconut: 250, palm: 250 },
    ],
    [
      'La receta dice 400 g de oliva, 200 g de coco y 200 g de palma; yo hago la mitad. Sobreengrasado 5%. ¿Soda?',
      { olive: 200, coconut: 100, palm: 100 },
    ],
    [
      'Cut this in half for me. 28 oz olive 16 oz coconut. And the lye for the half?',
      { olive: 397, coconut: 227 },
    ],
    [
      'quiero la mitad de esto: 1 kg de oliva, 400 g de coco. Dime la sosa para la mitad',
      { olive: 500, coconut: 200 },
    ],
    [
      'My third ever batch. 600 g tallow, 200 g coconut oil, superfat 5%. How much lye?',
      { tallow: 600, coconut: 200 },
    ],
    ['500 g de oliva, 200 g de coco. La clase es en media hora. sosa al 5?', { olive: 500, coconut: 200 }],
  ])('%s', (question, oils) => expect(oilsOf(question)).toEqual(oils));

  const MAKES = ['I make', 'we are making', 'I only do', 'I want to make', "I'll do", 'we want'] as const;
  const HACE = ['hago', 'yo hago', 'queremos hacer', 'voy a hacer', 'haremos solo'] as const;
  const MULTIPLES = [
    ['half', 'la mitad', 1 / 2],
    ['a third', 'un tercio', 1 / 3],
    ['a quarter of it', 'la cuarta parte', 1 / 4],
    ['two thirds of the recipe', 'dos tercios de la receta', 2 / 3],
    ['three quarters', 'tres cuartos', 3 / 4],
    ['double', 'el doble', 2],
    ['triple', 'el triple', 3],
  ] as const;
  test('in every wording, and in both languages alike', () => {
    fc.assert(
      fc.property(
        grams,
        grams,
        fc.constantFrom(...MAKES),
        fc.constantFrom(...HACE),
        fc.constantFrom(...MULTIPLES),
        (olive, coconut, makes, hace, [part, parte, times]) => {
          const want = { olive: Math.round(olive * times), coconut: Math.round(coconut * times) };
          expect(oilsOf(`${olive} g olive, ${coconut} g coconut. ${makes} ${part}. How much lye?`)).toEqual(
            want,
          );
          expect(
            oilsOf(`${olive} g de oliva y ${coconut} g de coco. ${hace} ${parte}. ¿Cuánta sosa?`),
          ).toEqual(want);
        },
      ),
    );
  });

  test('a part of which it is not plain whose it is asks, whatever stands behind it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('Half', 'a third', 'twice', 'double', 'la mitad', 'un tercio', 'el doble'),
        everyday.filter(
          word =>
            !/^(?:hour|hours|hora|horas|past|asleep|way|dozen|day|century|dia|noche|mes|ano|siglo|mundo|bath|shower|term|tarde|docena)$/u.test(
              word,
            ),
        ),
        (part, word) => {
          const whole = oilsOf(`500 g olive, 200 g coconut. ${part} ${word}. How much lye?`);
          expect(whole).not.toEqual({ olive: 500, coconut: 200 });
        },
      ),
      { numRuns: 150 },
    );
  });

  test.each([
    '500 g olive, 500 g coconut. I make 25% of it. Lye?',
    '1 kg oliva, 500 g coco. Hago un 50% de eso. ¿sosa?',
  ])('a percent of the recipe is no superfat: %s', question =>
    expect(oilsOf(question)).toEqual(expect.any(String)),
  );

  test('acid or water that was told is not left as it was beside oils that are scaled', () => {
    expect(refusalOf('500 g olive, 200 g coconut, 20 g citric acid, double this, lye?').id).toBe(
      'recipe-scaled',
    );
    expect(refusalOf('1 kg olive, 500 g coconut, 300 g water, I make half, lye?').id).toBe('recipe-scaled');
  });

  test.each([
    'lard 30 oz coconut 10 oz. last time i done it w/o the coconut and it was fine. lye & water for this one, sf at 5',
    '500 g olive, 200 g coconut. My sister makes hers without the coconut. lye?',
    '500 g olive, 200 g coconut. Some people make it without coconut. lye?',
    '500 g olive, 200 g coconut. Could I make it without the coconut? lye?',
    '500 g de oliva, 200 g de coco. Mi hermana lo hace sin coco. ¿sosa?',
    '500 g de oliva y 200 g de coco. Antes lo hacía sin coco. ¿sosa?',
  ])('what others do, or was done once, takes no oil away: %s', question =>
    expect(oilsOf(question)).toEqual(expect.any(String)),
  );
});

describe('an oil that is told by another’s weight', () => {
  test.each([
    [
      '300 g each of olive oil and coconut oil, and as much palm as those two together. 5% superfat, lye?',
      { olive: 300, coconut: 300, palm: 600 },
    ],
    [
      '400 g of olive oil, the same of lard, and half as much coconut oil as lard. Superfat 5%. Lye?',
      { olive: 400, lard: 400, coconut: 200 },
    ],
    [
      '400 g de coco, 400 g de oliva y otro tanto de palma. ¿Cuánta soda?',
      { coconut: 400, olive: 400, palm: 400 },
    ],
    [
      '300 g oliva, 200 g coco y tanta palma como los dos juntos, sosa',
      { olive: 300, coconut: 200, palm: 500 },
    ],
    ['600 g oliva y la mitad de coco que de oliva. sosa?', { olive: 600, coconut: 300 }],
    ['450 g olive oil, and as much again of rapeseed oil, lye?', { olive: 450, canola: 450 }],
  ])('has that weight: %s', (question, oils) => expect(oilsOf(question)).toEqual(oils));

  test.each([
    '400 g olive, 200 g coconut and the same of palm, lye?',
    '400 g olive, as much lard as you like, lye?',
    '400 g de manteca de cerdo, otro tanto de aceite de oliva y la mitad de eso de coco. ¿sosa?',
    '400 g olive, 100 g castor, as much palm as those three together, lye?',
    '400 g olive, not as much lard as olive, lye?',
  ])('is asked for where it may be of two: %s', question =>
    expect(oilsOf(question)).toEqual(expect.any(String)),
  );

  test('never changes the weights it is told by', () => {
    fc.assert(
      fc.property(
        grams,
        grams,
        fc.constantFrom(['as much', 'tanta', 1], ['twice as much', 'el doble de', 2], [
          'half as much',
          'la mitad de',
          0.5,
        ] as const),
        (olive, coconut, [much, tanta, times]) => {
          const want = { olive, coconut, palm: Math.round(Number(times) * coconut) };
          expect(oilsOf(`${olive} g olive, ${coconut} g coconut, ${much} palm as coconut, lye?`)).toEqual(
            want,
          );
          expect(
            oilsOf(
              `${olive} g oliva, ${coconut} g coco y ${tanta} palma ${times === 1 ? 'como' : 'que'} coco, ¿sosa?`,
            ),
          ).toEqual(want);
        },
      ),
    );
  });
});

describe('an oil that is taken in the place of another has its weight', () => {
  test.each([
    [
      'receta 500 oliva 300 palma 200 coco pero paso de la palma por ética, en su lugar karité, los mismos gramos. la sosa al 6%',
      { olive: 500, shea: 300, coconut: 200 },
    ],
    [
      'recipe: 500 g olive, 300 g palm, 200 g coconut. No palm, in its place lard. lye?',
      { olive: 500, lard: 300, coconut: 200 },
    ],
    [
      'recipe: 500 g olive, 300 g palm, 200 g coconut. No palm, in its place 250 g lard. lye?',
      { olive: 500, lard: 250, coconut: 200 },
    ],
    ['instead of 300 g coconut I used 300 g castor with 700 g olive, lye?', { castor: 300, olive: 700 }],
  ])('%s', (question, oils) => expect(oilsOf(question)).toEqual(oils));
});

describe('what is no name of an oil is offered none', () => {
  test.each([
    [
      'Masterbatch is 60% olive and 40% coconut by weight. I take 1500 g of it and add 100 g castor oil. 5% superfat. Lye?',
      'masterbatch',
    ],
    ['Eché 800 g de oliva y devolví 200 g a la botella. También 300 g de coco. ¿Cuánta sosa?', 'devolvi'],
  ])('%s', (question, text) => {
    const refusal = refusalOf(question);
    expect(refusal.id).toBe('recipe-words');
    expect(refusal.values).toEqual({ text });
    expect(english.refusals['recipe-words']({ text })).toContain(`I cannot tell what “${text}” does`);
    expect(spanish.refusals['recipe-words']({ text })).toContain(`No sé qué cambia «${text}»`);
  });
});

describe('every weight has its place', () => {
  /** Words that tell of all the oils, beside the word for any oil. */
  const OF_ALL =
    /^(?:total|totals?|all|whole|combined|mixed|weight|worth|other|more|todo|toda|otro|mas|junto|hay|i|we|so|please|but|pero|how|what|cuanto|cuanta|para|a|an|the|my|our|own|of|some|about|like|roughly|exactly|just|only|pure|solid|good|is|are|was|were|es|son|era|eran|de|del|el|la|los|las|mi|mis|puro|pura|puros|puras|to|it|as|in|con|lahat|ng|po|at)$/u;
  test('a weight of an oil whose name is not known is never dropped, even where it is the sum of the others', () => {
    fc.assert(
      fc.property(everyday, grams, grams, fc.boolean(), (word, olive, coconut, isSum) => {
        fc.pre(!OF_ALL.test(word) && knownOil(`${word} oil`) === undefined && knownOil(word) === undefined);
        const strange = isSum ? olive + coconut : olive + coconut + 84;
        const told = oilsOf(
          `${strange} g of ${word} oil, ${olive} g olive oil, ${coconut} g coconut oil. Lye?`,
        );
        expect(told).not.toEqual({ olive, coconut });
      }),
      { numRuns: 150 },
    );
  });

  test.each([
    '500 g of pal oil, 300 g of olive oil, 200 g of coconut oil, 5% superfat. Lye?',
    '500 g de aceite pal, 300 g oliva, 200 g coco, ¿sosa?',
    '300 g olive, 200 g coconut, 500 g of my pal, lye?',
  ])('%s', question => expect(oilsOf(question)).toEqual(expect.any(String)));

  test('the weight of the oil behind a milk is not taken for the milk’s', () => {
    expect(oilsOf('Buttermilk for the liquid, 600 g olive oil, 200 g palm oil. Lye?')).toEqual({
      olive: 600,
      palm: 200,
    });
  });
});

describe('oils in two vessels are of two pots', () => {
  test.each([
    '500 g olive oil is in the big bowl, 300 g coconut oil in the small bowl. The small bowl is for the biscuits. Superfat 5%, lye for the big bowl?',
    '500 g de oliva en la olla grande y 300 g de coco en la olla chica, ¿sosa para la grande?',
    '500 g olive at home, 300 g coconut at school. lye for the one at school?',
    '500 g olive in pot A, 300 g coconut in pot B. lye for A',
  ])('%s', question => expect(oilsOf(question)).toEqual(expect.any(String)));

  const WHICH = [
    'big',
    'small',
    'blue',
    'red',
    'steel',
    'glass',
    'first',
    'second',
    'left',
    'right',
  ] as const;
  const VESSELS = ['bowl', 'pot', 'pan', 'jug', 'bucket', 'tub'] as const;
  test('whatever tells them apart', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...WHICH),
        fc.constantFrom(...VESSELS),
        fc.constantFrom(...WHICH),
        fc.constantFrom(...VESSELS),
        (one, vessel, other, another) => {
          fc.pre(one !== other || vessel !== another);
          const told = oilsOf(
            `500 g olive oil in the ${one} ${vessel}, 300 g coconut oil in the ${other} ${another}, how much lye?`,
          );
          expect(told).toEqual(expect.any(String));
        },
      ),
    );
  });

  test.each([
    [
      'I have 500 g olive oil, 250 g coconut oil and 50 g castor oil in the pot. How much lye?',
      { olive: 500, coconut: 250, castor: 50 },
    ],
    [
      '500 g olive in the pot and 300 g coconut in the pot, water 200 g in the jug, lye?',
      { olive: 500, coconut: 300 },
    ],
    ['500 g olive in the big pot, 300 g coconut in the pot, lye?', { olive: 500, coconut: 300 }],
  ])('one pot needs no question: %s', (question, oils) => expect(oilsOf(question)).toEqual(oils));
});

describe('a second superfat', () => {
  test.each([
    [
      '1000 g olive oil, 5% superfat and then a lye discount of 5% also, on top. How much lye?',
      '5%',
      '5% lye discount',
    ],
    ['1 kg olive, 5% superfat, lye discount 5 too, how much lye?', '5%', '5% lye discount'],
    ['1000 g olive oil, lye discount 5% plus 3% superfat. lye?', '3%', '5% lye discount'],
    ['1 kg de oliva, 5% de sobreengrasado y descuento de sosa del 8%. ¿sosa?', '5%', '8% descuento de sosa'],
  ])('is asked for: %s', (question, one, other) => {
    const refusal = refusalOf(question) as Refusal<'superfat-twice'>;
    expect(refusal.id).toBe('superfat-twice');
    expect(refusal.values).toEqual({ one, other });
    expect(english.refusals['superfat-twice'](refusal.values)).toBe(
      `Two superfats stand there: “${one}” and “${other}”. A discount of lye is a superfat by another name: write the one that counts, or their sum, as “superfat …%”.`,
    );
    expect(spanish.refusals['superfat-twice'](refusal.values)).toBe(
      `Hay dos sobreengrasados: «${one}» y «${other}». Un descuento de sosa es lo mismo con otro nombre: escribe el que vale, o la suma, como «sobreengrasado …%».`,
    );
  });

  test('the same in other words is one', () => {
    expect(
      readInChat('1000 g olive oil, 5% superfat, i.e. a lye discount of 5%. How much lye?').given.superfat,
    ).toBe(5);
  });
});

describe('a hint names no weight that is in doubt', () => {
  test('where an oil stands twice', () => {
    const refusal = refusalOf(
      'lye 128 g, olive 1 kg. oh and I only put in 800 g of the olive',
    ) as Refusal<'oil-told-twice'>;
    const [en, es] = [english, spanish].map(words => words.refusals['oil-told-twice'](refusal.values));
    expect(en).toContain('all of it in one weight: “… g olive”.');
    expect(es).toContain('todo en un peso: «… g olive».');
  });
});

describe('milk in the place of all the water stays in the jug', () => {
  test.each([
    'I use goat milk in place of all the water. 450 g olive oil, 350 g coconut oil, superfat 5%. How much NaOH do I need?',
    'goat milk instead of water, 450 g olive oil, 350 g coconut oil. Lye?',
    'Con leche de cabra congelada en vez de agua: 450 g de oliva, 350 g de coco. ¿Cuánta sosa?',
    'Uso leche de cabra en lugar de agua: 450 g de oliva, 350 g de coco. ¿Cuánta sosa?',
  ])('%s', question => {
    expect(readInChat(question).given.liquid).toBe('goat milk');
    expect(oilsOf(question)).toEqual({ olive: 450, coconut: 350 });
  });
  test('and is counted once where its weight is told too', () => {
    const { given } = readInChat(
      '400 g almond milk, 500 g olive oil, lye? The milk goes in instead of water.',
    );
    expect(given.liquid).toBeUndefined();
    expect(given.additives).toBe('almond milk 400 g');
  });
});

describe('harmless words that together tell of an oil elsewhere', () => {
  test.each([
    '500 g olive, 300 g coconut my mate has, lye?',
    '500 g olive and 300 g coconut I need to get, lye?',
    '500 g olive and 300 g coconut that I will get at the shop, lye?',
    '500 g olive and 300 g coconut which my pal has, lye?',
    '500 g olive, 300 g coconut I want, lye?',
    '500 g olive and 300 g coconut for sale, lye?',
    '500 g olive, 300 g coconut is needed, lye?',
    '500 g de oliva y 300 g de coco que tiene mi amiga, ¿sosa?',
    '500 g de oliva y 300 g de coco que me trae mi amiga, ¿sosa?',
    '500 g de oliva y 300 g de coco que necesito, ¿sosa?',
  ])('%s', question => expect(oilsOf(question)).toBe('oil-in-pot'));
  test('is asked for', () => {
    expect(refusalOf('500 g olive, 300 g coconut my mate has, lye?').values).toMatchObject({
      names: ['coconut'],
    });
  });

  test.each([
    ['illo cuánta sosa pa 1 kg de aceite de oliva', { olive: 1000 }],
    ['tío, 500 g de oliva y 300 g de coco, cuánta sosa', { olive: 500, coconut: 300 }],
    ['my buddy says 20 oz olive and 10 oz coconut, lye?', { olive: 567, coconut: 283 }],
    ['lye for 1kg olive oil on its own?', { olive: 1000 }],
    ['600 g olive, 150 g of my own tallow, how much lye', { olive: 600, tallow: 150 }],
    ['Tengo receta inglesa: 300 g oliva, 200 g coco, ¿sosa?', { olive: 300, coconut: 200 }],
    ['1.5 lb olive .5 lb coconut, lye?', { olive: 680, coconut: 227 }],
    ['aceite de palma rojo 600 g y de coco 300 g, cuanto de sosa', { palm: 600, coconut: 300 }],
    ['100% coconut bar, 24 oz coconut oil, 20% superfat, lye?', { coconut: 680 }],
    [
      'Is 142 g sodium hydroxide too much for cottonseed 600 g and palm 400 g? my classmate calculated it',
      { cottonseed: 600, palm: 400 },
    ],
    ['how much naoh for 500 g of coconut only, I heard the superfat has to be 20', { coconut: 500 }],
  ])('words that tell of none: %s', (question, oils) => expect(oilsOf(question)).toEqual(oils));
});
