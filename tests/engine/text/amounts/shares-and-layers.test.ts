import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import '../../../seed.ts';
import { oilsOfBatch } from '../../../../src/engine/batch/oils/lists/bare-grams.ts';
import { parsePortions } from '../../../../src/engine/batch/portions/portion-list.ts';
import { portionsAmongWords } from '../../../../src/engine/text/amounts/portions/portions-among-words.ts';
import { refused } from '../../quantities/refused.ts';

const names = (text: string): readonly string[] =>
  parsePortions(text).map(({ colours }) => colours.map(({ text: colour }) => colour).join(' '));

/** Each colour with its part of the whole. */
function sharesOf(text: string): Readonly<Record<string, number>> {
  const portions = parsePortions(text);
  const parts = portions.reduce((sum, { share }) => sum + (share.by === 'parts' ? share.parts : 0), 0);
  const told = portions.reduce((sum, { share }) => sum + (share.by === 'percent' ? share.percent : 0), 0);
  return Object.fromEntries(
    portions.map(({ colours, share }) => [
      colours.map(({ text: colour }) => colour.toLowerCase()).join(' '),
      share.by === 'percent'
        ? share.percent
        : share.by === 'parts'
          ? (100 * share.parts) / parts
          : share.by === 'rest'
            ? 100 - told
            : Number.NaN,
    ]),
  );
}

const share = fc.integer({ min: 2, max: 17 }).map(fives => 5 * fives);

describe('shares', () => {
  property.prop([
    share,
    fc.constantFrom(
      'split between blue and green',
      'blue and green, the same each',
      'shared evenly between blue and green',
    ),
  ])('one that is parted again is parted evenly, and all is told once', (white, again) => {
    const rest = 100 - white;
    expect(sharesOf(`${white}% white and the other ${rest}% ${again}`)).toEqual({
      white,
      blue: expect.closeTo(rest / 2, 4),
      green: expect.closeTo(rest / 2, 4),
    });
  });

  property.prop([fc.integer({ min: 2, max: 9 }), fc.constantFrom('to', 'a')])(
    'so many to one',
    (parts, to) => {
      const shares = {
        white: expect.closeTo((100 * parts) / (parts + 1), 4),
        gold: expect.closeTo(100 / (parts + 1), 4),
      };
      expect(sharesOf(`${parts} ${to} 1, white and gold`)).toEqual(shares);
      expect(sharesOf(`${parts} ${to} ${to === 'a' ? 'uno' : 'one'}, white and gold`)).toEqual(shares);
    },
  );

  property.prop([fc.integer({ min: 11, max: 19 })])(
    'whose part is the largest is told rightly, or asked about',
    fives => {
      const larger = 5 * fives;
      const told = `${larger}/${100 - larger} green and white`;
      expect(sharesOf(`${told}, green being the big one`)).toEqual({ green: larger, white: 100 - larger });
      expect(portionsAmongWords(`${told}, white being the big one`)).toBeUndefined();
    },
  );

  test.each([
    ['pues yo diria que tres cuartos rosa y lo demas blanco, no?', { rosa: 75, blanco: 25 }],
    ["Blue a half, grey three tenths, and white gets whatever's over", { blue: 50, grey: 30, white: 20 }],
    [
      "three quarters is peach, the last quarter I'm going halves coral and gold",
      { peach: 75, coral: 12.5, gold: 12.5 },
    ],
    ["it's mostly white, about a fifth is red", { white: 80, red: 20 }],
    ['white double the pink', { white: expect.closeTo(66.67, 1), pink: expect.closeTo(33.33, 1) }],
  ])('%s', (text, shares) => expect(sharesOf(text)).toEqual(shares));
});

const bottom = [
  'X at the bottom',
  'X at the foot',
  'X on the floor of it',
  'the base is X',
  'X abajo',
  'X al fondo',
];
const middle = ['X in the middle', 'X in between', 'X al medio', 'X en el centro'];
const top = ['X on top', 'X goes on last', "X's at the top", 'X arriba', 'X va arriba de todo', 'X encima'];

describe('layers', () => {
  property.prop([
    fc.constantFrom(...bottom),
    fc.constantFrom(...middle),
    fc.constantFrom(...top),
    fc.shuffledSubarray([0, 1, 2], { minLength: 3, maxLength: 3 }),
    fc.shuffledSubarray(['blue', 'white', 'pink', 'black', 'green'], { minLength: 3, maxLength: 3 }),
  ])('each with its place lie as told, in whatever order', (low, mid, high, order, colours) => {
    const told = [low, mid, high].map((place, at) => place.replace('X', colours[at]!));
    expect(names(order.map(at => told[at]).join(', '))).toEqual(colours);
  });

  property.prop([
    fc.shuffledSubarray(['azul', 'blanco', 'rosa', 'negro', 'verde'], { minLength: 3, maxLength: 3 }),
  ])('told as they are poured lie from the bottom up', ([one, two, three]) => {
    for (const text of [
      `Empiezo con ${one}, sigo con ${two} y cierro con ${three}`,
      `${one} primero, ${two} después, ${three} al final`,
      `base ${one}, luego ${two} y encima ${three}`,
      `Starting underneath, ${one}, then a thin ${two} line, then ${three}, and that's your lot`,
      `like a trifle: ${one} at the foot, ${two} over that, ${three} to finish`,
      `top ${three}, ${two} beneath, then ${one} at the very bottom`,
    ])
      expect({ text, names: names(text) }).toEqual({ text, names: [one, two, three] });
    expect(names(`${two} arriba del ${one}`)).toEqual([one, two]);
  });

  test('a slip is put right', () =>
    expect(names('black on the bottom, then the red then grene on top')).toEqual(['black', 'red', 'green']));
});

describe('what is said beside a list of oils', () => {
  const blend = (text: string) =>
    Object.fromEntries(
      oilsOfBatch(text).shares.map(({ oil, share: part }) => [oil.id, Number(part.toFixed(4))]),
    );

  property.prop([
    fc.integer({ min: 2, max: 18 }),
    fc.constantFrom(', never mind your fancy butters', ', nada más', ', no butter', ''),
  ])('changes none of them', (fives, aside) => {
    const olive = 5 * fives;
    const expected = { olive: olive / 100, coconut: Number((1 - olive / 100).toFixed(4)) };
    expect(blend(`${olive}% olive and ${100 - olive}% coconut${aside}`)).toEqual(expected);
    expect(blend(`oliva ${olive} por ciento, coco el ${100 - olive} que falta`)).toEqual(expected);
    expect(blend(`Olive ${olive}, remaining ${100 - olive} coconut`)).toEqual(expected);
  });

  test.each([
    [
      "nothing fancy, its 70% tallow (neighbour's cow) and the rest is sunflower",
      { tallow: 0.7, sunflower: 0.3 },
    ],
    [
      'Beef dripping 12 oz, rapeseed 12 oz, coconut 8, ounces the lot',
      { tallow: 0.375, canola: 0.375, coconut: 0.25 },
    ],
  ])('%s', (text, shares) => expect(blend(text)).toEqual(shares));

  // A fat that is on no list would be left out of the lye.
  test.each([
    '500 g olive, 300 g coconut, emu',
    '500 g olive, 300 g coconut, what I had of the cow',
    '500 g olive, 300 g coconut, sin coco',
  ])('%s is asked about', text => expect(refused(() => oilsOfBatch(text))).toBe('oil-unknown'));
});
