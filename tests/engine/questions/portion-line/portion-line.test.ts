import { describe, expect, test } from 'vitest';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { portionsIn } from '../portions-in.ts';

/* Which amount of a question is the portion. Sums are those of arithmetic; cups, pounds and ounces by NIST Handbook 44, appendix C. */

const CUP = 236.588;
const POUND = 453.592;
const OUNCE = 28.3495;

type Of = 'oils' | 'batter';
const read = (question: string) => {
  const { part, unclear } = portionsIn(question);
  if (part === undefined) return undefined;
  const { low } = parsePortionRange(part);
  return { size: low.measure === 'mass' ? low.grams : low.millilitres, of: low.of, unclear: unclear.length };
};
const expectPortion = (question: string, size: number, of: Of = 'batter') =>
  expect(read(question)).toEqual({ size: expect.closeTo(size, 0), of, unclear: 0 });

describe('so many of so much', () => {
  test.each([
    ['mould has 9 wells, each well takes 70 ml, all of them with spirulina', 630],
    ['4 wells in it n theyre 95 ml each, gold mica in 3 of them', 285],
    ['14 bars abt 3 oz each, nettle', 42 * OUNCE],
    ['9 guest soaps at 35 g a piece, kaolin clay', 315],
    ['20 x 85 g bars, charcoal', 1700],
    ['mica for two 450 g loaves', 900],
    ['100 g bars, 12 of them, charcoal', 1200],
    ['five duckies of 40 ml each, rose clay', 200],
    ['how much indigo for 3 of the 8 wells (70 ml each)', 210],
    ['16 cavities 70 ml each: 8 with indigo 8 with annatto', 560],
    ['molde de 10 huecos de 95 ml, todos con carbón', 950],
    ['10 huequitos, a cada uno le caben 95 ml, pongo carbón en 4 de ellos', 380],
    ['son 6 jaboncitos de 90 g y solo 2 van con espirulina', 180],
    ['9 moldecitos de 80 ml cada uno, arcilla rosa', 720],
    ['3 jarras de 300 ml cada una, una va con mica azul', 300],
    ['dos tazas de 250 ml con mica verde', 500],
    ['una taza grande de 340 ml con mica verde', 340],
    ['running 6 logs, 1.4 kilo batter in each, orange oxide', 8400],
    ['12 bars, 1.2 kg of batter, red oxide', 1200],
    ['I divided my batter into four jugs of 350 ml each. One jug is to be pink mica', 350],
    [
      'I split the pot between two jugs, 350 g of batter in each. One is to be ultramarine violet, at half the usual strength',
      350,
    ],
    ['molde de 1 litro, mitad violeta mitad blanco, cuánto ultramar violeta pongo en su mitad', 500],
    ['mi molde recibe 1.080 ml y solo la cuarta parte irá con violeta ultramar, es decir 270 ml', 270],
    ['a half-litre portion of indigo', 500],
    ['a quarter-pound of batter with indigo', 113.4],
    ['2 bars maybe 8 oz soap altogether, red oxide', 8 * OUNCE],
    ['12 bars from 1.2 kg of batter, 4 of them get red oxide', 400],
    ['4 layers of indigo, 250 ml each', 250],
    ['is 1 tsp of chromium oxide green too much for a 250 ml cup of soap', 250],
    ['mica azul para un vaso de 300 ml de jabón', 300],
    ['tres tazas de masa, a una de ellas le pongo mica dorada', CUP],
  ])('%s', (question, size) => expectPortion(question, size));

  test('the whole stands beside the part', () => {
    expect(portionsIn('4 wells, 95 ml each, gold mica in 3 of them')).toMatchObject({
      whole: '4 x 95 ml',
      part: '3 x 95 ml',
      reckoned: { by: 'count', count: 3, noun: 'wells', each: '95 ml', comes: { millilitres: 285 } },
    });
    expect(readQuestion('plan 12 wells 80 ml each, 6 pink 6 green, lay it out for me').facts.portion).toBe(
      '12 x 80 ml',
    );
  });
});

test('a cup whose weight is told is no second portion', () => {
  expect(portionsIn('rose clay for a 250 g cup of soap')).toMatchObject({ unclear: [] });
});

