import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownOil } from '../../../../../../src/engine/batch/oils/find-oil.ts';
import { parseOils } from '../../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { checkLye } from '../../../../../../src/engine/questions/lye/sums/check.ts';
import { Refusal } from '../../../../../../src/engine/refusal.ts';
import * as english from '../../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../../src/words/es/index.ts';
import { readInChat, refusalOf } from '../../../read-in-chat.ts';

/** Grams, or percents, of each oil that a line is read as. */
function oilsOf(question: string) {
  const { given } = readInChat(question);
  const { shares, totalGrams = 100 } = parseOils(given.oils ?? '');
  return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * totalGrams)]));
}

describe('an oil that has two amounts is asked for, and never counted twice', () => {
  // Found by somebody who teaches at a poison line: both weights had been added, and a caustic pot was called mild.
  test.each([
    'lye 128 g, olive 1 kg. oh and I only put in 800 g of the olive',
    '128 g de sosa, 1 kg de oliva. ah, y solo puse 800 g de la oliva',
    '600 olive 400 coconut 148 g lye. I only used 300 g of the coconut. ok?',
    '600 g olive, 400 g coconut, 148 g lye but there was just 300 g coconut in the pot',
    'recipe calls for 500 g lard, I have 450 g lard, and 300 g coconut, lye 118 g, ok?',
    'should have been 1000 g olive, I put 700 g olive, lye 128 g',
    'the book says 800 g olive, I weighed 600 g olive, lye 103 g, is that safe',
    'necesitaba 1000 g de oliva y solo tenía 800 g de oliva, sosa 128 g, ¿bien?',
    'debían ser 1000 g de oliva, puse 700 g de oliva, sosa 128 g',
    'receta: 800 g oliva 200 g coco. tengo 600 g de oliva y 200 g de coco. cuánta sosa?',
    'I have 2 kg olive in the cupboard, the batch is 500 g olive, lye?',
    'my sister uses 1 kg lard, I use 600 g lard and 200 g coconut, lye please',
  ])('%s', question => {
    expect(refusalOf(question).id).toBe('oil-told-twice');
  });

  const oil = fc.constantFrom('olive', 'coconut', 'lard', 'girasol', 'manteca de cacao', 'castor');
  const grams = fc.integer({ min: 100, max: 2000 });
  test('whatever stands between the two', () => {
    fc.assert(
      fc.property(
        oil,
        grams,
        grams,
        fc.constantFrom(' and ', ', ', '. then ', '; also ', ', luego ', '. later I added '),
        (name, one, other, between) => {
          fc.pre(one !== other);
          expect(() => readInChat(`lye for ${one} g ${name}${between}${other} g ${name}`)).toThrow(Refusal);
        },
      ),
    );
  });
});

describe('what was planned is not what is in the pot', () => {
  test.each([
    'oops I poured 300 g of canola where the recipe said coconut. Recipe was 300 coconut 700 olive with 141 g lye',
    'the recipe said 400 g coconut but I poured 400 g canola, 600 olive, lye 150 g, safe?',
    'la receta decía 400 g de coco pero puse 400 g de girasol, 600 de oliva, sosa 150 g, ¿es seguro?',
    'planned 300 g coconut, used 300 g shea, 700 g olive, lye 141 g, ok?',
    'how much lye for 700 g olive, I was going to add 300 g coconut but did not',
    'cuánta sosa para 700 g de oliva, iba a poner 300 g de coco pero no',
    'my sister uses 1 kg lard, I use 600 g olive and 200 g coconut, lye please',
    '600 g olive and my friend has 300 g coconut, lye?',
  ])('%s', question => {
    expect(['recipe-planned', 'recipe-corrected']).toContain(refusalOf(question).id);
  });

  test.each([
    ['Recipe: 500 g lard, 200 g coconut. lye at 5%?', { lard: 500, coconut: 200 }],
    ['la receta dice 500 de oliva y 200 de coco, cuánta sosa', { olive: 500, coconut: 200 }],
    ['I put 500 g olive and 200 g coconut in, how much lye', { olive: 500, coconut: 200 }],
    ['el libro dice 800 g de oliva, yo pesé 600 g de oliva, sosa 103 g, ¿es seguro?', { olive: 600 }],
  ])('one voice alone is read: %s', (question, oils) => {
    expect(oilsOf(question)).toEqual(oils);
  });
});

