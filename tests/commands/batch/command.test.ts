import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { erase } from '../../../src/records/privacy/erase.ts';
import { everything } from '../../../src/records/store.ts';
import { exportOf } from '../../records/privacy/exported.ts';
import { controlOf, day, photoOf } from '../challenge/room.ts';
import { type Book, headline, left, openBook, planned } from './book.ts';

let book: Book;
beforeAll(async () => {
  book = await openBook();
});
afterAll(() => book[Symbol.asyncDispose]());

/** A full dose of ultramarine violet in two cups is 1/2 tsp, by its density 1.28 g: see /dose. */
const PLANNED_DUSK = 1.282;
/** To hundredths, as scales for jars show. */
const shownLeft = (grams: number) => Number(grams.toFixed(2));

describe('/batch poured', () => {
  test('keeps the last plan as it was made, and takes every colour off the shelf in one step', async () => {
    const { member } = await book.maker();
    await member.run('/plan', planned);
    const answer = await member.run('/batch poured', {
      changes: '1 tsp Dusk instead of 1/2, no gel, fridge',
      name: 'Evening',
    });
    expect(answer.ephemeral).toBe(true);
    expect(headline(answer)).toMatch(/^2\.56 g “Dusk”, 0\.39 g “Sun” off your shelf for “Evening”/);
    expect(answer.text).toContain('1 tsp Dusk (2.6 g, lot B7), expected violet #');
    expect(await left(member, 'Dusk')).toBe(shownLeft(40 - 2 * PLANNED_DUSK));
    const shown = await member.run('/batch show');
    expect(shown.text).toContain('Not gelled, as you said');
    expect(shown.text).toContain('Made otherwise than planned: 1 tsp Dusk instead of 1/2, no gel, fridge');
  });

  test('is undone with one press, once, and the shelf is as it was', async () => {
    const { member } = await book.maker();
    await member.run('/plan', planned);
    const answer = await member.run('/batch poured', {});
    const undo = controlOf(answer, 'Undo');
    const undone = await member.press(answer, undo);
    expect(headline(undone)).toMatch(/out of your book; back on your shelf: 1\.28 g “Dusk”, 0\.39 g “Sun”/);
    expect(headline(await member.press(answer, undo))).toContain('nothing was changed');
    expect(await left(member, 'Dusk')).toBe(40);
    expect(await left(member, 'Sun')).toBe(10);
    expect(headline(await member.run('/batch list'))).toContain('Your book is empty');
  });

  test('of a kept recipe, and in words without any plan', async () => {
    const { member } = await book.maker();
    await member.run('/plan', { ...planned, 'save-as': 'Lagoon' });
    expect(headline(await member.run('/batch poured', { recipe: 'Lagoon' }))).toContain('for “Lagoon”');
    expect(headline(await member.run('/batch poured', { recipe: 'Lagoon' }))).toContain('for “Lagoon 2”');
    const told = await member.run('/batch poured', {
      made: '2 cups Dusk 3/4 tsp + Sun 1/4 tsp; 1 cup plain',
      name: 'Plum',
    });
    expect(headline(told)).toMatch(/^1\.92 g “Dusk”, 0\.39 g “Sun” off your shelf for “Plum”/);
    expect(told.text).toContain('plain: no colour, expected cream');
    const yellow = await member.run('/batch poured', { made: '1 cup plain', base: 'yellow' });
    expect(yellow.text).toMatch(/plain: no colour, expected (?!cream)/);
  });

  test('says where the shelf had less than went in, takes what is there, and keeps the batch', async () => {
    const { member } = await book.maker();
    await member.run('/shelf use', { item: 'Sun', amount: '9.9 g' });
    await member.run('/shelf add', { item: 'Uncounted', colourant: 'red iron oxide' });
    const answer = await member.run('/batch poured', { made: '2 cups Sun 1/2 tsp + Uncounted 1/4 tsp' });
    expect(answer.text).toContain('“Sun”: 0.79 g went in, your shelf had only 0.1 g');
    expect(answer.text).toMatch(/“Uncounted”: [\d.]+ g went in, but none was counted/);
    expect(await left(member, 'Sun')).toBe(0);
    await member.press(answer, controlOf(answer, 'Undo'));
    expect(await left(member, 'Sun')).toBe(0.1);
  });

  test('delivered twice takes once', async () => {
    const { member, host } = await book.maker();
    const poured = await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp' });
    const before = await left(member, 'Dusk');
    host.redeliver(poured.interactionId!);
    host.redeliver(poured.interactionId!);
    // Asked after both in the same line of questions.
    await member.run('/batch list');
    await new Promise(resolve => setTimeout(resolve, 500));
    expect(await left(member, 'Dusk')).toBe(before);
    expect(headline(await member.run('/batch list'))).toBe('1 batch');
  });

  test('two at once both count', async () => {
    const { member } = await book.maker();
    const pour = () => member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp' });
    await Promise.all([pour(), pour(), pour()]);
    expect(await left(member, 'Dusk')).toBeCloseTo(40 - 3 * PLANNED_DUSK, 2);
    expect(headline(await member.run('/batch list'))).toBe('3 batches');
  });

  test.each([
    ['nothing to go by', {}, /What did you pour/],
    ['a recipe and words', { recipe: 'x', made: '1 cup Dusk' }, /not both/],
    ['a recipe nobody has', { recipe: 'Nowhere' }, /no recipe/],
    ['no amount of batter', { made: 'Dusk 1/2 tsp' }, /How much batter/],
    ['less than nothing', { made: '1 cup Dusk', changes: '-2 tsp Dusk' }, /can’t read/],
    ['more than soap holds', { made: '1 cup Dusk', changes: '900 tsp Dusk' }, /check the spoons/],
    ['a day to come', { made: '1 cup Dusk', on: '2099-01-01' }, /no day that has been/],
    ['a day there is not', { made: '1 cup Dusk', on: '2026-02-30' }, /2026-02-30/],
    ['a day that is none', { made: '1 cup Dusk', on: '🧼' }, /no day that has been/],
    ['a name of nothing', { made: '1 cup Dusk', name: '\u200b' }, /A name needs/],
  ])('meets %s', async (_, options, sentence) => {
    const { member } = await book.maker();
    const answer = await member.run('/batch poured', options as Record<string, string>);
    expect(answer.text).toMatch(sentence);
    expect(answer.text.length).toBeLessThan(400);
    expect(await left(member, 'Dusk')).toBe(40);
    expect(headline(await member.run('/batch list'))).toContain('Your book is empty');
  });
});

