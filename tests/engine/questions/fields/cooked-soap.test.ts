import { describe, expect, test } from 'vitest';
import { asksOfTheCook } from '../../../../src/engine/questions/fields/cooked-soap.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { unaccented } from '../../../../src/engine/text/unaccented.ts';

describe('how hot process is cooked is another field: its hours and heat are those of its own recipe', () => {
  test.each([
    'How long on low in the slow cooker till hot process goes like mash?',
    'what temp do i keep the crock pot at for hot process, and do i stir',
    'jabón cocido en la caldera, cuántas horas de fuego hasta que se separe',
    'En hot process, ¿a cuántos grados mantengo la olla y cada cuánto revuelvo?',
  ])('%s', question => {
    expect(asksOfTheCook(unaccented(question))).toBe(true);
    expect(readQuestion(question).outside).toBe('hot-process');
  });

  test.each([
    ['its drying is ours', 'how long does hot process from the slow cooker need to cure'],
    ['its colour is ours', 'does mica hold in hot process if i cook it long, how long on low'],
    ['its lye is ours', 'how much lye for hot process with 500 g olive oil'],
    ['a pot that climbs is help', 'hot process is rising in the slow cooker, how long do i stir'],
    ['cold process is ours', 'how long do i stir cold process till trace'],
    ['no cook is asked', 'is hot process nicer than other soap'],
  ])('%s', (_, question) => {
    expect(asksOfTheCook(unaccented(question))).toBe(false);
  });

  test('a colourant that is named keeps it here', () => {
    expect(readQuestion('hot process, how long on low before the spirulina goes in').outside).not.toBe(
      'hot-process',
    );
  });
});