describe('an oil that may not be in the pot is asked for', () => {
  test.each([
    "olive 700 g, coconut 300 g, but I didn't add the coconut, lye?",
    '700 g olive 300 g coconut, I never put the coconut in, how much lye',
    '700 g de oliva y 300 de coco, el coco no lo puse, cuánta sosa',
    "olive 700 g coconut 300 g, coconut didn't go in. lye 130 g ok?",
    'olive 700 g coconut 300 g. I left out the coconut. lye?',
    "I didn't use the 300 g coconut, just 700 g olive. lye?",
    'olive 700, coconut 300, leave the coconut, lye?',
    '700 g olive. the 300 g coconut is not in it. lye?',
    '600 g olive, 300 g coconut went on the floor, lye?',
    '600 g oliva, 300 g de coco se me cayeron al suelo, cuanta sosa',
    '600 g olive 300 g coconut, someone took the coconut. lye?',
    '1 kg lard of which 200 g is coconut, lye?',
    '800 g olive including 200 g coconut, lye?',
    '700 g olive 300 g coconut less 50 g of the coconut, lye',
    '2 x 500 g olive, 200 g coconut lye',
    'olive 300 g, coconut 300 g, 600 g yak. lye',
    'how much lye for 500 g olive and 500 g moonbeam',
    'cuánta sosa para 500 g de oliva y 500 g de ambrosía',
    'how much lye for 700 g olive 300 g coconut, the coconut is optional',
    'how much lye for 700 g olive, 200 g coconut is for next week',
    'cuánta sosa para 700 g de oliva, 200 g de coco son para la otra semana',
    '700 g olive or 700 g canola, 300 g coconut, how much lye',
    '700 g de oliva o 700 g de girasol, 300 g de coco, cuánta sosa',
    'receta A 700 oliva 300 coco; receta B 1000 manteca de cerdo; al 5% las dos',
    '128 g de sosa para 1 kg de oliva y luego eché otra cucharada de sosa',
    'olive 500 coconut 300 babassu 100, swap coconut for babassu, lye?',
    // By a pharmacist who was asked to lure it: each of these had been given too much lye.
    "500 g olive oil, 300 g coconut oil, 200 g lard, 5% superfat. Actually I'm keeping the lard for pastry, only the other two are in. NaOH?",
    '600 g tallow, 200 g coconut oil, superfat 5%. Oh and I scooped out a quarter of the tallow because it overflowed. Lye?',
    "500 g olive oil, 300 g coconut oil at 5% superfat, and once it's at trace tomorrow's bowl gets 200 g lard. How much lye for today's bowl?",
    '900 g coconut oil.... nope sorry typo, 90. And 900 g olive oil. 5% superfat, lye?',
    "Olive 500, coconut 250, castor 50, all grams, 5% superfat. NaOH? Ignore the castor, it's in my hair mask.",
    'Oliva y coco, 300 y 700 g respectivamente. Perdón, al revés. Sobreengrasado 5 %. ¿Sosa?',
    '500 g de oliva y 300 g de coco es ya el doble de mi receta. ¿Cuánta sosa para la receta sencilla al 5%?',
    '¿Cuánta potasa para 1 kg de jabón de oliva, 5%?',
    'Mitad y mitad de sosa y potasa, 1 kg de oliva, sobreengrasado 5%. ¿Cuánto de cada?',
  ])('%s', question => {
    expect(() => refusalOf(question)).not.toThrow();
  });

  test.each([
    ['700 g de oliva y 300 de coco, pero no eché el coco, cuánta sosa', { olive: 700 }],
    ["700 g olive, haven't got the 300 g coconut yet, lye?", { olive: 700 }],
    [
      'he sustituido 200 g de coco por 200 de babasú en la de oliva 700, coco 200, ricino 100. Sosa nueva?',
      { babassu: 200, olive: 700, castor: 100 },
    ],
    [
      'I swapped the palm for tallow in my recipe (was 400 palm, 400 olive, 200 coconut)',
      { olive: 400, coconut: 200, tallow: 400 },
    ],
  ])('where it is plain, it is left away or taken instead: %s', (question, oils) => {
    expect(oilsOf(question)).toEqual(oils);
  });
});

