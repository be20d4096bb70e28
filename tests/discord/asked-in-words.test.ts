import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { png } from '../loopback/host-bench.ts';
import { openRoom } from '../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
let spanish: typeof room.member;
beforeAll(async () => {
  room = await openRoom({ whole: true, readsMessages: true, host: { acknowledgeWithinMs: 240_000 } });
  spanish = room.group.addMember({ name: 'Inés', locale: 'es-ES' });
});
afterAll(() => room[Symbol.asyncDispose]());

const photo = { name: 'bar.png', bytes: png };

describe('“Answer this” on anybody’s message', () => {
  test.each([
    ['why is there white powder on top of my bars', /soda ash[\s\S]*\/diagnose/iu],
    [
      'how much ultramarine blue for 2 cups of batter',
      /\/dose colourant:"?ultramarine blue"? portion:"?2 cups/u,
    ],
    ['lye splashed in my eye', /rinse|running water|flush/iu],
    ['what wick for an 80 mm soy candle', /candle/iu],
  ])('%s', async (text, expected) => {
    const posted = await room.steward.postMessage(text);
    const answer = await room.member.menu('Answer this', posted);
    expect(answer.text).toMatch(expected);
    expect(answer.ephemeral).toBe(true);
  });

  test.each([
    ['por qué mi jabón tiene polvo blanco por encima', /ceniza[\s\S]*\/diagnose/iu],
    ['cuánto óxido rojo para 500 g de masa', /\/dose colourant:"?oxido rojo"? portion:"?500 g batter/u],
    ['me saltó sosa al ojo', /agua/iu],
  ])('%s', async (text, expected) => {
    const posted = await room.steward.postMessage(text);
    const answer = await spanish.menu('Answer this', posted);
    expect(answer.text).toMatch(expected);
  });

  test('a picture without words is looked at', async () => {
    const posted = await room.steward.postMessage('', [photo]);
    expect((await room.member.menu('Answer this', posted)).text).toMatch(/\/diagnose/u);
  });

  test('a forwarded message is answered for what it says', async () => {
    const posted = await room.steward.postMessage('how much gold mica for 3 cups of batter');
    const forwarded = room.member.forward(posted);
    const answer = await room.member.menu('Answer this', forwarded);
    expect(answer.text).toMatch(/\/dose colourant:"?gold mica"? portion:"?3 cups/u);
  });
});

describe('a note that is typed in the room', () => {
  const answerTo = async (text: string): Promise<string> => {
    const before = room.member.sees().length;
    await room.member.postMessage(text);
    return vi.waitFor(
      () => {
        const seen = room.member.sees();
        expect(seen.length).toBeGreaterThan(before + 1);
        return seen.at(-1)!.text;
      },
      { timeout: 20_000, interval: 50 },
    );
  };

  test.each([
    ['how much ultramarine blue for 2 cups of batter?', /\/dose/u],
    ['why did my soap get white powder on top?', /\/diagnose/u],
    ['¿cuánto óxido rojo para 500 g de masa?', /\/dose/u],
    ['I got lye in my eye', /water/iu],
  ])('%s', async (text, expected) => expect(await answerTo(text)).toMatch(expected));

  test.each(['see you at the market on sunday?', 'lovely bars, Odile!', 'does anybody need a lift?'])(
    'talk among members stays theirs: %s',
    async text => {
      const before = room.member.sees().length;
      await room.member.postMessage(text);
      // The next question is answered after it would have been.
      await answerTo('how much gold mica for 1 cup of batter?');
      expect(room.member.sees().length).toBe(before + 3);
    },
  );
});
