import { describe, expect, test } from 'vitest';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { asksWhatTwoMake } from '../../../../src/engine/questions/jobs/two-together.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { foreseesTwo, pairTold } from '../../../../src/engine/questions/technique/two-hues.ts';

const asks = (question: string): boolean => {
  const { words, found } = foundIn(question);
  return asksWhatTwoMake(words, found);
};

describe('which colour two named colourants come to is foreseen by a preview of both', () => {
  test.each([
    ['what colour do chromium green and red oxide make', 'chromium green + red oxide'],
    ['brown oxide + rose clay = what?', 'brown oxide + rose clay'],
    ['if i mix titanium dioxide with charcoal what do i get', 'titanium dioxide + charcoal'],
    ['red oxide and titanium dioxide together, pink or salmon', 'red oxide + titanium dioxide'],
    ['do black oxide and titanium dioxide give grey', 'black oxide + titanium dioxide'],
    ['si mezclo óxido verde y óxido rojo sale café?', 'oxido verde + oxido rojo'],
    ['azul ultramar + rosa ultramar 1:1, ¿qué tono da?', 'azul ultramar + rosa ultramar'],
    ['carbón con arcilla rosa, que me da?', 'carbon + arcilla rosa'],
  ])('%s', (question, mix) => {
    const [reading] = readQuestion(question).readings;
    expect(reading).toMatchObject({ job: 'preview', command: 'preview', given: { mix } });
  });
});

describe('it is not asked', () => {
  test.each([
    ['of a hue that is wished', 'how do i make burgundy i got red oxide and charcoal'],
    ['of a hue that may be made', 'can you make teal out of indigo and turmeric or does it go swamp'],
    ['of a hue that is wanted', 'army green, i want it to give green with charcoal and turmeric'],
    ['of two beside one another', 'swirl of red oxide and titanium dioxide, what do i get'],
    ['of what lye does to both', 'ultramarine and red oxide in lye, what comes out'],
    ['of which is stronger', 'red oxide vs brown oxide what do i get, which is stronger'],
    ['of amounts that are told', '2 g red oxide and 1 g charcoal in 500 g, what do i get'],
    ['of three', 'red oxide and brown oxide and charcoal what do i get'],
    ['of one', 'charcoal and what do i get'],
  ])('%s', (_, question) => {
    expect(asks(question)).toBe(false);
  });
});

test('of blue and yellow, and of red and blue, it is told in words; of other pairs nothing is', () => {
  const named = (question: string) => pairTold(question);
  expect(named('ultramarine blue + yellow oxide = what? green or sludge')).toEqual({
    named: 'blue-and-yellow',
  });
  expect(named('óxido rojo con azul ultramar me da violeta?')).toEqual({ named: 'red-and-blue' });
  expect(named('titanium dioxide and charcoal')).toBeUndefined();
});

test('what the judge of jobs only took for a preview is not foreseen for a technique’s sake', () => {
  const read = readQuestion('what colour do chromium green and red oxide make');
  expect(foreseesTwo(read)).toBe(true);
  const [first] = read.readings;
  expect(foreseesTwo({ ...read, readings: [{ ...first!, score: 0.99 }] })).toBe(false);
  expect(foreseesTwo({ ...read, facts: { ...read.facts, named: ['red oxide'] } })).toBe(false);
});
