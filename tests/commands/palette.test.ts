import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
  for (const [item, colourant] of [
    ['Sea', 'ultramarine blue'],
    ['Brick', 'red iron oxide'],
    ['Straw', 'yellow iron oxide'],
    ['Snow', 'titanium dioxide'],
  ])
    await room.member.run('/shelf add', { item: item!, colourant: colourant!, amount: '50 g' });
});
afterAll(() => room[Symbol.asyncDispose]());

describe('/palette', () => {
  test('today: palettes in spoons of the own jars, drawn', async () => {
    const answer = await room.member.run('/palette today', {});
    expect(answer.ephemeral).toBe(true);
    expect(answer.text).toMatch(/\d palettes? from your shelf today/);
    expect(answer.text).toMatch(/Opposites: .*tsp (?:Sea|Straw|Brick)/);
    expect(answer.files.map(({ name }) => name)).toEqual(['palettes.png']);
    const one = await room.member.run('/palette today', { scheme: 'complementary' });
    expect(one.text).toMatch(/1 palette from your shelf/);
  });

  test('make: a mood with so many layers, a recipe for each', async () => {
    const { text } = await room.member.run('/palette make', { colours: 'sunset, four layers' });
    expect(text).toMatch(/\d of 4 colours reached from your shelf, 1 cup each/);
    expect(text.match(/off by [\d.]+, /g)).toHaveLength(4);
  });

  test('buy: what brings a green nearer, before and after', async () => {
    const answer = await room.member.run('/palette buy', { colours: '#5f8f5a, #2f6b46' });
    expect(answer.text).toMatch(/Buy .*chromium.*: off by [\d.]+ on average, [\d.]+ now/i);
    expect(answer.files.map(({ name }) => name)).toEqual(['to-buy.png']);
    const [, after, before] = /off by ([\d.]+) on average, ([\d.]+) now/.exec(answer.text) ?? [];
    expect(Number(after)).toBeLessThan(Number(before));
  });

  test('buy tells of the shelf at least what make gives with real spoons', async () => {
    const colours = '#26436b, #f1e7cf, #c9a13c';
    const made = (await room.member.run('/palette make', { colours })).text;
    const each = [...made.matchAll(/off by ([\d.]+), /g)].map(([, off]) => Number(off));
    expect(each).toHaveLength(3);
    const bought = (await room.member.run('/palette buy', { colours })).text;
    const now = Number(/([\d.]+) now/.exec(bought)?.[1]);
    expect(now).toBeLessThanOrEqual(each.reduce((sum, one) => sum + one, 0) / 3 + 0.05);
  });

  test('an empty shelf buys from plain soap, and makes nothing', async () => {
    expect((await room.steward.run('/palette buy', { colours: 'teal' })).text).toContain(
      'starts from plain soap',
    );
    expect((await room.steward.run('/palette today', {})).text).toContain('/shelf add');
  });

  test.each([
    ['🧼', /./],
    ['sunset, 99 layers', /2 to 8 colours/],
    ['constructor', /./],
    ['a,b,c,d,e,f,g,h,i', /1 to 8 colours/],
  ])('meets %s', async (colours, sentence) => {
    const { text } = await room.member.run('/palette make', { colours });
    expect(text).toMatch(sentence);
    expect(text).not.toContain('reached from your shelf');
    expect(room.faults).toEqual([]);
  });

  test('is in Spanish for a Spanish client', async () => {
    room.member.grant({ locale: 'es-ES' });
    const { text } = await room.member.run('/palette make', { colours: 'atardecer, tres capas' });
    room.member.grant({ locale: 'en-US' });
    expect(text).toMatch(/\d de 3 colores alcanzados/);
  });
});
