import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownOil } from '../../../../src/engine/batch/oils/find-oil.ts';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import { gramsOf } from '../../../../src/engine/questions/lye/amounts/words.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import * as english from '../../../../src/words/en/index.ts';
import * as spanish from '../../../../src/words/es/index.ts';
import { englishWords, spanishWords } from '../../text/spelling/common-lists.ts';
import { readInChat } from '../read-in-chat.ts';

const gramsIn = ({ given }: ReturnType<typeof readInChat>) => {
  const { shares, totalGrams = gramsOf(given.size ?? '') } = parseOils(given.oils ?? '');
  return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * totalGrams)]));
};
/** What a line is read as, or the id of the question that comes back. */
const readOrAsked = (question: string) => {
  try {
    const told = readInChat(question);
    return { oils: gramsIn(told), lye: told.weighed?.grams, superfat: told.given.superfat, left: told.left };
  } catch (error) {
    if (error instanceof Refusal) return error.id;
    throw error;
  }
};

describe('a recipe told in chat', () => {
  // Recipes with courtesies, dialect and talk around them, by other hands than the reader's.
  test.each([
    [
      'cheers my ansum, olive 380, cocoa butter 60, coconut 240 -- superfat 7 -- lye?',
      { olive: 380, 'cocoa-butter': 60, coconut: 240 },
    ],
    [
      'que tal banda, 700 manteca de cerdo 200 coco 100 ricino, cuanta sosa al 5',
      { lard: 700, coconut: 200, castor: 100 },
    ],
    ['mae cuanta soda pa puro coco, 800 gramos', { coconut: 800 }],
    [
      'manteca de cacao de la finca 200, aceite de palma 500, coco 300, todo en gramos. la soda cuanto sería porfa',
      { 'cocoa-butter': 200, palm: 500, coconut: 300 },
    ],
    [
      'Kindly calculate caustic soda for the following: coconut oil 300 gms, mustard oil 150 gms, castor oil 50 gms. Regards.',
      { coconut: 300, mustard: 150, castor: 50 },
    ],
    [
      'could you possibly tell me the lye, if it’s no bother, for canola 350g coconut 200g lard 150g, sorry to ask x',
      { canola: 350, coconut: 200, lard: 150 },
    ],
    [
      '70 olive 20 coconut 10 castor, how much lye pls for a 900 gram oil batch, need to be oot the door at 5',
      { olive: 630, coconut: 180, castor: 90 },
    ],
    ['my aunt wrote 128 lye for 800 tallow + 100 castor, all grams, seems ok?', { tallow: 800, castor: 100 }],
    ['lye for a 100% castile, a kilo, discount 4', { olive: 1000 }],
    ['2 pounds olive oil and 500 g coconut oil, lye in grams', { olive: 907, coconut: 500 }],
  ] as const)('%s', (question, oils) => {
    const told = readOrAsked(question);
    expect(told).toMatchObject({ oils });
  });

  test('names the words that it passed by', () => {
    expect(readOrAsked('how much lye for 1000 g olive, constructor')).toMatchObject({
      left: ['constructor'],
    });
    expect(english.lyeQuestions.passedBy({ left: ['constructor'] })).toBe(
      'Passed by: “constructor”. If one of them is an oil, give its weight and ask again.',
    );
    expect(spanish.lyeQuestions.passedBy({ left: ['constructor'] })).toBe(
      'Dejado de lado: «constructor». Si es un aceite, da su peso y pregunta otra vez.',
    );
  });

  // Trade use: a lye discount of a few percent is told behind the lye; lye water is 25 to 50 % (common practice, no source).
  test.each([
    ['1,5 kg de oliva y 0,5 kg de coco sosa al 5%', 5],
    ['how many grams naoh for 2 lb lard and 1 lb coconut oil, 7%', 7],
    ['jabón de castilla 1000 de oliva sobreengrasado cero, sosa?', 0],
    ['Me da 137 g de NaOH para 1 kg de oliva, SG 0.', 0],
    ['parce necesito la soda pa 500 gramos de aceite de girasol, 8 por ciento', 8],
  ])('takes a lone percent for the superfat: %s', (question, superfat) => {
    expect(readOrAsked(question)).toMatchObject({ superfat });
  });

  test('weighs the lye that is told, whichever side its weight stands on', () => {
    expect(readOrAsked('agua 300, sosa 135, oliva 1000, está bien?')).toMatchObject({
      lye: 135,
      oils: { olive: 1000 },
    });
    expect(readOrAsked('600 de sebo y 400 de oliva con 120 de soda, es mucho?')).toMatchObject({ lye: 120 });
  });

  test.each(['calabaza', 'puré de calabaza', 'puré de aguacate'])(
    'a fruit is stirred in and is no fat: %s',
    fruit => {
      const { given } = readInChat(`500 g oliva 250 g coco 100 g ${fruit}, 5%, cuánta sosa`);
      expect(given.oils).toBe('500 g oliva, 250 g coco');
      expect(given.additives).toMatch(/puree 100 g$/u);
    },
  );

  test('a liquid keeps its weight and is no fat', () => {
    const { given } = readInChat('beer soap: 300 g flat beer 450 g olive 300 g coconut 250 g lard lye? 5%');
    expect(given).toMatchObject({ additives: 'beer 300 g', superfat: 5 });
    expect(given.oils).toBe('450 g olive, 300 g coconut, 250 g lard');
  });
});

