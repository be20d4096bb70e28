import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom();
});
afterAll(() => room[Symbol.asyncDispose]());

const first = async (question: string) => (await room.member.run('/ask', { question })).text.split('\n')[0];

describe('whoever names how much they would put in', () => {
  // Ceilings of the catalogue: ultramarine 1/2 tsp a cup, iron oxide 1/2 tsp a cup, mica 2 tsp a cup.
  test.each([
    ['is 3 tbsp ultramarine blue too much for 2 cups', /Too much: the most is 1 tsp; 3 tbsp is 9 times that/],
    [
      'i put 4 tsp red oxide in 1 cup is that too much',
      /Too much: the most is 1\/2 tsp; 4 tsp is 8 times that/,
    ],
    [
      'is 1/4 tsp ultramarine blue too much for 2 cups',
      /Not too much: the most is 1 tsp; 1\/4 tsp is 25 % of that/,
    ],
  ])('is told first whether that is too much: %s', async (question, told) => {
    expect(await first(question)).toMatch(told);
  });

  test('is told the dose alone where the amount is what is there', async () => {
    expect(await first('how much ultramarine for 2 cups, i have 5 g')).toMatch(/^## 1\/2 tsp/);
    expect(await first('ultramarine blue batter 500 g')).toMatch(/^## 1\/2 tsp/);
  });
});

describe('whoever tells a portion that can be none hears that, and no dose for another', () => {
  // 200 l is 845 cups; 300 kg of batter is more than 200 kg.
  test.each([
    'how much gold mica for 0 cups?',
    'how much gold mica for 3000 cups?',
    'how much gold mica for 300 kg of batter?',
    'cuánta mica dorada para 3000 tazas',
  ])('%s', async question => {
    const told = await room.member.run('/ask', { question });
    expect(told.text).toMatch(/200 (?:l|kg)/u);
    expect(told.text).not.toMatch(/tsp|cdta|named no portion|cuánta masa/u);
  });

  test('and a portion that is told nowhere is still 1 cup', async () => {
    expect((await room.steward.run('/ask', { question: 'how much gold mica?' })).text).toContain(
      'You named no portion, so this is for 1 cup of batter.',
    );
  });
});
