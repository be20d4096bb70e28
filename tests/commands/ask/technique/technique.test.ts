import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../../src/conversation/conversation.ts';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

/* How coloured batter is worked with, asked in plain words; common practice (no source), temperatures in both scales. */

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

async function asked(question: string, language: 'en' | 'es' = 'en') {
  const seat = { member: 'pourer', group: 'pourers', language, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  return answer;
}
const techniqueOf = async (question: string) =>
  ((await asked(question)).data as { understood?: { technique?: string } }).understood?.technique;

describe('a pot going thick in front of somebody', () => {
  test('is told to stop the blender and pour, with gloves on, before anything else', async () => {
    const answer = await asked('my batter is getting thick what now');
    expect(answer.headline).toBe('Stop the stick blender. Stir by hand and get it into the mould now.');
    expect(answer.cautions.map(({ id }) => id)).toEqual(['raw-batter']);
    // What is done with a pot in hand stands open, the rest folds behind it.
    expect(JSON.stringify(answer.blocks[1])).toMatch(
      /Still pourable: .* spoon it in, .* streaks are fine\."/u,
    );
    expect(JSON.stringify(answer.blocks[2])).toMatch(/Hard in the jug: .*30 to 35 °C \(86 to 95 °F\)/u);
    expect(answer.blocks).toHaveLength(3);
  });

  test.each(['getting thick help', 'sieze', 'it’s going solid', 'se me espesa'])(
    '“%s” is enough',
    async cry => {
      expect(await techniqueOf(cry)).toBe('thick-now');
    },
  );

  test('is told so in Spanish by who asks in Spanish', async () => {
    expect((await asked('se me espesó todo ayuda')).headline).toBe(
      'Para la batidora. Remueve a mano y échala ya al molde.',
    );
  });
});

test.each([
  ['how do i keep it thin for swirls', 'keep-fluid'],
  ['when do i put the colour in', 'when-colour'],
  ['does gel make colours brighter', 'gel-and-colour'],
  ['hanger swirl tips', 'hanger-swirl'],
  ['teaspoon or grams??', 'spoon-or-grams'],
  ['traza falsa q es', 'false-trace'],
  ['cuanto se deja entre capa y capa', 'layers-how'],
  // Nothing else is surely read of it.
  ['mica that says lip safe means soap safe right', 'cosmetic-grade'],
  // A powder that is named does not make every question its dose or its wetting.
  ['td too lumpy', 'no-lumps'],
  ['mica se hunde en la taza normal?', 'mica-settles'],
  ['can i sprinkle mica on top dry', 'dust-on-top'],
  ['mixed mica in oil last month still good?', 'premix-keeps'],
  ['paprika scratchy?', 'steep-in-oil'],
  ['grey lather from charcoal normal?', 'coloured-suds'],
  // What only sounds like a colour is none to be matched.
  ['como hago q no me salga ceniza arriba', 'ash-avoid'],
  ['con leche de cabra los colores salen feos, amarillentos', 'milk-colour'],
  ['base is yellow from the olive oil, how do i get clean blue', 'yellow-base'],
  ['blue plus yellow oxide = ??', 'blend-two'],
  // Nor is it another field.
  ['pipe frosting how', 'piping'],
  ['charcoal makes my sink black', 'stained-things'],
  ['cuantos dias de curado', 'cure-time'],
  ['where do i buy', 'buy-where'],
  // Told shortly, with a sign of a flaw.
  ['layers keep breaking through when i pour', 'layers-how'],
  ['goggles really needed? just colouring', 'goggles-gloves'],
])('“%s” is answered as %s', async (question, technique) => {
  expect(await techniqueOf(question)).toBe(technique);
});

test.each([
  // No two colours are put together here.
  'and purple?',
  'how much mica for 1 kg oils',
  'how much lye for 500 g olive',
  'lye splashed on my arm while i stirred the swirl',
  'zap test how',
  'my custard is going thick',
  'put scent in and it went like rice pudding, little grains in runny oil',
  'my mayonnaise seized',
  'can I add more lye water to thin it',
])('“%s” is no matter of technique', async question => {
  expect(await techniqueOf(question)).toBeUndefined();
});

test('another technique that may be meant is a press away', async () => {
  const { choices } = await asked('how thin should it be to swirl');
  expect(choices?.map(one => one.kind === 'button' && one.label)).toContain(
    'I meant: how do I keep batter thin?',
  );
});

test('the spoon of a powder in grams is that of the catalogue: mica 0.32 g/ml, a US teaspoon 4.93 ml (NIST)', async () => {
  const { headline } = await asked('how much is a tsp in grams');
  const [, low, high] = /mica (\d) to (\d) g/u.exec(headline) ?? [];
  const teaspoon = 4.92892159375;
  expect(0.2 * teaspoon).toBeCloseTo(Number(low), 0);
  expect(0.45 * teaspoon).toBeCloseTo(Number(high), 0);
});

test('a tablespoon of oil on top of 1 kg at 5 % superfat leaves 6.3 % over (arithmetic)', async () => {
  const { blocks } = await asked('do i count the oil in the recipe');
  expect(JSON.stringify(blocks)).toContain('makes 5 % superfat 6.3');
  expect((100 * (50 + 14)) / (1000 + 14)).toBeCloseTo(6.3, 1);
});

describe('colours that go together', () => {
  test('a mood is named by its colours, with a way to make or buy them', async () => {
    const answer = await asked('autumn palette ideas pls');
    expect(answer.headline).toMatch(/^[a-z ]+(?:, [a-z ]+)+: colours that hold together\.$/u);
    expect(answer.choices?.map(one => one.kind === 'button' && one.label)).toEqual([
      'From my shelf',
      'What to buy',
    ]);
  });

  test('what goes with a colour is its neighbours and its quieted opposite', async () => {
    expect((await asked('what goes with lilac')).headline).toMatch(
      /^Beside lilac: .*, and white or cream\.$/u,
    );
  });
});

test('what cannot be answered without more is asked back, and near lye what always holds is said', async () => {
  expect((await asked('which gold wont go green')).headline).toMatch(/^Tell me a little more: which colour/u);
  expect((await asked('something odd with my lye thing')).headline).toMatch(/lye/iu);
});

test('greetings and thanks are met as such, and nothing that is asked beside them is lost', async () => {
  expect((await asked('morning Leah x')).headline).toMatch(/^Hello\. Ask me about colour/u);
  expect((await asked('thanks that worked!!')).headline).toBe(
    'You’re welcome. Ask the next one when it comes up.',
  );
  expect((await asked('thanks but it is still crumbling')).headline).not.toMatch(/welcome/u);
  expect((await asked('hi how much mica for 2 cups')).headline).toMatch(/^1 tsp mica/u);
});

describe('what is asked of a thing of the bench gives way', () => {
  test.each([
    [
      'a sure command of a named colourant',
      'show me 1 tsp of blue mica in 500g batter, after gel what it look like',
    ],
    ['a dose that is asked for', 'cocoa powder for brown, how much before it goes scratchy'],
    ['a recipe', 'lard, coconut, olive: 400, 250, 350 in that order. lye with 5% superfat?'],
    ['another field', 'how long does the clear melt and pour base take to set in the fridge'],
  ])('to %s: %s', async (_, question) => {
    expect(await techniqueOf(question)).toBeUndefined();
  });

  test('and what light trace looks like is no flaw', async () => {
    expect(await techniqueOf('whats light trace look like')).toBe('what-is-trace');
  });
});
