import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const asked = async (question: string, language: 'en' | 'es' = 'en') => {
  const seat = { member: 'm', group: 'g', language, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(answer.kind);
  const { understood } = answer.data as { understood?: Readonly<Record<string, unknown>> };
  return { ...understood, headline: answer.headline, said: JSON.stringify(answer.blocks) };
};

describe('a flaw with several signs stands before a matter that only shares its words', () => {
  test.each([
    'little dark blue specks in the pale blue, when you wash with it you get a streak. I just tipped the ultramarine straight in',
    'dark circle in the middle of every bar and lighter round the edge, lemon yellow, left the loaf on top of the fridge',
  ])('“%s”', async question => {
    expect(await asked(question)).toMatchObject({ command: 'diagnose' });
  });

  test('and what it was taken for is told behind it', async () => {
    const { said } = await asked(
      'little dark blue specks in the pale blue, when you wash with it you get a streak. I just tipped the ultramarine straight in',
    );
    expect(said).toContain('Gloves for the first 48 hours');
  });

  test('one sign alone leaves the matter first', async () => {
    expect(await asked('when can I wash with it')).not.toMatchObject({ command: 'diagnose' });
  });
});

describe('weighed lye is told of the superfat that was wanted', () => {
  /** What the same oils take at a superfat: less lye by its percents, whatever their saponification value (arithmetic). */
  const toldAt = async (percent: number) => {
    const { said } = await asked(
      `500 g lard, 300 g olive, 200 g coconut, 139 g lye, meant to be ${percent} percent superfat`,
    );
    return Number(
      new RegExp(String.raw`At ${percent} % superfat it would be ([\d.]+) g`, 'u').exec(said)?.[1],
    );
  };
  test('of 8 % as 92 parts of a hundred, of 5 % as 95', async () => {
    const [five, eight] = [await toldAt(5), await toldAt(8)];
    expect(eight / five).toBeCloseTo(92 / 95, 2);
    expect(eight).toBeLessThan(five);
  });

  test('a superfat of 90 is a slip, and the usual one is told', async () => {
    const { said } = await asked('500 g lard, 300 g olive, 200 g coconut, 139 g lye, at 90 percent superfat');
    expect(said).not.toContain('At 90 % superfat');
  });
});

test('a soft pastel yellow is a strength; a stick of it is none', async () => {
  expect(await asked('turmeric, a soft pastel yellow, portion is 250 ml, how much')).toMatchObject({
    command: 'dose',
    given: { strength: 'pastel' },
  });
  expect((await asked('can i grate soft pastels into soap')).headline).toContain('does not go into soap');
});
