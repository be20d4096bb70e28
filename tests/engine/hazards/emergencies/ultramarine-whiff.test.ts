import { describe, expect, test } from 'vitest';
import { isUltramarineWhiff, readEmergencies } from '../../../../src/engine/hazards/index.ts';

/* Hydrogen sulfide comes of ultramarine and acid; a faint smell in lye is common practice (no source). The smell alone warns of
 * nothing: the nose goes blind (ICSC 0165; see the first aid's own sources). So whatever tells of more is no whiff. */

test.each([
  'My ultramarine blue stinks of rotten eggs when I pour?? is something wrong with the lye',
  'huele a huevo podrido, le puse azul ultramar, normal?',
  'does ultramarine hold up, heard it stinks of eggs',
  'Which of the ultramarines smelt of bad eggs in the batter',
])('asked why it smells, and nothing else told: %s', text => {
  expect(isUltramarineWhiff(text)).toBe(true);
});

test.each(['ultramarine smells like egg', 'my ultramarine smells of eggs', 'el ultramar huele a huevo'])(
  'a smell of egg that is not called rotten is one: %s',
  text => expect(isUltramarineWhiff(text)).toBe(true),
);

test.each([
  'ultramarine smells like egg and my head hurts',
  'ultramarine smells of eggs in the whole room',
  'the soap smells like egg',
])('first aid stays where more is told than that: %s', text => expect(isUltramarineWhiff(text)).toBe(false));

describe('first aid stays where', () => {
  test.each([
    ['acid is told', 'is it normal that ultramarine and citric acid stink of eggs?'],
    ['it was washed with something sour', 'why does the ultramarine smell of bad eggs with descaler?'],
    ['it is strong', 'the ultramarine smells of rotten eggs really strong, is that normal?'],
    ['it is in the whole room', 'ultramar y huele a huevo podrido en toda la casa, ¿normal?'],
    ['it got hot', 'my ultramarine batter got hot and smells of rotten eggs, why?'],
    ['somebody feels it', 'ultramarine stinks of rotten eggs and my head hurts, is that normal?'],
    ['it is smelt no more', 'the ultramarine stank of eggs and I cannot smell it any more, normal?'],
    ['no ultramarine is named', 'the soap smells of rotten eggs, is that normal?'],
    ['it is no question', 'the ultramarine stinks of rotten eggs'],
    [
      'it is a long story',
      `is it normal that ultramarine stinks of bad eggs? ${'we poured on. '.repeat(16)}`,
    ],
  ])('%s', (_why, text) => {
    expect(isUltramarineWhiff(text)).toBe(false);
    expect(readEmergencies(text).map(({ id }) => id)).toContain('hydrogen-sulfide');
  });
});