describe('a recipe that is changed as it is told', () => {
  test.each([
    ['400 g coconut oops I meant 300 g coconut, 700 olive, how much lye', { coconut: 300, olive: 700 }],
    ['500 g olive, 50 g castor, no wait 60, lye?', { olive: 500, castor: 60 }],
    [
      '16 oz olive 10 oz coconut 10 oz lard. no wait the lard was 12. lye?',
      { olive: 454, coconut: 283, lard: 340 },
    ],
    ['no eran 300 de coco, son 200. y oliva 500. sosa?', { coconut: 200, olive: 500 }],
    ['soda para 400 coco 400 oliva... pará, 300 coco 500 oliva', { coconut: 300, olive: 500 }],
    ['morning pal, 500 g olive and 300 g coconut without the olive, lye?', { coconut: 300 }],
    [
      'igual que el de mayo pero sin la cera: manteca 700, coco 250, cera de abeja 30. cuanta sosa',
      { lard: 700, coconut: 250 },
    ],
    [
      'palm 300 olive 400 coconut 300 but i’m not using palm. put lard in, same weight. lye?',
      { lard: 300, olive: 400, coconut: 300 },
    ],
    [
      '400 olive 200 shea. no shea in the house, I have cocoa butter in place of it, only 150g. lye',
      { olive: 400, 'cocoa-butter': 150 },
    ],
    [
      'swap the coconut for babassu: olive 15 oz, coconut 9 oz, tallow 6 oz. lye?',
      { olive: 425, babassu: 255, tallow: 170 },
    ],
    [
      'no tengo palma, la cambio por sebo. 500 oliva, 250 coco, 250 palma. sosa?',
      { olive: 500, coconut: 250, tallow: 250 },
    ],
    [
      'her recipe is 2 lb lard 1 lb coconut. mine is 2 lb lard and half a pound coconut. lye for mine',
      { lard: 907, coconut: 227 },
    ],
  ] as const)('%s', (question, oils) => {
    expect(readOrAsked(question)).toMatchObject({ oils });
  });

  test.each([
    ['morning pal, 500 g olive and 300 g coconut, only half of it, lye?', '400 g oils'],
    ['triple it for me? 120 g olive 60 g coconut, wi the caustic worked out', '540 g oils'],
    [
      'Oliva 500, coco 300, palma 200; pero la mitad de todo, que el molde es chico. Soda al 5%?',
      '500 g oils',
    ],
    ['make it 3x but leave out the shea: 200 olive 100 coconut 50 shea g, lye?', '900 g oils'],
    ['450g lard 250g olive. get it down to 350 g oils for the smaller mold. lye?', '350 g oils'],
  ])('is brought to its weight: %s', (question, size) => {
    expect(readInChat(question).given.size).toBe(size);
  });
});

