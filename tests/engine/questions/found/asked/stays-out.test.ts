import { expect, test } from 'vitest';
import { staysOut } from '../../../../../src/engine/questions/found/asked/stays-out.ts';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

/*
 * What stays out of soap is looked at by its name where it is to go into soap: crayons and paints (their colours are not made for skin), poisons
 * of lead, mercury and arsenic (CLP annex VI, from memory), spirits in the place of water (they boil in hot lye: common practice). Of a cake,
 * a shed, a smell or a bar that is made nothing is asked of it.
 */

const checked = (question: string) => {
  const reading = staysOut(question, readQuestion(question));
  return reading && `${reading.command}: ${reading.given.item}`;
};

test('a yellow of shade cards is no dye of its name where a pigment for it is told', () => {
  expect(checked('I need a soft butter yellow, 28 oz oils, I have yellow oxide, how much')).toBeUndefined();
  expect(checked('cuánto titanio para 350 ml, quiero un blanco fuerte como tiza')).toBeUndefined();
  expect(readQuestion('a soft butter yellow, 28 oz oils, I have yellow oxide, how much').facts.named).toEqual(
    ['yellow oxide'],
  );
  expect(checked('is butter yellow ok in soap')).toBe('colourant check: butter yellow');
});

test.each([
  ['can I use crayons in soap', 'crayon'],
  ['can I use crayons', 'crayon'],
  ['crayons', 'crayon'],
  ['how much vermilion for 12 bars', 'vermilion'],
  ['how much lead white for a batch', 'lead white'],
  ['how much paris green for 12 bars', 'paris green'],
  ['emerald green pigment for 12 bars', 'emerald green'],
  ['red lead', 'red lead'],
  ['cinnabar, vermilion pigment', 'cinnabar'],
  ['can I use food colouring', 'food colouring'],
  ['food colouring gel, the sort for icing, will it keep', 'food colouring'],
  ['I have a jar of acrylic paint, is it enough for a batch', 'acrylic paint'],
  ['can I put vodka in soap instead of water', 'vodka'],
  ['vodka instead of water', 'vodka'],
  ['puedo usar vodka en vez de agua', 'vodka'],
  ['can I use vodka in soap', 'vodka'],
  ['how much turmeric juice for 2 cups', 'turmeric juice'],
  ['candle dye in soap', 'candle dye'],
  ['soft pastels in soap', 'soft pastel'],
  ['eyeshadow in soap', 'eyeshadow'],
  ['wall paint in soap', 'wall paint'],
  ['is nail polish ok in soap', 'nail polish'],
])('asked of soap: %s', (question, item) => {
  expect(checked(question)).toBe(`colourant check: ${item}`);
});

test('whether it is allowed is asked in the words of the law', () => {
  const jobOf = (question: string) => {
    const read = readQuestion(question);
    return staysOut(question, {
      ...read,
      outside: undefined,
      readings: [{ job: 'law', score: 1, command: 'colourant check', given: {}, missing: [] }],
    })?.job;
  };
  expect(jobOf('are crayons allowed in soap in the EU')).toBe('law');
  expect(staysOut('crayons in soap', { ...readQuestion('crayons in soap'), readings: [] })?.job).toBe(
    'survives-lye',
  );
});

test.each([
  ['bars of metal', 'how much vermilion for 12 iron bars'],
  ['a shed', 'red lead in the paint of my shed'],
  ['icing', 'food colouring in the icing, how long does it keep in the fridge'],
  ['icing', 'how much food colouring for the icing'],
  ['a house', 'how much lead white for my house'],
  ['a smell', 'my soap smells like old crayons'],
  ['a look', 'I want it to look like paint'],
  ['what it is not', 'soap and not paint'],
  ['a bar that is made', 'I put crayons in my soap and it went grey'],
  ['a shelf', 'add crayons to my shelf'],
  ['two things that do go in', 'vodka and red oxide and mica in soap'],
  ['wine', 'can I use rum in wine soap'],
  ['how pale', 'soft pastel yellow soap'],
  ['how pale', '1 lb oils, pastel'],
  ['a colourant', 'how much mica for 2 cups'],
  ['how paint comes off', 'how do I get paint off'],
  ['a juice by what colours it', 'carrot juice in soap'],
  ['a plan', 'plan a loaf with crayons'],
])('not of %s: %s', (_, question) => {
  expect(checked(question)).toBeUndefined();
});