test.each([
  ["if oils are 100 and that's 900 g, what percent spirulina", '900 g oils'],
  ['si los aceites son el 100 y eso son 700 g, qué porcentaje de espirulina', '700 g oils'],
])('%s: what the hundred weighs is oils', (question, portion) =>
  expect(readQuestion(question).facts.portion).toBe(portion),
);

describe('a part of the batch', () => {
  test.each([
    ['batch is 900 oils, taking a 3rd of it for the gold mica', 300, 'oils'],
    ["the loaf takes 40 oz of oils. quarter of it i'm pullin for cocoa", 10 * OUNCE, 'oils'],
    ['600 g oils, saco un tercio para el óxido verde', 200, 'oils'],
    ['1000 g de masa, la cuarta parte con cacao', 250, 'batter'],
    ['5% of the batter (2 kg) is for the charcoal line', 100, 'batter'],
    ['i have 40 oz of batter, 10 oz gets charcoal', 10 * OUNCE, 'batter'],
    ['5 lb batch, one pound of it gets charcoal', POUND, 'batter'],
    ['1.5 kg batter, i set aside 400 g for madder root', 400, 'batter'],
    ['split 800 ml four ways, one of the jugs gets turmeric', 200, 'batter'],
    ['600 g de masa en dos vasos iguales, a uno le va mica dorada', 300, 'batter'],
    [
      '1600 g of batter i split by mass into 4 equal containers and one of them (so 400 g) gets cocoa',
      400,
      'batter',
    ],
    ['a third of the usual dose in 600 g of batter', 600, 'batter'],
    ['de 900 g de masa uso 300 g para carbón', 300, 'batter'],
    ['500 g of batter but i spilt 60 g', 440, 'batter'],
    ['450 g of batter, se me cayeron unos 50', 400, 'batter'],
  ] as const)('%s', (question, size, of) => expectPortion(question, size, of));
});

describe('what was put right, denied or so another time', () => {
  test.each([
    ["need it for 24 oz of oils... no sorry i'm on the wrong card, 30 oz of oils", 30 * OUNCE, 'oils'],
    ['añil para 200 gr de masa. ah no, perdón, son 260', 260, 'batter'],
    ['rose clay for 500g of batter. oops i meant 600', 600, 'batter'],
    ['para 2 kilos de aceites, digo, 1 kilo y medio, carbón', 1500, 'oils'],
    ["mica in 350 ml. i'd originally written 300 ml but the jug is the 350", 350, 'batter'],
    ['mica for 500 g oils, not 400 g', 500, 'oils'],
    ['no son 300 ml, son 400 ml, mica', 400, 'batter'],
    ['normally 2 lb of oils but this time 3 lb, turmeric', 3 * POUND, 'oils'],
    ['last time 1 kg of batter, now it is 750, annatto', 750, 'batter'],
    ['10 bars of 100 g, no sorry, 12, charcoal', 1200, 'batter'],
    ['carbón for 2 lb oils last time, same size batch', 2 * POUND, 'oils'],
  ] as const)('%s', (question, size, of) => expectPortion(question, size, of));

  test('powder too', () => {
    expect(
      portionsIn('1 tsp rose clay in 500 g of batter, wait no, 2 tsp').amounts.map(({ text }) => text),
    ).toEqual(['2 tsp', '500 g']);
    expect(readQuestion('took out 12.4 g of charcoal, no, 14.2 g, off my shelf').facts.powder).toBe('14.2 g');
  });
});

