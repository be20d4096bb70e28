import { expect, test } from 'vitest';
import type { Ran, Talk } from '../../../../src/engine/questions/leaning/before.ts';
import { leanOf } from '../../../../src/engine/questions/leaning/lean.ts';

/* What is told after the lye of a recipe: the figure that was given stands on what the pot holds. */

const recipe = (oils: string, more: Partial<Ran> = {}): Ran => ({
  kind: 'command',
  job: 'lye',
  command: 'plan',
  given: { oils, superfat: '5' },
  ...more,
});
const talk = (last: Talk['last']): Talk => ({ last, ran: last.kind === 'command' ? last : undefined });
const given = (turn: string, before: Talk['last']) => {
  const lean = leanOf(turn, talk(before));
  return lean?.kind === 'runs' ? lean.readings[0]?.given : lean?.kind === 'asks' ? lean.lacks : lean;
};
/** Whether the recipe is asked for, or that oil is in what is reckoned. */
const asksOrHolds = (oil: string, found: ReturnType<typeof given>): boolean =>
  found === 'whole-recipe' || JSON.stringify(found).includes(oil);

// Arithmetic: 800 g told, 1,600 g or 2,400 g after "double" and "triple"; what takes that back is of the 800 g.
test.each([
  [2, 'no sorry I meant half', '400 g lard'],
  [2, 'no perdón, quería decir la mitad', '400 g lard'],
  [3, 'ay no, la mitad', '400 g lard'],
  [0.5, 'no, double', '1600 g lard'],
  [0.5, 'no, el triple', '2400 g lard'],
])('%f times, then “%s”', (scaled, turn, oils) => {
  const now = `${800 * scaled} g lard`;
  expect(given(turn, recipe(now, { scaled }))).toEqual({ oils, superfat: '5' });
});
test.each(['and half?', 'y la mitad', 'triple it'])(
  'of a recipe that was doubled nobody knows what “%s” is of',
  turn => {
    expect(given(turn, recipe('1600 g lard', { scaled: 2 }))).toBe('whole-recipe');
    expect(given('no, half', recipe('900 g lard', { scaled: 'to-size' }))).toBe('whole-recipe');
  },
);
test.each([
  ['double', '1600 g lard', 2],
  ['la mitad', '400 g lard', 0.5],
])('“%s” is remembered as a multiple of what was told', (turn, oils, scaled) => {
  const lean = leanOf(turn, talk(recipe('800 g lard')));
  expect(lean?.kind === 'runs' && lean.readings[0]).toMatchObject({ given: { oils }, scaled });
});
test('a recipe for another size is no multiple', () => {
  const lean = leanOf('and for 900 g', talk(recipe('800 g lard')));
  expect(lean?.kind === 'runs' && lean.readings[0]).toMatchObject({ scaled: 'to-size' });
});

const TWO = '600 g tallow, 200 g coconut';
test.each([
  ['my scale just said the tallow is really 540', '540 g tallow, 200 g coconut'],
  ['oh my scale says the tallow is really 430', '430 g tallow, 200 g coconut'],
  ['my scale was wrong about the coconut, it’s 180', '600 g tallow, 180 g coconut'],
  ['weighed again, tallow 540 coconut 210', '540 g tallow, 210 g coconut'],
  ['mi báscula dice que el coco son 150 en verdad', '600 g tallow, 150 g coconut'],
  ['new scale says the tallow is actually 190, do i change the lye?', '190 g tallow, 200 g coconut'],
  ['sorry the coconut was 150 not 200', '600 g tallow, 150 g coconut'],
])('“%s” is another weight of that oil', (turn, oils) => {
  expect(given(turn, recipe(TWO))).toMatchObject({ oils });
});
test.each([
  'my scale shows the tallow 20 over and the coconut 10 under',
  'perdona, el coco eran 20 cucharadas no 200 gramos',
  'sorry the coconut was 20 spoons not 200 g',
  'and if i leave the coconut out altogether?',
  'vale olvida el coco del todo',
  'oh and I added 100g castor since',
  'actually forget the coconut',
])('“%s” asks for the recipe, and never lets the figure stand', turn => {
  expect(asksOrHolds('castor', given(turn, recipe(TWO)))).toBe(true);
});
test.each([
  'and if i leave the castor out altogether?',
  'vale olvida el coco del todo',
  'it is 85% pure, the koh',
])('“%s” after a recipe that no longer stands asks for it whole', turn => {
  expect(given(turn, { kind: 'recipe', hadOne: true })).toBe('whole-recipe');
});
test('an oil that came in since is never a pot of its own', () => {
  expect(given('oh and I added 100g shea since', { kind: 'matter', id: 'water-amount' })).toBe(
    'whole-recipe',
  );
});

