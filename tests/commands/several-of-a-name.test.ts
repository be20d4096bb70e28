import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

describe('a name that several colours have, whose dose is the same', () => {
  test('is answered for all of them: none is picked, and what lye does to each is told', async () => {
    const { text } = await room.member.run('/dose', { colourant: 'blue mica', portion: '2 cups' });
    const [headline] = text.split('\n');
    expect(headline).toContain('blue mica');
    expect(headline).not.toContain('interference');
    // That one of them shows white over pale soap is true of none of the others.
    expect(text).not.toContain('looks white');
    // Iron blue (Prussian blue, CI 77510) falls apart in alkali: Colour Index; the catalogue's own row.
    expect(text).toMatch(/iron blue[^\n]*(?:loses|fades|brown|destroy)/iu);
    expect(text).toMatch(/Green mica[^\n]*holds in some/u);
  });
});

describe('/first-aid alone', () => {
  test.each([
    ['en-GB', 'Lye or raw soap in an eye or on skin: running water on it now'],
    ['es-ES', 'Sosa o jabón crudo en un ojo o en la piel: agua corriente ya'],
  ] as const)('says the first thing to do before it asks what happened: %s', async (locale, told) => {
    const member = room.group.addMember({ name: `Someone ${locale}`, locale });
    const { text } = await member.run('/first-aid');
    expect(text.indexOf(told)).toBeGreaterThanOrEqual(0);
    expect(text.indexOf(told)).toBeLessThan(text.indexOf('what:'));
  });
});

test('a jar that is added by spoons weighs on the list what it weighed when it was added', async () => {
  const added = await room.member.run('/shelf add', {
    item: 'Gold dust',
    amount: '2 tsp',
    colourant: 'gold mica',
  });
  const [, grams = ''] = /([\d.]+ g) of “Gold dust”/u.exec(added.text) ?? [];
  expect(grams).toMatch(/^\d+\.\d+ g$/u);
  expect((await room.member.run('/shelf list')).text).toContain(grams);
});
