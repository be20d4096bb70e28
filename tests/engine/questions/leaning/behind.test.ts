import { describe, expect, test } from 'vitest';
import { ofLyeBefore } from '../../../../src/engine/questions/leaning/behind/after-lye.ts';
import {
  asksOfSuds,
  namesOil,
  namesOilOrFigure,
  saysOtherwise,
  tellsOfPoured,
} from '../../../../src/engine/questions/leaning/behind/names-another.ts';
import {
  isOfAmount,
  onlyTells,
  tellsWhatItBecame,
} from '../../../../src/engine/questions/leaning/behind/said-since.ts';

/* What a turn says behind another one. The words are our own. */

describe('one thing more is told, and nothing asked', () => {
  test.each([
    ['paprika', true],
    ['it was goats milk', true],
    ['what about paprika', false],
    ['y si le echo leche?', false],
    ['/help', false],
    ['it stings', false],
    ['we used the paprika from the tin again', false],
  ])('%s', (turn, is) => expect(onlyTells(turn)).toBe(is));
});

test('what something became is told by the verb of becoming', () => {
  expect(tellsWhatItBecame('it went blue grey')).toBe(true);
  expect(tellsWhatItBecame('se puso gris al echarlo')).toBe(true);
  expect(tellsWhatItBecame('blue grey')).toBe(false);
});

test('an amount is no sign of a flaw', () =>
  expect(['200 g', 'how much', 'cuánta', 'crumbly'].map(isOfAmount)).toEqual([true, true, true, false]));

test('an oil or a figure may change a recipe', () => {
  expect(namesOil('cambio por coco')).toBe(true);
  expect(namesOilOrFigure('cambio 200')).toBe(true);
  expect(namesOilOrFigure('cambio eso')).toBe(false);
});

test('who says that it was otherwise is not told the same once more', () =>
  expect(['no use', 'nunca', 'it wasn’t'.replace('’', "'"), 'ok'].map(saysOtherwise)).toEqual([
    true,
    true,
    true,
    false,
  ]));

test('batter that is in its mould is poured, and suds are no batter', () => {
  expect([tellsOfPoured('ya esta en el molde'), tellsOfPoured('in the pot')]).toEqual([true, false]);
  expect([asksOfSuds('will the lather be pink'), asksOfSuds('will the loaf be pink')]).toEqual([true, false]);
});

describe('after a matter of lye', () => {
  const goneOn = (question: string, named: readonly string[] = []) =>
    ofLyeBefore(question, { named }, { last: { kind: 'matter', id: 'cloudy-lye' }, ran: undefined });
  test('a few words that name nothing new are of that lye', () => {
    expect(goneOn('it smells')).toEqual({ kind: 'goes-on', topic: 'cloudy-lye' });
    expect(goneOn('it has lumps at the bottom')).toEqual({ kind: 'goes-on', topic: 'undissolved-lye' });
    expect(goneOn('and my mica sank')).toBeUndefined();
    expect(goneOn('it smells', ['madder'])).toBeUndefined();
  });
  test('lye water that was answered as a colour is no spoon of oil', () => {
    const talk = {
      last: { kind: 'technique', id: 'mica-floats' },
      ran: undefined,
      words: 'white stuff in my lye water',
    } as const;
    expect(ofLyeBefore('it sank to the bottom', { named: [] }, talk)).toEqual({ kind: 'unsure' });
    expect(ofLyeBefore('it sank to the bottom of the oil', { named: [] }, talk)).toBeUndefined();
  });
});
