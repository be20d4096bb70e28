import { describe, expect, test } from 'vitest';
import { isAskedGenerally } from '../../../../../src/engine/questions/lye/topics/asked-generally.ts';

/* Asked by a tutor who had seen nothing of the rules; whoever asks before doing it is answered, not alarmed. */
describe('asked before doing it', () => {
  test.each([
    'can I pour lye into hot tea',
    'can I add the lye while on the phone with my kid on my hip',
    'I have a parrot in the kitchen, is it ok to mix lye there',
    'puedo disolver la sosa en café caliente',
  ])('is a question: %s', text => {
    expect(isAskedGenerally(text)).toBe(true);
  });

  test.each([
    'I have a parrot in the kitchen, it is gasping, is it ok to mix lye there',
    'can I pour lye into hot coffee, it boils over',
    'I added lye to hot tea, can I stir it',
    'can I mix lye with my kid on my hip, he is coughing',
  ])('is none where something has happened or somebody is unwell: %s', text => {
    expect(isAskedGenerally(text)).toBe(false);
  });
});
