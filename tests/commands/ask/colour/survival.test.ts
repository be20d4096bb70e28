import { afterAll, beforeAll, expect, test } from 'vitest';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const asked = async (question: string, language: 'en' | 'es' = 'en') => {
  const seat = { member: 'm', group: 'g', language, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(answer.kind);
  return answer;
};

test('a plant that the catalogue does not hold is answered by what colours it, with its source', async () => {
  const { headline, blocks } = await asked('does red cabbage survive lye?');
  expect(headline).toMatch(/“red cabbage” does not keep its colour.*anthocyanins/u);
  expect(JSON.stringify(blocks)).toContain('Eiro & Heinonen');
  expect((await asked('¿la col lombarda aguanta la sosa?', 'es')).headline).toContain(
    '«col lombarda» no conserva su color',
  );
});

test('a report of what came of a plant is a flaw; a tub for icing whose fate is asked is barred by its name', async () => {
  const jobOf = async (question: string, language: 'en' | 'es' = 'en') =>
    ((await asked(question, language)).data as { understood?: { job?: string } }).understood?.job;
  expect(await jobOf('puse pétalos de rosa molidos y se me han quedado marrones, por qué', 'es')).toBe(
    'diagnose',
  );
  expect(await jobOf('food colouring gel the blue sort for icing, will it keep')).toBe('survives-lye');
  expect(await jobOf('food colouring gel for icing, will it keep in the fridge')).toBeUndefined();
});

test('a wished hue with what is at hand for it is mixed, and no clay is told about', async () => {
  const { data } = await asked('quiero verde eucalipto, grisáceo, tengo arcilla verde y carbón', 'es');
  expect(data).toMatchObject({ understood: { job: 'mix' } });
});

test('a source that nobody has checked is told as one from memory', async () => {
  expect(JSON.stringify((await asked('does logwood survive lye')).blocks)).toContain('(from memory)');
  expect(JSON.stringify((await asked('does red cabbage survive lye')).blocks)).not.toContain('from memory');
});

test('as a juice it is told how it goes in for water, never folded', async () => {
  const { headline, cautions } = await asked('carrot juice in place of the water, stays orange?');
  expect(headline).toContain('carotenoids bear lye');
  expect(cautions).toMatchObject([{ text: expect.stringContaining('Never plain onto lye'), firm: true }]);
  expect((await asked('does red cabbage survive lye')).cautions).toEqual([]);
});

test('what is on no list is told so plainly', async () => {
  const { headline, blocks } = await asked('does jackfruit survive lye?');
  expect(headline).toContain('“jackfruit” is not on my list');
  expect(JSON.stringify(blocks)).toContain('only if it is sold for soap');
});

test('a spice that burns skin keeps its own answer', async () => {
  expect((await asked('does cinnamon keep its colour in soap')).headline).not.toContain('not on my list');
});

test('lye for something else is sent away with what keeps from harm behind it', async () => {
  const { headline, blocks, cautions } = await asked('how much lye to clear a blocked drain');
  expect(headline).toContain('Lye for anything other than soap is outside my field');
  expect(JSON.stringify(blocks)).toContain('never use drain cleaner as lye');
  expect(cautions.length).toBeGreaterThan(0);
});

test('soap that is only spoken of goes to its field', async () => {
  expect((await asked('which courier is cheapest for a box of soap')).headline).toContain('outside my field');
});