describe('the life of a batch', () => {
  test('cut, weighed and cured, each at its day', async () => {
    const { member, wait } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Life' });
    await wait(2 * day);
    expect(headline(await member.run('/batch cut', { weights: '112 g, 108 g' }))).toBe(
      '“Life” is cut, 2 bars weighed.',
    );
    await wait(7 * day);
    const losing = await member.run('/batch weigh', { weights: '108, 104' });
    expect(losing.text).toContain('Loses 3.6 % a week');
    await wait(7 * day);
    await member.run('/batch weigh', { weights: '107.4, 103.4' });
    expect((await member.run('/batch show')).text).toContain('counts as cured (common practice)');
    expect(headline(await member.run('/batch list'))).toBe('1 batch');
  });

  test('a photo beside white paper sets what it became beside what was foretold', async () => {
    const { member } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Pictured' });
    const photo = await photoOf(['#7d6cb0']);
    const answer = await member.run('/batch cured', { photo });
    expect(headline(answer)).toMatch(/^Off by [\d.]+, .*: “Pictured” beside what I foretold/);
    expect(answer.text).toContain('Balanced by the white sheet');
    expect(answer.files.map(({ name }) => name)).toContain('foretold-and-cured.png');
    expect((await member.run('/batch show')).files.length).toBe(1);
  });

  test('without the white sheet the reading is rough, and says so', async () => {
    const { member } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp' });
    const answer = await member.run('/batch cured', { photo: await photoOf(['#7f5fa8'], 'none') });
    expect(answer.text).toContain('A rough reading: no white sheet in view');
  });

  test.each([
    ['/batch cut', { on: '2020-01-01' }, /nothing happened to it before/],
    ['/batch weigh', { weights: '-3 g' }, /as weights/],
    ['/batch weigh', { weights: '🧼' }, /as weights|needs|unit|amount/i],
    ['/batch cured', { colours: 'sky #aabbcc' }, /a portion and its colour/],
    ['/batch cured', { colours: 'zzz' }, /a portion and its colour/],
    ['/batch show', { batch: 'constructor' }, /no batch “constructor”/],
    ['/batch note', { text: 'x', batch: '__proto__' }, /no batch/],
    ['/batch remove', { batch: 'Ta' }, /no batch “Ta”/],
  ])('%s %o is met', async (command, options, sentence) => {
    const { member } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Tarn' });
    expect((await member.run(command, options as Record<string, string>)).text).toMatch(sentence);
  });

  test('is found by colour, jar and date', async () => {
    const { member, wait } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'One' });
    await wait(10 * day);
    await member.run('/batch poured', { made: '2 cups Sun 1 tsp', name: 'Two' });
    const listed = async (options: Record<string, string>) =>
      [...(await member.run('/batch list', options)).text.matchAll(/“(One|Two)”/g)].map(match => match[1]);
    expect(await listed({})).toEqual(['Two', 'One']);
    expect(await listed({ colour: 'violet' })).toEqual(['One']);
    expect(await listed({ jar: 'sun' })).toEqual(['Two']);
    expect(await listed({ since: 'yesterday' })).toEqual(['Two']);
    expect(await listed({ colour: 'constructor' })).toEqual([]);
  });

  test('is exported as CSV and JSON, and no cell becomes a formula', async () => {
    const { member } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp; 1 cup plain', name: '=1+1' });
    const { files } = await member.run('/batch export');
    const text = (name: string) =>
      new TextDecoder().decode(files.find(file => file.name === name)?.bytes() ?? new Uint8Array());
    const { batches } = JSON.parse(text('batches.json')) as { batches: { name: string }[] };
    expect(batches).toMatchObject([{ name: '=1+1', portions: [{ colours: [{ name: 'Dusk' }] }, {}] }]);
    const rows = text('batches.csv').trim().split('\r\n');
    expect(rows).toHaveLength(3);
    expect(rows[1]).toMatch(/^'=1\+1,2026-.*,poured,false,Dusk,473.2,Dusk,ultramarine-violet,B7,0.5,1.282,/);
  });
});

