import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;

beforeEach(async () => {
  room = await openRoom({ whole: true });
});

afterEach(() => room[Symbol.asyncDispose]());

const first = (text: string) => text.split('\n')[0];
const addDusk = () =>
  room.member.run('/shelf add', {
    item: 'Dusk',
    amount: '20 g',
    ingredients: 'Mica (CI 77019), Manganese Violet (CI 77742)',
  });

describe('a label on the shelf', () => {
  test('warns when the jar is added and each time it is dosed', async () => {
    const { member } = room;
    const added = await addDusk();
    expect(added.text).toMatch(/mica/);
    expect(added.text).toMatch(/Dusk goes beige in raw soap/);
    const dose = await member.run('/dose', { colourant: 'Dusk', portion: '1 cup' });
    expect(dose.text).toContain('Dusk goes beige in raw soap');
    expect(dose.text.match(/in lye|in raw soap/g)).toHaveLength(1);
    expect((await member.run('/shelf show', { item: 'Dusk' })).text).toContain('Manganese Violet');
    expect(first((await member.run('/colourant check', { item: 'dusk' })).text)).toMatch(
      /Dusk: lost in raw soap/,
    );
  });

  test('does not warn of what the catalogue fears when its own list holds', async () => {
    const { member } = room;
    await member.run('/shelf add', {
      item: 'Plum',
      ingredients: 'Mica, Iron Oxides',
      colourant: 'carmine mica',
    });
    const { text } = await member.run('/dose', { colourant: 'Plum', portion: '1 cup' });
    expect(text).not.toMatch(/in lye:/);
  });

  test('warns in a plan as well', async () => {
    await addDusk();
    const { text, files } = await room.member.run('/plan', {
      oils: 'olive 100%',
      size: '1000 g oils',
      portions: '2 cups Dusk; rest plain',
    });
    const whole = files.find(({ name }) => name === 'answer.txt');
    const all = whole ? new TextDecoder().decode(whole.bytes()) : text;
    expect(all).toContain('Dusk goes beige in raw soap');
    expect(all).not.toMatch(/“Dusk” .*in lye/);
  });

  test('can be told later', async () => {
    const { member } = room;
    await member.run('/shelf add', { item: 'Zzz 12' });
    const told = await member.run('/shelf describe', { item: 'Zzz 12', ingredients: 'Mica, Iron Oxides' });
    expect(told.text).toMatch(/Holds in raw soap/);
    expect((await member.run('/dose', { colourant: 'Zzz 12', portion: '1 cup' })).text).toContain(
      '1/2 tsp Zzz 12',
    );
  });

  test('with metal in it is not let onto a shelf, nor told of an item there', async () => {
    const { member } = room;
    const list = { ingredients: 'Mica. +/- Aluminum Powder' };
    await member.run('/shelf add', { item: 'Zzz 12' });
    expect((await member.run('/shelf add', { item: 'Glimmer', ...list })).text).toMatch(/Never put metal/);
    expect((await member.run('/shelf describe', { item: 'Zzz 12', ...list })).text).toMatch(
      /Never put metal/,
    );
    expect((await member.run('/shelf list')).text).not.toContain('Glimmer');
  });

  test('settles what a name leaves open', async () => {
    const { member } = room;
    expect((await member.run('/shelf add', { item: 'Copper' })).text).toMatch(/metal itself/);
    const { text } = await member.run('/shelf add', { item: 'Copper', ingredients: 'Mica, Iron Oxides' });
    expect(text).toMatch(/on your shelf/);
  });
});

describe('/colourant label', () => {
  const label = (of: string, market: string) => room.member.run('/colourant label', { of, market });

  test.each([
    ['us', 'Ultramarines, Mica, Titanium Dioxide, Iron Oxides'],
    ['eu', 'CI 77007, Mica, CI 77891, CI 77491, CI 77492, CI 77499'],
  ])('for the %s: %s', async (market, line) => {
    expect(first((await label('ultramarine blue, gold mica', market)).text)).toBe(`## ${line}`);
  });

  test('takes jars and ingredient lists as well', async () => {
    await addDusk();
    expect(first((await label('Dusk, Carmine (CI 75470)', 'eu')).text)).toBe('## Mica, CI 77742, CI 75470');
  });

  test('weighs the colours of a kept recipe', async () => {
    await addDusk();
    const plan = {
      oils: 'olive 100%',
      size: '1000 g oils',
      portions: '2 cups gold mica; 1 cup ultramarine blue pastel; rest Dusk',
    };
    await room.member.run('/plan', { ...plan, 'save-as': 'Sunset' });
    const { text } = await room.member.run('/colourant label', { recipe: 'sunset', market: 'eu' });
    expect(first(text)).toMatch(/^## Mica, .*CI 77742.*CI 77007$/);
    expect(text).toContain('In order of weight');
  });

  test('leaves out what it does not know, and says so', async () => {
    const { text } = await label('gold mica, Xyzzyol', 'us');
    expect(first(text)).not.toContain('Xyzzyol');
    expect(text).toMatch(/Not on the line.*Xyzzyol/);
  });

  test.each([
    ['a metal', 'Mica, Bronze Powder', /Never put metal/],
    ['a word nobody knows', 'qwerty', /don't know/],
  ])('refuses %s', async (_, of, sentence) => {
    expect((await label(of, 'us')).text).toMatch(sentence);
  });
});
