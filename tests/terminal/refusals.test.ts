import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { askLine, type Seat } from '../../src/terminal/seat.ts';
import { wordsIn } from '../../src/words/index.ts';
import { LANGUAGES, type Language } from '../../src/words/sentence.ts';
import { photoOf } from '../commands/challenge/room.ts';
import { shoot } from '../photo/render/scene.ts';
import { shotOf } from '../photo/render/shots.ts';
import { openConversation } from '../sets/open-conversation.ts';
import { BY_VALUES } from './refused/by-values.ts';
import { REFUSED } from './refused/index.ts';
import type { RefusedCase } from './refused/row.ts';

let conversation: Conversation & AsyncDisposable;
let folder: string;
beforeAll(async () => {
  conversation = await openConversation();
  folder = await mkdtemp(join(tmpdir(), 'refused-'));
  const bar = Buffer.from((await photoOf(['#3f6fa8'])).bytes);
  const plain = (width: number, height: number) =>
    sharp({ create: { width, height, channels: 3, background: '#8899aa' } })
      .png()
      .toBuffer();
  // A bar on a table, and nothing white beside it.
  const camera = { blur: 1, noise: 2, quality: 88 };
  const files = {
    'BAR.jpg': bar,
    'WOOD.jpg': await shoot(shotOf(5, camera, { colours: ['#3f6fa8', '#3f6fa8'], paper: 'none' })),
    'NOTE.jpg': 'no picture',
    'EMPTY.jpg': '',
    'BROKEN.jpg': bar.subarray(0, Math.floor(bar.length / 3)),
    'SMALL.png': await plain(20, 20),
    'STRIP.png': await plain(3000, 200),
  };
  for (const [name, bytes] of Object.entries(files)) await writeFile(join(folder, name), bytes);
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
  await rm(folder, { recursive: true, force: true });
});

const AT = Date.UTC(2026, 10, 20, 12);
const MINUTE = 60_000;

/** Each case has a group and members of its own: none sees what another did. */
let groups = 0;

/** Who says a line and when, from the marks before it (`row.ts`), and the line itself. */
function saidBy(marked: string, group: string, language: Language): readonly [line: string, seat: Seat] {
  const [, marks = '', line = ''] = /^((?:(?:\+\d+|@\w+|~|\^) )*)(.*)$/su.exec(marked) ?? [];
  const minutes = Number(/\+(\d+)/u.exec(marks)?.[1] ?? 0);
  return [
    line,
    {
      member: `${/@(\w+)/u.exec(marks)?.[1] ?? 'odile'}-${group}`,
      group: marks.includes('^') ? `${group}-b` : group,
      language,
      manages: !marks.includes('~'),
      roles: [],
      at: AT + minutes * MINUTE,
    },
  ];
}

/** Says the lines one after another; the last is refused, the others are answered. */
async function refused(lines: readonly string[], language: Language) {
  groups += 1;
  const group = `refusals-${groups}`;
  const answers: { readonly id: string; readonly text: string }[] = [];
  let form = '';
  const pressable: string[] = [];
  for (const marked of lines) {
    const [line, seat] = saidBy(marked, group, language);
    const typed = line
      .replace(/photo:([A-Z]+\.\w+)/u, (_, name: string) => `photo:${join(folder, name)}`)
      .replace('/fill FORM', `fill ${form}`)
      .replace(/^\/(press|choose) (\d)/u, (_, verb, at) => `${verb} ${pressable[Number(at) - 1]}`);
    const { answer } = await askLine(typed, seat, conversation);
    if (answer.kind === 'form') form = answer.follow;
    if (answer.kind === 'reply') pressable.push(...(answer.choices ?? []).map(({ follow }) => follow));
    answers.push(told(answer));
  }
  expect(answers.slice(0, -1).filter(({ id }) => id !== 'reply' && id !== 'form')).toEqual([]);
  return answers.at(-1)!;
}

/** A recipe that is told in chat is asked back in an answer, which names the refusal. */
function told(answer: Awaited<ReturnType<typeof askLine>>['answer']) {
  if (answer.kind === 'problem') return { id: answer.id, text: answer.text };
  if (answer.kind === 'form') return { id: 'form', text: '' };
  return { id: (answer.data as { problem?: string }).problem ?? 'reply', text: answer.headline };
}

const linesIn = (asked: RefusedCase[0], language: Language): readonly string[] => {
  const lines = typeof asked === 'object' && 'en' in asked ? asked[language] : asked;
  return typeof lines === 'string' ? [lines] : lines;
};

describe.each(LANGUAGES)('in %s', language => {
  describe.each(Object.entries(REFUSED))('%s', (_, cases) => {
    test.for(cases)('%s: %s', async ([asked, id, english, spanish]) => {
      const says = { en: english, es: spanish }[language];
      expect(await refused(linesIn(asked, language), language)).toEqual({
        id,
        text: expect.stringContaining(says),
      });
    });
  });
});

describe.each(LANGUAGES)('what no line meets, in %s', language => {
  test.for(Object.values(BY_VALUES).flat())('%s', ([id, values, english, spanish]) => {
    const says = { en: english, es: spanish }[language];
    expect(wordsIn(language).refusal(new Refusal(id, values as never))).toContain(says);
  });
});

test('a form that cannot be read says so and opens again', async () => {
  const { text } = await refused(
    ['/plan', '/fill FORM oils:"olive 100%" size:"500 g oils" superfat:lots'],
    'en',
  );
  const no = new Refusal('number-unreadable', { field: 'Superfat, percent' });
  expect(text).toBe(wordsIn('en').refusal(no));
});