describe('whose batches they are', () => {
  test('nobody else sees one until it is shared, and no longer once taken back', async () => {
    const { member, ana } = await book.maker();
    await member.run('/batch poured', { made: '2 cups Dusk 1/2 tsp', name: 'Secret' });
    const seen = async () => (await ana.run('/batch list', { shared: true })).text;
    expect(await seen()).not.toContain('Secret');
    expect((await ana.run('/batch show', { batch: 'Secret' })).text).toContain('no batch');
    const shared = await member.run('/batch share');
    expect(shared.ephemeral).toBe(false);
    expect(await seen()).toContain('“Secret”');
    expect(await seen()).toContain('(by Bram)');
    expect((await ana.run('/batch remove', { batch: 'Secret' })).text).toContain('no batch');
    await member.run('/batch unshare');
    expect(await seen()).not.toContain('Secret');
  });

  test('what is kept of them is exported and erased, nothing of another is', async () => {
    const { member, ana, group } = await book.maker();
    const { store } = book.fair.room;
    await ana.run('/shelf add', { item: 'Moss', amount: '9 g', colourant: 'chromium oxide green' });
    await ana.run('/batch poured', { made: '1 cup Moss 1/4 tsp', name: 'Theirs' });
    const poured = await member.run('/batch poured', {
      made: '2 cups Dusk 1/2 tsp',
      name: 'Mine alone',
      photo: await photoOf(['#7d6cb0']),
    });
    expect(poured.text).toContain('The photo is kept');
    await member.run('/batch note', { text: 'my secret note' });
    await member.run('/batch cured', { colours: '#7d6cb0' });
    await member.run('/batch share');
    await member.run('/batch poured', { made: '1 cup Dusk 1/4 tsp' }, { context: 'bot-dm' });
    const all = await exportOf(store, member.id, new Date());
    expect(JSON.stringify(all.records.batches)).toContain('my secret note');
    expect(all.records.batches.some(({ key }) => key.startsWith('batch-photo/'))).toBe(true);
    await erase(store, member.id, { asked: topic => topic === 'batches' });
    const kept = JSON.stringify(await everything(store, { from: '!', to: '~' }));
    expect(kept).not.toContain('Mine alone');
    expect(kept).not.toContain('secret note');
    expect(kept).toContain('Theirs');
    const dues = (await everything(store, { from: 'due/', to: 'due0' })).map(({ key }) => key);
    expect(dues.filter(key => key.includes(member.id))).toEqual([]);
    expect(group.members.length).toBeGreaterThan(1);
    expect(headline(await member.run('/batch list'))).toContain('Your book is empty');
  });
});

test('is in Spanish for a Spanish client', async () => {
  const { member } = await book.maker();
  member.grant({ locale: 'es-ES' });
  const answer = await member.run('/batch poured', {
    made: '2 tazas Dusk 1/2 cdta',
    changes: 'sin gel, nevera, 1 cdta en vez de 1/2',
    name: 'Tarde',
  });
  expect(headline(answer)).toMatch(/^2,56 g de «Dusk» fuera de tu estantería para «Tarde», vertido el /);
  expect(answer.text).toContain('guantes');
  expect((await member.run('/batch show')).text).toContain('Sin gel, como dijiste');
  expect((await member.run('/batch cured', { colours: '#7d6cb0' })).text).toContain('previsto');
});
