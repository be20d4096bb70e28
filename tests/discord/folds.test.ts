import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { MessageView } from '../../src/loopback/index.ts';
import { openRoom } from '../loopback/room.ts';

let now = Date.UTC(2026, 5, 1, 12);
let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ host: { now: () => now } });
});
afterAll(async () => {
  expect(room.faults).toEqual([]);
  await room[Symbol.asyncDispose]();
});

const idOf = (message: MessageView, label: RegExp): string => {
  const found = message.controls.find(one => label.test(one.label));
  if (!found?.customId)
    throw new Error(`no ${label} among ${message.controls.map(one => one.label).join(', ')}`);
  return found.customId;
};

describe('a folded answer on the platform', () => {
  test('shows its face, and each fold to whoever presses, alone', async () => {
    const answer = await room.member.run('/dose', { colourant: 'ultramarine blue', portion: '2 cups' });
    expect(answer.ephemeral).toBe(false);
    expect(answer.text).not.toContain('per pound of oils');
    const why = await room.steward.press(answer, idOf(answer, /Why$/));
    expect(why.ephemeral).toBe(true);
    expect(why.text.split('\n')[0]).toBe('## Why: 1/2 tsp ultramarine blue for 2 cups');
    expect(why.text).toContain('per pound of oils');
    expect((await room.member.press(answer, idOf(answer, /Why$/))).text).toBe(why.text);
  });

  test('opens for two days, then says that it is too old', async () => {
    const answer = await room.member.run('/dose', { colourant: 'gold mica', portion: '1 cup' });
    const before = now;
    now += 47 * 3_600_000;
    expect((await room.member.press(answer, idOf(answer, /Why$/))).text).toContain('per cup of batter');
    now += 3 * 3_600_000;
    expect((await room.member.press(answer, idOf(answer, /Why$/))).text).toMatch(/run out/);
    now = before;
  });

  test('opens on each of the messages, and those before them, when the same is asked fifty times', async () => {
    const asked = () => room.member.run('/dose', { colourant: 'gold mica', portion: '1 cup' });
    const other = await room.member.run('/dose', { colourant: 'red iron oxide', portion: '1 cup' });
    const answers: MessageView[] = [];
    for (let time = 0; time < 50; time += 1) answers.push(await asked());
    for (const answer of [answers[2]!, answers.at(-1)!]) {
      const why = await room.steward.press(answer, idOf(answer, /Why$/));
      expect(why.text).toMatch(/^## Why: .*gold mica/);
    }
    const why = await room.steward.press(other, idOf(other, /Why$/));
    expect(why.text).toMatch(/^## Why: .*red iron oxide/);
  });

  test('goes on with what is commonly asked next, for the presser alone', async () => {
    const answer = await room.member.run('/dose', { colourant: 'gold mica', portion: '1 cup' });
    const menu = idOf(answer, /Another strength/);
    const tint = await room.steward.choose(answer, menu, ['0']);
    expect(tint.ephemeral).toBe(true);
    expect(tint.text.split('\n')[0]).toBe('## 1/8 tsp gold mica (iron oxide) for 1 cup');
    const seen = await room.member.press(answer, idOf(answer, /See the colour/));
    expect(seen.text).toMatch(/^## .*#[0-9a-f]{6} ±/);
  });

  test('keeps the platform’s limits however long it is, and loses no text', async () => {
    const long = await room.member.run('/plan', {
      oils: 'coconut 30%, olive 50%, palm 20%',
      size: '5000 g oils',
      portions: Array.from({ length: 8 }, (_, at) => `${200 + at} ml ultramarine blue pastel`).join('; '),
    });
    const folds = long.controls.filter(({ label }) => label.startsWith('▸'));
    expect(folds.length).toBeGreaterThan(4);
    for (const { customId, label } of folds) {
      const opened = await room.member.press(long, customId ?? '');
      const saysWhereAllIs = opened.text.includes('all of it is in the attached file');
      expect([label, saysWhereAllIs]).toEqual([
        label,
        opened.files.some(({ name }) => name === 'answer.txt'),
      ]);
      expect([label, saysWhereAllIs || !/…$/m.test(opened.text)]).toEqual([label, true]);
    }
  });
});

describe('undo', () => {
  const grams = async () =>
    /Gold: ([\d.]+) g/.exec((await room.member.run('/shelf list')).text)?.[1] ?? 'no gold';

  test('takes a use back once, within ten minutes', async () => {
    await room.member.run('/shelf add', { item: 'Gold', amount: '25 g', colourant: 'gold mica' });
    const used = await room.member.run('/shelf use', { item: 'Gold', amount: '5 g' });
    expect(await grams()).toBe('20');
    const undo = idOf(used, /Undo/);
    expect((await room.member.press(used, undo)).text).toMatch(/^## Taken back: 25 g of “Gold” now/);
    expect((await room.member.press(used, undo)).text).toMatch(/^## Already taken back/);
    expect(await grams()).toBe('25');
  });

  test('by its command takes back the last movement, and then the one before', async () => {
    await room.member.run('/shelf use', { item: 'Gold', amount: '1 g' });
    now += 1_000;
    await room.member.run('/shelf restock', { item: 'Gold', amount: '10 g' });
    expect(await grams()).toBe('34');
    expect((await room.member.run('/shelf undo')).text).toContain('24 g');
    expect((await room.member.run('/shelf undo')).text).toContain('25 g');
    expect((await room.member.run('/shelf undo')).text).toMatch(/nothing to take back/);
  });

  test('is over after ten minutes, by button and by command', async () => {
    const used = await room.member.run('/shelf use', { item: 'Gold', amount: '5 g' });
    now += 10 * 60_000 + 1_000;
    expect((await room.member.press(used, idOf(used, /Undo/))).text).toMatch(/more than 10 minutes ago/);
    expect((await room.member.run('/shelf undo')).text).toMatch(/nothing to take back/);
    expect(await grams()).toBe('20');
  });

  test('what loses a history asks once: a jar that was used', async () => {
    const asked = await room.member.run('/shelf remove', { item: 'Gold' });
    expect(asked.text).toMatch(/Remove “Gold” and the \d+ lines of its history/);
    expect(await grams()).toBe('20');
    expect((await room.member.press(asked, idOf(asked, /Remove “Gold”/))).text).toMatch(/off your shelf/);
    expect(await grams()).toBe('no gold');
  });

  test('a dose that is taken twice is taken once, and says so', async () => {
    await room.member.run('/shelf add', { item: 'Sea', amount: '30 g', colourant: 'ultramarine blue' });
    const dose = await room.member.run('/dose', { colourant: 'Sea', portion: '2 cups' });
    const take = idOf(dose, /Take .* off my shelf/);
    expect((await room.member.press(dose, take)).text).toMatch(/left after taking/);
    expect((await room.member.press(dose, take)).text).toMatch(/^## Already taken/);
  });
});
