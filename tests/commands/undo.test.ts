import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { Member, MessageView } from '../../src/loopback/index.ts';
import { refusals } from '../../src/words/en/index.ts';
import { openRoom } from '../loopback/room.ts';

/* What changes a record can be taken back for ten minutes, once, and the record then reads as it did before. */

let now = Date.UTC(2026, 5, 1, 12);
let room: Awaited<ReturnType<typeof openRoom>>;
/** In a group of their own in each test: with an empty shelf, and nothing reported yet. */
let member: Member;
beforeAll(async () => {
  room = await openRoom({ host: { now: () => now } });
});
beforeEach(() => {
  member = room.host.addGuild({ name: 'Sunday soapers', channels: ['bench'] }).addMember({ name: 'Bram' });
});
afterAll(async () => {
  expect(room.faults).toEqual([]);
  await room[Symbol.asyncDispose]();
});

const idOf = (message: MessageView, label: RegExp): string => {
  const found = message.controls.find(one => label.test(one.label));
  if (!found?.customId)
    throw new Error(
      `no ${label} among ${message.controls.map(one => one.label).join(', ')}: ${message.text}`,
    );
  return found.customId;
};
const run = (line: string, options: Record<string, string> = {}) => member.run(line, options);
const press = (message: MessageView, label: RegExp) => member.press(message, idOf(message, label));
const first = ({ text }: MessageView) => text.split('\n')[0];
const shown = async (item: string) => (await run('/shelf show', { item })).text;
const COLOURS = {
  Sea: 'ultramarine blue',
  Sun: 'gold mica',
  Dusk: 'ultramarine violet',
  Dawn: 'ultramarine blue',
} as const;
/** Jars of so many grams each. */
const shelve = async (grams: number, ...items: readonly (keyof typeof COLOURS)[]) => {
  for (const item of items) await run('/shelf add', { item, amount: `${grams} g`, colourant: COLOURS[item] });
};

const CHANGED_SINCE = refusals['undo-changed-since']({ name: 'Sea' });
const ALREADY = '## Already taken back: nothing was changed now.';

