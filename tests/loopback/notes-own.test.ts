import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { MessageView } from '../../src/loopback/interface.ts';
import { openRoom } from './room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
  const { member } = room;
  await member.run('/shelf add', { item: 'Evening sky', amount: '40 g', colourant: 'ultramarine blue' });
  await member.run('/shelf add', { item: 'gold mica', amount: '20 g' });
});
afterAll(() => room[Symbol.asyncDispose]());

/** What we post under a note of the member's that mentions us, where all members read it, or in private. */
async function answerTo(note: string, context?: 'bot-dm'): Promise<MessageView> {
  const { host, member } = room;
  const place = context && { context };
  const seen = new Set(member.sees(place).map(({ id }) => id));
  const posted = await member.postMessage(context ? note : `<@${host.botId}> ${note}`, [], place);
  return await host.nextMessage(
    ({ id, channelId, raw }) =>
      raw.author.id === host.botId && channelId === posted.channelId && !seen.has(id),
    { withinMs: 30_000 },
  );
}
const TO_ASK = 'That tells of what you keep for yourself, so I do not answer it here: ask it with /ask';

/** In one test: what is asked in the room is answered in order. */
describe('a note that all members read', () => {
  test.each([
    'how much Evening sky for 2 cups?',
    'preview gold mica + Evening sky',
    'will Evening sky survive lye?',
    'how much gold mica for 2 cups?',
    'what is on my shelf?',
    'take 5 g off Evening sky',
    'what palettes can I make today',
    'undo',
    'when is my next batch due',
    'which is stronger, Evening sky or charcoal?',
    'how do I make navy?',
  ])('“%s” tells nothing of the jars of who asks, and where to ask instead', async note => {
    const { text } = await answerTo(note);
    expect(text).not.toMatch(/evening sky/iu);
    expect(text).toContain(TO_ASK);
  });

  test.each(['how much evening sk for 2 cups', 'show my batches'])(
    '“%s”, of which nothing is known, names none either',
    async note => {
      expect((await answerTo(note)).text).not.toMatch(/evening sky/iu);
    },
  );

  test('nor does one that goes on from a question of theirs alone', async () => {
    await room.member.run('/dose', { colourant: 'Evening sky', portion: '2 cups' });
    expect((await answerTo('and for 3 cups?')).text).not.toMatch(/evening sky/iu);
  });

  test('is answered where nothing of theirs stands in it', async () => {
    expect((await answerTo('how much charcoal for 2 cups?')).text).toMatch(/activated charcoal/u);
  });

  test('in private names the jar', async () => {
    expect((await answerTo('how much Evening sky for 2 cups?', 'bot-dm')).text).toMatch(
      /Evening sky for 2 cups/u,
    );
    expect((await answerTo('what is on my shelf?', 'bot-dm')).text).toMatch(/Evening sky/u);
  });

  test('names it once its owner shows their jars to the group, but never their shelf', async () => {
    await room.member.run('/prefer', { jars: 'shown' });
    expect((await answerTo('how much Evening sky for 2 cups?')).text).toMatch(/Evening sky for 2 cups/u);
    expect((await answerTo('what is on my shelf?')).text).toContain(TO_ASK);
  });

  test('no fault of ours on the way', () => expect(room.faults).toEqual([]));
});
