import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../../src/conversation/conversation.ts';
import type { Answer } from '../../../../src/conversation/reply.ts';
import { lyeTopicIn } from '../../../../src/engine/questions/lye/topics/topics.ts';
import { askLine } from '../../../../src/terminal/seat.ts';
import * as english from '../../../../src/words/en/index.ts';
import * as spanish from '../../../../src/words/es/index.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

async function asked(line: string) {
  const seat = { member: 'ines', group: 'nearest', language: 'en' as const, manages: false, roles: [] };
  const { answer } = await askLine(line, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  return answer;
}

/** Each matter as it stands on a button. */
const QUESTIONS: ReadonlySet<string> = new Set(
  [english, spanish].flatMap(({ ask, lyeQuestions }) =>
    Object.values(lyeQuestions.matters).map(job => ask.ratherThat({ job })),
  ),
);
const matters = ({ choices = [] }: Extract<Answer, { kind: 'reply' }>) =>
  choices.flatMap(one => (one.kind === 'button' && QUESTIONS.has(one.label) ? [one] : []));

describe('where no pattern fits', () => {
  test.each([['se evapora la sosa', 'lye-gone']])(
    '%s is answered by %s, and what was understood is told',
    async (line, topic) => {
      expect(lyeTopicIn(line)).toBeUndefined();
      const { data, blocks, cautions } = await asked(line);
      expect(data).toMatchObject({ understood: { lye: topic, chance: expect.any(Number) } });
      expect(blocks[0]).toMatchObject({
        text: expect.stringMatching(/^(?:Understood as|Entendido como): /u),
      });
      expect(cautions.map(({ id }) => id)).toContain('lye-first-aid');
    },
  );

  test.each([
    ['can i make soap on a boat with lye', 'en'],
    ['se puede llevar la sosa en el coche', 'es'],
  ])('%s: what it may be about is offered, and a press answers it', async line => {
    const answer = await asked(line);
    expect(answer.data).toMatchObject({ understood: { lye: 'unsure' } });
    const offered = matters(answer);
    expect(offered.length).toBeGreaterThan(0);
    expect(offered.length).toBeLessThanOrEqual(3);
    const pressed = await asked(`press ${offered[0]!.follow}`);
    expect(pressed.data).toMatchObject({
      understood: { lye: expect.stringMatching(/^(?!unsure)[a-z-]+$/u) },
    });
    expect(pressed.headline).not.toBe(answer.headline);
  });
});

describe('no matter is told', () => {
  test.each([
    'what train goes to town on sunday',
    'how do i train my parrot to talk',
    'constructor',
    '🙂🙂🙂',
    'z'.repeat(2000),
  ])('nor offered where nothing speaks of soap: %s', async line => {
    const answer = await asked(line);
    expect(answer.data).not.toHaveProperty('understood.chance');
    expect(matters(answer)).toEqual([]);
  });

  test.each([
    'vomiting after zap test',
    'tongue burned after zap test',
    'me cuesta respirar desde que mezclé la sosa',
    'falsa alarma, mi hijo ha bebido sosa',
    'me electrocuté con la batidora',
  ])('nor offered where somebody is hurt: %s', async line => {
    const answer = await asked(line);
    expect(answer.data).not.toHaveProperty('understood.chance');
    expect(matters(answer)).toEqual([]);
  });

  test.each(['cuanta sosa le pongo a la leche congelada', 'how much lye if the flakes are lumpy 500 g'])(
    'where an amount of lye is asked for: %s',
    async line => {
      expect((await asked(line)).data).not.toHaveProperty('understood.chance');
    },
  );
});
