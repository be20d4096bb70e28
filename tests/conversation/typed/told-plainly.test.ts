import { afterAll, beforeAll, expect, test } from 'vitest';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const seatIn = (language: 'en' | 'es') =>
  ({ member: `bea-${language}`, group: 'bench', language, manages: false, roles: [] }) as const;
const ask = async (line: string, language: 'en' | 'es' = 'en') =>
  (await askLine(line, seatIn(language), conversation)).answer;

test('an option is read as a plain question would tell it, and the answer says as what', async () => {
  const line = '/dose colourant:"ultramarine blue" portion:"entre todos los aceites suman 900"';
  expect(await ask(line)).toMatchObject({
    kind: 'reply',
    data: { readAs: '900 g oils' },
    blocks: expect.arrayContaining([expect.objectContaining({ text: 'Read as 900 g oils.' })]),
  });
  expect(await ask(line, 'es')).toMatchObject({
    blocks: expect.arrayContaining([expect.objectContaining({ text: 'Leído como 900 g de aceites.' })]),
  });
});

test('the dose is that of the amount in plain words', async () => {
  const told = await ask('/dose colourant:"ultramarine blue" portion:"kilo of oils dead on"');
  const plain = await ask('/dose colourant:"ultramarine blue" portion:"1 kilo oils"');
  expect(told.kind === 'reply' && told.headline).toBe(plain.kind === 'reply' && plain.headline);
});

test('almonds in a list of oils are their oil, and the answer says so', async () => {
  const answer = await ask('/plan oils:"karité 60 g, almendras 90 g, oliva 450 g"');
  expect(answer).toMatchObject({
    data: { readAs: '60 g karite, 90 g aceite de almendras dulces, 450 g oliva' },
  });
});

test('a figure that no reading takes is asked about, each reading a button', async () => {
  const line = '/dose colourant:"ultramarine blue" portion:"500g oils then lye n that on top, or 600"';
  const answer = await ask(line);
  expect(answer).toMatchObject({
    kind: 'problem',
    id: 'amount-several',
    text: '“500g oils then lye n that on top, or 600” has more than one figure that may be meant: 500 g oils, or 600 g oils? Write the one you mean.',
    choices: [{ label: '500 g oils' }, { label: '600 g oils' }],
  });
  expect(await ask(line, 'es')).toMatchObject({
    text: 'En «500g oils then lye n that on top, or 600» hay más de una cifra que puede valer: ¿500 g de aceites, o 600 g de aceites? Escribe la que quieres decir.',
    choices: [{ label: '500 g de aceites' }, { label: '600 g de aceites' }],
  });
});

test('what neither reader takes is refused as before', async () => {
  expect(await ask('/dose colourant:"ultramarine blue" portion:"some of the pot"')).toMatchObject({
    kind: 'problem',
    id: expect.stringMatching(/^amount-/),
  });
});
