import { expect, test } from 'vitest';
import type { Laid, Ran } from '../../../../../src/engine/questions/leaning/before.ts';
import {
  addedOil,
  atSuperfat,
  inUnitOf,
  mayChangeRecipe,
  namesOilOf,
  oilsAlone,
  onlyOilAt,
  partSwapped,
  recipeFor,
  reweighed,
  swappedOil,
  timesRecipe,
  unitOf,
} from '../../../../../src/engine/questions/leaning/recipes/recipe.ts';

/* What is changed in a recipe before its lye is reckoned anew: arithmetic, and where the whole is not known, nothing. */

const laid = (oils: string | undefined, more: Laid['given'] = {}): Laid => ({
  job: 'lye',
  command: 'plan',
  given: { ...(oils === undefined ? {} : { oils }), ...more },
});
const TWO = '600 g tallow, 200 g coconut';
const oilsOf = (one: Laid | undefined) => one?.given.oils;

test.each<readonly [oils: string, amount: string, told: string | undefined]>([
  [TWO, '400 g', '300 g tallow, 100 g coconut'],
  [TWO, '1.6 kg', '1200 g tallow, 400 g coconut'],
  ['1 kg olive; 1 kg lard', '1 kg', '0.5 kg olive, 0.5 kg lard'],
  // A cup of oils, and a recipe by shares, are no weight of it.
  [TWO, '2 cups', undefined],
  [TWO, 'plenty', undefined],
  ['70% olive, 30% coconut', '500 g', undefined],
])('%s for %s of oils', (oils, amount, told) => {
  expect(oilsOf(recipeFor(laid(oils), amount))).toBe(told);
});
test('a recipe that tells no oils has no other size', () => {
  expect([recipeFor(laid(undefined), '500 g'), timesRecipe(laid(undefined), 2)]).toEqual([
    undefined,
    undefined,
  ]);
});

test.each<readonly [Laid['given'], boolean]>([
  [{ superfat: '5', lye: 'KOH', purity: '90' }, true],
  [{ water: '33% lye' }, true],
  // So many grams of water, or of scent, would be those of another size.
  [{ water: '250 g' }, false],
  [{ fragrance: '20 g' }, false],
  [{ size: '1 kg oils' }, false],
])('with %o beside its oils a recipe is as it was at any size: %s', (more, stays) => {
  const before = laid(TWO, more);
  const changed = [
    timesRecipe(before, 2),
    addedOil(before, '50 g', 'castor'),
    reweighed(before, new Map([['tallow', 500]])),
    partSwapped(before, { amount: '50 g', out: 'tallow', into: 'olive' }),
    onlyOilAt(laid('600 g tallow', more), 500),
  ];
  expect(changed.map(one => one !== undefined)).toEqual(changed.map(() => stays));
  for (const one of changed)
    expect(one === undefined || { ...one.given, ...more }).toEqual(one?.given ?? true);
});

test.each<readonly [oils: string, out: string, into: string, told: string | undefined]>([
  [TWO, 'coconut', 'lard', '600 g tallow, 200 g lard'],
  ['600 g olive oil, 200 g coconut oil', 'olive', 'rice bran', '600 g rice bran, 200 g coconut oil'],
  ['500 g de oliva, 200 g de coco', 'coco', 'manteca de cerdo', '500 g oliva, 200 g manteca de cerdo'],
  // One that is not in it, that is nobody’s oil, that is in it twice, that is there already; shares.
  [TWO, 'olive', 'lard', undefined],
  [TWO, 'coconut', 'gravel', undefined],
  [TWO, 'gravel', 'lard', undefined],
  ['100 g olive, 100 g lard, 50 g olive oil', 'olive', 'tallow', undefined],
  [TWO, 'coconut', 'tallow', undefined],
  ['70% olive, 30% coconut', 'coconut', 'lard', undefined],
])('%s, %s out and %s in', (oils, out, into, told) => {
  expect(oilsOf(swappedOil(laid(oils), out, into))).toBe(told);
});
test('nothing is swapped where no oils are told', () => {
  expect(swappedOil(laid(undefined), 'olive', 'lard')).toBeUndefined();
});