test.each([
  ['uy y tenía que haber dicho sosa, jabon duro', { oils: TWO, superfat: '5' }],
  ['should have said caustic soda', { oils: TWO, superfat: '5' }],
  ['lo mismo con sosa al 8', { oils: TWO, superfat: '8' }],
  ['the same with naoh at 8', { oils: TWO, superfat: '8' }],
])('“%s” is the other lye, whose purity is no longer the potash’s', (turn, laid) => {
  const before = recipe(TWO, { given: { oils: TWO, superfat: '5', lye: 'KOH 90%' } });
  expect(given(turn, before)).toEqual(laid);
});
test.each([
  ['es del 85 la potasa', { lye: 'KOH 85%' }],
  ['my KOH is 85%', { lye: 'KOH 85%' }],
])('“%s” is how pure it is', (turn, laid) => {
  const before = recipe(TWO, { given: { oils: TWO, superfat: '5', lye: 'KOH' } });
  expect(given(turn, before)).toEqual({ oils: TWO, superfat: '5', ...laid });
  expect(given(turn, recipe(TWO))).toBe('whole-recipe');
  expect(given(turn, { kind: 'matter', id: 'potash' as never })).toBe('whole-recipe');
});
test.each(['85', 'and for 100', 'is 30% castor too much', 'what colour does olive give'])(
  '“%s” is neither a purity nor a weight',
  turn => {
    const found = given(turn, recipe(TWO)) as { purity?: string; oils?: string } | undefined;
    expect(found?.purity).toBeUndefined();
  },
);

test('a superfat with its reason is no weight of the oil that is named', () => {
  expect(given('no 20 superfat cos of all the tallow', recipe(TWO))).toEqual({ oils: TWO, superfat: '20' });
});

const THREE = '600 g olive, 250 g coconut, 150 g palm';
const LIKE = { given: { oils: THREE, superfat: '20' } };
test.each([
  [
    'oh hang on i misread my own handwriting, the coconut is 150 and the palm is the 250',
    '600 g olive, 150 g coconut, 250 g palm',
  ],
  ['uy que he bailado los numeros, el coco son 100 y la palma 250', '600 g olive, 100 g coconut, 250 g palm'],
  ['what would it have been with 300 coconut? just being nosy', '600 g olive, 300 g coconut, 150 g palm'],
])('“%s” keeps the other oils and the superfat that was told', (turn, oils) => {
  expect(given(turn, recipe(THREE, LIKE))).toEqual({ oils, superfat: '20' });
});
test.each([
  'ah crud my scale had slipped to grams when I poured the coconut. so theres 2 grams of coconut in there not ounces',
  'put 50 g castor in too',
  '40 g shea at trace, I forgot to say',
  'y la palma fuera',
  'el coco al final no lo echo',
  'la cera al final no la echo',
  'so does the lye change?',
  '¿y cambia la sosa?',
])('“%s” asks for the recipe, and is neither a colour nor a flaw', turn => {
  expect(asksOrHolds('50 g castor', given(turn, recipe(THREE, LIKE)))).toBe(true);
});
test.each([
  'managed to save 90 g of it so I will go with that',
  'Lo he repuesto con almendras dulces pero solo 50',
])('“%s” behind the question for the recipe is still no recipe', turn => {
  expect(given(turn, { kind: 'recipe', hadOne: true })).toBe('whole-recipe');
});
test('the total and the superfat are changed in few words', () => {
  expect(given('al final el total en 500 g', recipe(THREE, LIKE))).toEqual({
    oils: '300 g olive, 125 g coconut, 75 g palm',
    superfat: '20',
  });
  expect(given('anyway whats mine at 8 then', recipe(THREE, LIKE))).toEqual({ oils: THREE, superfat: '8' });
});
test.each([
  'how much lye for 300 g olive and 100 g coconut at 5%',
  'how much mica for 500 g olive soap',
  'olive 700 shea 300',
  'how long does olive soap cure',
  'melt coconut at 40 degrees?',
])('“%s” is of that pot no more', turn => {
  expect(leanOf(turn, talk(recipe(THREE, LIKE)))?.kind ?? 'alone').not.toBe('runs');
  expect(given(turn, recipe(THREE, LIKE))).not.toBe('whole-recipe');
});

// What could not be reckoned with certainty is asked for whole, never laid over the recipe.
test.each([
  [
    'a word that nobody here knows',
    TWO,
    'my scale says the tallow is really 540 before I drained the crackle',
  ],
  [
    'grams told of a recipe by ounces',
    '20 oz tallow, 8 oz coconut',
    'my scale says the tallow is really 540',
  ],
  ['ounces told of a recipe by grams', TWO, 'my scale says the tallow is really 19 oz'],
  ['two figures beside one oil', TWO, 'my scale says the tallow is really 540, or is it 450'],
  ['an oil that was not in it', TWO, 'wrong, my scale says tallow 540 and shea 80'],
])('%s, of %s: “%s”', (_, oils, turn) => {
  expect(given(turn, recipe(oils))).toBe('whole-recipe');
});
test('a recipe that has another total is no multiple', () => {
  for (const turn of ['make it 900 g of oils in total', 'total 900 g'])
    expect(leanOf(turn, talk(recipe('800 g lard')))).toMatchObject({
      readings: [{ given: { oils: '900 g lard' }, scaled: 'to-size' }],
    });
});
