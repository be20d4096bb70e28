import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type { Member, MessageView } from '../../src/loopback/interface.ts';
import { openRoom } from './room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom();
});
afterAll(() => room[Symbol.asyncDispose]());

/** What stands under a note: our answer, or nothing once a later note has been answered. */
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
const labelled = ({ controls }: MessageView, wanted: RegExp) =>
  controls.find(({ label }) => wanted.test(label ?? ''))?.customId ?? '';
const answers = () => room.member.sees().filter(({ raw }) => raw.author.id === room.host.botId).length;

describe('a note', () => {
  test('that mentions us is a question, answered for everybody, with its folds behind buttons for everybody', async () => {
    const told = await answerTo(room.member, `${us()} how much ultramarine blue for 2 cups?`);
    expect(told.text).toMatch(/^## 1\/2 tsp ultramarine blue for 2 cups/);
    expect(told.controls.map(({ label }) => label)).toEqual(
      expect.arrayContaining([
        expect.stringContaining('numbers'),
        expect.stringContaining('Why'),
        expect.stringContaining('Safety'),
      ]),
    );
    const guest = room.group.addMember({ name: 'Cleo' });
    const opened = await guest.press(told, labelled(told, /numbers/u));
    expect([opened.ephemeral, opened.text]).toEqual([true, expect.stringContaining('g')]);
    expect(told.raw.mentions).toEqual([]);
  });

  test('in private needs no mention, and is read in Spanish too', async () => {
    expect((await answerTo(room.member, 'how much gold mica for 2 cups', 'bot-dm')).text).toMatch(
      /gold mica/,
    );
    const spanish = await answerTo(room.member, '¿cuánta sosa para 500 g de aceite de oliva?', 'bot-dm');
    expect(spanish.text).toMatch(/NaOH/);
  });

  test('that mentions us and tells of somebody hurt gets the first aid, before all else', async () => {
    const told = await answerTo(room.member, `${us()} lye splashed in my eye, what do I do`);
    expect(told.text).toMatch(/rinse/i);
    expect(told.text).not.toMatch(/tsp/);
  });

  test('with a flaw that mentions us is looked into', async () => {
    const told = await answerTo(room.member, `${us()} why is my white crackly?`);
    expect(told.text).toMatch(/crackle|rivers/i);
  });

  test('among members is left alone: without a mention we are not even told what it says', async () => {
    const before = answers();
    await room.member.postMessage('what lovely blue, how did you do it?');
    await room.member.postMessage('lunch?');
    await answerTo(room.member, `${us()} how much gold mica for 1 cup?`);
    expect(answers()).toBe(before + 1);
  });

  test('that mentions us has the buttons that its answer tells to press, its asker’s own for its asker', async () => {
    const told = await answerTo(room.member, `${us()} plan olive 70%, coconut 30%, 1000 g oils, 1 cup blue`);
    expect(told.text).toContain('Press Change');
    expect(labelled(told, /^change/iu)).not.toBe('');
    const dose = await answerTo(room.member, `${us()} how much gold mica for 2 cups?`);
    const guest = room.group.addMember({ name: 'Drew' });
    const refused = await guest.press(dose, labelled(dose, /another way/iu));
    expect(refused.text).toContain('That button is for somebody else');
  });

  test.each([
    ['preview of nothing at all, xyzzy plugh', /./u],
    [`how much gold mica for 2 cups? ${'It is for the market. '.repeat(20)}`, /gold mica/u],
    ['how much gold mica for 3000 cups?', /cups/u],
  ])('that mentions us is never met with silence: “%.40s”', async (note, told) => {
    expect((await answerTo(room.member, `${us()} ${note}`)).text).toMatch(told);
  });

  test('that mentions us while something of ours fails is told so, with the reference', async () => {
    const { registry } = room.conversation;
    const ask = registry.actions.get('ask')!;
    const planted = vi.spyOn(ask, 'take').mockRejectedValue(new Error('planted'));
    try {
      const told = await answerTo(room.member, `${us()} how much gold mica for 1 cup?`);
      expect(told.text).toContain('Something went wrong on our side and nothing was changed.');
    } finally {
      planted.mockRestore();
      expect(room.faults.splice(0)).toHaveLength(1);
    }
  });

  test('no fault of ours on the way', () => expect(room.faults).toEqual([]));
});
