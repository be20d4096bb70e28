import { describe, expect, test } from 'vitest';
import { plainWords } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { hydroxideUnknown } from '../../../../../src/engine/questions/lye/recipe-line/doubts/not-the-lye.ts';
import { careTopicIn, lyeTopicIn } from '../../../../../src/engine/questions/lye/topics/topics.ts';

const RECIPE = {
  en: '600 g olive, 300 g coconut, 100 g castor, how much at 5%?',
  es: '600 oliva 300 coco 100 ricino, ¿cuánta le pongo al 5%?',
};

// Crystal drain openers hold aluminium, which gives off hydrogen in lye (safety data sheets of drain openers, section 10; from memory).
describe('lye that is sold for drains is refused, however far from its name that is told', () => {
  test.each([
    `Tengo sosa en escamas que compré a granel en una droguería, dice el señor que es de la de desatascar. ${RECIPE.es}`,
    `la sosa que tengo es de la de desatascar. ${RECIPE.es}`,
    `I've lye flakes I bought loose at a hardware place, the man says it's the drain kind. ${RECIPE.en}`,
    `My caustic soda is what the plumber sold my brother for drains. ${RECIPE.en}`,
  ])('%s', question => expect(lyeTopicIn(question)).toBe('drain-cleaner'));
  test.each([
    `la sosa lleva unas bolitas plateadas. ${RECIPE.es}`,
    `mi sosa trae virutas metálicas. ${RECIPE.es}`,
    `the lye has little silver beads in it. ${RECIPE.en}`,
    `my lye came with metal bits. ${RECIPE.en}`,
  ])('metal in it: %s', question => expect(careTopicIn(question)).toBe('drain-cleaner'));
  test.each([
    `silver mica beads for my soap, 600 g olive, how much lye?`,
    'how much lye for 500 g olive oil at 5%?',
    'the lye is all down the drain, do I weigh it anew?',
  ])('of something else: %s', question => expect(lyeTopicIn(question)).not.toBe('drain-cleaner'));
});

describe('a hydroxide that lies in a bag or jar without a label is asked for, with what is told in between', () => {
  test.each([
    'tengo sosa en perlas en un bote sin etiqueta',
    'tengo sosa en escamas que compré a granel en una droguería, en bolsa sin etiqueta',
    'caustic soda from the hardware shop, decanted in a jar without a label',
    'my lye came in an unlabelled bag',
    'lye flakes a friend gave me, the tub has no label',
  ])('%s', said => expect(hydroxideUnknown(plainWords(said, { clauses: true }))).toBeDefined());
  test.each([
    'my lye is flakes from a bag with a label',
    'sosa en un bote con etiqueta',
    'lye, and a jar of honey',
  ])('%s', said => expect(hydroxideUnknown(plainWords(said, { clauses: true }))).toBeUndefined());
});

test('sediment of used oil is none of lye', () => {
  const said = (what: string) =>
    careTopicIn(`${what} usado 2 litros colado, pero saqué agua y posos. Cuánta sosa al 3%`);
  expect(said('Aceite')).not.toBe('cloudy-lye');
  expect(careTopicIn('mi sosa con agua tiene posos')).toBe('cloudy-lye');
});