test.each<
  readonly [oils: string, amount: string, out: string | undefined, into: string, told: string | undefined]
>([
  [TWO, '100 g', 'tallow', 'lard', '500 g tallow, 200 g coconut, 100 g lard'],
  ['1000 g olive', '250 g', undefined, 'coconut', '750 g olive, 250 g coconut'],
  ['1000 g olive', '2,5 g', undefined, 'coconut', '997.5 g olive, 2,5 g coconut'],
  ['2 kg olive', '0.5 kg', 'olive oil', 'lard', '1.5 kg olive, 0.5 kg lard'],
  // Of which oil nobody said; all of it, and more than there is; in another unit; what is in it; what is no oil.
  [TWO, '100 g', undefined, 'lard', undefined],
  [TWO, '200 g', 'coconut', 'lard', undefined],
  [TWO, '201 g', 'coconut', 'lard', undefined],
  [TWO, '3 oz', 'tallow', 'lard', undefined],
  [TWO, '100 g', 'tallow', 'coconut', undefined],
  [TWO, '100 g', 'olive', 'lard', undefined],
  [TWO, '100 g', 'tallow', 'gravel', undefined],
  [TWO, 'some', 'tallow', 'lard', undefined],
  ['70% olive, 30% coconut', '100 g', 'olive', 'lard', undefined],
])('%s: %s of %s goes for %s', (oils, amount, out, into, told) => {
  expect(oilsOf(partSwapped(laid(oils), { amount, out, into }))).toBe(told);
});

test.each<readonly [oils: string, amount: string, name: string, told: string | undefined]>([
  [TWO, '50 g', 'castor', `${TWO}, 50 g castor`],
  [TWO, '50 g', 'ricino', `${TWO}, 50 g ricino`],
  // More of what is in it may be instead of it.
  [TWO, '50 g', 'coconut', undefined],
  [TWO, '50 g', 'gravel', undefined],
  ['70% olive, 30% coconut', '50 g', 'castor', undefined],
])('%s, and %s %s more', (oils, amount, name, told) => {
  expect(oilsOf(addedOil(laid(oils), amount, name))).toBe(told);
});

test.each<readonly [oils: string, weights: readonly (readonly [string, number])[], told: string | undefined]>(
  [
    [TWO, [['coconut', 150]], '600 g tallow, 150 g coconut'],
    [
      TWO,
      [
        ['coco', 150],
        ['tallow', 650],
      ],
      '650 g tallow, 150 g coconut',
    ],
    ['20 oz lard, 8 oz olive', [['lard', 18.5]], '18.5 oz lard, 8 oz olive'],
    // Not in it; twice in it; told twice; in two units.
    [TWO, [['olive', 150]], undefined],
    [TWO, [['gravel', 150]], undefined],
    ['100 g olive, 100 g lard, 50 g olive oil', [['olive', 120]], undefined],
    [
      TWO,
      [
        ['coconut', 150],
        ['coco', 140],
      ],
      undefined,
    ],
    ['1 kg olive, 200 g coconut', [['olive', 900]], undefined],
  ],
)('%s with %j', (oils, weights, told) => {
  expect(oilsOf(reweighed(laid(oils), new Map(weights)))).toBe(told);
});

test.each<readonly [oils: string | undefined, unit: string | undefined, amount: string | undefined]>([
  [TWO, 'g', '50 g'],
  ['20 oz lard', 'oz', '50 oz'],
  ['1 kg olive, 200 g coconut', undefined, undefined],
  ['70% olive, 30% coconut', undefined, undefined],
  [undefined, undefined, undefined],
])('%s is told in %s', (oils, unit, amount) => {
  expect([unitOf(laid(oils)), inUnitOf(laid(oils), '50'), inUnitOf(laid(oils), '2 lb')]).toEqual([
    unit,
    amount,
    '2 lb',
  ]);
});

