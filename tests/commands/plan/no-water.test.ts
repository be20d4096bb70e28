import { expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

test('where the jug holds frozen milk alone, no plain water is asked for as a zero', async () => {
  await using room = await openRoom({ whole: true });
  const options = { oils: 'olive 70%, coconut 30%', size: '500 g oils', liquid: 'goat milk' };
  const { text } = await room.member.run('/plan', options);
  expect(text).toMatch(/none to add: the lye goes into the [\d.]+ g goat’s milk, frozen/);
  expect(text).not.toMatch(/(?<![\d.])0 g \(0 oz\)/);
  await room.member.run('/prefer', { language: 'es' });
  const spanish = await room.member.run('/plan', options);
  expect(spanish.text).toMatch(/no se añade ninguna: la sosa va en [\d.,]+ g de leche de cabra en cubitos/);
});
