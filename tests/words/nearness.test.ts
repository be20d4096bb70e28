import { expect, test } from 'vitest';
import { wordsIn } from '../../src/words/index.ts';

/**
 * Two colours seen one after the other are told apart from about 2.3 CIELAB units on (Mahy, Van Eycken and Oosterlinck
 * 1994, from memory): only below that is nothing to be seen. The further bounds are common practice, and no word may
 * promise more than the uncertainty that stands beside it.
 */
test.for([
  [0, 'too close to tell apart', 'no se distinguen'],
  [2, 'too close to tell apart', 'no se distinguen'],
  [3, 'very close, within 3', 'muy cerca, a 3 como mucho'],
  [5, 'very close, within 5', 'muy cerca, a 5 como mucho'],
  [6, 'should be close: within 6', 'debería quedar cerca: a 6 como mucho'],
  [8, 'should be close: within 8', 'debería quedar cerca: a 8 como mucho'],
  [9, 'a related colour: within 9', 'un color emparentado: a 9 como mucho'],
  [14, 'a related colour: within 14', 'un color emparentado: a 14 como mucho'],
  [15, 'a rough guess: within 15', 'a ojo: a 15 como mucho'],
] as const)('a colour known within %d units is called %s', ([within, english, spanish]) => {
  expect(wordsIn('en').match.nearness({ within })).toBe(english);
  expect(wordsIn('es').match.nearness({ within })).toBe(spanish);
});