test('a figure over 30 is another weight of the only oil, and no superfat; below it is a superfat', () => {
  expect(oilsOf(onlyOilAt(laid('500 g olive'), 600))).toBe('600 g olive');
  expect(oilsOf(onlyOilAt(laid('20 oz olive'), 31))).toBe('31 oz olive');
  expect(onlyOilAt(laid('500 g olive'), 30)).toBeUndefined();
  expect(onlyOilAt(laid(TWO), 600)).toBeUndefined();
  expect(onlyOilAt(laid(undefined), 600)).toBeUndefined();
  expect([0, 5, 30].map(percent => atSuperfat(laid(TWO), percent)?.given)).toEqual(
    ['0', '5', '30'].map(superfat => ({ oils: TWO, superfat })),
  );
  expect([-1, 31, 5.5].map(percent => atSuperfat(laid(TWO), percent))).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test.each<readonly [turn: string, oils: string | undefined]>([
  ['500 g olive', undefined],
  ['500 g olive only', '500 g olive'],
  ['500 de oliva solo eso', '500 g oliva'],
  ['only 500 g olive', '500 g olive'],
  ['600g lard, nothing else.', '600 g lard'],
  ['olive 500, coconut 200', undefined],
  ['500 g olive and 200 coconut', '500 g olive, 200 g coconut'],
  ['500 oliva y 200 coco', '500 g oliva, 200 g coco'],
  ['500 g olive, 200 g coconut!!', '500 g olive, 200 g coconut'],
  ['12 oz lard; 4 oz aceite de coco', '12 oz lard, 4 oz coco'],
  ['500 g olive + 100 g castor', '500 g olive, 100 g castor'],
  // Anything else in it, and it is not the whole of a recipe.
  ['500 g olive and 20 g gravel', undefined],
  ['500 g olive and a bit of castor', undefined],
  ['', undefined],
])('of “%s” alone: %s', (turn, oils) => {
  expect(oilsAlone(turn)).toBe(oils);
});
test('one oil alone may be the recipe where no other was told of before', () => {
  expect(oilsAlone('500 g olive', true)).toBe('500 g olive');
  expect(oilsAlone('20 g gravel', true)).toBeUndefined();
});

test.each<readonly [text: string, names: boolean]>([
  ['the coconut was short', true],
  ['la coco', true],
  ['no olive', false],
  ['tallow', true],
  ['and tallow', true],
  ['it went well', false],
  ['', false],
])('whether “%s” names an oil of it', (text, names) => {
  expect(namesOilOf(laid(TWO), text)).toBe(names);
});
test('an oil of two words is named by both of them', () => {
  expect(namesOilOf(laid('500 g rice bran oil'), 'out of rice bran now')).toBe(true);
  expect(namesOilOf(laid('500 g olive'), 'out of rice bran now')).toBe(false);
  expect(namesOilOf(laid(undefined), 'out of olive now')).toBe(false);
});

const RECIPE: Ran = { ...laid(TWO), kind: 'command' };
test.each<readonly [turn: string, may: boolean]>([
  ['make it 500', true],
  ['half of that', true],
  ['perdón, me equivoqué', true],
  ['without it', true],
  ['the coconut smells', true],
  ['lovely', false],
  ['qué bien', false],
])('after a recipe “%s” may change it: %s', (turn, may) => {
  expect(mayChangeRecipe(RECIPE, turn)).toBe(may);
});
test('only a recipe is changed by an amount', () => {
  const dose: Ran = { kind: 'command', job: 'dose', command: 'dose', given: { colourant: 'mica' } };
  expect(mayChangeRecipe(dose, 'make it 500')).toBe(false);
  expect(mayChangeRecipe({ kind: 'contest' }, 'make it 500')).toBe(false);
  expect(mayChangeRecipe({ ...RECIPE, given: { size: '1 kg' } }, 'make it 500')).toBe(false);
});
