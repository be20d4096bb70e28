import { expect, test } from 'vitest';
import type { Ran } from '../../../../src/engine/questions/leaning/before.ts';
import { isAsked, putInPlace, turnsToAnother } from '../../../../src/engine/questions/leaning/carried.ts';
import { leanOf } from '../../../../src/engine/questions/leaning/lean.ts';

test.each([
  ['how do I stop it next time', 'soda ash', 'how do I stop soda ash next time'],
  ['will that come off on towels', 'charcoal', 'will charcoal come off on towels'],
  ["it's going brown", 'the pink', 'the pink is going brown'],
  ['¿cómo lo evito?', 'la ceniza', '¿cómo evito la ceniza?'],
  ['¿se puede evitarla?', 'ceniza', '¿se puede evitar ceniza?'],
  ['¿por qué pasa eso?', 'la ceniza', '¿por qué pasa la ceniza?'],
] as const)('“%s” of %s is “%s”', (turn, subject, whole) => {
  expect(putInPlace(turn, subject)).toBe(whole);
});

test.each([['and the oils at 25'], ['y lo raro?'], ['this time thinner']])(
  '“%s” has no pronoun to put it in',
  turn => {
    expect(putInPlace(turn, 'soda ash')).toBeUndefined();
  },
);

test('what is told and what is asked are told apart', () => {
  for (const turn of [
    'do I bin it',
    'its in the mould like rubble. do I bin it',
    '¿la tiro?',
    'would white have stopped it',
  ])
    expect(isAsked(turn)).toBe(true);
  for (const turn of [
    'only on the top, the sides are grand',
    'son como agua, y hay mucha humedad',
    'it was clove',
  ])
    expect(isAsked(turn)).toBe(false);
  expect(turnsToAnother('my other batch went grainy')).toBe(true);
  expect(turnsToAnother('it went grainy on the other side')).toBe(false);
});

const RECIPE: Ran = {
  kind: 'command',
  job: 'lye',
  command: 'plan',
  given: { oils: '700 g olive, 250 g coconut, 50 g castor', superfat: '8' },
};
const after = (turn: string, before: Ran = RECIPE) =>
  leanOf(turn, { last: before, ran: before, subject: undefined, words: '' });
const given = (turn: string, before?: Ran) => {
  const lean = after(turn, before);
  return lean?.kind === 'runs' ? lean.readings[0]?.given : lean;
};
const ASKS = { kind: 'asks', lacks: 'whole-recipe' };

test('weights that are put right stand in the recipe, and every other oil stays', () => {
  const right = { oils: '750 g olive, 200 g coconut, 50 g castor', superfat: '8' };
  expect(given("hang on coconut's 200 and the olive 750")).toEqual(right);
  expect(given('sorry, 750 olive and 200 coconut')).toEqual(right);
  expect(given('perdón, el coco es 200 y el oliva 750')).toEqual(right);
});

test('what may be the whole of another recipe, names another oil or tells another unit is asked', () => {
  expect(given('no, 700 g olive')).toEqual(ASKS);
  expect(given('sorry thats 400 of the coconut')).toEqual(ASKS);
  expect(given('perdón, eran 300 del oliva')).toEqual(ASKS);
  expect(given('sorry, lard is 200 and the olive 750')).toEqual(ASKS);
  expect(given('no, coconut is 200 g', { ...RECIPE, given: { oils: '20 oz olive, 10 oz coconut' } })).toEqual(
    ASKS,
  );
});

test('a recipe that has to fit is scaled whole: 900 of 1,000 g is nine tenths of each oil (arithmetic)', () => {
  expect(given('mould only takes 900 of oils, so scale that down')).toEqual({
    oils: '630 g olive, 225 g coconut, 45 g castor',
    superfat: '8',
  });
  expect(given('me entran 500 g de aceites, ajústala')).toEqual({
    oils: '350 g olive, 125 g coconut, 25 g castor',
    superfat: '8',
  });
});
