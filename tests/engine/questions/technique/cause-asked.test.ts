import { describe, expect, test } from 'vitest';
import { readQuestion } from '../../../../src/engine/questions/read.ts';
import { asksCause } from '../../../../src/engine/questions/technique/cause-asked.ts';

const asks = (question: string) => asksCause(question, readQuestion(question));

describe('of batter that went thick a report that ends in why asks for the cause', () => {
  test.each([
    'it went thick as porridge 20 secs after the clove oil went in. why',
    'soap went solid ten seconds after i put the fragrance in, what happened',
    'quedó duro como puré en un minuto cuando eché la esencia, ni llegué al molde. q pasó',
  ])('%s', question => {
    expect(asks(question)).toBe(true);
  });
  test.each([
    [
      'who stands before the pot is told what to do',
      'it went thick after the clove oil, why, what do i do now',
    ],
    ['what still lies in the pot is', 'it went thick after the clove oil and is still in the pot, why'],
    ['who asks nothing is too', 'it went thick after the clove oil went in'],
    ['who asks before it happens has no flaw', 'will it go thick with clove oil and why'],
  ])('%s', (_, question) => {
    expect(asks(question)).toBe(false);
  });
});
