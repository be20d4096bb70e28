import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { openConversation } from '../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

async function asked(line: string, language: 'en' | 'es' = 'en') {
  const seat = { member: 'ines', group: 'lye', language, manages: false, roles: [] };
  const { answer } = await askLine(line, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  const texts = answer.blocks.flatMap(block => (block.kind === 'text' ? [block.text] : []));
  return { ...answer, all: [answer.headline, ...texts].join('\n') };
}

test.each([
  ['my soap zaps, can I just use it anyway?', /^No: .*Do not use it/],
  ['can my kids help me make cold process soap', /^No: children and pets stay out/],
  ['can I keep lye solution for next week in a drink bottle', /^Never: no lye in any bottle/],
  ['can I mix all my lye and milk at once', /^No: never all the lye at once into milk/],
  ['can I microwave raw soap batter to heat it', /^No: never heat raw batter/],
  ['can I mix bleach into the soap to whiten it', /^No: never bleach/],
  ['my 5 kg loaf is 95 C in the middle, wrap it more?', /^No: do not wrap it/],
  ['can I add more lye now? my soap is oily after 2 days', /^No: never add lye/],
  ['how do I store sodium hydroxide', /^Dry, airtight.*locked away/],
  ['how many tablespoons of lye for 500 g of oil', /never measured by spoons/],
  ['can I use KOH instead of NaOH same amount', /^Not the same amount.*1\.40.*1\.56/],
  ['puedo usar una olla de aluminio', /^No: nunca aluminio/],
])('%s is answered with what keeps one safe, and the cautions of lye', async (line, says) => {
  const { headline, cautions } = await asked(line);
  expect(headline).toMatch(says);
  expect(cautions.map(({ id }) => id)).toContain('lye-burns');
});

test.each([
  ['put lye in the flour by mistake', 'en', /^Nobody eats it/],
  ['confundi el azucar con la sosa y la eche en el bizcocho', 'es', /^Nadie lo come/],
  [
    'i put 300 g lye and 120 g water instead of 120 g lye and 300 g water, what now',
    'en',
    /^Stop: do not use/,
  ],
  ['the stick blender gave me a shock', 'en', /^Switch off at the mains/],
  ['lye to water or water to lye', 'en', /^Lye into cold water/],
  ['el aceite humea, le echo la sosa ya?', 'es', /^Apaga el fuego y no eches nada/],
  ['polvo blanco encima del jabon, lo puedo tocar', 'es', /^Guantes hasta saberlo/],
  ['chrome oxide green, artist grade, safe?', 'en', /^No: colour for art/],
  ['can i pour lye into hot coffee to make coffee soap', 'en', /^No: only ice-cold or frozen/],
  ['ultramarine and citric acid together ok?', 'en', /hydrogen sulfide/],
  [
    'i forgot to put the coconut oil, 400 g olive with lye for 400 olive and 200 coconut',
    'en',
    /^Do not use it/,
  ],
] as const)('%s', async (line, language, says) => {
  const { data, headline, cautions } = await asked(line, language);
  expect(headline).toMatch(says);
  expect(cautions.map(({ id }) => id)).toContain('lye-burns');
  expect(data).not.toHaveProperty('emergency');
});

test.each(['first aid', 'Emergency!', 'ambulance please', 'primeros auxilios', 'urgencia', '¡socorro!'])(
  '%s opens the list of first aid',
  async line => {
    expect((await asked(line)).data).toMatchObject({ emergencies: expect.arrayContaining(['lye-eye']) });
  },
);

test.each(['emergency exit sign colours', 'first aid kit for soap class'])(
  '%s is no call for first aid',
  async line => {
    expect((await asked(line)).data).not.toHaveProperty('emergencies');
  },
);

test.each([
  'should I test my soap with my tongue',
  'what happens if I pour water onto lye',
  'is it dangerous to inhale steam from lye water',
  'I mixed up the lye and water amounts',
])('%s: nobody is hurt, and it is answered without first aid', async line => {
  const { data } = await asked(line);
  expect(data).not.toHaveProperty('emergency');
  expect(data).toHaveProperty('understood.lye');
});

test.each([
  ['my soap is volcanoing out of the mould', 'lye-eruption'],
  ['I breathed in the steam from the lye water and I cough', 'fumes-inhaled'],
  ['I tested the raw batter with my tongue and it burns', 'lye-swallowed'],
])('%s: first aid stands before all else', async (line, id) => {
  expect((await asked(line)).data).toMatchObject({ emergency: { id } });
});

// Butter holds at least 80 % fat (Codex CXS 279-1971): counted whole, 500 g of it would get lye for 100 g of water and milk.
test('kitchen butter gets no lye until it is clarified, ghee does', async () => {
  for (const butter of ['butter', 'unsalted butter', 'mantequilla']) {
    const { data, headline, all } = await asked(`how much lye for 500 g ${butter}`);
    expect(data).toMatchObject({ problem: 'oil-not-clarified' });
    expect(headline).toContain('82 %');
    expect(all).not.toMatch(/\d g NaOH/);
  }
  expect((await asked('how much lye for 500 g ghee')).headline).toMatch(/NaOH/);
});

test('that KOH is counted at 90 % stands in the face, with its amount', async () => {
  const { blocks, headline } = await asked('how much KOH for 32 oz olive oil');
  expect(headline).toContain('182.2 g KOH');
  expect(blocks).toContainEqual(
    expect.objectContaining({ firm: true, text: expect.stringContaining('counted at 90 %') }),
  );
});

test('lye beside what it should have been is checked by what was weighed', async () => {
  const { headline } = await asked('I weighed 150 g lye instead of 100 g for 700 g olive oil, is it safe');
  expect(headline).toMatch(
    /^Do not use it, gloves on, set it aside: \d+ % too much lye, superfat about -\d+ %/,
  );
});

// Figures of a craft tutor's own reckoning: 90 g for 500 g olive is -32.7 %, 120 g for 1 kg coconut leaves 34 %.
test.each([
  [
    'a recipe I found online: 500 g olive oil, 90 g lye, 150 g water. good?',
    /^Do not use it: 90 g NaOH for 500 g oils.*-32\.[678]/,
  ],
  ['receta: 1 kg coco, 120 g sosa, 300 agua. esta bien?', /^Poca sosa: 120 g de NaOH.* 34(?:,\d)? %/],
  [
    'i put 65 g lye in 300 g olive and 100 g coconut, 150 g water',
    /^Do not use it: 65 g NaOH for 400 g oils.*-(?:9|10)/,
  ],
] as const)('water that was weighed beside it hides no lye: %s', async (line, says) => {
  const { headline } = await asked(line, /receta/.test(line) ? 'es' : 'en');
  expect(headline.replace('−', '-')).toMatch(says);
});

test('less water than lye is told before a lye that fits', async () => {
  const dry = await asked('puse 64 g de sosa y 40 g de agua en 500 g de oliva', 'es');
  expect(dry.headline).toMatch(/^Poca agua: 40 g para 64 g de sosa. Nunca menos agua que sosa/);
  expect(dry.all).toContain('64 g de NaOH');
  const wet = await asked('puse 64 g de sosa y 64 g de agua en 500 g de oliva', 'es');
  expect(wet.headline).toMatch(/^64 g de NaOH/);
});

test('lye that nothing was made with is not called lye-heavy', async () => {
  const heavy = /treat it as lye-heavy/;
  expect(
    (await asked('my recipe is 700 g oil and 99 g lye, mould is twice as big, how much lye')).all,
  ).not.toMatch(heavy);
  expect((await asked('I have 100 g lye, how much olive oil')).all).not.toMatch(heavy);
  expect((await asked('I put 100 g lye in 700 g unicorn fat, how much lye should it be')).all).toMatch(heavy);
});

test('a question is answered in the language it is clearly written in', async () => {
  expect((await asked('cuánta sosa para 500 g de aceite de oliva')).headline).toMatch(/^64,4 g de NaOH/);
  expect((await asked('how much lye for 500 g of olive oil', 'es')).headline).toMatch(/^64\.4 g NaOH/);
  expect((await asked('ultramarine blue 2 cups', 'es')).language).toBe('es');
});
