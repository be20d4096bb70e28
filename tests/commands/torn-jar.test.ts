import { expect, test } from 'vitest';
import { shelf, under } from '../../src/records/keys.ts';
import { everything, put } from '../../src/records/store.ts';
import { wordsIn } from '../../src/words/index.ts';
import { openRoom } from '../loopback/room.ts';

/** More than the face of an answer shows. */
const JARS = 60;

test('the owner of a jar that does not read is told before a list of any length', async () => {
  await using room = await openRoom();
  const { member, store } = room;
  for (let jar = 0; jar < JARS; jar += 1)
    await member.run('/shelf add', { item: `Jar ${jar}`, amount: '5 g', colourant: 'gold mica' });
  expect((await member.run('/shelf list')).text).not.toContain('can’t be read');
  const [first] = await everything(store, under(shelf(member.id)));
  if (first === undefined) throw new Error('nothing was put on the shelf');
  await store.commit([put(first.key, { v: 1, name: 7 })]);
  const { text } = await member.run('/shelf list');
  expect(text).toContain(`${JARS - 1} on your shelf`);
  expect(text.split('\n')[1]).toBe(wordsIn('en').privacy.jarsSetAside({ count: 1 }));
});
