import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { openConversation } from '../../sets/open-conversation.ts';

/* Plain words that mean one command: what they are answered with. */

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

async function asked(line: string, language: 'en' | 'es' = 'en') {
  const seat = { member: 'plain', group: 'plain', language, manages: false, roles: [] };
  const { answer } = await askLine(line, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  return answer;
}
const textOf = (reply: Awaited<ReturnType<typeof asked>>) => JSON.stringify(reply.blocks);

test('a word of the trade is explained in a few short sentences, in the reader’s language', async () => {
  const trace = await asked('what is trace?');
  expect(trace.headline).toBe('Trace: the moment batter is thick enough that a drizzle stays on top.');
  expect(textOf(trace)).toMatch(/Light trace pours.*\/help/u);
  expect((await asked('¿qué es la traza?', 'es')).headline).toContain('hilo de masa');
  for (const language of ['en', 'es'] as const)
    for (const { means, more = '' } of Object.values(wordsIn(language).help.terms)) {
      const text = `${means} ${more}`.trim();
      // "1 %", "/calibrate" and "2 cups" end no sentence; a colon goes on.
      expect(text.split(/[.?!](?:\s|$)/u).filter(one => one !== '').length).toBeLessThanOrEqual(5);
      expect(text.length).toBeLessThanOrEqual(200);
    }
});

test('zap is explained with the caution that the tongue is no test (common practice)', async () => {
  expect((await asked('what is the zap test?')).headline).toContain('sting of free lye');
  expect(textOf(await asked('what is the zap test?'))).toContain('Never put soap on your tongue');
});

test('“what can I make today” is the palettes of the shelf, not a colour that is called today', async () => {
  await asked('/shelf add item:"ultramarine blue" amount:"20 g"');
  expect((await asked('what can I make today')).data).toMatchObject({
    understood: { command: 'palette today' },
  });
  expect((await asked('¿qué puedo hacer hoy?', 'es')).data).toMatchObject({
    understood: { command: 'palette today' },
  });
});

test('“undo” is offered, and done only on a press', async () => {
  const { headline, choices } = await asked('undo');
  expect(headline).toBe('Shall I do this? /shelf undo');
  expect(choices?.map(({ label }) => label)).toEqual(['Do it']);
});

test('the next date of a batch is read off the book', async () => {
  await asked('/batch poured made:"1 cup ultramarine blue 1/4 tsp" name:"Tide"');
  const { headline, data } = await asked('what is my next batch date');
  expect(data).toMatchObject({ understood: { command: 'batch dates' } });
  expect(headline).toContain('Tide');
});

test('“double my last recipe” rescales the newest one kept', async () => {
  expect((await asked('double my last recipe')).data).toMatchObject({
    understood: { command: 'recipe list' },
  });
  await asked('/plan oils:"coconut 30%, olive 70%" size:"500 g oils"');
  await asked('/recipe save name:"Everyday"');
  const { data } = await asked('double my last recipe');
  expect(data).toMatchObject({
    understood: { command: 'recipe rescale', given: { recipe: 'Everyday', size: '2' } },
    factor: 2,
  });
});

test('batter that went thick at once: what to do now comes first, why it did is a press away', async () => {
  const { headline, data, choices } = await asked('my batter went thick at once, what now?');
  expect(data).toMatchObject({ understood: { technique: 'thick-now' } });
  expect(headline).toContain('Stop the stick blender');
  expect(JSON.stringify(choices)).toContain('what went wrong');
  const told = await asked('yesterday my batter went thick at once when the scent went in');
  expect(told.data).toMatchObject({ understood: { command: 'diagnose' } });
  expect(told.headline).toContain('acceleration');
});

test('white that is only called white goes into the picture, and the line says how much', async () => {
  const { data } = await asked('what would ultramarine and a bit of white look like');
  expect(data).toMatchObject({
    understood: { command: 'preview', given: { mix: 'ultramarine + titanium dioxide pastel' } },
  });
});

test('of three new jars none is dropped: each is added by a press of its own', async () => {
  const { blocks, choices } = await asked('I have 3 new jars: gold mica 10 g, kaolin 50 g, madder root');
  expect(blocks).toEqual([
    {
      kind: 'rows',
      rows: [
        '/shelf add item:"gold mica" amount:"10 g"',
        '/shelf add item:kaolin amount:"50 g"',
        '/shelf add item:"madder root"',
      ],
    },
  ]);
  expect(choices?.length).toBe(3);
});

test('a plan without shares keeps its oils and colours, and asks for the shares alone', async () => {
  const { headline, data } = await asked('plan 1 kg soap with coconut, olive and palm, half blue half white');
  expect(headline).toContain('How much of each oil: coconut, olive, palm?');
  expect(data).toMatchObject({ understood: { given: { portions: '1/2 blue; 1/2 white' } } });
});
