import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
  for (const [item, colourant, price] of [
    ['Sea', 'ultramarine blue', '8 €'],
    ['Night', 'ultramarine blue', '4 €'],
    ['Snow', 'titanium dioxide', undefined],
  ] as const)
    await room.member.run('/shelf add', { item, colourant, amount: '50 g', ...(price && { price }) });
  // A level teaspoon that weighs twice what Night's does.
  await room.member.run('/shelf weigh', { item: 'Sea', amount: '6 g' });
  await room.member.run('/shelf weigh', { item: 'Night', amount: '3 g' });
});
afterAll(() => room[Symbol.asyncDispose]());

describe('/shelf compare', () => {
  test('says which is stronger by the spoon, what each takes, and which is cheaper', async () => {
    const answer = await room.member.run('/shelf compare', { one: 'Sea', other: 'Night' });
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toMatch(/^#* ?Sea is stronger: about 2 times Night, spoon for spoon/);
    expect(answer.text).toContain('Then they look alike');
    expect(answer.text).toMatch(/Night is the cheaper: €0\.0\d+ a cup, Sea €0\.\d+/);
  });

  test('a plain question leads there: named jars, or "my two blues"', async () => {
    const named = await room.member.run('/ask', { question: 'which is stronger, Sea or Night?' });
    expect(named.text).toContain('For the same depth of colour');
    const hue = await room.member.run('/ask', { question: 'which of my two blues is stronger?' });
    expect(hue.text).toContain('For the same depth of colour');
    expect(hue.text).toMatch(/Sea is stronger/);
  });

  test.each([
    ['itself', { one: 'Sea', other: 'sea' }, /same jar twice/],
    ['a white with a colour', { one: 'Sea', other: 'Snow' }, /different work/],
    ['nothing known', { one: 'Sea', other: 'constructor' }, /./],
    ['a smile', { one: '🧼', other: 'Sea' }, /./],
  ])('meets %s', async (_, options, sentence) => {
    const { text } = await room.member.run('/shelf compare', options);
    expect(text).toMatch(sentence);
    expect(text).not.toContain('stronger: about');
    expect(room.faults).toEqual([]);
  });

  test('is in Spanish for a Spanish client', async () => {
    room.member.grant({ locale: 'es-ES' });
    const { text } = await room.member.run('/shelf compare', { one: 'Sea', other: 'Night' });
    room.member.grant({ locale: 'en-US' });
    expect(text).toContain('Para la misma intensidad');
  });
});
