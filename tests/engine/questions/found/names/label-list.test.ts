import { describe, expect, test } from 'vitest';
import { staysOut } from '../../../../../src/engine/questions/found/asked/stays-out.ts';
import { foundIn } from '../../../../../src/engine/questions/found/found-in.ts';
import { labelListIn } from '../../../../../src/engine/questions/found/names/label-list.ts';
import { wordsOf } from '../../../../../src/engine/questions/found/words-of.ts';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

const listOf = (question: string) => labelListIn(wordsOf(question)).map(({ text }) => text);

describe('a label that is read out is read whole, water and what keeps the jar too', () => {
  test.each([
    // E numbers: EU Regulation 1333/2008: E 102 tartrazine, E 133 brilliant blue, E 202 potassium sorbate.
    ['cake colour. Label: water, glycerin, E102, E133, E202', ['water', 'glycerin', 'e102', 'e133', 'e202']],
    [
      'un colorante que dice propilenglicol, rojo allura, agua. resiste?',
      ['propilenglicol', 'rojo allura', 'agua'],
    ],
    ['leo en la etiqueta: mica, CI 77891, CI 77510. ¿sirve?', ['mica', 'ci 77891', 'ci 77510']],
  ])('%s', (question, list) => {
    expect(listOf(question)).toEqual(list);
  });

  test.each([
    ['two are no list', 'water, E133. would it hold'],
    ['no colour is on it', 'water, glycerin, citric acid, is that fine'],
    ['colours for a loaf are no label', 'layers of cocoa, rose clay, kaolin and green clay'],
    ['a gap ends it', 'water, my shoes, E133, glycerin'],
  ])('%s', (_, question) => {
    expect(listOf(question)).toEqual([]);
  });
});

test('a kitchen colour whose label names its dye is checked by that label; without one it stays out', () => {
  const told = readQuestion('blue food colouring, water, E133, citric acid. would it hold in cold process');
  expect(told.readings[0]?.given.ingredients).toBe('water, e133, citric acid');
  expect(
    staysOut('blue food colouring, water, E133, citric acid. would it hold in cold process', told),
  ).toBeUndefined();
  const untold = 'does blue food colouring hold in cp soap';
  expect(staysOut(untold, readQuestion(untold))?.given.item).toBe('food colouring');
  // A poison stays out whatever is read out beside it.
  const poison = 'cinnabar dye: water, E133, glycerin. will it hold in soap';
  expect(staysOut(poison, readQuestion(poison))).toBeDefined();
});

test('a list of oils or of portions is no label', () => {
  expect(listOf('how much lye for olive, coconut, water')).toEqual([]);
  expect(foundIn('red oxide, ultramarine blue for 500 g batter').found.things).toHaveLength(2);
});
