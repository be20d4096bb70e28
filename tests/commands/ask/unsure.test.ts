import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

async function asked(line: string) {
  const seat = { member: 'ines', group: 'unsure', language: 'en' as const, manages: false, roles: [] };
  const { answer } = await askLine(line, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  return answer;
}

test.each([
  'can i use the wobbly plonk on the soap',
  'can i put the soap on the windowsill',
  'lo hago con la radio puesta al lado del jabon',
])('%s: nothing is guessed, what always holds is said', async line => {
  const { headline, data, cautions } = await asked(line);
  expect(data).toMatchObject({ understood: { lye: 'unsure' } });
  expect(headline).toMatch(/lo dudoso se deja|what is in doubt is left alone/);
  expect(cautions.map(({ id }) => id)).toContain('lye-burns');
});

test('lye in another field is said to be one, with what always holds near lye behind it', async () => {
  const { headline, data, blocks, cautions } = await asked(
    'what lye is in relaxer and can i do it over a perm',
  );
  expect(data).toMatchObject({ understood: { outside: 'other' } });
  expect(headline).toContain('outside my field');
  expect(blocks[0]).toMatchObject({ text: expect.stringContaining('what is in doubt is left alone') });
  expect(cautions.map(({ id }) => id)).toContain('lye-burns');
});

test('goggles and gloves are a matter near lye, whatever else the words may be taken for', async () => {
  const { data } = await asked('are gloves enough or do i need goggles as well');
  expect(data).toMatchObject({ understood: { lye: 'no-goggles' } });
});

test('too much lye in the mould is told as such, however the slip is called', async () => {
  for (const line of [
    'se me pasó la mano con la sosa, tiré como 10 gramos de más y ya está en el molde. hay arreglo?',
    'i was heavy handed with the lye and it is in the mould, what now',
  ])
    expect((await asked(line)).data).toMatchObject({ understood: { lye: 'too-much-in' } });
});

test('it stays a question of colour where a colour is spoken of', async () => {
  expect((await asked('will glowing pigment survive lye')).data).not.toMatchObject({
    understood: { lye: 'unsure' },
  });
});

// "Jabón" is two letters off "latón", and a metal is found one letter sooner than any other name.
test.each(['jabon', 'the soap', 'horno', 'batter'])('%s is no misspelt metal', async item => {
  const seat = { member: 'ines', group: 'unsure', language: 'en' as const, manages: false, roles: [] };
  const { answer } = await askLine(`/colourant check item:"${item}"`, seat, conversation);
  expect(JSON.stringify(answer)).not.toContain('the metal reacts');
});

test('lye that lies dry under the oils is told before its amount', async () => {
  expect((await asked('i put 64 g lye in 500 g olive but forgot the water')).headline).toContain(
    'Do not pour water on it',
  );
});