describe('shares of a whole', () => {
  test.each([
    ['half tallow half lard, 2 pounds altogether, lye amt?', { tallow: 454, lard: 454 }],
    [
      'lard, tallow and coconut in equal parts, 36 oz of the three together. Lye',
      { lard: 340, tallow: 340, coconut: 340 },
    ],
    ['two thirds rapeseed one third coconut, 600g all in. lye?', { canola: 400, coconut: 200 }],
    ['sobre 1000: oliva 70%, coco 30%. sosa?', { olive: 700, coconut: 300 }],
    ['70 20 10 lard coconut olive, 5%. 1000 grams, lye', { lard: 700, coconut: 200, olive: 100 }],
    ['50/30/20 olive/coconut/shea. 1000 g of oil. NaOH?', { olive: 500, coconut: 300, shea: 200 }],
    ['oliva y coco al 80:20, kilo y medio, al 7%, cuánta sosa', { olive: 1200, coconut: 300 }],
    ['por cada 3 partes de manteca 1 de coco. 1200 g de todo. la sosa', { lard: 900, coconut: 300 }],
    [
      'lard 65%, coconut 25%, the rest castor. 1 kg of oil all told, lye',
      { lard: 650, coconut: 250, castor: 100 },
    ],
    ['yo quería hacer 1 kg: 650 oliva, el resto coco. sosa al 5', { olive: 650, coconut: 350 }],
    [
      'Coconut 0.30, olive 0.45, tallow 0.25. total 1000g oils. lye',
      { coconut: 300, olive: 450, tallow: 250 },
    ],
    ['250 g each of lard, olive and coconut, lye', { lard: 250, olive: 250, coconut: 250 }],
  ] as const)('%s', (question, oils) => {
    expect(readOrAsked(question)).toMatchObject({ oils });
  });
});

describe('a bare figure has the unit of those beside it, where that is plain', () => {
  test.each([
    ['lard 24 oz, coconut 8, olive 6, castor 2. lye?', { lard: 680, coconut: 227, olive: 170, castor: 57 }],
    ['2 libras de manteca y 1 de coco cuanta sosa', { lard: 907, coconut: 454 }],
    [
      'medio kilo de manteca, medio de sebo y un cuarto de aceite de coco. Sosa?',
      { lard: 500, tallow: 500, coconut: 250 },
    ],
    ['1250 g de manteca y 250 de coco cuanta sosa', { lard: 1250, coconut: 250 }],
  ] as const)('%s', (question, oils) => {
    expect(readOrAsked(question)).toMatchObject({ oils });
  });

  test.each([
    // Pounds or grams?
    'pal, 2 lb lard and 300 coconut, lye?',
    // Five of what?
    'pal, 70% olive, 30% coconut, 5, lye?',
    // Neither percents nor plainly grams.
    'pal, tallow 40, lard 20, coconut 15, lye?',
    'ok so tallow 16, lard 8, coconut 8, lye?',
  ])('else it is asked: %s', question => {
    expect(readOrAsked(question)).toEqual(expect.any(String));
  });

  test('the unit that the lye is wanted in is none of theirs', () => {
    expect(readOrAsked('pal, tallow 16 oz, lard 8, castor 2, lye in g please')).toMatchObject({
      oils: { tallow: 454, lard: 227, castor: 57 },
    });
  });

  test.each([
    ['pal, 1 kg oliva y 500 g coco, al 8, cuánta sosa', 8],
    ['parce, oliva 420 g, coco 180 g, con la sosa al 5 % ya calculada', 5],
  ])('a small figure behind "at" is the superfat: %s', (question, superfat) => {
    expect(readOrAsked(question)).toMatchObject({ superfat });
  });

  // Lye water is 25 to 50 % lye (common practice, no source).
  test('the strength of lye water is none', () => {
    expect(readOrAsked('parce, oliva 420 g, coco 180 g, con la sosa al 25 % ya lista')).not.toMatchObject({
      superfat: 25,
    });
  });

  test('a weight behind "for" is no superfat', () => {
    expect(readOrAsked('was 6 oz lye too much for 2.5 lb olive oil, pal')).toMatchObject({
      oils: { olive: 1134 },
      superfat: undefined,
    });
  });
});

