import { afterAll, beforeAll, expect, test } from 'vitest';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const answerTo = async (line: string, language: 'en' | 'es') => {
  const seat = { member: 'm', group: 'g', language, manages: false, roles: [] };
  const { answer } = await askLine(line, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(answer.kind);
  return answer;
};
const ENGLISH =
  'A whiff of rotten eggs with ultramarine is a little hydrogen sulfide, a poisonous gas: open the windows, stand back until it is gone, and keep every acid away.';

test('why ultramarine smells is answered, with what to look out for first', async () => {
  const { data, cautions } = await answerTo(
    '/ask question:"my ultramarine blue stinks of rotten eggs when I pour, is that normal?"',
    'en',
  );
  expect(data).toHaveProperty('understood.command');
  expect(cautions[0]).toMatchObject({ id: 'ultramarine-whiff', firm: true });
  expect(cautions[0]!.text).toContain(ENGLISH);
  expect(cautions.filter(({ id }) => id === 'ultramarine-whiff')).toHaveLength(1);
});

test('a diagnosis of the same words says it too, in both languages', async () => {
  const english = await answerTo(
    '/diagnose words:"ultramarine swirl stinks of bad eggs and went grey, why?"',
    'en',
  );
  expect(english.cautions[0]!.text).toContain(ENGLISH);
  const spanish = await answerTo(
    '/diagnose words:"huele a huevo podrido, le puse azul ultramar, normal?"',
    'es',
  );
  expect(spanish.cautions[0]!.text).toContain(
    'Un tufillo a huevo podrido con ultramar es un poco de sulfuro de hidrógeno, un gas venenoso: abre las ventanas, apártate hasta que se vaya y ningún ácido cerca.',
  );
});

test('with acid it is first aid and nothing else', async () => {
  const { data } = await answerTo(
    '/ask question:"ultramarine and vinegar stinks of rotten eggs, is that normal?"',
    'en',
  );
  expect(data).toMatchObject({ emergency: expect.anything() });
});

test('a smell of eggs with nothing named is first aid, and behind it what it usually is', async () => {
  const { data, headline, blocks } = await answerTo('/ask question:"fos, huele a huevo podrido"', 'es');
  expect(data).toMatchObject({ emergency: { id: 'hydrogen-sulfide' } });
  expect(headline).toContain('todos fuera ya');
  const told = blocks.flatMap(block => (block.kind === 'text' ? [block.text] : []));
  expect(told.some(text => text.startsWith('Un tufillo a huevo podrido con ultramar'))).toBe(true);
});

test.each([
  ['acid', 'i added vinegar and it smells of rotten eggs'],
  ['somebody who feels it', 'it smells of rotten eggs and my head hurts'],
  ['much of it', 'the whole kitchen smells of rotten eggs'],
])('with %s it is not said what it usually is', async (_, question) => {
  const { data, blocks } = await answerTo(`/ask question:"${question}"`, 'en');
  expect(data).toMatchObject({ emergency: expect.anything() });
  expect(JSON.stringify(blocks)).not.toContain(ENGLISH);
});
