import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openTerminalRoom, type TerminalRoom } from './terminal-room.ts';

/* Nobody types a jar's whole name: what fits one jar alone means that jar, with its own weight and stock, everywhere. */

let room: TerminalRoom<Shown>;
beforeAll(async () => {
  room = await openTerminalRoom('names');
});
afterAll(async () => {
  await room[Symbol.asyncDispose]();
  expect(room.faults).toEqual([]);
});

type Shown = {
  readonly headline?: string;
  readonly text: string;
  readonly choices: readonly { readonly label: string }[];
  readonly data: { readonly doses: readonly { readonly grams: { readonly typical: number } }[] };
};
const asker = (member: string) => (line: string) => room.ask(member, line);

const PLAN = 'oils:"olive 700 g, coconut 300 g"';

describe('“charcoal”, where one jar is “activated charcoal”', () => {
  const ask = asker('charcoal');
  beforeAll(async () => {
    await ask('/shelf add item:"activated charcoal" amount:"20 g"');
    await ask('/shelf weigh item:charcoal amount:"1 g"');
    await ask(`/plan ${PLAN} portions:"2 cups charcoal; rest plain" save-as:Night`);
  });

  test('is dosed by its own weighed spoon, and can be taken off', async () => {
    const [short, whole] = [
      await ask('/dose colourant:charcoal portion:"2 cups"'),
      await ask('/dose colourant:"activated charcoal" portion:"2 cups"'),
    ];
    expect(short.data.doses).toEqual(whole.data.doses);
    expect(short.data.doses[0]!.grams.typical).toBeCloseTo(1, 6);
    expect(short.choices.map(({ label }) => label)).toContain(
      'Take 1 g of “activated charcoal” off my shelf',
    );
  });

  test('is previewed, planned and poured as that jar', async () => {
    expect((await ask('/preview mix:charcoal')).headline).toMatch(/: activated charcoal$/);
    for (const line of [`/plan ${PLAN} portions:"2 cups charcoal; rest plain"`, '/recipe show recipe:Night'])
      expect((await ask(line)).text).toContain('“activated charcoal”');
    expect((await ask('/batch poured made:"300 ml charcoal 1 tsp"')).headline).toMatch(
      /^1 g “activated charcoal” off your shelf/,
    );
  });

  test('is the kind where two jars are called so', async () => {
    const ask = asker('two charcoals');
    await ask('/shelf add item:"activated charcoal" amount:"20 g"');
    await ask('/shelf add item:"bamboo charcoal" amount:"10 g"');
    const { text, choices } = await ask('/dose colourant:charcoal portion:"2 cups"');
    expect(choices).toEqual([]);
    expect(text).not.toMatch(/bamboo|“activated/);
  });
});

describe('a jar of a short name', () => {
  const ask = asker('short');
  beforeAll(async () => {
    await ask('/shelf add item:"charcoal mica" amount:"20 g" colourant:"black mica"');
  });

  test('of another kind is not taken for what the name means', async () => {
    const { choices } = await ask('/dose colourant:charcoal portion:"2 cups"');
    expect(choices).toEqual([]);
  });

  test('is found by its words, whatever quotes and signs stand in it', async () => {
    await ask(
      String.raw`/shelf add item:"mica \"lilac dream\"" amount:"1 oz" ingredients:"Mica, Titanium Dioxide, Ultramarine Violet"`,
    );
    for (const name of ['lilac dream', 'lilac', 'dream', 'mica lilac dream'])
      expect((await ask(`/dose colourant:"${name}" portion:"500 g"`)).headline).toContain(
        'mica "lilac dream"',
      );
    expect((await ask('/shelf use item:"lilac dream" amount:"1 g"')).headline).toContain('lilac dream');
  });

  test('of odd signs comes in lines that can be pasted', async () => {
    await ask(
      String.raw`/shelf add item:"🌈 Grandma's \"odd\" pink & co" amount:"20 g" colourant:"rose clay"`,
    );
    const { text } = await ask(`/calibrate plan jars:"Grandma's odd pink"`);
    const line = /\/calibrate bars .*"/.exec(text)?.[0];
    const answer = await ask(line!.replace('#……', '#d0a090'));
    expect(answer.headline).toContain('odd');
    expect(answer.headline).not.toContain('place');
  });
});
