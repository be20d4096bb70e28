import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(async () => {
  expect(room.faults).toEqual([]);
  await room[Symbol.asyncDispose]();
});
const run = (line: string, options: Record<string, string | number> = {}) =>
  room.member.run(line, options).then(({ text }) => text);
const headline = (text: string) => text.split('\n')[0];

describe('/prefer', () => {
  test('keeps the spoons one owns: doses and plans come in no other', async () => {
    const dose = () => run('/dose', { colourant: 'ultramarine blue', portion: '1.5 cups' });
    expect(headline(await dose())).toBe('## 1/4 tsp + 1/8 tsp ultramarine blue for 1 1/2 cups');
    expect(await run('/prefer', { owned: '1 tsp, 1/2, 1/4' })).toContain(
      'You own: 1 tsp, 1/2 tsp, and 1/4 tsp',
    );
    const owned = await dose();
    // Between a quarter and a half there is a paste: a teaspoon of one part in three.
    expect(headline(owned)).toMatch(/^## 1\/3 of 1 tsp ultramarine blue for 1 1\/2 cups/);
    expect(owned).not.toMatch(/1\/8 tsp|1\/16 tsp|1\/32 tsp/);
    const plan = await run('/plan', {
      oils: 'olive 100%',
      size: '1000 g oils',
      portions: '1 cup ultramarine blue pastel; rest plain',
    });
    expect(plan).toMatch(/ultramarine blue/i);
    expect(plan).not.toMatch(/1\/8 tsp|1\/16 tsp|1\/32 tsp/);
    expect(await run('/prefer', { owned: 'all' })).toContain('every spoon down to 1/32 tsp');
    expect(headline(await dose())).toBe('## 1/4 tsp + 1/8 tsp ultramarine blue for 1 1/2 cups');
  });

  test('keeps the step of one’s scale: a plan weighs by it, unless it names its own', async () => {
    const plan = { oils: 'olive 100%', size: '1000 g oils' };
    const fine = headline(await run('/plan', plan)) ?? '';
    expect(fine).toMatch(/^## \d+\.\d g NaOH/);
    expect(await run('/prefer', { scale: 1 })).toContain('Scale: steps of 1 g');
    const coarse = headline(await run('/plan', plan)) ?? '';
    expect(coarse).toMatch(/^## \d+ g NaOH/);
    // Lye is rounded down to the step: less lye is the safe side.
    const grams = (text: string) => Number(/^## ([\d.]+) g/.exec(text)?.[1]);
    expect(grams(coarse)).toBe(Math.floor(grams(fine)));
    expect(headline(await run('/plan', { ...plan, scale: 0.1 }))).toBe(fine);
    await run('/prefer', { scale: 0.1 });
  });

  test('asks again for what it cannot read, and changes nothing', async () => {
    const before = await run('/prefer');
    expect(await run('/prefer', { owned: 'a big one' })).toMatch(/I can’t read “a big one” as spoons/);
    expect(await run('/prefer')).toBe(before);
  });
});

describe('/prefer answers', () => {
  test('whole: nothing folds; short: the rest stands behind buttons', async () => {
    const plan = () => room.member.run('/plan', { oils: 'olive 100%', size: '500 g oils' });
    const folds = ({ controls }: Awaited<ReturnType<typeof plan>>) =>
      controls.flatMap(({ label }) => /^▸ (.+)$/u.exec(label)?.[1] ?? []);
    expect(await run('/prefer', { answers: 'short' })).toContain('Answers: short, the rest unfolds');
    const short = await plan();
    expect(folds(short)).toEqual(expect.arrayContaining(['All numbers', 'Safety', 'Timeline']));
    expect(short.text).not.toContain('never by spoon or cup');
    expect(await run('/prefer', { answers: 'whole' })).toContain('Answers: whole at once');
    const whole = await plan();
    expect(folds(whole)).toEqual([]);
    expect(whole.text).toContain('never by spoon or cup');
  });
});

describe('/prefer mass:ounces', () => {
  test('counts in every answer that tells a mass, not in plans alone', async () => {
    await run('/shelf add', { item: 'Gold', amount: '60 g', colourant: 'gold mica' });
    await run('/prefer', { mass: 'ounces' });
    expect(await run('/shelf use', { item: 'Gold', amount: '10 g' })).toContain(
      '1.76 oz (50 g) of “Gold” left',
    );
    expect(await run('/shelf list')).toContain('Gold: 1.76 oz (50 g)');
    expect(headline(await run('/plan', { oils: 'olive 100%', size: '500 g oils' }))).toMatch(
      /^## [\d.]+ oz NaOH/,
    );
    await run('/prefer', { mass: 'grams' });
    expect(await run('/shelf list')).toContain('Gold: 50 g');
  });
});
