import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openTerminalRoom, type TerminalRoom } from './terminal-room.ts';

/*
 * A spoon written beside a colour of a portion is what a maker drops into that portion, in every command that takes one:
 * what was planned with a line can be poured with the same line. Only “per cup” makes it a strength (common practice).
 */

let room: TerminalRoom<Shown>;
beforeAll(async () => {
  room = await openTerminalRoom('cups');
});
afterAll(async () => {
  await room[Symbol.asyncDispose]();
  expect(room.faults).toEqual([]);
});

type Dosed = { readonly teaspoons: number };
type Shown = {
  readonly headline: string;
  readonly text: string;
  readonly data: {
    readonly doses?: readonly Dosed[];
    readonly portions?: readonly { readonly doses: readonly Dosed[] }[];
  };
};
const asker = (member: string) => (line: string) => room.ask(member, line);

const BATTER = 'oils:"coconut 30%, olive 70%" size:"1000 g oils"';

/** Commands that plan, each for the same words of one portion of two cups. */
const planned: Readonly<Record<string, (mix: string) => string>> = {
  preview: mix => `/preview mix:"${mix}" portion:"2 cups"`,
  plan: mix => `/plan ${BATTER} portions:"2 cups ${mix}; rest plain"`,
};
/** Commands that keep what was poured. */
const poured: Readonly<Record<string, (mix: string) => string>> = {
  'batch poured': mix => `/batch poured made:"2 cups ${mix}; 1 cup plain"`,
  'batch poured with its oils': mix => `/batch poured made:"2 cups ${mix}; 1 cup plain" ${BATTER}`,
};
/** Ultramarine blue, 0.52 g/ml: a level US teaspoon is 2.563 g (the catalogue). */
const SPOON_G = 0.52 * 4.92892159375;

describe('two cups with a colour', () => {
  const ask = asker('portions');
  beforeAll(() => ask('/shelf add item:"ultramarine blue" amount:"90 g"'));

  test.for([
    ['ultramarine blue 1/2 tsp', 0.5],
    ['ultramarine blue 1/4 tsp per cup', 0.5],
    ['ultramarine blue 1/4 tsp', 0.25],
    [`ultramarine blue ${(SPOON_G / 2).toFixed(4)} g`, 0.5],
  ] as const)('%s: %s tsp in every command', async ([mix, teaspoons]) => {
    for (const line of Object.values(planned)) {
      const { data } = await ask(line(mix));
      const doses = data.doses ?? data.portions?.[0]?.doses;
      expect(doses?.[0]?.teaspoons).toBeCloseTo(teaspoons, 4);
    }
    for (const line of Object.values(poured)) {
      const { headline } = await ask(line(mix));
      const taken = /^([\d.]+) g “ultramarine blue” off your shelf/.exec(headline)?.[1];
      // As it is shown, in hundredths; what is kept is in whole milligrams.
      expect(Number(taken)).toBeCloseTo(teaspoons * SPOON_G, 1.7);
    }
  });

  test('is recorded as poured, though no plan would advise so much', async () => {
    for (const line of Object.values(poured)) {
      const { headline, text } = await ask(line('ultramarine blue 3 tsp + titanium dioxide pastel'));
      expect(headline).toMatch(/^7\.6[89] g “ultramarine blue”/);
      expect(text).toMatch(/\b(?:3 tsp|1 Tbsp) ultramarine blue/);
    }
  });

  test('is kept with a recipe, grows with it, and is poured so', async () => {
    await ask(`/plan ${BATTER} portions:"2 cups ultramarine blue 1/4 tsp; rest plain" save-as:Sea`);
    const spoonsIn = async (line: string) => (await ask(line)).data.portions?.[0]?.doses[0]?.teaspoons;
    expect(await spoonsIn('/recipe show recipe:Sea')).toBeCloseTo(0.25, 6);
    expect(await spoonsIn('/recipe rescale recipe:Sea size:2')).toBeCloseTo(0.5, 6);
    expect((await ask('/batch poured recipe:Sea')).headline).toMatch(/^0\.64 g “ultramarine blue”/);
  });
});
