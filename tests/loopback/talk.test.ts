import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Member, MessageView } from '../../src/loopback/interface.ts';
import { openRoom } from './room.ts';

/* Turns that lean on the one before, through the real client: asked as a command, written to us, and among members. */

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

/** What stands under a note: our answer. */
async function answerTo(who: Member, note: string, context?: 'bot-dm'): Promise<MessageView> {
  const place = context && { context };
  const seen = new Set(who.sees(place).map(({ id }) => id));
  const posted = await who.postMessage(note, [], place);
  return await room.host.nextMessage(
    ({ id, channelId, raw }) =>
      raw.author.id === room.host.botId && channelId === posted.channelId && !seen.has(id),
    { withinMs: 30_000 },
  );
}
const us = () => `<@${room.host.botId}>`;

test('a member goes on from a command with another, and the button runs the other reading', async () => {
  await room.member.run('/ask', { question: 'how much ultramarine blue for 2 cups?' });
  const half = await room.member.run('/ask', { question: 'half that' });
  expect(half.text).toMatch(/ultramarine blue for 1 cup/u);
  const other = half.controls.find(
    ({ label }) => label === 'I meant: portion:"2 cups" strength:"50% of full"',
  );
  expect((await room.member.press(half, other?.customId ?? '')).text).toMatch(/ultramarine blue for 2 cups/u);
  // What was pressed is what the next turn leans on.
  expect((await room.member.run('/ask', { question: 'and for 3 cups' })).text).toMatch(/for 3 cups/u);
});

test('notes that mention us lean on one another, and on nobody else’s', async () => {
  const cleo = room.group.addMember({ name: 'Cleo' });
  expect((await answerTo(cleo, `${us()} how much gold mica for 1 kg oils?`)).text).toMatch(/gold mica/u);
  expect((await answerTo(cleo, `${us()} and for 800g?`)).text).toMatch(/gold mica.* for 800 g oils/u);
  const dana = room.group.addMember({ name: 'Dana' });
  const asked = await answerTo(dana, `${us()} and for 800g?`);
  expect(asked.text).toMatch(/of which colourant\?/u);
  expect(asked.text).not.toMatch(/gold/u);
});

test('where we may read along, only a change of what was asked is answered unasked, where it is asked', async () => {
  await using along = await openRoom({ whole: true, readsMessages: true });
  const gil = along.group.addMember({ name: 'Gil' });
  const ours = () => gil.sees().filter(({ raw }) => raw.author.id === along.host.botId);
  const answered = (count: number) => expect.poll(() => ours().length, { timeout: 30_000 }).toBe(count);
  await gil.postMessage(`<@${along.host.botId}> how much gold mica for 2 cups?`);
  await answered(1);
  // These two may be said to anybody.
  await gil.postMessage('is it safe?');
  await gil.postMessage('and for 3 cups');
  await gil.postMessage('and for 4 cups?');
  await answered(2);
  expect(ours().some(({ text }) => /gold mica .*for 4 cups/u.test(text))).toBe(true);
  expect(along.faults).toEqual([]);
});

test('in private a turn needs no mention', async () => {
  await answerTo(room.member, 'how much gold mica for 2 cups', 'bot-dm');
  expect((await answerTo(room.member, 'and in grams', 'bot-dm')).text).toMatch(
    / g .*of gold mica .*for 2 cups/u,
  );
  expect((await answerTo(room.member, 'y en español?', 'bot-dm')).text).toMatch(/mica dorada/u);
});

test('what is asked in one place is no context in another', async () => {
  const eve = room.group.addMember({ name: 'Eve' });
  await eve.run('/ask', { question: 'how much charcoal for 2 cups' });
  expect((await answerTo(eve, 'lighter', 'bot-dm')).text).toMatch(/Of what\?/u);
});

test('what is remembered of a member is in their export, and gone once they erase what is recent', async () => {
  const finn = room.group.addMember({ name: 'Finn' });
  await finn.run('/ask', { question: 'how much rose clay for 500 g oils' });
  expect((await finn.run('/privacy show')).text).toContain(
    'what you asked last, for half an hour, written down nowhere',
  );
  const [file] = (await finn.run('/privacy export')).files;
  const about = JSON.parse(Buffer.from(file!.bytes()).toString('utf8'));
  expect(about.lately).toMatchObject([{ talk: { last: { given: { colourant: 'rose clay' } } } }]);
  const [theirs] = (await room.member.run('/privacy export')).files;
  expect(Buffer.from(theirs!.bytes()).toString('utf8')).not.toContain('rose clay');
  const sure = await finn.run('/privacy erase', { what: 'recent' });
  await finn.press(sure, sure.controls[0]?.customId ?? '');
  const [after] = (await finn.run('/privacy export')).files;
  expect(JSON.parse(Buffer.from(after!.bytes()).toString('utf8')).lately).toEqual([]);
  expect((await finn.run('/ask', { question: 'lighter' })).text).toMatch(/Of what\?/u);
});

test('no fault of ours on the way', () => expect(room.faults).toEqual([]));
