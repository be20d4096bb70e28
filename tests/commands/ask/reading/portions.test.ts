import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wordsIn } from '../../../../src/words/index.ts';
import { openRoom } from '../../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom();
});
afterAll(() => room[Symbol.asyncDispose]());

const ask = (question: string) => room.member.run('/ask', { question });

describe('a portion that was reckoned is shown as it was', () => {
  test.each([
    ['6 wells, 90 ml each, charcoal in 3 of them. how much', '3 wells of 90 ml = 270 ml.'],
    ['a third of my 900 g oils gets charcoal, how much', '1/3 of 900 g oils = 300 g of oils.'],
    ['500 g of batter but i spilt 40, how much charcoal', '500 g batter less 40 = 460 g.'],
  ])('%s', async (question, told) => expect((await ask(question)).text).toContain(told));

  test('in Spanish', () => {
    const { reckoned } = wordsIn('es').ask;
    const comes = { measure: 'mass', grams: 300, of: 'oils' } as const;
    expect(reckoned({ by: 'share', share: '1/3', whole: '900 g oils', comes })).toBe(
      '1/3 de 900 g oils = 300 g de aceites.',
    );
    expect(reckoned({ by: 'count', count: 3, noun: 'huecos', each: '90 ml', comes: poured(270) })).toBe(
      '3 huecos de 90 ml = 270 ml.',
    );
    expect(reckoned({ by: 'lost', whole: '500 ml', lost: '40 ml', comes: poured(460) })).toBe(
      '500 ml menos 40 ml = 460 ml.',
    );
  });

  test('what is told as it is needs no reckoning', async () => {
    expect((await ask('how much charcoal for 2 cups of batter')).text).not.toContain(' = ');
  });
});

const poured = (millilitres: number) => ({ measure: 'volume', millilitres, of: 'batter' }) as const;

describe('two portions that both fit', () => {
  const QUESTION = 'charcoal for 300 ml, no 350 ml of batter, how much?';

  test('are asked for, and neither is dosed', async () => {
    const { text } = await ask(QUESTION);
    expect(text).toContain(
      'For 300 ml, or for 350 ml? Your words fit each, so I ask before I tell an amount.',
    );
    expect(text).not.toMatch(/tsp|spoon/u);
  });

  test('and the one that is chosen is answered', async () => {
    const answer = await ask(QUESTION);
    const button = answer.controls.find(({ label }) => label === '350 ml');
    expect((await room.member.press(answer, button?.customId ?? '')).text).toContain('350 ml');
  });

  test('in Spanish', () => {
    expect(wordsIn('es').ask.whichPortion({ portions: [poured(300), poured(350)] })).toBe(
      '¿Para 300 ml, o para 350 ml? Tus palabras valen para cada una, así que pregunto antes de decir una cantidad.',
    );
  });
});
