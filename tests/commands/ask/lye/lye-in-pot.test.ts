import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

const ask = (question: string, locale = 'en-US') => {
  room.member.grant({ locale });
  return room.member.run('/ask', { question });
};
type Answer = Awaited<ReturnType<typeof ask>>;
const press = async (answer: Answer, label: string): Promise<string> => {
  const button = answer.controls.find(one => one.label === label);
  expect(
    button,
    `no button “${label}” among ${answer.controls.map(one => one.label).join(', ')}`,
  ).toBeDefined();
  return (await room.member.press(answer, button?.customId ?? '')).text;
};
const gramsOf = (text: string): number =>
  Number(/(\d+(?:[.,]\d+)?) g (?:de )?NaOH/u.exec(text)?.[1]?.replace(',', '.'));
/** Grams of NaOH at 5 % superfat by the middle of Codex Alimentarius' range, mg KOH per g (CXS 33, CXS 210): olive, coconut. */
const naoh = (olive: number, coconut: number) =>
  ((olive * 190 + coconut * 256.5) / 1000) * (39.997 / 56.1056) * 0.95;

describe('whether an oil is in the pot takes one press to tell', () => {
  const QUESTION = '500 g olive oil and 250 g coconut oil that I sold, 5% superfat. how much lye?';

  test('all of it', async () => {
    const asked = await ask(QUESTION);
    expect(asked.text).toContain('Is “coconut oil” in the pot, all of it?');
    const grams = gramsOf(await press(asked, 'Yes, all of it'));
    expect(grams / naoh(500, 250)).toBeGreaterThan(0.97);
    expect(grams / naoh(500, 250)).toBeLessThan(1.03);
  });

  test('or none of it', async () => {
    const grams = gramsOf(await press(await ask(QUESTION), 'No, leave out coconut oil'));
    expect(grams / naoh(500, 0)).toBeGreaterThan(0.97);
    expect(grams / naoh(500, 0)).toBeLessThan(1.03);
  });

  test('in Spanish', async () => {
    const asked = await ask(
      '500 g de aceite de oliva y 250 g de coco que vendí, sobreengrasado 5%. ¿Cuánta sosa?',
      'es-ES',
    );
    expect(asked.text).toContain('¿Está «coco» en la olla, todo?');
    expect(gramsOf(await press(asked, 'Sí, todo')) / naoh(500, 250)).toBeCloseTo(1, 1);
    expect(gramsOf(await press(asked, 'No, sin coco')) / naoh(500, 0)).toBeCloseTo(1, 1);
    room.member.grant({ locale: 'en-US' });
  });

  test('of two oils in doubt each alone may stay out, or both', async () => {
    const asked = await ask(
      '500 g olive oil, 250 g coconut oil that I sold, 100 g castor that got binned, 5% superfat. how much lye?',
    );
    expect(asked.text).toContain('Are “coconut oil”, “castor” in the pot, all of them?');
    const labels = asked.controls.map(({ label }) => label);
    expect(labels).toEqual(
      expect.arrayContaining([
        'Yes, all of it',
        'No, leave out coconut oil',
        'No, leave out castor',
        'No, leave out coconut oil, castor',
      ]),
    );
    const none = gramsOf(await press(asked, 'No, leave out coconut oil, castor'));
    expect(none / naoh(500, 0)).toBeCloseTo(1, 1);
  });
});

describe('lye that was weighed is judged by the press', () => {
  // 105 g NaOH: less than olive and coconut take, far more than olive alone does.
  const QUESTION = '500 g olive oil, 300 g coconut oil that I sold, 105 g NaOH. Is it fine?';

  test('with the oil in, it is no more than it takes', async () => {
    expect(await press(await ask(QUESTION), 'Yes, all of it')).not.toMatch(/lye-heavy|too much/iu);
  });

  test('without it, it is lye-heavy', async () => {
    expect(await press(await ask(QUESTION), 'No, leave out coconut oil')).toMatch(/lye-heavy|too much/iu);
  });
});

describe('a recipe that reads whole without the words that are not understood is one press away', () => {
  test('the recipe is shown, and the press takes it as it stands', async () => {
    const asked = await ask(
      '500 g olive oil and 250 g coconut oil. The first one is 400 really. How much lye?',
    );
    expect(asked.text).toContain('You put something right on the way (“the first one is”)');
    expect(asked.text).toContain('Without those words I read: 500 g olive oil, 250 g coconut oil.');
    expect(asked.text).not.toMatch(/\d g NaOH/u);
    const grams = gramsOf(await press(asked, 'Yes, just that'));
    expect(grams / naoh(500, 250)).toBeGreaterThan(0.97);
    expect(grams / naoh(500, 250)).toBeLessThan(1.03);
  });

  test('in Spanish, of words that nobody here knows', async () => {
    const asked = await ask(
      '500 g de oliva, 250 g de coco. Lo segundo resultó otra cosa. ¿Cuánta sosa?',
      'es-ES',
    );
    expect(asked.text).toContain('Sin esas palabras leo: 500 g oliva, 250 g coco.');
    expect(gramsOf(await press(asked, 'Sí, solo eso')) / naoh(500, 250)).toBeCloseTo(1, 1);
    room.member.grant({ locale: 'en-US' });
  });

  test('an oil that is spoken of once more may be out: both ways are a press', async () => {
    const asked = await ask('500 g olive, 250 g coconut, 5% superfat. Ignore the coconut. How much lye?');
    expect(asked.text).toContain('Is “coconut” in the pot, all of it?');
    expect(gramsOf(await press(asked, 'No, leave out coconut')) / naoh(500, 0)).toBeCloseTo(1, 1);
    expect(gramsOf(await press(asked, 'Yes, all of it')) / naoh(500, 250)).toBeCloseTo(1, 1);
  });

  test('an oil that may be out of the pot is in no recipe that a press takes', async () => {
    for (const question of [
      '500 g de oliva, 300 g de coco y 80 g de jojoba, que es solo para las manos y no va en la olla. ¿Cuánta sosa?',
      'I took out the castor: 500 g olive, 300 g coconut, 80 g castor. How much lye?',
      '500 g olive, 300 g coconut. No, the first is less. How much lye?',
    ])
      expect((await ask(question)).controls.map(({ label }) => label)).not.toContain('Yes, just that');
  });

  test('what turns the weights round is no press: nobody here knows the recipe that is meant', async () => {
    const asked = await ask('500 g olive and 250 g coconut. No, the other way round. How much lye?');
    expect(asked.controls.map(({ label }) => label)).not.toContain('Yes, just that');
  });
});
