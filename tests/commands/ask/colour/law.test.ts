import { expect, test } from 'vitest';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

/** All that is answered to a plain question, as text. */
async function answerTo(question: string, language: 'en' | 'es' = 'en') {
  await using conversation = await openConversation();
  const seat = { member: 'seller', group: 'law', language, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:"${question}"`, seat, conversation);
  return { headline: answer.kind === 'reply' ? answer.headline : '', all: JSON.stringify(answer) };
}

/* What each country goes by: from memory, as its authority tells it. */

const DECIDES = 'The law there decides';

test('who asks whether a colour is allowed in Canada is told what is likely, and that its law decides; who doses there is not', async () => {
  expect((await answerTo('is ultramarine blue allowed in Canada?')).headline).toContain(DECIDES);
  expect((await answerTo('how much ultramarine blue for 2 cups, I live in Canada')).all).not.toContain(
    DECIDES,
  );
});

test.each([
  ['en', 'is blue 1 permitted in Ireland', /^Blue 1 dye\. EU: every colour in it is in Annex IV/u],
  ['es', 'En Estados Unidos se puede usar carmín en jabón?', /^Carmín\. EE\. UU\.: todos sus colores/u],
  ['es', 'ultramar azul permitido en Argentina?', /^Azul ultramar\. Casi seguro que sí: .*ANMAT/u],
  [
    'en',
    'is ultramarine blue legal in soap in Kenya',
    /^Ultramarine blue\. Likely yes: allowed by the US and the EU\. I don’t hold Kenya’s own list/u,
  ],
] as const)('the law that was asked for is told first (%s): %s', async (language, question, headline) => {
  const answer = await answerTo(question, language);
  expect(answer.headline).toMatch(headline);
  // What lye does to it is told as well.
  expect(answer.all).toMatch(/raw soap|jabón crudo|wanders/u);
});

test('who asks how soap is sold by law is asked which colour, and is told no name that is none', async () => {
  expect((await answerTo('how do I sell soap at a fair legally')).headline).toMatch(/^Which colour\?/u);
});

test('what must never meet lye is refused first, however a law lists it', async () => {
  // Annex IV lists aluminium (CI 77000); in lye it gives off hydrogen.
  const { headline, all } = await answerTo('is aluminium powder legal in soap in the UK');
  expect(headline).toMatch(/^Never put metal powder or flake in soap batter\. Aluminium makes hydrogen/u);
  expect(all).not.toMatch(/allowed|likely/iu);
});
