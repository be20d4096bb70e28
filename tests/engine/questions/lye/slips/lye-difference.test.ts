import { expect, test } from 'vitest';
import {
  differenceTopic,
  tellsDifference,
} from '../../../../../src/engine/questions/lye/slips/lye-difference.ts';
import { askLine } from '../../../../../src/terminal/seat.ts';
import { openConversation } from '../../../../sets/open-conversation.ts';

test.each([
  ['puse 15 g de sosa de más, 1000 g de oliva', 'too-much-in'],
  ['i put 15 g more lye than the recipe, 1000g of oils', 'too-much-in'],
  ['i used 15 g of lye too much, 700 g olive and 300 g coconut', 'too-much-in'],
  ['puse 20 g de sosa de menos, 1000 g de oliva', 'too-little-in'],
  ['can i put 15 g more lye', undefined],
  ['i put 142 g lye in 700 g olive and 300 g coconut', undefined],
])('%s: %s', (question, topic) => {
  expect(differenceTopic(question)).toBe(topic);
});

test('a weight that is all of the lye is no difference', () => {
  expect(tellsDifference('puse 142 g de sosa en 700 g oliva y 300 g coco')).toBe(false);
  expect(tellsDifference('142 g lye for 1000 g olive')).toBe(false);
});

test('15 g of lye too much are never checked as if they were all of it', async () => {
  await using conversation = await openConversation();
  const headline = async (question: string, language: 'en' | 'es') => {
    const seat = { member: 'maker', group: 'lye', language, manages: false, roles: [] };
    const { answer } = await askLine(`/ask question:"${question}"`, seat, conversation);
    return answer.kind === 'reply' ? answer.headline : '';
  };
  expect(await headline('puse 15 g de sosa de más, 1000 g de oliva, sobreengrasado 5%', 'es')).toMatch(
    /^No lo uses/u,
  );
  expect(await headline('i used 15 g of lye too much, 700 g olive and 300 g coconut', 'en')).toMatch(
    /^Do not use it/u,
  );
});
