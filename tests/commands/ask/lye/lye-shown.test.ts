import { afterAll, beforeAll, expect, test } from 'vitest';
import { openRoom } from '../../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom();
});
afterAll(() => room[Symbol.asyncDispose]());

/** What stands on the face, before anything is unfolded. */
const face = async (question: string) => (await room.member.run('/ask', { question })).text;

test('an oil that was spelt amiss is told on the face, with the oils that are counted', async () => {
  const text = await face('olve oil 640 cocnut 160 whats the lye');
  expect(text).toContain('640 g olive oil, 160 g coconut');
  expect(text).toContain('“olve” read as “olive”, “cocnut” read as “coconut”');
  expect(text.match(/read as/gu)).toHaveLength(2);
});

test('so it is where lye that was weighed is checked', async () => {
  expect(await face('1 kg olve oil with 128 g lye, ok?')).toContain('“olve” read as “olive”');
});

test('where words were passed by, the oils that are counted stand beside them', async () => {
  const text = await face(
    'kia ora, can someone run 700 olive and 200 coconut for me, lye at sf 6, got a client',
  );
  expect(text).toContain('700 g olive, 200 g coconut');
  expect(text).toContain('Passed by');
});

test('an oil with two amounts is asked, whatever was weighed, and the pot is held for lye-heavy meanwhile', async () => {
  const text = await face('should have been 1000 g olive, I put 700 g olive, lye 128 g');
  expect(text).toContain('“olive” stands twice: 1000 g and 700 g.');
  expect(text).toContain('treat it as lye-heavy');
  expect(text).not.toMatch(/superfat \d/u);
});

test('what is said beside a recipe is told again on the face, in its language and where lye is checked', async () => {
  expect(await face('tallow 900 g, castor 60 g. Still a bit of water in that. how much lye?')).toContain(
    'You also say “Still a bit of water in that”. If that changes what is in the pot, a weight, the superfat or the lye, do not use this figure',
  );
  expect(await face('128 g lye in 1 kg olive oil. My sister had a jar of it. ok?')).toContain(
    'You also say “My sister had a jar of it”',
  );
  expect(
    await face('600 g de oliva y 200 g de coco. Mi hermana tenía un frasco de eso. ¿Cuánta sosa?'),
  ).toContain(
    'También dices «Mi hermana tenía un frasco de eso». Si eso cambia lo que va en la olla, un peso, el sobreengrasado o la sosa, no uses esta cifra',
  );
  expect(await face('tallow 900 g, castor 60 g. My sister says hi. how much lye?')).not.toContain(
    'You also say',
  );
});

test.each([
  [
    '500 g olive oil, 200 g coconut oil and 230 g coconut milk instead of the water. How much NaOH?',
    '500 g olive oil, 200 g coconut oil',
  ],
  [
    'Halve this for me: 680 g lard, 340 g olive oil. How much lye for the half batch?',
    '680 g lard, 340 g olive oil',
  ],
  [
    'Mi receta: 300 g de oliva, 150 g de coco y 50 g de ricino. La quiero hacer triple. ¿Cuánta soda?',
    '300 g oliva, 150 g coco, 50 g ricino',
  ],
])('what a lye is for stands with it, and the superfat that nobody told: %s', async (question, oils) => {
  const text = await face(question);
  expect(text).toContain(oils);
  expect(text).toMatch(
    /Superfat 5 %, the usual: you told none\.|Sobreengrasado 5 %, el usual: no dijiste ninguno\./u,
  );
});

test('a superfat that was told is not called the usual one', async () => {
  expect(await face('500 g olive oil, 200 g coconut oil, 6% superfat, how much lye?')).not.toContain(
    'you told none',
  );
});

test('lye that is too much for all oils that are named is told to be so where something is asked back', async () => {
  // 165.5 g at 0 % superfat at the most: 500 g olive, 400 g coconut, 200 g castor.
  const lost =
    '500 g olive oil, 300 g coconut oil and 200 g castor oil, but my mate took 100 g of the coconut. Is it right?';
  expect(await face(`I weighed 190 g of lye. ${lost}`)).toContain(
    '190 g lye is more than even all of these oils take: do not use it.',
  );
  expect(await face(`I weighed 140 g of lye. ${lost}`)).not.toContain('more than even all');
  expect(
    await face(
      'Ya pesé 190 g de sosa. 500 g de oliva, 300 g de coco y 200 g de ricino, pero mi vecina se llevó 100 g del coco. ¿Está bien?',
    ),
  ).toContain('190 g de sosa es más de lo que gastan todos estos aceites juntos: no la uses.');
});
