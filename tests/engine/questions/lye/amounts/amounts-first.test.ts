import { describe, expect, test } from 'vitest';
import { parseOils } from '../../../../../src/engine/batch/oils/lists/oil-list.ts';
import { amountsFirst } from '../../../../../src/engine/questions/lye/amounts/amounts-first.ts';
import { plainWords } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { readLyeQuestion } from '../../../../../src/engine/questions/lye/question.ts';
import { Refusal } from '../../../../../src/engine/refusal.ts';

const refusalOf = (read: () => unknown): string => {
  try {
    return `read: ${JSON.stringify(read())}`;
  } catch (error) {
    return error instanceof Refusal ? error.id : String(error);
  }
};
const ordered = (text: string) => amountsFirst(plainWords(text, { clauses: true }));
const gramsOf = (text: string) => {
  const { shares, totalGrams = Number.NaN } = parseOils(readLyeQuestion(ordered(text)).given.oils ?? '');
  return Object.fromEntries(shares.map(({ oil, share }) => [oil.id, Math.round(share * totalGrams)]));
};

/** Recipes as a maker jots them down: each oil, then its weight; the water or the lye comes last. */
const RECIPES: readonly (readonly [text: string, oils: Readonly<Record<string, number>>])[] = [
  ['olive 400 g coconut 100 g castor 50 g water 180 g', { olive: 400, coconut: 100, castor: 50 }],
  ['oliva 400 g coco 100 g ricino 50 g agua 180 g', { olive: 400, coconut: 100, castor: 50 }],
  ['how much lye for olive 200 g water 500 g', { olive: 200 }],
  ['cuanta sosa para oliva 800 g coco 100 g agua 300 g', { olive: 800, coconut: 100 }],
  ['lard 2 lb water 12 oz', { lard: 907 }],
  ['olive: 300 g water: 700 g', { olive: 300 }],
  ['aceite de oliva 500 g, aceite de coco 200 g, agua 300 ml', { olive: 500, coconut: 200 }],
  ['olive oil 1 lb 4 oz coconut 8 oz water 9 oz', { olive: 567, coconut: 227 }],
  ['coconut 76 200 g olive 500 g', { coconut: 200, olive: 500 }],
  ['olive 500 g in 200 g water', { olive: 500 }],
  [
    'oliva 350 g coco 100 g manteca de cacao 50 g agua 170 g',
    { olive: 350, coconut: 100, 'cocoa-butter': 50 },
  ],
  ['olive 450 g castor 50 g salt 10 g water 150 g', { olive: 450, castor: 50 }],
];

describe('weights behind their names', () => {
  test.each(RECIPES)('%s', (text, oils) => {
    expect(gramsOf(text)).toEqual(oils);
  });

  test('lye and water that stand behind their names are no oil, and no oil is lye', () => {
    const { weighed, waterGrams, given } = readLyeQuestion(ordered('oliva 500 g sosa 64 g agua 130 g'));
    expect(weighed?.grams).toBe(64);
    expect(waterGrams).toBe(130);
    expect(given.oils).toBe('500 g oliva');
    expect(readLyeQuestion(ordered('coconut 150 g lye 300 g')).weighed?.grams).toBe(300);
  });

  test('what is stirred in keeps its own weight', () => {
    const { given } = readLyeQuestion(ordered('olive 800 g shea 50 g milk 250 g'));
    expect(given.additives).toBe('milk 250 g');
    expect(given.oils).toBe('800 g olive, 50 g shea');
  });

  test('a fat nobody can work out lye for keeps its weight too, and the next oil its own', () => {
    expect(ordered('margarine 500 g and coconut 100 g')).toBe('500 g margarine, and 100 g coconut');
    expect(refusalOf(() => readLyeQuestion(ordered('margarine 500 g and coconut 100 g')))).toBe(
      'oil-unclear',
    );
  });
});

describe('a recipe reads the same whichever side its weights stand on', () => {
  const oils = [
    'olive',
    'coconut oil',
    'palm',
    'castor',
    'shea butter',
    'aceite de girasol',
    'ricino',
    'lard',
  ];
  const others = ['water', 'lye', 'agua', 'sosa', 'milk', 'honey'];
  const joints = [' ', ', ', ' and ', '; ', ' y ', ' + '];
  const recipes = oils.flatMap((first, at) =>
    others.map((last, row) => {
      const second = oils[(at + 3 + row) % oils.length]!;
      return [first, second === first ? oils[(at + 1) % oils.length]! : second, last] as const;
    }),
  );

  test.each(joints)('joined by “%s”', joint => {
    for (const [at, names] of recipes.entries()) {
      const grams = [500 + 10 * at, 120 + at, 60 + at];
      const behind = names.map((name, place) => `${name} ${grams[place]} g`).join(joint);
      const before = names.map((name, place) => `${grams[place]} g ${name}`).join(joint);
      const [one, other] = [readLyeQuestion(ordered(behind)), readLyeQuestion(ordered(before))];
      const told = ({ given, weighed, waterGrams }: typeof one) => ({
        line: behind,
        oils: parseOils(given.oils!),
        weighed,
        waterGrams,
      });
      expect(told(one)).toEqual(told(other));
    }
  });
});

describe('words around a recipe that change nothing of it', () => {
  test.each([
    [
      'Lye for 16 oz lard, 8 oz coconut oil and 8 oz olive oil pls and ty',
      { lard: 454, coconut: 227, olive: 227 },
    ],
    [
      'need the caustic worked out on 450g tallow, 300g olive oil and 20g of my own beeswax',
      { tallow: 450, olive: 300, beeswax: 20 },
    ],
    [
      'para sebo de res 600 g y aceite de girasol 400 gramos cuanta sosa y cuanta agua',
      { tallow: 600, sunflower: 400 },
    ],
  ])('%s', (text, oils) => {
    expect(gramsOf(text)).toEqual(oils);
  });
});

describe('where a weight may be of either neighbour', () => {
  test.each(['aceite 1 kg coco 300 g agua', 'lard 1000 g lye water 250 g'])('%s', text => {
    expect(refusalOf(() => ordered(text))).toBe('amounts-whose');
  });

  test.each([
    'NaOH - 450 g olive 150 g shea',
    'NaOH 450 g olive',
    '500 g olive 200 g coconut 300 g water',
    'how much lye and water for 500 g olive oil and 200 g coconut',
    '500 g olive oil 64 g lye 150 g water superfat 5%',
    'puse 180 g de sosa en vez de 130 en 1 kg de oliva',
    '1 lb tallow 8 oz coconut',
  ])('%s: weights that stand before their names stay', text => {
    expect(ordered(text)).toBe(plainWords(text, { clauses: true }));
  });

  test('the weight of the whole beside percents is no oil’s', () => {
    expect(ordered('olive 50% coconut 30% palm 20% 1 kg')).toContain('50% olive');
    const { given } = readLyeQuestion(ordered('olive 50% coconut 30% palm 20% 1 kg'));
    expect(given.size).toBe('1 kg oils');
  });
});

test('water that is told is the water of the plan', () => {
  expect(readLyeQuestion(ordered('olive 500 g coconut 200 g water 250 g')).given.water).toBe(
    '35.71% of oils',
  );
  expect(readLyeQuestion('lye for 800 g olive and half a litre of water').given.water).toBe('62.5% of oils');
});
