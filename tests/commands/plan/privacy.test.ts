import { afterAll, beforeAll, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
  await room.member.run('/plan', {
    oils: 'olive 70%, coconut 30%',
    size: '500 g oils',
    liquid: 'goat milk',
    'save-as': 'Secret sea',
  });
});
afterAll(() => room[Symbol.asyncDispose]());

type Message = Awaited<ReturnType<typeof room.member.run>>;
const labelled = (answer: Message, wanted: string) =>
  answer.controls.find(({ label }) => label === wanted)?.customId ?? '';

test.for([
  ['/plan', { recipe: 'Secret sea' }],
  ['/plan', { recipe: 'Secret sea', water: '30% lye' }],
  ['/plan', { recipe: 'no such recipe' }],
  ['/dose', { recipe: 'Secret sea', colourant: 'gold mica', portion: '1 cup' }],
  ['/diagnose', { recipe: 'Secret sea', words: 'white powder on top of the bar' }],
  ['/recipe show', { recipe: 'Secret sea' }],
  ['/recipe rescale', { recipe: 'Secret sea', size: '2' }],
] as const)('%s from a private recipe is for who asked: %o', async ([command, options]) => {
  expect((await room.member.run(command, options)).ephemeral).toBe(true);
});

test('without a recipe the same commands answer the channel', async () => {
  const dose = await room.member.run('/dose', { colourant: 'gold mica', portion: '1 cup' });
  expect(dose.ephemeral).toBe(false);
});

test('its buttons and forms stay private, and one of them shows it to everybody', async () => {
  const { member } = room;
  const answer = await member.run('/plan', { recipe: 'Secret sea' });
  const form = await member.pressForForm(answer, labelled(answer, 'Change'));
  const changed = await member.submit(form, { oils: 'olive 70%, coconut 30%', size: '600 g oils' });
  expect(changed.ephemeral).toBe(true);
  expect(changed.text).toContain('for 600 g oils');
  const shown = await member.press(changed, labelled(changed, 'Show everyone'));
  expect(shown.ephemeral).toBe(false);
  expect(shown.text).toContain('for 600 g oils');
  expect(shown.text).not.toContain('Secret sea');
});
