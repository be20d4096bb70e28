import { describe, expect, test } from 'vitest';
import { withoutWhoAsks } from '../../../../../../src/engine/questions/lye/recipe-line/talk/who-asks.ts';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

const RECIPE = {
  en: '600 g olive, 250 g coconut, lye at 5%?',
  es: '600 g de oliva y 250 g de coco, ¿sosa al 5%?',
};
const OILS = { en: '600 g olive, 250 g coconut', es: '600 g oliva, 250 g coco' };

describe('who asks, and how kindly, is nothing of the recipe', () => {
  test.each([
    ['es', 'Hola, soy Maricruz, nueva aquí.'],
    ['es', 'Buenas tardes, somos Nelly y Rubén.'],
    ['es', 'Me llamo Pilar.'],
    ['es', 'perdón por la ortografía.'],
    ['es', '¿me podrían decir la sosa?'],
    ['en', 'Hello, I am from Poland.'],
    ['en', 'my name is Ann, new here.'],
    ['en', 'sorry for my english.'],
    ['en', 'um,'],
  ] as const)('%s: %s', (language, said) =>
    expect(readInChat(`${said} ${RECIPE[language]}`).given.oils).toBe(OILS[language]),
  );
  test.each([
    'soy de las que quitan el coco ; 600 g oliva',
    'i am out of coconut ; 600 g olive',
    'i am a spoon short of coconut ; 600 g olive',
    'soy el que olvido la mitad ; 600 g oliva',
  ])('what speaks of an oil or turns a recipe stays: %s', line => expect(withoutWhoAsks(line)).toBe(line));
});

describe('a discount of lye, fat kept back and a bare purity are read', () => {
  test.each([
    ['mutton tallow 800 g, coconut 200 g. Ten percent off the lye. lye?', { superfat: 10 }],
    ['800 g lard, 100 g coconut, NaOH con un 3% de menos', { superfat: 3 }],
    ['750 g mutton tallow. lye, keeping 5 per cent of the fat back?', { superfat: 5 }],
    ['3 kg de oliva. ¿sosa, dejando un 3 por ciento de grasa sin hacer jabón?', { superfat: 3 }],
    ['500 g sunflower, 2% superfat. Potassium hydroxide, mine is 99 pure. how much lye?', { lye: 'KOH 99%' }],
  ])('%s', (question, given) => expect(readInChat(question).given).toMatchObject(given));
  test('99 before an oil is its weight', () =>
    expect(isAskedBack('KOH 99 pure olive 500 g, lye?')).toBe(true));
});
