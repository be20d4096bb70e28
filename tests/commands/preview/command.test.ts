import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../../src/terminal/seat.ts';
import { openRoom } from '../../loopback/room.ts';
import { decoded } from '../../pictures/colours-in.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true, draws: true });
});
afterAll(() => room[Symbol.asyncDispose]());

const preview = (options: Record<string, string | boolean>) => room.member.run('/preview', options);
const hexIn = (text: string) => /#[\da-f]{6}/.exec(text)?.[0] ?? '';

/** The same question at the terminal, for its data. */
async function dataOf(line: string): Promise<Record<string, never>> {
  const seat = { member: 'data', group: 'home', language: 'en', manages: false, roles: [] } as const;
  const { answer } = await askLine(line, seat, room.conversation);
  return ('data' in answer ? answer.data : answer) as Record<string, never>;
}

describe('/preview on the chat platform', () => {
  test('puts the colour first: word, hex and plus-or-minus, in sight of the group', async () => {
    const answer = await preview({ mix: 'ultramarine violet pastel', portion: '2 cups' });
    expect(answer.ephemeral).toBe(false);
    expect(answer.text.split('\n')[0]).toMatch(/^## \w+, #[\da-f]{6} ± \d+: ultramarine violet$/);
    expect(answer.text).toContain('1/8 tsp in 2 cups');
    expect(answer.text).toContain('Estimated');
  });

  test('its card shows the very colour it names, large, and says in words what it shows', async () => {
    const answer = await preview({ mix: 'ultramarine blue medium + titanium dioxide 1/4 tsp' });
    const [card] = answer.files;
    expect(JSON.stringify(answer.raw)).toContain('Not gelled: Tint');
    const picture = await decoded(card?.bytes() ?? new Uint8Array());
    expect(picture.width).toBe(1350);
    // The mix, and the field of the medium row that is the same mix.
    expect(picture.count(hexIn(answer.text))).toBeGreaterThan(150_000);
  });

  test.each([
    ['a colourant nobody knows', { mix: 'zxqv wug pastel' }, /zxqv/],
    ['a smile', { mix: '🧼' }, /names no colourant/],
    ['six colours', { mix: 'a+b+c+d+e+f' }, /more turn to mud/],
    ['a metal with the reason', { mix: 'aluminium powder' }, /hydrogen/],
    ['a base nobody knows', { mix: 'gold mica', base: 'purple' }, /as a base/],
    ['a portion without a unit', { mix: 'gold mica', portion: '3' }, /needs a unit/],
    ['no amount at all', { mix: 'gold mica 0 tsp' }, /out of range/],
  ])('meets %s', async (_, options, sentence) => {
    const answer = await preview(options as Record<string, string>);
    expect(answer.text).toMatch(sentence);
    expect(answer.text.length).toBeLessThan(400);
  });

  test('shows an amount as it was told, and says where that is too much', async () => {
    const answer = await preview({ mix: 'gold mica 3 tsp' });
    expect(answer.text).toContain('1 Tbsp in 1 cup');
    expect(answer.text).toMatch(
      /Shown as you told it, but more than this portion should take: 1 tsp at most\. More colours the lather and the cloth\./,
    );
    room.member.grant({ locale: 'es-ES' });
    const spanish = await preview({ mix: 'mica dorada 3 cdta' });
    room.member.grant({ locale: 'en-US' });
    expect(spanish.text).toContain('Se ve lo que dijiste, pero es más de lo que esta porción debe llevar');
  });

  test('holds a depth of colour at its ceiling and says so', async () => {
    expect((await preview({ mix: '1/4 tsp ultramarine blue + gold mica 300% of full' })).text).toMatch(
      /most this portion takes|all were lessened|scaled/,
    );
  });

  test('says what one colour cannot: pearl by the angle, neon by its glow, lye by what is left', async () => {
    expect((await preview({ mix: 'gold mica' })).text).toContain('changes with the angle');
    expect((await preview({ mix: 'neon pink' })).text).toContain('Glows in daylight');
    expect((await preview({ mix: 'turmeric' })).text).toContain('what is left in the cured bar');
  });

  test('is in Spanish for a Spanish client, spoons included', async () => {
    room.member.grant({ locale: 'es-ES' });
    const answer = await preview({ mix: 'azul ultramar pastel + blanco 1/4 cdta', base: 'verde' });
    room.member.grant({ locale: 'en-US' });
    expect(answer.text).toContain('azul ultramar');
    expect(answer.text).toContain('1/16 cdta en 1 taza');
    expect(answer.text).toContain('base verdosa');
  });

  test('suggests the last colourant of a mix', async () => {
    const choices = await room.member.complete('/preview', { mix: 'gold mica + ultramarine b' }, 'mix');
    expect(choices.map(({ value }) => value)).toContain('gold mica + Ultramarine blue');
  });
});

describe('what the colour depends on', () => {
  type Lab = { l: number; a: number; b: number };
  const labOf = async (line: string) => ((await dataOf(line)).predicted as unknown as { lab: Lab }).lab;

  test('an olive base pulls blue toward green, gel makes it deeper, white makes it paler', async () => {
    const cream = await labOf('/preview mix:"ultramarine blue pastel" base:white');
    const green = await labOf('/preview mix:"ultramarine blue pastel" base:olive');
    const gelled = await labOf('/preview mix:"ultramarine blue pastel" base:white gel:yes');
    const white = await labOf('/preview mix:"ultramarine blue pastel + titanium dioxide 1/4 tsp" base:white');
    expect(green.a).toBeLessThan(cream.a);
    expect(gelled.l).toBeLessThan(cream.l);
    expect(Math.hypot(white.a, white.b)).toBeLessThan(Math.hypot(cream.a, cream.b));
  });

  test('spoons are what goes into the whole portion, a strength is whatever the portion', async () => {
    const one = await labOf('/preview mix:"ultramarine blue 1/8 tsp" portion:"1 cup"');
    const two = await labOf('/preview mix:"ultramarine blue 1/4 tsp" portion:"2 cups"');
    const strength = await labOf('/preview mix:"ultramarine blue 1/8 tsp per cup" portion:"2 cups"');
    expect(two.l).toBeCloseTo(one.l, 1);
    expect(strength.l).toBeCloseTo(one.l, 1);
  });
});