describe('two portions that both fit are asked for, never the first', () => {
  test.each([
    ['300 g no 350 g of batter, red clay', [300, 350]],
    ['1 kg batter, a third gets pink mica and half gets blue mica', [1000 / 3, 500]],
    ['4 bars 200 g, charcoal', [200, 800]],
    ['charcoal in 500 g batter or the pot of 900 g batter', [500, 900]],
    ['charcoal in 500 g batter or the pot of 550 g batter', [500, 550]],
    ['charcoal for 500 g, the pot of batter is 1.2 kg', [500, 1200]],
    ['i bought 500 g of charcoal, batter is 1200 g', [500, 1200]],
    ['10 bars of 30 g, oops 12', [360, 120]],
    ['32 oils, charcoal', [32, 32 * OUNCE]],
  ])('%s', (question, sizes) => {
    const { unclear } = portionsIn(question);
    const read = unclear.map(text => parsePortionRange(text).low);
    const got = read.map(low => (low.measure === 'mass' ? low.grams : low.millilitres));
    const wanted = sizes.toSorted((a, b) => a - b).map(size => expect.closeTo(size, 0));
    expect(got.toSorted((a, b) => a - b)).toEqual(wanted);
  });

  test('oils and batter of two batches are two', () => {
    expect(portionsIn('500 g oils or the other pot of 1100 g batter, charcoal').unclear).toHaveLength(2);
    expect(portionsIn('500 g oils, that is 800 g batter, charcoal').unclear).toEqual([]);
  });

  test.each([
    '500 g oils, that is 750 g batter, charcoal',
    'the oil mass is 1200 g, which gives 1764 g of batter, in four equal pots and one of them (so 441 g of batter) gets cocoa',
    '1 kg of batter, 600 g white and 400 g for charcoal',
    '700 g oils, 266 g water, 98 g lye, charcoal',
  ])('what belongs together is one: %s', question => expect(portionsIn(question).unclear).toEqual([]));
});

describe('bare figures', () => {
  test.each([
    ['500 de aceites, cúrcuma', 500, 'oils'],
    ['900 oils, cocoa', 900, 'oils'],
    ['oils: 650. cocoa', 650, 'oils'],
    ['cocoa for 2 lb o, barely', 2 * POUND, 'oils'],
    ['cacao en 300 de mezcla', 300, 'batter'],
    ['cacao, 3 cdtas a 700 de aceites, sin contar el agua', 700, 'oils'],
  ] as const)('%s', (question, size, of) => expectPortion(question, size, of));

  test.each(['3 oils, cocoa', 'avocado oil 150, olive 350, cocoa', '20 C, cocoa', 'cooled to 40 c, cocoa'])(
    'are nothing of a portion in: %s',
    question => expect(portionsIn(question).part).toBeUndefined(),
  );
});

describe('spoons in every short form', () => {
  test.each([
    ['an 8th of a tsp of cocoa in 200 ml', '1/8 tsp'],
    ['1/8th tsp cocoa in 200 ml', '1/8 tsp'],
    ['a 16th tsp cocoa in 200 ml', '1/16 tsp'],
    ['three qtr tsp cocoa in 200 ml', '3/4 tsp'],
    ['2 T. of cocoa in 200 ml', '2 tbsp'],
    ['half a T of cocoa in 200 ml', '1/2 tbsp'],
    ['1 t. of cocoa in 200 ml', '1 t'],
    ['media cdita de cacao en 200 ml', '1/2 cdita'],
  ])('%s', (question, powder) => {
    const { facts } = readQuestion(question);
    expect(facts.powder).toBe(powder);
    expect(facts.portion).toBe('200 ml');
  });

  test('a unit that goes without saying is the one before', () => {
    expect(
      readQuestion('si echo media cdta de espirulina y media de cúrcuma a 300 de aceites, ¿qué color?').facts
        .mix,
    ).toBe('1/2 cdta espirulina + 1/2 cdta curcuma');
    expect(readQuestion('en vez de 5 gramos le echo 10 de cacao a 600 g de mezcla').facts.powder).toBe(
      '10 gramos',
    );
  });

  test('what a rate is told to is a pound of oils, where nothing else is', () => {
    expect(readQuestion('show me what 1/2 tsp ppo of purple clay looks like').readings[0]?.given).toEqual({
      mix: '1/2 tsp purple clay',
      portion: '1 lb oils',
    });
  });
});

describe('counted vessels of any measure', () => {
  // "Two glasses of 180 cc" had made the whole question fail on its "x".
  test.each([
    'ml',
    'cc',
    'cl',
    'dl',
    'millilitres',
    'mililitros',
    'fl oz',
    'g',
    'oz',
    'cups',
    'pints',
    'quarts',
  ])('3 wells of 2 %s each', unit => {
    const { portion } = readQuestion(`gold mica, 3 wells of 2 ${unit} each, all of them`).facts;
    const [whole, one] = [portion!, `2 ${unit}`].map(text => parsePortionRange(text).low);
    const size = (of: typeof whole) => (of!.measure === 'mass' ? of!.grams : of!.millilitres);
    expect(size(whole) / size(one)).toBeCloseTo(3, 6);
  });
});
