import { describe, expect, test } from 'vitest';
import { readEmergencies } from '../../../../../src/engine/hazards/emergencies/read.ts';
import { lyeAmissIn } from '../../../../../src/engine/questions/lye/slips/amiss.ts';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

describe('lye of which it is asked whether it is too much', () => {
  test.each([
    'is 142 g of lye too much for 600 g lard and 400 g palm',
    'Is 142 g sodium hydroxide too much for cottonseed 600 g and palm 400 g?',
    'would 142 g lye be too much for 1000 g lard',
    '¿son 142 g de sosa demasiado para 600 g de manteca de cerdo y 400 g de palma?',
  ])('is all that was weighed, not so much on top: %s', text => {
    expect(lyeAmissIn(text)).toBeUndefined();
  });

  test('is on top where somebody says so', () => {
    expect(
      lyeAmissIn('5 g too much lye in a 2 kg batch with 8% superfat, throw it out?')?.percentOver,
    ).toBeCloseTo(2, 0);
  });

  test('percent over on the fat is superfat, not lye', () => {
    expect(
      lyeAmissIn('300g of lard, 300 of olive, what caustic, 7% over on the fat (superfat)'),
    ).toBeUndefined();
    expect(lyeAmissIn('1000 g olive oil, the lye went in 7% over')?.percentOver).toBeCloseTo(7, 5);
  });

  test('a hand that slipped is no hand that was burnt', () => {
    expect(readEmergencies('Eché 138 g de sosa a 300 g de coco y 500 g de oliva, se me fue la mano')).toEqual(
      [],
    );
    expect(readEmergencies('me cayó sosa en la mano')).not.toEqual([]);
  });
});

describe('the part of a batch that is coloured', () => {
  const portionOf = (text: string) => readQuestion(text).facts.portion;
  test('is as large as is told of it, not a third of that', () => {
    expect(portionOf('Splitting into three, and one of those, 1 cup, gets indigo')).toBe('1 cup');
    expect(portionOf('split 3 cups in three, one of those gets indigo')).toBe('1/3 of 3 cups');
  });

  test('is of oils where an aside says that the weight is of oils', () => {
    expect(portionOf('a 3 lb batch (thats the oils), a third of it gets yellow oxide')).toMatch(/oils/);
    expect(portionOf('a 3 lb batch, a third of it gets yellow oxide')).not.toMatch(/oils/);
  });
});