describe('the sentence that comes back', () => {
  test.each([
    [
      'lye for 1 kg olive and 800 g olive',
      'oil-told-twice',
      '“olive” stands twice: 1 kg and 800 g.',
      '«olive» sale dos veces: 1 kg y 800 g.',
    ],
    [
      'planned 300 g coconut, used 300 g shea, 700 g olive, lye 141 g, ok?',
      'recipe-planned',
      'What was to go in stands beside what did (“planned 300 g coconut',
      'Lo que iba a llevar está junto a lo que lleva («planned 300 g coconut',
    ],
    [
      'pal, 400 g coconut, 700 olive, oops I meant 300 g lard, how much lye',
      'recipe-corrected',
      'You put something right on the way (“oops”).',
      'Has corregido algo por el camino («oops»).',
    ],
    [
      'double this: 350 olive 150 coconut 72g lye 190 water',
      'recipe-scaled',
      '“double”: multiply every oil, the lye and the water',
      '«double»: multiplica cada aceite, la sosa y el agua',
    ],
    [
      // "Multiply every oil" would have been told of it, and only the coconut was less.
      '500 g olive oil, 300 g coconut oil, 100 g castor oil. A third of the coconut went on the booth floor. Lye at 5%?',
      'oil-shared',
      '“third”: of one oil alone. Write each oil with the weight that is or goes in the pot',
      '«third»: de un solo aceite. Escribe cada aceite con el peso que hay o va en la olla',
    ],
    [
      '400 g de sebo de res, lo mismo de aceite de oliva y la mitad de eso de aceite de coco. ¿Sosa al 5%?',
      'oil-shared',
      '“mitad”: of one oil alone.',
      '«mitad»: de un solo aceite.',
    ],
    [
      'parce 500 g olive, 200 g coconut, the fractionated one, lye?',
      'recipe-words',
      'I cannot tell what “fractionated one” does to the recipe.',
      'No sé qué cambia «fractionated one» en la receta.',
    ],
  ] as const)('%s', (question, id, inEnglish, inSpanish) => {
    const refusal = refusalOf(question);
    expect(refusal.id).toBe(id);
    expect(english.refusals[id](refusal.values as never)).toContain(inEnglish);
    expect(spanish.refusals[id](refusal.values as never)).toContain(inSpanish);
  });
});

describe('what is no oil', () => {
  test.each([
    ['between 450 and 500 g of lard, coconut 200. lye?', 'between'],
    ['1 kg olive minus 150 g I kept back, 128 g lye ok?', 'minus'],
    ['700 g oliva 300 g coco, sosa entre 140 y 150 g, ¿bien?', 'entre'],
  ])('is not taken for the name of one: %s', (question, word) => {
    const refusal = refusalOf(question);
    expect(refusal.id).toBe('recipe-words');
    expect((refusal.values as { text: string }).text).toContain(word);
  });

  test('the fat of a milk makes a bar milder than told, never the verdict', () => {
    const lye = { alkali: 'NaOH', grams: 90, purity: 1 } as const;
    const plain = checkLye(lye, { oils: '700 g olive' });
    const withMilk = checkLye(lye, { oils: '700 g olive', additives: 'coconut milk 300 g' });
    expect(withMilk.usualGrams).toBeCloseTo(plain.usualGrams, 9);
    expect(withMilk.superfat.typical).toBeCloseTo(plain.superfat.typical, 9);
    expect(withMilk.superfat.high).toBeGreaterThan(plain.superfat.high + 5);
  });
});

