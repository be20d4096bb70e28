import { expect, it } from 'vitest';
import {
  addItem,
  findItem,
  pressedAgain,
  type Shelf,
  undoOnShelf,
  useItem,
} from '../../../src/records/shelf/index.ts';
import { by, emptyShelf } from './fixture.ts';

/* A button that takes grams off the shelf carries one cause; each press of it is an interaction of its own. */
const BUTTON = '777000000000001';

async function pressed(shelf: Shelf, press: string): Promise<void> {
  const cause = await pressedAgain(shelf, { cause: BUTTON, press });
  await useItem(shelf, 'blue', 4, { ...by(cause), press });
}
const left = async (shelf: Shelf) => (await findItem(shelf, 'blue')).stock.grams;
const undo = async (shelf: Shelf, change: string) => undoOnShelf(shelf, { cause: change }, by());

it('a press delivered twice takes once', async () => {
  const shelf = await emptyShelf();
  await addItem(shelf, { name: 'Blue', grams: 30 }, by());
  await pressed(shelf, 'first');
  await pressed(shelf, 'first');
  expect(await left(shelf)).toBe(26);
});

it('a press delivered once more after its undo takes nothing, another press takes anew', async () => {
  const shelf = await emptyShelf();
  await addItem(shelf, { name: 'Blue', grams: 30 }, by());
  await pressed(shelf, 'first');
  await undo(shelf, BUTTON);
  expect(await left(shelf)).toBe(30);
  await pressed(shelf, 'second');
  expect(await left(shelf)).toBe(26);
  await undo(shelf, `${BUTTON}_2`);
  // The platform repeats the second press: it made its change, which was taken back, and makes no other.
  await pressed(shelf, 'second');
  expect(await left(shelf)).toBe(30);
  await pressed(shelf, 'third');
  expect(await left(shelf)).toBe(26);
});
