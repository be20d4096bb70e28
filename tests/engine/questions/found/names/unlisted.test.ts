import { expect, test } from 'vitest';
import { colourantsMeant } from '../../../../../src/engine/colourants/find.ts';
import { unlistedIn } from '../../../../../src/engine/questions/found/names/unlisted.ts';
import { wordsOf } from '../../../../../src/engine/questions/found/words-of.ts';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

/* A plant, a food or a powder that no list of ours holds is named as it was typed, and never sent away or read as another. */

test.each([
  ['does zobo leaf stay red', 'zobo leaf'],
  ['how much zobo leaf powder for 2 cups', 'zobo leaf powder'],
  ['raíz de ratania aguanta la sosa?', 'raiz de ratania'],
  ['el cempasúchil molido se pone café?', 'cempasuchil molido'],
  ['quassia bark in lye, what becomes of it', 'quassia bark'],
  ['dried tansy for yellow', 'dried tansy'],
  ['la chicha morada pinta?', 'chicha morada'],
])('“%s” names “%s”', (question, name) => {
  expect(unlistedIn(wordsOf(question))?.text).toBe(name);
});

test.each([
  'baking powder in the batter',
  'the soap leaves marks',
  'leche en polvo en la sosa',
  'coconut milk powder',
])('“%s” names none', question => {
  expect(unlistedIn(wordsOf(question))).toBeUndefined();
});

test.each([
  ['does zobo leaf survive lye', 'zobo leaf'],
  ['la chicha morada pinta?', 'chicha morada'],
  ['me vale el azafrán para el jabón', 'azafran'],
  ['will saffron hold in cold process', 'saffron'],
])('“%s” is a check of what it names', (question, item) => {
  const { readings, outside } = readQuestion(question);
  expect(outside).toBeUndefined();
  expect(readings[0]).toMatchObject({ command: 'colourant check', given: { item } });
});

test('saffron is not taken for turmeric, which goes by its name with another word', () => {
  expect(colourantsMeant('azafrán')).toEqual([]);
  expect(colourantsMeant('saffron')).toEqual([]);
  expect(colourantsMeant('azafrán de raíz').map(({ id }) => id)).toEqual(['turmeric']);
});
