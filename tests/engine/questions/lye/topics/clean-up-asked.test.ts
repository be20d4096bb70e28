import { describe, expect, test } from 'vitest';
import { isAskedGenerally } from '../../../../../src/engine/questions/lye/topics/asked-generally.ts';
import { lyeTopicIn } from '../../../../../src/engine/questions/lye/topics/topics.ts';

// From memory: safety data sheets of sodium hydroxide, section 6: spills are swept up and washed away with water.
describe('with what lye is cleaned off the bench is asked calmly', () => {
  test.each([
    'con qué limpio la soda que se me cayó en el mesón, vinagre o pura agua',
    'what do I clean lye off the worktop with, vinegar or water',
  ])('%s', text => {
    expect(lyeTopicIn(text)).toBe('clean-up');
    expect(isAskedGenerally(text)).toBe(true);
  });
  test.each([
    'con qué limpio la soda que me cayó en la mano y en el mesón',
    'how do I clean lye off the floor, it got on my foot',
  ])('but not where it is on somebody: %s', text => expect(isAskedGenerally(text)).toBe(false));
});