describe('an oil spelt one slip amiss', () => {
  test.each([
    ['olve oil 640 cocnut 160 whats teh lye', { olive: 640, coconut: 160 }, ['olve oil', 'cocnut']],
    [
      '32 oz lard 12 oz coocnut 4 oz castro oil 5% SF lye',
      { lard: 907, coconut: 340, castor: 113 },
      ['coocnut', 'castro oil'],
    ],
    [
      'cuanta sosa para 600 g de aseite de oliba, 300 de coco y 100 de manteca de cazao',
      { olive: 600, coconut: 300, 'cocoa-butter': 100 },
      ['aceite de oliba', 'manteca de cazao'],
    ],
    [
      'lye for 450g rapseed, 300g coconut and 250g shea buter',
      { canola: 450, coconut: 300, shea: 250 },
      ['rapseed', 'shea buter'],
    ],
  ])('is read as what it can only be, and told: %s', (question, oils, typed) => {
    expect(oilsOf(question)).toEqual(oils);
    expect(readInChat(question).respelt?.map(one => one.typed)).toEqual(typed);
  });

  test.each([
    // Cocoa, or coconut; two letters off.
    'lye for 500 g olive and 200 g cocao',
    'lye for 500 g sunflaur and 200 g coconut',
  ])('is asked where it may be two, or is further off: %s', question => {
    expect(() => readInChat(question)).toThrow(Refusal);
  });

  // Fats that people make soap of in places and that the list of oils does not have (from memory).
  const elsewhere =
    'emu ostrich camel yak aguaje buriti pequi andiroba tucuma ucuuba copaiba kukui karanja moringa marula baobab tamanu perilla camelina chia sacha mongongo manketti pracaxi bacuri dhupa phulwara borneo pataua ungurahui cohune corozo chaulmoogra mahua nahar pongamia seal whale bear deer horse alligator turtle salmon menhaden'.split(
      ' ',
    );
  test.each(elsewhere.filter(name => knownOil(name) === undefined && knownOil(`${name} oil`) === undefined))(
    'is never one that has a name of its own: %s',
    name => {
      expect(() => readInChat(`lye for 500 g olive, 300 g ${name} and 200 g coconut`)).toThrow(Refusal);
    },
  );
});

