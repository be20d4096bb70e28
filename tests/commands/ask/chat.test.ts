import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

/* What asks nothing yet: chat is met in its own language, a cry that names nothing is asked one plain question. */

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

async function asked(question: string) {
  const seat = { member: 'neighbour', group: 'talkers', language: 'en' as const, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  return answer;
}
const labelsOf = (answer: Awaited<ReturnType<typeof asked>>) =>
  (answer.choices ?? []).map(one => one.kind === 'button' && one.label);

describe('chat', () => {
  test.each([
    ['sorry wrong group', 'No harm done.'],
    [
      'listo, ya quedo, foto mañana',
      'Bien hecho. Déjalo tapado y córtalo solo cuando esté firme, en uno o dos días.',
    ],
    [
      'hiya is this where i ask about colours',
      'Yes, ask away: which colour, how much oil, and which powders you have.',
    ],
    ['gracias mija me salvaste el batch', 'De nada. Pregunta lo siguiente cuando haga falta.'],
    ['holaaa alguien', 'Hola. Pregúntame con tus palabras por el color de tu jabón, o elige.'],
    [
      'order two bottles of coconut for me',
      'That I cannot do: I only answer here. I can say which colour to get, how much of it, and whether it holds.',
    ],
    [
      'pídeme dos kilos de coco a la tienda',
      'Eso no puedo hacerlo: solo respondo aquí. Puedo decir qué color conseguir, cuánto va y si aguanta.',
    ],
    ['nite all x', 'Good night, and may it still be soap in the morning.'],
    ['haha you lot', 'Here when you need me: ask about colour in your soap in your own words.'],
  ])('“%s”', async (question, headline) => {
    expect((await asked(question)).headline).toBe(headline);
  });
});

describe('a cry that names nothing', () => {
  test.each(['ugh', 'it looks weird', 'help', 'something went wrong'])(
    '“%s” is asked what happened, somebody hurt first',
    async question => {
      const answer = await asked(question);
      expect(answer.headline).toBe('What happened: in the pot, in the mould, or to a bar that is made?');
      expect(labelsOf(answer)).toEqual([
        'Lye or batter on somebody',
        'I meant: my batter gets thick: what now?',
        'I meant: my batter is grainy or split: what now?',
        'I meant: the colour turned in the pot',
        'I meant: it is rising out of the mould',
        'I meant: how do I get lumps out?',
        'I meant: what I can do',
      ]);
    },
  );

  test('in Spanish by who cries in Spanish', async () => {
    expect((await asked('se ve feo')).headline).toBe(
      '¿Qué pasó: en la olla, en el molde o en una pastilla ya hecha?',
    );
  });

  test('with a colour it is asked whether that is wished or came', async () => {
    const answer = await asked('brown help');
    expect(answer.headline).toBe('Do you want brown, or did something turn brown?');
    expect(labelsOf(answer)).toEqual(['I want brown', 'It turned brown']);
  });
});

describe('what colour a thing gives', () => {
  test.each([
    ['is alkanet purple or blue', /^Alkanet: lilac to grey-blue/u],
    ['madder root pink or red', /^Madder: pink with little, brick red with much/u],
    ['q color sale con maiz morado', /^«maiz morado» no conserva su color/u],
    ['café molido da color?', /^El café molido da puntos marrones que raspan/u],
  ])('“%s”', async (question, headline) => {
    expect((await asked(question)).headline).toMatch(headline);
  });
});
