import { describe, expect, test } from 'vitest';
import { languageOfQuestion } from '../../../../src/engine/questions/question-language.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

describe('a name and what is asked of it need no judge', () => {
  test.each([
    ['how much ultramarine', 'dose', 'ultramarine'],
    ['how much mica', 'dose', 'mica'],
    ['turmeric how much', 'dose', 'turmeric'],
    ['charcoal how much for proper black', 'dose', 'charcoal'],
    ['cuánto óxido rojo', 'dose', 'óxido rojo'],
    ['achiote cuanto', 'dose', 'achiote'],
    ['hey how much was it again for the clay', 'dose', 'clay'],
  ])('“%s” is a dose of it', (question, job, colourant) => {
    const { readings, outside } = readQuestion(question);
    expect(outside).toBeUndefined();
    expect(readings[0]).toMatchObject({ job });
    expect(readings[0]?.given.colourant?.normalize('NFD').replace(/\p{M}/gu, '')).toBe(
      colourant.normalize('NFD').replace(/\p{M}/gu, ''),
    );
  });

  test.each([
    ['best green', 'green'],
    ['what is the best blue?', 'blue'],
    ['cuál es el mejor azul', 'azul'],
  ])('“%s” wishes a colour', (question, target) => {
    expect(readQuestion(question).readings[0]).toMatchObject({ job: 'mix', given: { target } });
  });

  test.each([
    'how much ultramarine have I got left',
    'how much lye for 500 g olive',
    'how much mica and how much oxide for 2 cups of thin batter with white swirls on top of it',
    'cuánto queda de mica dorada',
    'how much does mica cost',
  ])('“%s” asks for something else', question => {
    expect(readQuestion(question).readings[0]?.score).not.toBe(1);
  });

  test('no contest is spoken of without a word of one', () => {
    for (const question of ['when do i put the colour in', 'cual es el mejor azul', 'ideas de colores'])
      expect(readQuestion(question).readings.map(({ job }) => job)).not.toContain('challenge');
    expect(readQuestion('when does the contest close').readings[0]?.job).toBe('challenge');
  });
});

describe('the language of a question, however short', () => {
  test.each([
    ['achiote cuanto', 'es'],
    ['vale gracias', 'es'],
    ['traza falsa q es', 'es'],
    ['carbon activado mancha?', 'es'],
    ['how much td', 'en'],
    ['what gloves', 'en'],
    ['mica vs oxide', undefined],
    ['', undefined],
    ['😀', undefined],
  ])('“%s” is in %s', (question, language) => {
    expect(languageOfQuestion(question)).toBe(language);
  });
});
