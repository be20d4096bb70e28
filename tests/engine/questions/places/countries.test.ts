import { describe, expect, test } from 'vitest';
import { mayBeOfShelf } from '../../../../src/engine/questions/fields/shelf-words.ts';
import { otherCountryIn } from '../../../../src/engine/questions/places/countries.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { wordsIn } from '../../../../src/words/index.ts';

describe('countries whose law no table holds', () => {
  test.each([
    ['is alkanet allowed in canada', 'CA'],
    ['are ultramarines ok in the uk still', 'GB'],
    ['neon pigments, australia, wash off', 'AU'],
    ['se permite el oxido rojo en chile', 'CL'],
    ['i sell in nueva zelanda', 'NZ'],
    ['neon pigments in nz, at a gala', 'NZ'],
    ['is carmine allowed here in uae', 'AE'],
    ['se permite en bolivia', 'BO'],
    ['allowed in trinidad?', 'TT'],
    ['are neons legal here in oz', 'AU'],
    ['bars that go to the united kingdom', 'GB'],
    ['permite México el violeta', undefined],
    ['permite mexico el violeta', 'MX'],
  ])('%s: %s', (text, country) => {
    expect(otherCountryIn(text)).toBe(country);
  });

  test.each([
    'is it allowed in france',
    'all my scales weigh in oz',
    'red oxide in the us',
    'chile ancho en polvo aguanta',
    'china clay',
  ])('%s: none of them', text => {
    expect(otherCountryIn(text)).toBeUndefined();
  });

  test('who asks for one is told that its list is not held, and that the UK’s began as the EU’s', () => {
    expect(readQuestion('is alkanet allowed in Canada?').facts.country).toBe('CA');
    expect(wordsIn('en').ask.lawElsewhere({ country: 'CA' })).toMatch(
      /^Canada keeps no list of permitted.* I hold only the lists of/u,
    );
    expect(wordsIn('en').ask.lawElsewhere({ country: 'KE' })).toBe(
      'I hold the lists of the US and the EU, none of Kenya’s: ask the authority there before you sell.',
    );
    expect(wordsIn('es').ask.lawElsewhere({ country: 'CL' })).toBe(
      'Tengo las listas de EE. UU. y de la UE, ninguna de Chile: pregunta a la autoridad de allí antes de vender.',
    );
    expect(wordsIn('en').ask.lawElsewhere({ country: 'GB' })).toContain('is the EU’s as it was carried over');
  });
});

test.each([
  [
    'how much ultramarine blue for 400 ml of batter, full strength, a proper strong blue not baby blue',
    'full',
  ],
  ['ultramarine for 400 ml, baby blue', 'pastel'],
])('%s: %s', (question, strength) => {
  expect(readQuestion(question).facts.strength).toBe(strength);
});

test.each([
  ['got 900g oils all told and a third of it wants doing with green clay', '1/3 of 900 g oils'],
  ['got 900g oils and a third of it is green clay already', '900 g oils'],
])('%s', (question, portion) => {
  expect(readQuestion(question).facts.portion).toBe(portion);
});

test('a shelf is shown to who asks for one, not to who fears the dust of lye', () => {
  expect(mayBeOfShelf('what is on my shelf')).toBe(true);
  expect(mayBeOfShelf('dime que hay en la repisa')).toBe(true);
  expect(mayBeOfShelf('me da miedo el polvo de sosa que me pongo')).toBe(false);
  expect(mayBeOfShelf('cuanto dura el jabon guardado en una caja')).toBe(false);
});
