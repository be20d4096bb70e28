import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { strangeness, tellingStems } from '../../../../src/engine/questions/learned/strange-words.ts';
import { readLyeQuestion } from '../../../../src/engine/questions/lye/question.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { chatSpelt } from '../../../../src/engine/text/spelling/chat-spelling.ts';
import { portionsIn } from '../portions-in.ts';

const gramsIn = (question: string) => {
  const { given, left } = readLyeQuestion(chatSpelt(question));
  const { shares, totalGrams } = parseOils(given.oils!);
  const all = given.size === undefined ? totalGrams! : Number.parseFloat(given.size) * 1000;
  return {
    oils: Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * all)])),
    left,
  };
};

/** As makers of three sets by other hands put it; an avoirdupois pound is 453.59 g, its ounce 28.35 g (NIST Handbook 44). */
describe('lye asked in a few words', () => {
  test.each([
    ['lye for 300g coconut 300g palm 400g olive plsss', { coconut: 300, palm: 300, olive: 400 }],
    ["32 oz tallow, 8 oz castor, usual superfat, what's my NaOH", { tallow: 907, castor: 227 }],
    ['NaOH - 450 g olive 150 g shea', { olive: 450, shea: 150 }],
    ['sunflower only, 350g, lye+water?', { sunflower: 350 }],
    ['if my oils r 1 kg all olive whats the lye amt', { olive: 1000 }],
    ['lye fr 500 olive 250 coconut 250 palm grams', { olive: 500, coconut: 250, palm: 250 }],
    ['1.5 lb tallow .5 lb coconut how much lye', { tallow: 680, coconut: 227 }],
    ['Castilla 100 %, 1 kg de oliva, sobreengrasado 5: sosa y agua por favor', { olive: 1000 }],
    ['cuanta sosa: oliva 700 coco 300', { olive: 700, coconut: 300 }],
  ])('%s', (question, oils) => {
    expect(gramsIn(question)).toEqual({ oils, left: [] });
  });

  test.each([
    [
      'rendered down 2 kilo of mutton fat, how much caustic goes with that',
      { tallow: 2000 },
      ['rendered down'],
    ],
    [
      'mi suegra me regaló 2 kilos de manteca de cerdo. ¿cuánta sosa lleva?',
      { lard: 2000 },
      ['suegra me regalo'],
    ],
    [
      'soda y agua para 1 kg de grasa vacuna como hacía mi abuelo',
      { tallow: 1000 },
      ['como hacia mi abuelo'],
    ],
  ])('what is told beside it is named: %s', (question, oils, left) => {
    expect(gramsIn(question)).toEqual({ oils, left });
  });

  test.each([
    'lye for 500 g olive and some murumuru',
    'lye for 500 g olive found online',
    'lye for 500 g lard, cupuacu',
    '500 g lard, half of it swapped for coconut, how much lye',
    '800 g olive 200 g unobtainium, lye?',
    'lye for 2 lb lard (no coconut)',
  ])('what may be an oil or change one is asked about: %s', question => {
    expect(() => readLyeQuestion(question)).toThrow(/^oils?-/u);
  });

  test('an alkali that is said not to be meant is none of two', () => {
    expect(readLyeQuestion('KOH no, NaOH. oliva 400g').given.lye).toBeUndefined();
    expect(readLyeQuestion('KOH y NaOH, oliva 400g').given.lye).toBe('both');
  });
});

describe('amounts in a question', () => {
  test.each([
    [
      'quiero hacer 12 jabones de 100 gramos mitad celeste mitad blancos',
      { portion: '12 x 100 gramos batter' },
    ],
    ['blue marble for me mam, 10 bars 100g, work all of it out', { portion: '10 x 100 g batter' }],
    ['Añade dos botes de 30 g de índigo al estante', { powder: '2 x 30 g' }],
    ['titanium dioxide at 0.5 % of oil weight, oils 820 g', { portion: '820 g oils' }],
    [
      'si le pongo 10 gramos de cacao a 500 g de aceite',
      { portion: '500 g oils', powder: '10 gramos', oils: undefined },
    ],
  ])('%s', (question, facts) => {
    expect(readQuestion(question).facts).toMatchObject(facts);
  });

  test.each([
    ['700g batter split in 2 equal, one half charcoal', '1/2 of 700 g batter'],
    ['900ml batter split 3 ways, one of them black', '1/3 of 900 ml'],
    ['900ml batter divided into two, one half black', '1/2 of 900 ml'],
    ['900ml split in three, one part black', '1/3 of 900 ml'],
    ['900ml split into four, one of them black', '1/4 of 900 ml'],
    ['900ml split by five, one gets black', '1/5 of 900 ml'],
    ['900 ml, la divido en dos, una mitad con carbón', '1/2 of 900 ml'],
    ['900 ml dividida en tres, una con carbón', '1/3 of 900 ml'],
    ['900 ml repartida en cuatro, una parte con carbón', '1/4 of 900 ml'],
    ['900 ml partida en cinco, una lleva carbón', '1/5 of 900 ml'],
    ['La mitad de 1,6 kg de pasta la hago con verde', '0.8 kg'],
    ['1.2 litres in total and one third of this is to be coloured', '1/3 of 1.2 litres'],
    ['2 cups of batter, charcoal', '2 cups'],
    ['split 300 g of it off', '300 g'],
  ])('the part of %s', (question, part) => {
    expect(parsePortionRange(portionsIn(question).part!).low).toEqual(parsePortionRange(part).low);
  });
});

test('words that no maker used are counted, by their stems', () => {
  const known = new Set(tellingStems(['colours', 'batter', 'oxide']));
  expect(strangeness(['colour', 'the', 'batter', '<thing>', '500'], known)).toEqual([
    'strange words 0',
    'strange share 0',
  ]);
  expect(strangeness(['colour', 'concrete', 'driveway', 'batter'], known)).toEqual([
    'strange words 2',
    'strange share 2',
  ]);
});
