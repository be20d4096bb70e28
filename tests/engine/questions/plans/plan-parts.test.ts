import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { planColours } from '../../../../src/engine/questions/plans/plan-colours.ts';
import { planParts } from '../../../../src/engine/questions/plans/plan-parts.ts';
import '../../../seed.ts';

const partsOf = (text: string) => planParts(wordsOf(text));
const coloursOf = (text: string) => planColours(wordsOf(text)).map(one => one.text);

describe('the shares that a plan tells', () => {
  test.each([
    ['plan 1 kg with coconut and olive, half blue half white', '1/2 blue; 1/2 white'],
    ['48 oz batter, half white, quarter navy, quarter gold', '1/2 white; 1/4 navy; 1/4 gold'],
    // Behind the colour, as it is said in both languages.
    ['una bandera: amarillo la mitad, azul un cuarto y rojo un cuarto', '1/2 amarillo; 1/4 azul; 1/4 rojo'],
    [
      'mitad sin na, un cuarto carbón y el otro cuarto mica plateada',
      '1/2 plain; 1/4 carbon; 1/4 mica plateada',
    ],
    ['white, blue and yellow swirl, 60/20/20, 1 kg of oils', '60% white; 1/5 blue; 1/5 yellow'],
    ['12 wells 75 ml each: 4 pink 4 green 4 yellow', '1/3 pink; 1/3 green; 1/3 yellow'],
    ['16 cavities: 8 blue 4 white 4 gold', '1/2 blue; 1/4 white; 1/4 gold'],
    ['3 layers: bottom navy, middle white, top gold', '1/3 navy; 1/3 white; 1/3 gold'],
    [
      'cuatro capas: cacao, arcilla rosa, blanca y arcilla verde',
      '1/4 cacao; 1/4 arcilla rosa; 1/4 blanca; 1/4 arcilla verde',
    ],
    ['white base, about a third black, splodged', '66.67% white; 1/3 black'],
    ['two thirds blue and the rest white', '66.67% blue; 1/3 white'],
    // What one has to make them of is no further part.
    [
      'three colours even: red, white, blue. I have red oxide, titanium, ultramarine',
      '1/3 red; 1/3 white; 1/3 blue',
    ],
    [
      '50% uncoloured; 30% takes charcoal; 20% gold mica (earlier 40/40/20)',
      '1/2 uncoloured; 30% charcoal; 1/5 gold mica',
    ],
  ])('%s', (text, portions) => {
    expect(partsOf(text).portions).toBe(portions);
  });

  test.each([
    ['a line has no share', 'mitad rosa mitad blanco con una línea dorada'],
    ['one colour is no plan', 'half of it blue'],
    ['more than all', 'two thirds blue, two thirds white'],
    ['two without a share', 'half white, blue and green on top'],
    ['a half that is parted again', 'half white other half gets split in 3, blue, green and purple'],
    ['shares that are not said', 'blue with a white cross, 600 g oils'],
    ['figures that do not come to all of them', '12 wells: 4 pink 4 green'],
    ['fewer layers than colours', '2 layers of blue, white and gold'],
  ])('%s: none is told, so that it is asked', (_, text) => {
    expect(partsOf(text).portions).toBeUndefined();
  });

  test('percents come out as they were told, or not at all', () => {
    const hues = fc.shuffledSubarray(['red', 'blue', 'white', 'green', 'purple'], { minLength: 2 });
    fc.assert(
      fc.property(
        hues,
        fc.array(fc.integer({ min: 1, max: 97 }), { minLength: 5, maxLength: 5 }),
        (names, raw) => {
          const told = names.map((_, at) => raw[at]!);
          const said = names.map((name, at) => `${told[at]}% ${name}`).join(', ');
          const { portions } = partsOf(`plan 1 kg batter: ${said}`);
          const sum = told.reduce((all, one) => all + one, 0);
          if (Math.abs(sum - 100) > 1) return portions === undefined;
          const figures = portions!.split('; ').map(part => {
            const [share = '', name] = part.split(' ');
            const [top, under] = share.split('/');
            return { name, percent: under ? (100 * Number(top)) / Number(under) : Number.parseFloat(share) };
          });
          return figures.every(
            ({ name, percent }, at) => name === names[at] && Math.abs(percent - told[at]!) <= 1,
          );
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('the colours of a plan', () => {
  test('an oil that is a colour’s name too is an oil', () => {
    expect(coloursOf('700 g olive, 300 g coconut, olive green and cream')).toEqual(['olive green', 'cream']);
  });
  test('a hue before what gives it is one colour; a word of depth belongs to it; twice is once', () => {
    expect(coloursOf('black charcoal base, dark purple, azul claro, dark purple again')).toEqual([
      'charcoal',
      'dark purple',
      'azul claro',
    ]);
  });
  test('each has what it looks like, a plain part has none', () => {
    const [clay, plain] = planColours(wordsOf('rose clay bottom, plain top'));
    expect(clay).toMatchObject({
      text: 'rose clay',
      isThing: true,
      hex: expect.stringMatching(/^#[\da-f]{6}$/),
    });
    expect(plain).toEqual({ text: 'plain', from: 4, to: 5, isThing: false });
  });
  test('names between strokes are apart', () => {
    expect(partsOf('peach/cream/sage in 3 even layers').portions).toBe('1/3 peach; 1/3 cream; 1/3 sage');
  });
});
