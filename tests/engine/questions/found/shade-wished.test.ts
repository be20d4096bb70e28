import { describe, expect, test } from 'vitest';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { shadeWished } from '../../../../src/engine/questions/found/shade-wished.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

const shadeOf = (question: string) => {
  const { words, found } = foundIn(question);
  return shadeWished(words, found.things)?.text;
};

describe('the shade that a dose is to come to is heard, whatever stands before it', () => {
  test.each([
    ['indigo powder, 900 g oils, denim not navy. amount', 'denim'],
    ['madder root for 750 g of batter to come out the colour of a brick chimney', 'brick'],
    ['óxido rojo para 600 g de masa, un ladrillo suave', 'ladrillo'],
  ])('%s', (question, shade) => {
    expect(shadeOf(question)).toBe(shade);
  });
  test.each([
    ['a plain hue tells the powder', 'charcoal for 500 g batter, strong black'],
    ['how deep tells how strong', 'red oxide for 500 g batter, a deep dark red'],
    ['none is said', 'red oxide for 500 g batter'],
  ])('%s', (_, question) => {
    expect(shadeOf(question)).toBeUndefined();
  });
});

test('who doses for a shade is offered what mixes to it', () => {
  const { readings, facts } = readQuestion('how much indigo powder for 900 g oils, denim not navy');
  expect(facts.target?.text).toBe('denim');
  expect(readings.map(({ command }) => command)).toEqual(['dose', 'match']);
  expect(readings[1]!.given).toEqual({ target: 'denim', portion: '900 g oils' });
  // Without a shade nothing is offered beside a sure dose.
  expect(readQuestion('how much indigo powder for 900 g oils').readings).toHaveLength(1);
});