describe('a recipe among more talk', () => {
  test.each([
    ['cuanta soda para 700 de oliva y 300 de coco?? soy nueva', { olive: 700, coconut: 300 }],
    [
      'Olive oil 500, lard 300 - sorry 350 - and coconut 150. What is the lye',
      { olive: 500, lard: 350, coconut: 150 },
    ],
    ['lard, coconut, olive: 400, 250, 350 in that order. lye?', { lard: 400, coconut: 250, olive: 350 }],
    [
      'Coco, oliva y ricino, 200, 600 y 60 respectivamente. Sosa al 5 %',
      { coconut: 200, olive: 600, castor: 60 },
    ],
    ['Dos libras de sebo de res y una de aceite de coco, ¿cuánta lejía?', { tallow: 907, coconut: 454 }],
    ["Lard from t'butcher, 700g, and 300g coconut. Lye at 6% superfat", { lard: 700, coconut: 300 }],
    [
      'Beef tallow 450, olive 450, castor 100, all grams. I make it about 135 g lye, am I close?',
      { tallow: 450, olive: 450, castor: 100 },
    ],
    [
      'somebody check me 4.5 oz lye on 32 oz oils (20 olive, 8 coconut, 4 shea)',
      { olive: 567, coconut: 227, shea: 113 },
    ],
    [
      'dumped 10oz coconut in instead of 8. rest was 18 olive 4 castor. new lye at 5 pct',
      { coconut: 283, olive: 510, castor: 113 },
    ],
    [
      'la de ayer era 300 coco 700 palma, salió dura. Hoy voy con 200 coco, 400 palma y 400 oliva. cuanta soda',
      { coconut: 200, palm: 400, olive: 400 },
    ],
    [
      'My usual is 20 oz lard, 8 oz coconut, 4 oz canola. Out of canola. I have sunflower in place of it, same 4 oz. does the lye change much',
      { lard: 567, coconut: 227, sunflower: 113 },
    ],
  ])('%s', (question, oils) => {
    expect(oilsOf(question)).toEqual(oils);
  });

  test.each([
    [
      'rapeseed and coconut, 70:30, a kilo and a half of oils, lye at 4%',
      { size: '1.5 kg oils', superfat: 4 },
    ],
    [
      '15 coco 85 oliva, porcentaje, 1 kilo 200 gramos de aceites en total. Sosa al 5',
      { size: '1200 g oils' },
    ],
    [
      'Aquí estamos, con el café. 600 g de oliva, 250 g de coco. Sobreengrasado 5%. ¿Cuánta sosa?',
      { superfat: 5 },
    ],
    ['40 g castor, 400 olive, 5 pct extra fat, lye?', { superfat: 5 }],
    ['lye for 260 g coconut oil, 410 g olive oil. leave 7% of fat over', { superfat: 7 }],
    [
      'NaOH para oliva 333 g coco 333 g palma 333 g, y el agua x2. No me pongan superengrasado, 0',
      { superfat: 0, water: '2:1' },
    ],
    ['550 olive + 150 coconut, lye at 7', { superfat: 7 }],
    ['170 g KOH 85% for 1000 g olive', { lye: 'KOH 85%' }],
  ])('what stands beside it: %s', (question, given) => {
    expect(readInChat(question).given).toMatchObject(given);
  });

  test('a coffee that is drunk meanwhile is not the liquid', () => {
    expect(
      readInChat('Aquí estamos, con el café. 600 g de oliva, 250 g de coco. ¿Cuánta sosa?').given.liquid,
    ).toBeUndefined();
    expect(
      readInChat('600 g de oliva, 250 g de coco, con café en vez de agua. ¿Cuánta sosa?').given.liquid,
    ).toBeDefined();
  });

  test('lye that is asked for behind a weight was not weighed', () => {
    expect(readInChat('Oliva 400 g y coco 200 g. Son 600 g. soda al 6').weighed).toBeUndefined();
    expect(readInChat('20 oz lard, 8 oz coconut, 4 oz. castor. does the lye change').weighed).toBeUndefined();
  });
});

describe('what a reviewer who lures was given a figure for is asked', () => {
  test.each([
    // A quarter was in the pot.
    'mi receta de siempre: oliva 400 g, coco 200 g, palma 200 g. hoy hago la mitad de la mitad. sosa al 5%',
    'my usual is 400 g olive, 200 g coconut, 200 g palm, today half of half of it. lye at 5%',
    // A share of the lye is no purity: the lye would be raised.
    'olive 500g coconut 200g shea 100g, i run my lye at 93% of full. naoh please',
    'siempre pongo la sosa al 93% de lo que sale: 500 g oliva 200 g coco',
    // Undoubled, or out?
    'el doble de todo menos del coco: oliva 300 g, coco 200 g, sebo 100 g. sosa al 5 por ciento',
    'halve everything but the castor: 400 g olive, 200 g coconut, 50 g castor, lye please',
  ])('%s', question => expect(() => readInChat(question)).toThrow(Refusal));

  test('a purity that is one stays one', () => {
    expect(readInChat('500 g olive, 200 g coconut, NaOH 93% pure, superfat 5%').given).toMatchObject({
      purity: 93,
    });
    expect(readInChat('500 g oliva, 200 g coco, sosa al 98%').given).toMatchObject({ purity: 98 });
  });
});
