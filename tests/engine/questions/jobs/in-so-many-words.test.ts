import { describe, expect, test } from 'vitest';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { jobInSoManyWords } from '../../../../src/engine/questions/jobs/in-so-many-words.ts';

const jobOf = (question: string) => {
  const { words, found } = foundIn(question);
  return jobInSoManyWords(words, found);
};

describe('a jar is noted in whatever words it is told to be', () => {
  test.each([
    'stick brown oxide on my list, just got a bag',
    'put down that I have got 30 grams of pink mica left',
    'chuck rose clay onto the shelf for me',
    'apúntame que tengo 50 g de óxido verde',
    'agrega mica dorada a mi lista',
  ])('%s', question => {
    expect(jobOf(question)).toBe('shelf-add');
  });
  test.each([
    'put the red oxide batter on the top shelf',
    'take brown oxide off my list',
    'put the loaf with red oxide on the shelf',
    'borra la mica dorada de mi lista',
    'add lye to my list with the red oxide',
  ])('not: %s', question => {
    expect(jobOf(question)).toBeUndefined();
  });
});

describe('whether a thing may colour soap is whether it survives lye', () => {
  test.each([
    'is it okay to colour with paprika',
    'se puede teñir el jabón con remolacha',
    'can i tint it with spirulina',
  ])('%s', question => {
    expect(jobOf(question)).toBe('survives-lye');
  });
  test.each(['can i colour my wool with madder', 'i colour with paprika', 'can i colour rice with turmeric'])(
    'not: %s',
    question => {
      expect(jobOf(question)).toBeUndefined();
    },
  );
});

describe('a hue that is wished of several powders is to be mixed', () => {
  test.each([
    'dusty mauve. i have ultramarine violet, brown oxide, td, rose clay. ratios?',
    'how much ultramarine and yellow oxide for a nice moss green',
    'verde musgo con azul ultramar y óxido amarillo, ¿en qué proporción?',
  ])('%s', question => {
    expect(jobOf(question)).toBe('mix');
  });
  test.each([
    ['one powder makes none', 'mauve with rose clay, ratio?'],
    ['no hue is wished', 'ultramarine violet, brown oxide: ratios?'],
    ['no proportion is asked', 'mauve, i have rose clay and brown oxide'],
  ])('%s', (_, question) => {
    expect(jobOf(question)).toBeUndefined();
  });
});
