import { expect, test } from 'vitest';
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';

const idsIn = (text: string) => readEmergencies(text).map(({ id }) => id);

/*
 * Chlorine comes of pool chlorine and an acid as it does of household bleach (US EPA, "Pool chemical alert"; from memory).
 */
test.each([
  'pool shop granules went in with my citric acid. whole carport yellow',
  'pool granules and vinegar in one bucket, it went green and stinks',
  'mezclé pastillas de piscina con vinagre',
])('the gas of pool chlorine and an acid is met with first aid: %s', text =>
  expect(idsIn(text)).toContain('toxic-gas'),
);
test.each([
  'the pool shop is shut',
  'the pool granules are for the pool, the citric acid for the bath bombs',
])('and nothing is where nothing was mixed: %s', text => expect(idsIn(text)).toEqual([]));

test.each([
  'I drank in every word of your lye lesson',
  'tragué saliva y subí el precio',
  'the lye calculator ate my recipe',
  'volcano mould from the market, red mica down the sides',
])('a figure of speech hurts nobody: %s', text => expect(idsIn(text)).toEqual([]));
test.each([
  ['I drank in every word and then my son drank the lye water', 'lye-swallowed'],
  ['tragué saliva con sosa', 'lye-swallowed'],
  ['the calculator ate my recipe and the lye went in my eye', 'lye-eye'],
])('and takes nothing from what is told beside it: %s', (text, id) => expect(idsIn(text)).toContain(id));

test.each(['my sulphur soap smells of eggs, is that normal', 'mi jabón de azufre huele a huevo'])(
  'soap of sulphur smells so of itself (common practice): %s',
  text => expect(idsIn(text)).toEqual([]),
);
test.each([
  'my sulphur soap met vinegar and smells of rotten eggs',
  'my sulphur soap smells of rotten eggs and I feel dizzy',
  'si un día sale olor a huevo podrido con el jabón de azufre, ¿a quién se llama?',
])('but with acid, with somebody who feels it or who asks ahead, first aid is shown: %s', text =>
  expect(idsIn(text)).toContain('hydrogen-sulfide'),
);
test.each(["I've thrown out every aluminium spoon in my cupboard", 'ya boté las ollas de aluminio'])(
  'aluminium that was put away met no lye: %s',
  text => expect(idsIn(text)).toEqual([]),
);
test('that which fizzed did', () =>
  expect(idsIn('threw out the aluminium pot, it was fizzing with the lye in it')).toContain(
    'hydrogen-from-metal',
  ));
