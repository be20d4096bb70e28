import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import type { Language } from '../../src/engine/language.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { openConversation } from '../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

async function asked(question: string, language: Language = 'en') {
  const seat = { member: `maker of ${question}`, group: 'sums', language, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  return { headline: answer.headline, said: JSON.stringify(answer.blocks) };
}

describe('a batch that is shared among colours', () => {
  // A full dose by the catalogue: charcoal 1/2 tsp a cup, titanium dioxide 1/2 tsp a cup, ultramarine 1/4 tsp a cup.
  test('tells each of them for its part, the first one first', async () => {
    const { headline, said } = await asked(
      '1000 g oils in equal parts: charcoal, white and ultramarine blue. how much of each',
    );
    expect(headline).toMatch(/^Each of 3: 333 g oils\. 1 tsp activated charcoal for 333 g oils/);
    expect(said).toMatch(/1 tsp titanium dioxide for 333 g oils/);
    expect(said).toMatch(/1\/2 tsp ultramarine blue for 333 g oils/);
  });
});

describe('what stays out of soap gets no sum, whatever stands beside it', () => {
  test.each([
    ['1000 g oils in equal parts: vermilion, lead white and charcoal. how much of each', /lead white/],
    ['650 g oils 3 colours how much each, one is arsenic green', /arsenic/],
    ['20 g of lead white in a jar, batch is 1 kg, enough?', /lead white/],
    ['a good green pls, paris green maybe', /paris green/],
  ])('%s', async (question, named) => {
    const { headline } = await asked(question);
    expect(headline).toMatch(/does not go into soap/);
    expect(headline).toMatch(named);
  });

  test.each([
    [
      '1 kg de aceites en partes iguales: bermellón, blanco de plomo y carbón. cuánto de cada',
      /blanco de plomo/,
    ],
    ['20 g de cinabrio, el lote es de 1 kg, alcanza?', /cinabrio/],
  ])('%s', async (question, named) => {
    const { headline } = await asked(question, 'es');
    expect(headline).toMatch(/no entra en el jabón/);
    expect(headline).toMatch(named);
  });
});
