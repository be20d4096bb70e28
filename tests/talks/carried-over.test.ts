import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lyeIn, openTalk, type Talk, textOf, understoodOf } from './talking.ts';

/* Later turns are whole sentences that leave out what they are about. Common practice, where no source is named. */
let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(async () => {
  await talk[Symbol.asyncDispose]();
});

const causeOf = ({ data }: { data: object }) =>
  (data as { causes?: readonly { id: string; probability: number }[] }).causes?.[0];

describe('a maker whose soap went wrong', () => {
  test('tells one more sign, and both together are weighed', async () => {
    const last = await talk.lastOf([
      'my swirl turned to mud',
      'black yellow and white, went at it with a stick',
    ]);
    expect(causeOf(last)).toMatchObject({ id: 'muddy-swirl' });
    const scent = await talk.lastOf([
      'my cream bars are going brown from the outside in',
      'the scent was a bakery sort of one',
    ]);
    expect(causeOf(scent)?.id).toBe('vanillin-browning');
    expect(causeOf(scent)!.probability).toBeGreaterThan(0.9);
  });

  test('asks on with “it”, which is the flaw', async () => {
    const white = await talk.lastOf([
      'my cream bars are going brown from the outside in, vanilla scent',
      'would titanium have stopped it',
    ]);
    expect(white.headline).toMatch(/no white stops it/u);
  });

  test('asks of next time behind an aside, and is told of the flaw', async () => {
    const next = await talk.lastOf([
      'white dust on top of the bars after 3 days',
      'can I give them away on saturday',
      'how do I stop it next time',
    ]);
    expect(causeOf(next)?.id).toBe('soda-ash');
    expect(next.headline).toMatch(/Cover the top/u);
  });

  test('is not talked out of “do not use” by a harmless sign', async () => {
    const last = await talk.lastOf([
      'my loaf has a dark ring in the middle',
      'it bites like a battery when I lick it',
    ]);
    expect(last.headline).toMatch(/^Don’t use it/u);
  });
});

describe('a maker who doses', () => {
  test('names the colour first and the oils later', async () => {
    const last = await talk.lastOf([
      'does turmeric stay',
      'how much for 500 g of oils, want to try it anyway',
    ]);
    expect(understoodOf(last)).toMatchObject({ command: 'dose', given: { colourant: 'turmeric' } });
  });

  test('does not get a dose put into a recipe', async () => {
    const last = await talk.lastOf(['lye for 700 g olive 300 g coconut', 'and for 900 g of oils scale it']);
    expect(lyeIn(last.headline)).toBeCloseTo(
      0.9 * lyeIn((await talk.lastOf(['lye for 700 g olive 300 g coconut', '5% superfat'])).headline),
      0,
    );
  });
});

test('a recipe whose weights were put right is reckoned whole (NaOH per g: olive 0.1345, coconut 0.178 to 0.183, castor 0.1285)', async () => {
  const last = await talk.lastOf([
    'lye for 700 olive 250 coconut 50 castor, 8% superfat. grams',
    "hang on coconut's 200 and the olive 750",
  ]);
  const grams = lyeIn(last.headline);
  expect(last.headline).toContain('750 g olive, 200 g coconut, 50 g castor at 8 % superfat');
  const at = (coconut: number) => 0.92 * (750 * 0.1345 + 200 * coconut + 50 * 0.1285);
  expect(grams).toBeGreaterThan(at(0.178) - 2);
  expect(grams).toBeLessThan(at(0.183) + 1);
});

test('milk is asked of after how lye goes into water, and orange milk after that', async () => {
  const milk = await talk.lastOf(['¿la soda va al agua o el agua a la soda?', 'y leche?'], 'es');
  expect(understoodOf(milk).lye).toBe('milk-at-once');
  const orange = await talk.lastOf(
    ['¿la soda va al agua o el agua a la soda?', 'y leche?', 'me quedó naranja'],
    'es',
  );
  expect(understoodOf(orange).lye).toBe('scorched-milk');
});

test('brass and copper are asked of after aluminium: steel and polypropylene alone', async () => {
  const brass = await talk.lastOf(['can I use my aluminium pot for lye', 'brass?']);
  expect(textOf(brass)).toMatch(/Never aluminium, tin, zinc, copper, brass/u);
});
