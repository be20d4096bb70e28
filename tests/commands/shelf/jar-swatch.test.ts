import { expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

test('the shelf shows a jar in the colour that /preview gives of it, once its spoon was weighed', async () => {
  await using room = await openRoom({ whole: true });
  const { member } = room;
  await member.run('/shelf add', { item: 'ultramarine blue', amount: '60 g' });
  const hexOn = async () => /#[0-9a-f]{6}/.exec((await member.run('/shelf list')).text)?.[0];
  const before = await hexOn();
  await member.run('/shelf weigh', { item: 'ultramarine blue', amount: '3 g' });
  const preview = await member.run('/preview', { mix: 'ultramarine blue', portion: '2 cups' });
  expect(await hexOn()).toBe(/#[0-9a-f]{6}/.exec(preview.text)?.[0]);
  expect(await hexOn()).not.toBe(before);
});