describe('of two alkalis the one that is used', () => {
  test.each([
    ['how much lye for 1000 g olive, I have KOH not NaOH', 'KOH'],
    ['parce, sosa para 300 oliva y 100 coco, KOH, no NaOH', 'KOH'],
  ])('%s', (question, alkali) => {
    expect(readInChat(question).given.lye).toBe(alkali);
  });
  test('potash that is not used is none', () => {
    expect(readInChat('lye for 1000 g olive, pal, I have NaOH not KOH').given.lye).toBeUndefined();
  });
});

describe('what may be a fat, or change an amount, is asked back', () => {
  test.each([
    // Joined to the list.
    'how much lye for 500 g olive and bananaberry, cheers pal',
    'cuánta sosa para 500 g de oliva y zarzaparrilla, gracias parce',
    'hola parce, 500 g olive plus 200 g bananaberry, lye?',
    // An oil named without its weight, or nearly its name.
    'cheers my ansum, olive 500 g, palm, coconut 200 g, lye?',
    'cheers my ansum, olive 500 g, coconot, lye?',
    // Not the oil, though its name stands there.
    'banda, 500 g coconut flour 300 g olive, lye?',
    'hey pal 300 g olive leaves and 500 g lard lye?',
    'mae 500 g de coco rallado y 300 de oliva, cuanta soda',
    'parce 500 g olive, 200 g coconut, the fractionated one, lye?',
    // Of another amount than is told.
    'banda, 500 g oliva 300 coco, menos un poco, cuanta sosa',
    // Met by a pharmacist who asked as makers do: two recipes, a weight with the water in it, fat for after the cook, other numbers of bars,
    // a superfat told as a fraction, a fruit that is no oil, a lacking oil whose weight goes to another.
    'A: 500g olive 200g coconut. B: 400g lard 200g coconut. both 5% sf. lye for each?',
    'whole batch 1500g with the water, oils 65% olive 35% coconut, water 38% of oils, 5% sf, lye?',
    'my total batch is 1400 g with the 380 g water and the lye counted in. half olive, half coconut. 5% superfat',
    'todo pesa 1400 g con los 380 g de agua y la sosa metidos. mitad oliva, mitad coco. 5%. cuánta sosa',
    'half and half potassium and sodium hydroxide by weight of lye, 1000 g olive oil, 5% superfat',
    'masa total de 1000 g con agua y todo, oliva 70% coco 30%, 5%, cuánta sosa',
    'olive 400g coconut 200g, hot process at 0% sf, then 40 g shea after the cook. how much lye',
    'sobregrasa 0,05: 500 g de oliva y 300 g de coco, cuánta sosa',
    'superfat 0.05, 500 g olive and 300 g coconut, lye',
    'para 8 jabones son 320 g oliva 160 g coco 20 g ricino al 5%, me encargaron 20, cuánta sosa',
    '320 g olive 160 g coconut makes 8 bars, i need 20 bars, lye?',
    '500 g oliva 300 g coco sg 5, me quedé sin coco así que todo oliva, cuánta sosa',
    // Two wholes.
    'resize this: 65% olive, 25% coconut, 10% castor, was a 500 g batch, now I want 2 kg of oils. lye at 5',
    // Twice the lye in water is no two of the recipe.
    '500 g olive and 300 g coconut, double the water, lye?',
    // A figure of nothing.
    'is 142g lye ok for 700 olive and 300 coconut, cannae read if its 142 or 192',
    'boet, 500 g olive 300 g coconut 90, lye?',
  ])('%s', question => {
    expect(readOrAsked(question)).toEqual(expect.any(String));
  });

  test('names on both sides of every weight, with talk between, are asked for', () => {
    expect(readOrAsked('mi use lard 300 g coconut dat 200 g olive pal lye?')).toEqual(expect.any(String));
  });
});