describe('what a plan or a match takes', () => {
  const stock = async () =>
    ['Sea', 'Sun'].map(async name => /: ([\d.]+ g)/.exec(await shown(name))?.[1] ?? 'none');

  test('goes back jar for jar with one press, and with /shelf undo', async () => {
    await shelve(30, 'Sea', 'Sun');
    const plan = await run('/plan', {
      oils: 'olive 70%, coconut 30%',
      size: '1000 g oils',
      portions: '2 cups Sea; 1 cup Sun; rest plain',
    });
    const taken = await press(plan, /^Take/);
    expect(await Promise.all(await stock())).not.toContain('30 g');
    const back = await press(taken, /^Undo$/);
    expect(first(back)).toMatch(/^## Taken back: now .*Sea.*30 g.* and .*Sun.*30 g/);
    expect(await Promise.all(await stock())).toEqual(['30 g', '30 g']);
    expect(first(await press(taken, /^Undo$/))).toBe(ALREADY);
    await press(
      await run('/plan', { oils: 'olive 100%', size: '500 g oils', portions: '1 cup Sea; 1 cup Sun' }),
      /^Take/,
    );
    expect(first(await run('/shelf undo'))).toMatch(/Sea.*30 g.*Sun.*30 g/);
    expect(await Promise.all(await stock())).toEqual(['30 g', '30 g']);
    expect((await run('/shelf undo')).text).toMatch(/nothing to take back/);
  });

  test('goes back for a match', async () => {
    await shelve(30, 'Sea', 'Sun');
    const match = await run('/match', { target: '#3f6fa8' });
    const take = match.controls.find(({ label }) => /take it off my shelf/.test(label));
    const taken = await member.press(match, take?.customId ?? '');
    expect((await shown('Sea')).includes('Sea: 30 g')).toBe(false);
    expect(first(await press(taken, /^Undo$/))).toMatch(/^## Taken back: .*30 g/);
    expect(await Promise.all(await stock())).toEqual(['30 g', '30 g']);
  });
});

describe('a button pressed again after its undo', () => {
  const grams = async (item: string) => Number(/: ([\d.]+) g/.exec(await shown(item))?.[1]);

  test.for([
    ['/dose', { colourant: 'Dusk', portion: '2 cups' }, /^Take .* off my shelf/],
    ['/match', { target: '#6f5fa8' }, /take it off my shelf/],
    [
      '/plan',
      { oils: 'olive 100%', size: '1000 g oils', portions: '2 cups Dusk; 1 cup Dawn; rest plain' },
      /^Take/,
    ],
  ] as const)('of %s takes it anew, and twice without an undo only once', async ([line, options, button]) => {
    await shelve(60, 'Dusk', 'Dawn');
    const before = await grams('Dusk');
    const answer = await run(line, options);
    const taken = await press(answer, button);
    const after = await grams('Dusk');
    expect(after).toBeLessThan(before);
    await press(answer, button);
    expect(await grams('Dusk')).toBe(after);
    await press(taken, /^Undo$/);
    expect(await grams('Dusk')).toBe(before);
    // The first press, delivered once more by the platform, is no press.
    room.host.redeliver(taken.interactionId!);
    await run('/prefer');
    expect(await grams('Dusk')).toBe(before);

    const anew = await press(answer, button);
    expect(first(anew)).not.toMatch(/already/i);
    expect(await grams('Dusk')).toBe(after);
    await press(answer, button);
    room.host.redeliver(anew.interactionId!);
    await run('/prefer');
    expect(await grams('Dusk')).toBe(after);
    expect(first(await press(taken, /^Undo$/))).toBe(ALREADY);
    expect(await grams('Dusk')).toBe(after);
    await press(anew, /^Undo$/);
    expect(await grams('Dusk')).toBe(before);
    expect(first(await press(anew, /^Undo$/))).toBe(ALREADY);
    await press(answer, button);
    expect(first(await run('/shelf undo'))).toMatch(/^## Taken back/);
    expect(await grams('Dusk')).toBe(before);
  });
});

describe('sums of a jar', () => {
  test('add up as they are shown, and a line of the history says that it took one back', async () => {
    await run('/shelf add', { item: 'Sums', amount: '60 g', colourant: 'ultramarine blue' });
    const used = await run('/shelf use', { item: 'Sums', amount: '1 tsp' });
    expect(first(used)).toBe('## 57.44 g of “Sums” left after taking 2.56 g.');
    expect(first(await run('/shelf restock', { item: 'Sums', amount: '1 oz' }))).toBe(
      '## 85.79 g of “Sums” now, 28.35 g of it new.',
    );
    await press(used, /^Undo$/);
    expect(await shown('Sums')).toMatch(/taken back 2\.56 g, 88\.35 g left/);
    // Whoever takes all that was shown takes all there is.
    expect(first(await run('/shelf use', { item: 'Sums', amount: '88.35 g' }))).toContain(
      '0 g of “Sums” left',
    );
  });

  test('a jar that was just bought is not running low, one that was used is', async () => {
    expect(
      (await run('/shelf add', { item: 'Tiny', amount: '10 g', colourant: 'gold mica' })).text,
    ).not.toMatch(/low/i);
    expect(await shown('Tiny')).not.toMatch(/low/i);
    expect((await run('/shelf use', { item: 'Tiny', amount: '4 g' })).text).toContain(
      'Running low: 6 g of “Tiny” left.',
    );
    expect(await shown('Tiny')).toMatch(/Running low/);
  });
});

describe('a new lot', () => {
  test('is closed again, with the tests of the lot before it', async () => {
    await shelve(30, 'Sea');
    await run('/shelf dish-test', { item: 'Sea', result: 'oil' });
    const opened = await run('/shelf new-lot', { item: 'Sea', amount: '10 g', lot: 'B7' });
    expect(await shown('Sea')).toMatch(/Sea: 40 g;.*lot B7/);
    expect(first(await press(opened, /^Undo$/))).toMatch(/lot before counts again for “Sea”.*30 g in all/);
    expect(await shown('Sea')).toMatch(/Sea: 30 g;.*goes into oil, not water/);
    expect(await shown('Sea')).not.toMatch(/lot B7/);
    expect(first(await press(opened, /^Undo$/))).toBe(ALREADY);
  });

  test('stays once something is known of it', async () => {
    await shelve(30, 'Sea');
    const opened = await run('/shelf new-lot', { item: 'Sea', lot: 'C1' });
    now += 1_000;
    await run('/shelf dish-test', { item: 'Sea', result: 'water' });
    expect((await press(opened, /^Undo$/)).text).toContain(CHANGED_SINCE);
    expect(await shown('Sea')).toMatch(/lot C1; swirls into water/);
  });

  test('is the last change for /shelf undo', async () => {
    await shelve(30, 'Sun');
    now += 11 * 60_000;
    await run('/shelf new-lot', { item: 'Sun', lot: 'S2' });
    expect(first(await run('/shelf undo'))).toMatch(/lot before counts again for “Sun”/);
    expect((await run('/shelf undo')).text).toMatch(/nothing to take back/);
  });
});

describe('a jar that was removed', () => {
  test('stands again with its history, once, for ten minutes', async () => {
    await shelve(30, 'Sea');
    await run('/shelf use', { item: 'Sea', amount: '1 g' });
    const before = await shown('Sea');
    const asked = await run('/shelf remove', { item: 'Sea' });
    const removed = await press(asked, /Remove “Sea”/);
    expect(removed.text).toMatch(/You can undo this for 10 minutes/);
    expect(await shown('Sea')).toMatch(/not on your shelf/);
    const back = await press(removed, /^Undo$/);
    expect(first(back)).toBe('## Taken back: “Sea” is on your shelf again, with its history.');
    expect(await shown('Sea')).toBe(before);
    expect(first(await press(removed, /^Undo$/))).toBe(ALREADY);
  });

  test('comes back by /shelf undo, not over a new jar of its name, and not after ten minutes', async () => {
    await shelve(30, 'Sea');
    // What has no history is not asked about before it goes.
    await run('/shelf use', { item: 'Sea', amount: '1 g' });
    await press(await run('/shelf remove', { item: 'Sea' }), /Remove “Sea”/);
    expect(first(await run('/shelf undo'))).toMatch(/“Sea” is on your shelf again/);
    const again = await press(await run('/shelf remove', { item: 'Sea' }), /Remove “Sea”/);
    await run('/shelf add', { item: 'sea', amount: '5 g', colourant: 'gold mica' });
    expect((await press(again, /^Undo$/)).text).toContain(CHANGED_SINCE);
    expect(await shown('sea')).toMatch(/sea: 5 g/);
    const gone = await run('/shelf remove', { item: 'sea' });
    now += 10 * 60_000 + 1_000;
    expect((await press(gone, /^Undo$/)).text).toMatch(/more than 10 minutes ago/);
  });
});

describe('a recipe', () => {
  test('that was removed, or taken back from the group, is there again', async () => {
    await run('/plan', { oils: 'olive 70%, coconut 30%', size: '1000 g oils', 'save-as': 'Open sea' });
    await run('/recipe share', { recipe: 'Open sea' });
    const list = (await run('/recipe list')).text;
    const unshared = await run('/recipe unshare', { recipe: 'Open sea' });
    expect((await run('/recipe list')).text).not.toBe(list);
    expect(first(await press(unshared, /^Undo$/))).toMatch(/shared with this group again/);
    const removed = await run('/recipe remove', { recipe: 'Open sea' });
    expect((await run('/recipe list')).text).not.toBe(list);
    expect(first(await press(removed, /^Undo$/))).toMatch(/“Open sea” is among your recipes again/);
    expect((await run('/recipe list')).text).toBe(list);
    expect(first(await press(removed, /^Undo$/))).toBe(ALREADY);
    // In a terminal there is no button to press.
    now += 1_000;
    await run('/recipe remove', { recipe: 'Open sea' });
    expect(first(await run('/shelf undo'))).toMatch(/“Open sea” is among your recipes again/);
  });
});

describe('a report on a colour', () => {
  const evidence = async () => (await run('/colourant evidence', { item: 'gold mica' })).text;
  const report = (result: string) => run('/colourant report', { item: 'gold mica', result, process: 'gel' });

  test('taken back leaves the one before it, or none', async () => {
    const none = await evidence();
    const one = await report('held');
    const held = await evidence();
    const two = await report('faded');
    expect(await evidence()).not.toBe(held);
    expect((await press(one, /^Undo$/)).text).toMatch(/Something else has been noted/);
    expect(first(await press(two, /^Undo$/))).toMatch(
      /what you reported on gold mica.* is as it was before/i,
    );
    expect(await evidence()).toBe(held);
    expect(first(await press(one, /^Undo$/))).toMatch(/as it was before/);
    expect(await evidence()).toBe(none);
  });

  test('withdrawn counts again', async () => {
    await report('held');
    const held = await evidence();
    const gone = await run('/colourant withdraw', { item: 'gold mica' });
    expect(await evidence()).not.toBe(held);
    expect(first(await press(gone, /^Undo$/))).toMatch(/counts again/);
    expect(await evidence()).toBe(held);
  });
});
