import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { MessageView } from '../../src/loopback/index.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { jsonOf } from '../../src/terminal/shown.ts';
import { openRoom } from '../loopback/room.ts';

/*
 * Replies at their longest: whatever the answer holds is read on the platform, on its face, behind a fold, or in the file
 * that comes with it. Nothing is cut.
 */

let room: Awaited<ReturnType<typeof openRoom>>;
const JARS = 40;
const long = (n: number) =>
  `Jar ${n} ${'of the deepest evening colour over the lagoon '.repeat(2)}`.slice(0, 60).trim();

beforeAll(async () => {
  room = await openRoom();
  const kinds = ['ultramarine blue', 'gold mica', 'red iron oxide', 'titanium dioxide', 'neon pink'];
  for (let n = 0; n < JARS; n += 1)
    await room.member.run('/shelf add', { item: long(n), amount: '30 g', colourant: kinds[n % 5]! });
  for (let n = 0; n < 12; n += 1)
    await room.member.run('/plan', {
      oils: 'coconut 30%, olive 50%, palm 20%',
      size: '1000 g oils',
      'save-as': `Loaf ${n} ${'with a name as long as a recipe may have '.repeat(2)}`.slice(0, 78),
    });
}, 300_000);
afterAll(async () => {
  expect(room.faults).toEqual([]);
  await room[Symbol.asyncDispose]();
});

const PORTIONS = Array.from({ length: 9 }, (_, n) => `100 ml ${long(n)} pastel + ${long(n + 5)} tint`).join(
  '; ',
);
const LINES: readonly (readonly [string, Readonly<Record<string, string>>])[] = [
  ['/shelf list', {}],
  ['/recipe list', {}],
  [
    '/dose',
    { colourant: long(0), portion: '2 cups', 'with-1': long(1), 'with-2': long(2), 'with-3': long(4) },
  ],
  [
    '/plan',
    {
      oils: 'coconut 25%, olive 40%, palm 15%, shea 5%, castor 5%, avocado 5%, sunflower 5%',
      size: '3000 g oils',
      portions: PORTIONS,
      additives: 'honey 10 g, salt 5%, clay 1 Tbsp, citric acid 5 g',
      fragrance: '3%, vanillin 8%',
    },
  ],
  [
    '/colourant check',
    {
      ingredients: Array.from(
        { length: 12 },
        () => 'Mica (CI 77019), Carmine (CI 75470), Titanium Dioxide (CI 77891), Blue 1 Lake, Red 40 Lake',
      ).join(', '),
    },
  ],
  [
    '/diagnose',
    {
      words:
        `white crackly veins on top, the soap got hot, oozing liquid, zaps, blue specks, it faded, ${'crumbly, orange spots, smells rancid, white ash, '.repeat(40)}`.slice(
          0,
          3_900,
        ),
    },
  ],
  ['/help', { topic: 'plan' }],
  ['/palette today', {}],
  ['/preview', { mix: `${long(0)} pastel + ${long(1)} + ${long(3)} tint` }],
];

/** Letters and digits alone: marks, escapes and line ends differ between fronts. */
const bare = (text: string): string => text.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '');
const filed = ({ files }: MessageView): string =>
  files
    .filter(({ name }) => name.endsWith('.txt'))
    .map(file => Buffer.from(file.bytes()).toString())
    .join('\n');

/** Everything that can be read of an answer on the platform: its face, each fold, and the files of both. */
async function readAll(answer: MessageView): Promise<string> {
  const parts = [answer.text, filed(answer)];
  for (const { label, customId = '' } of answer.controls.filter(one => one.label.startsWith('▸'))) {
    const opened = await room.member.press(answer, customId);
    parts.push(label, opened.text, filed(opened));
  }
  return bare(parts.join('\n'));
}

describe('a reply at its longest', () => {
  test.each(LINES)('loses nothing on the platform: %s', { timeout: 120_000 }, async (line, options) => {
    const { member, group, conversation } = room;
    const written = [line, ...Object.entries(options).map(([name, value]) => `${name}:"${value}"`)].join(' ');
    const seat = {
      member: member.id,
      group: group.id,
      language: 'en',
      manages: false,
      roles: [],
    } as const;
    const answer = await member.run(line, options);
    const whole = await jsonOf(await askLine(written, seat, conversation), '.tintmoot/test-pictures');
    if (!whole.ok || !('face' in whole)) throw new Error(JSON.stringify(whole).slice(0, 500));
    const read = await readAll(answer);
    const lost = whole.text
      .split('\n')
      .map(one => one.trim())
      // What a picture shows is described beside it, not in the text.
      .filter(one => !one.startsWith('[') && bare(one).length > 3 && !read.includes(bare(one)));
    // What is lost, from where it goes on otherwise.
    const from = (text: string) => {
      let most = bare(text).length;
      while (most > 0 && !read.includes(bare(text).slice(0, most))) most -= 1;
      return bare(text).slice(Math.max(0, most - 20), most + 40);
    };
    expect(lost.map(one => [one, from(one)])).toEqual([]);
  });
});
