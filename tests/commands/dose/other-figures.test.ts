import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const headlineOf = async (line: string, language: 'en' | 'es' = 'en') => {
  const seat = { member: 'm', group: 'g', language, manages: false, roles: [] };
  const { answer } = await askLine(line, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(answer.kind);
  return answer.headline;
};
/** The spoons that a dose begins with. */
const spoonsOf = async (line: string) =>
  /^(.+?) (?:gold mica|ultramarine)/u.exec(await headlineOf(line))?.[1];

describe('what a dose leaves open is told beside it', () => {
  // A teaspoon of mica a US cup is full colour, half of it medium (common practice, no source); 1 to 2 g a level teaspoon (from memory).
  test('a mica without a strength: the dose that most begin with, its grams, and full colour behind', async () => {
    expect(await headlineOf('/dose colourant:"gold mica" portion:"2 cups"')).toMatch(
      /^1 tsp gold mica .+ for 2 cups, about 1\.[0-9]? ?g: medium, as most begin; full colour 2 tsp$/u,
    );
    expect(await headlineOf('/dose colourant:"mica dorada" portion:"2 tazas"', 'es')).toMatch(
      /^1 cdta de mica .+: medio, como se suele empezar; color pleno 2 cdta$/u,
    );
  });

  // To 500 g of oils about 1 tsp of plant powder, 1/8 to 1/4 tsp of indigo (common practice, no source).
  test.each([
    ['madder root', 'medium', '1 tsp + 1/2 tsp', '1 Tbsp'],
    ['indigo', 'pastel', '1/8 tsp + 1/16 tsp', '1/2 tsp + 1/4 tsp'],
  ])('%s is begun with at %s', async (colourant, strength, usual, full) => {
    const told = await headlineOf(`/dose colourant:"${colourant}" portion:"500 g oils"`);
    expect(told).toMatch(new RegExp(`^${usual.replaceAll('+', '\\+')} `, 'u'));
    expect(told).toContain(`: ${strength}, as most begin; full colour ${full}`);
  });

  test('a part of a batch is begun with at the same strength as a portion alone', async () => {
    const seat = { member: 'm', group: 'g', language: 'en' as const, manages: false, roles: [] };
    const line =
      '/plan oils:"olive 70%, coconut 30%" size:"1000 g oils" portions:"2 cups gold mica; 2 cups gold mica full; rest plain"';
    const { answer } = await askLine(line, seat, conversation);
    const { portions } = (answer as { data: { portions: { doses: { teaspoons: number }[] }[] } }).data;
    const [usual, full] = portions.map(({ doses }) => doses[0]?.teaspoons);
    expect([usual, full]).toEqual([expect.closeTo(1, 5), expect.closeTo(2, 5)]);
  });

  test.each([
    ['/dose colourant:"gold mica" portion:"2 cups" strength:full'],
    ['/dose colourant:"gold mica" portion:"2 cups" strength:pastel'],
    ['/dose colourant:"gold mica full" portion:"2 cups"'],
    ['/dose colourant:"ultramarine blue" portion:"2 cups"'],
  ])('a strength that is told, or a powder that is put in full, has no other: %s', async line => {
    expect(await headlineOf(line)).not.toContain('as most begin');
  });

  test('a weight of neither oils nor batter is taken as batter, and told for oils too', async () => {
    const open = await headlineOf('/dose colourant:"ultramarine blue" portion:"1 kg"');
    const [batter, oils] = await Promise.all(
      ['1 kg batter', '1 kg oils'].map(portion =>
        spoonsOf(`/dose colourant:"ultramarine blue" portion:"${portion}"`),
      ),
    );
    expect(open).toBe(`${batter} ultramarine blue for 1 kg. Taken as batter; 1 kg of oils: ${oils}`);
    expect(oils).not.toBe(batter);
  });

  test('of a mica both, in the strength that most begin with', async () => {
    const open = await headlineOf('/dose colourant:"gold mica" portion:"1 kg"');
    const [medium, mediumOfOils] = await Promise.all(
      ['1 kg batter', '1 kg oils'].map(portion =>
        spoonsOf(`/dose colourant:"gold mica" portion:"${portion}" strength:medium`),
      ),
    );
    expect(open.startsWith(`${medium} gold mica`)).toBe(true);
    expect(open).toMatch(new RegExp(`1 kg of oils: ${mediumOfOils?.replaceAll('+', '\\+')}$`, 'u'));
  });

  test.each(['1 kg batter', '1 kg of oils', '2 cups', '1 kg masa'])(
    'nothing is open of %s',
    async portion => {
      expect(await headlineOf(`/dose colourant:"ultramarine blue" portion:"${portion}"`)).not.toContain(
        'Taken as',
      );
    },
  );
});

test.each([
  ['how much mica per pound', '1 lb oils'],
  ['how much ultramarine ppo', '1 lb oils'],
  ['óxido verde cuánto x libra', '1 lb oils'],
  ['cuánta arcilla rosa por kilo', '1 kg oils'],
])('“%s” is asked of %s', async (question, portion) => {
  expect(await headlineOf(`/ask question:"${question}"`)).toContain(portion.replace(' oils', ''));
});
