import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../src/terminal/seat.ts';
import { openConversation } from '../sets/open-conversation.ts';

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
  // A teaspoon of mica a US cup is full colour, half of it medium (common practice, no source).
  test('a mica without a strength: the full dose, and the medium one that most begin with', async () => {
    expect(await headlineOf('/dose colourant:"gold mica" portion:"2 cups"')).toMatch(
      /^2 tsp gold mica .+ for 2 cups, full colour; medium, as most begin: 1 tsp$/u,
    );
    expect(await headlineOf('/dose colourant:"mica dorada" portion:"2 tazas"', 'es')).toMatch(
      /color pleno; medio, como se suele empezar: 1 cdta$/u,
    );
  });

  test.each([
    ['/dose colourant:"gold mica" portion:"2 cups" strength:full'],
    ['/dose colourant:"gold mica" portion:"2 cups" strength:pastel'],
    ['/dose colourant:"gold mica full" portion:"2 cups"'],
    ['/dose colourant:"ultramarine blue" portion:"2 cups"'],
  ])('a strength that is told, or a powder that is put in full, has no other: %s', async line => {
    expect(await headlineOf(line)).not.toContain('medium');
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

  test('of a mica both, in both strengths', async () => {
    const open = await headlineOf('/dose colourant:"gold mica" portion:"1 kg"');
    const [medium, mediumOfOils] = await Promise.all(
      ['1 kg batter', '1 kg oils'].map(portion =>
        spoonsOf(`/dose colourant:"gold mica" portion:"${portion}" strength:medium`),
      ),
    );
    expect(open).toContain(`medium, as most begin: ${medium}. Taken as batter`);
    expect(open).toContain(`(medium ${mediumOfOils})`);
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
