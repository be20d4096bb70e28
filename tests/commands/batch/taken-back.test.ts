import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { otherBars } from '../../../src/engine/batch/curing/weight-loss.ts';
import { controlOf, day } from '../challenge/room.ts';
import { type Book, headline, left, openBook } from './book.ts';

/* What is noted in the batch book can be taken back, the last thing first; and weights are of the same bars. */

let book: Book;
beforeAll(async () => {
  book = await openBook();
});
afterAll(() => book[Symbol.asyncDispose]());

const made = '2 cups Dusk 1/2 tsp';

describe('/shelf undo takes back the last thing that was done', () => {
  test('a pour goes with its batch, and what it took stands on the shelf again', async () => {
    const { member } = await book.maker();
    await member.run('/shelf use', { item: 'Dusk', amount: '2 g' });
    await member.run('/batch poured', { made, name: 'W' });
    expect(await left(member, 'Dusk')).toBeLessThan(38);
    expect(headline(await member.run('/shelf undo'))).toMatch(/^“W” is out of your book; back on your shelf/);
    expect(await left(member, 'Dusk')).toBe(38);
    expect(headline(await member.run('/shelf undo'))).toContain('40 g');
    expect(await left(member, 'Dusk')).toBe(40);
  });

  test('a removed batch comes back with its notes, and no powder moves', async () => {
    const { member } = await book.maker();
    await member.run('/batch poured', { made, name: 'W' });
    await member.run('/batch poured', { made, name: 'W2' });
    await member.run('/batch note', { batch: 'W', text: 'smelt of figs' });
    const before = await left(member, 'Dusk');
    const removed = await member.run('/batch remove', { batch: 'W' });
    expect(removed.text).toContain('You can undo this for 10 minutes.');
    expect(headline(await member.run('/batch list'))).toContain('1 batch');
    expect(headline(await member.run('/shelf undo'))).toBe('Taken back: “W” is in your book again.');
    expect((await member.run('/batch show', { batch: 'W' })).text).toContain('smelt of figs');
    expect(await left(member, 'Dusk')).toBe(before);
    // Then the note, then the second pour.
    expect(headline(await member.run('/shelf undo'))).toBe('Taken back: what you noted for “W” is gone.');
    expect((await member.run('/batch show', { batch: 'W' })).text).not.toContain('smelt of figs');
    expect(headline(await member.run('/shelf undo'))).toMatch(/^“W2” is out of your book/);
  });

  test('a removal is taken back by its button, once', async () => {
    const { member } = await book.maker();
    await member.run('/batch poured', { made: '1 cup plain', name: 'Bare' });
    const removed = await member.run('/batch remove', { batch: 'Bare' });
    const undo = controlOf(removed, 'Undo');
    expect(headline(await member.press(removed, undo))).toContain('in your book again');
    expect(headline(await member.press(removed, undo))).toContain('Already taken back');
  });

  test('a pour without any jar is taken back too', async () => {
    const { member } = await book.maker();
    await member.run('/batch poured', { made: '1 cup plain', name: 'Bare' });
    expect(headline(await member.run('/shelf undo'))).toBe('“Bare” is out of your book.');
  });
});

test('a weighing is undone by its button', async () => {
  const { member } = await book.maker();
  await member.run('/batch poured', { made, name: 'W' });
  const cut = await member.run('/batch cut', { batch: 'W', weights: '110 g, 108 g' });
  expect(headline(await member.press(cut, controlOf(cut, 'Undo')))).toContain(
    'what you noted for “W” is gone',
  );
});

test('a second batch of one name is told its new one', async () => {
  const { member } = await book.maker();
  await member.run('/batch poured', { made: '1 cup plain', name: 'Sea' });
  const second = await member.run('/batch poured', { made: '1 cup plain', name: 'Sea' });
  expect(second.text).toContain('There is a “Sea” already, so this one is called “Sea 2”.');
});

describe('weights tell of drying only where they are of the same bars', () => {
  // Drying soap loses water and gains nothing (common practice); 2 g a bar is what a kitchen scale errs by.
  const first = { at: 0, grams: [102.5, 99] };
  test.each([
    [[110], 'count'],
    [[102, 98.5], undefined],
    [[104, 101], undefined],
    [[107, 101], 'gained'],
  ])('%s after 102.5 and 99: %s', (grams, why) => {
    expect(otherBars([first], { at: 1, grams })?.why).toBe(why);
  });
  test('the first weighing, and one noted for an earlier day, are compared with nothing', () => {
    expect(otherBars([], { at: 1, grams: [110] })).toBeUndefined();
    expect(otherBars([{ at: 5, grams: [90, 90] }], { at: 1, grams: [110] })).toBeUndefined();
  });

  test('another number of bars is asked about, and kept only on a press', async () => {
    const { member, wait } = await book.maker();
    await member.run('/batch poured', { made, name: 'Sea 1' });
    await member.run('/batch cut', { batch: 'Sea 1', weights: '102.5 g, 99 g' });
    await wait(7 * day);
    const asked = await member.run('/batch weigh', { batch: 'Sea 1', weights: '110 g' });
    expect(headline(asked)).toBe(
      'Are these the same bars of “Sea 1”? Before: 2 bars, 201.5 g; now: 1 bar, 110 g.',
    );
    expect(asked.text).toContain('Nothing is kept yet');
    const kept = await member.press(asked, controlOf(asked, 'Keep it all the same'));
    expect(headline(kept)).toContain('110 g in 1 bar of “Sea 1”');
  });
});

test('bars that are cured say since when, and are turned no more', async () => {
  const { member, now } = await book.maker();
  const poured = new Date(now() - 58 * day).toISOString().slice(0, 10);
  const answer = await member.run('/batch poured', { made, name: 'Old', on: poured });
  expect(answer.text).toContain('cured since');
  expect(answer.text).not.toContain('turn the bars');
});

test('a jar may be called “Of the sea”, and is poured as what it is', async () => {
  const { member } = await book.maker();
  await member.run('/shelf add', { item: 'Of the sea', amount: '20 g', colourant: 'ultramarine blue' });
  for (const words of ['1 cup Of the sea 1/4 tsp', '1 cup of Of the sea 1/4 tsp', '1 cup 1/4 tsp Of the sea'])
    expect(headline(await member.run('/batch poured', { made: words }))).toMatch(
      /^0\.64 g “Of the sea” off your shelf/,
    );
  expect(headline(await member.run('/batch poured', { made: '2 cups of Dusk 1/2 tsp' }))).toMatch(
    /^1\.28 g “Dusk” off your shelf/,
  );
});