/** Everyday words of lists that are not the reader's own: SCOWL sizes 10 to 50, and the 8,000 commonest Spanish ones. */
const everyday = fc.constantFrom(...englishWords([10, 20, 35, 40, 50]), ...spanishWords(8000));
const talk = fc.array(everyday, { minLength: 0, maxLength: 3 }).map(words => words.join(' '));
const mark = fc.constantFrom(' ', ', ', '. ', ' ; ');
/** The names of oils, as they are written, and each with two slips that make no other oil of it. */
const OILS = {
  olive: 'olivr',
  coconut: 'cocnt',
  castor: 'castpr',
  lard: 'larrd',
  ricino: 'ricno',
  girasol: 'girsol',
} as const;
const NAMES = Object.keys(OILS) as readonly (keyof typeof OILS)[];
const recipe = fc.uniqueArray(fc.constantFrom(...NAMES), {
  minLength: 2,
  maxLength: 3,
  selector: name => knownOil(name)!.id,
});

type Drawn = {
  readonly names: readonly (keyof typeof OILS)[];
  readonly talks: readonly string[];
  readonly marks: readonly string[];
  readonly isBehind: boolean;
};
const drawn: fc.Arbitrary<Drawn> = fc.record({
  names: recipe,
  talks: fc.array(talk, { minLength: 4, maxLength: 4 }),
  marks: fc.array(mark, { minLength: 4, maxLength: 4 }),
  isBehind: fc.boolean(),
});
const grams = (at: number) => 500 - 130 * at;
const lineOf = ({ names, talks, marks, isBehind }: Drawn, spelt: (name: keyof typeof OILS) => string) =>
  names.reduce(
    (line, name, at) =>
      `${line}${marks[at]}${isBehind ? `${spelt(name)} ${grams(at)} g` : `${grams(at)} g ${spelt(name)}`}${marks[at + 1]}${talks[at + 1]}`,
    talks[0]!,
  );
const wanted = (names: Drawn['names']) =>
  Object.fromEntries(names.map((name, at) => [knownOil(name)!.id, grams(at)]));

describe('everyday words between and around the parts', () => {
  test.each(['how much lye', 'cuánta sosa'])('give the same recipe, or a question: %s', ask => {
    let answered = 0;
    fc.assert(
      fc.property(drawn, one => {
        const told = readOrAsked(`${lineOf(one, name => name)}, ${ask}`);
        if (typeof told === 'string') return;
        answered += 1;
        expect(told.oils).toEqual(wanted(one.names));
      }),
      { numRuns: 120 },
    );
    // Neither is it always a question.
    expect(answered).toBeGreaterThan(12);
  });

  test('never give a number that leaves out an oil which is spelt amiss', () => {
    fc.assert(
      fc.property(drawn, fc.nat(), (one, pick) => {
        const amiss = one.names[pick % one.names.length]!;
        const told = readOrAsked(
          `${lineOf(one, name => (name === amiss ? OILS[name] : name))}, how much lye`,
        );
        expect(typeof told === 'string' || Object.keys(told.oils).length === one.names.length).toBe(true);
      }),
      { numRuns: 120 },
    );
  });

  test('nor one that leaves out an oil which has no weight and is spelt amiss', () => {
    fc.assert(
      fc.property(drawn, fc.constantFrom(...NAMES), (one, extra) => {
        fc.pre(!one.names.some(name => knownOil(name) === knownOil(extra)));
        expect(readOrAsked(`${lineOf(one, name => name)}, ${OILS[extra]}, how much lye`)).toEqual(
          expect.any(String),
        );
      }),
      { numRuns: 60 },
    );
  });
});

test('the strength of lye water is no superfat, a lone small percent beside lye is', () => {
  expect(readInChat('hiya pal, 500 g olive and 200 g coconut, sosa al 5').given.superfat).toBe(5);
  expect(refusalOrSuperfat('hiya pal, 500 g olive and 200 g coconut, lye at 33%')).not.toBe(33);
});

function refusalOrSuperfat(question: string): unknown {
  try {
    return readInChat(question).given.superfat;
  } catch (error) {
    if (error instanceof Refusal) return error.id;
    throw error;
  }
}

test('equal parts are equal shares of the whole', () => {
  expect(readInChat('hiya pal, equal parts olive, coconut and rice bran, 900 g of oils').given.oils).toMatch(
    /^33\.33 ?% olive, 33\.33 ?% coconut, 33\.33 ?% rice bran$/u,
  );
});
