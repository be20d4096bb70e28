import { describe, expect, test } from 'vitest';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

type Recipe = { readonly doses: readonly { readonly colourant: string }[] };

async function matched(line: string, language: 'en' | 'es' = 'en') {
  await using conversation = await openConversation();
  const seat = { member: 'mixer', group: 'told', language, manages: false, roles: [] };
  const { answer } = await askLine(line, seat, conversation);
  const data = (answer.kind === 'reply' ? answer.data : {}) as { readonly recipes?: readonly Recipe[] };
  return {
    text: answer.kind === 'reply' ? answer.headline : answer.kind === 'problem' ? answer.text : '',
    used: new Set(data.recipes?.flatMap(({ doses }) => doses.map(({ colourant }) => colourant))),
  };
}

describe('a mix of what is named', () => {
  test('uses nothing else, and tells the nearest where that does not get there', async () => {
    const { text, used } = await matched('/match target:purple with:"red oxide, ultramarine blue, white"');
    expect([...used].every(id => /^(?:red-iron-oxide|ultramarine-blue|titanium-dioxide)/u.test(id))).toBe(
      true,
    );
    expect(used.size).toBeGreaterThan(0);
    expect(text).toMatch(/the nearest I get to purple/u);
  });

  test.each([
    [
      'en',
      'Lye spoils every colourant that you named: name one that holds, such as an oxide or an ultramarine.',
    ],
    [
      'es',
      'La sosa echa a perder todos los colorantes que nombraste: nombra uno que aguante, como un óxido o un ultramar.',
    ],
  ] as const)('is refused where lye spoils all of it (%s)', async (language, sentence) => {
    expect((await matched('/match target:blue with:"prussian blue"', language)).text).toBe(sentence);
  });

  test('a grey of any pigments is black and white (common practice), and no hues that cancel one another', async () => {
    const { used } = await matched('/match target:grey from:catalogue');
    expect([...used].every(id => /charcoal|black|titanium/u.test(id))).toBe(true);
  });
});
