import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { textOf } from '../../src/conversation/faces/plain-text.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { wordsIn } from '../../src/words/index.ts';
import { photoOf } from '../commands/challenge/room.ts';
import { openConversation } from '../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

/** What the last of these lines is answered, whole. */
async function told(group: string, ...lines: readonly string[]): Promise<string> {
  const seat = {
    member: `odile-${group}`,
    group,
    language: 'en' as const,
    manages: true,
    roles: [],
    at: Date.UTC(2026, 10, 20, 12),
  };
  let text = '';
  for (const line of lines) {
    const { answer } = await askLine(line, seat, conversation);
    text =
      answer.kind === 'reply'
        ? textOf(answer, wordsIn('en'))
        : answer.kind === 'problem'
          ? answer.text
          : answer.title;
    if (answer.kind === 'problem' && line !== lines.at(-1)) throw new Error(`${line}: ${text}`);
  }
  return text;
}

const JAR = '/shelf add item:Dusk amount:"50 g" colourant:"ultramarine blue"';

test('a mark on a jar warns once less is left: 50 g with 45 taken leave 5, under a mark of 10', async () => {
  expect(await told('low-1', JAR, '/shelf low-mark item:Dusk grams:10')).toContain('10 g');
  const used = await told(
    'low-2',
    JAR,
    '/shelf low-mark item:Dusk grams:10',
    '/shelf use item:Dusk amount:"45 g"',
  );
  expect(used).toContain('5 g');
  expect(used).toMatch(/running low|low/i);
  expect(
    await told('low-3', JAR, '/shelf low-mark item:Dusk grams:2', '/shelf use item:Dusk amount:"45 g"'),
  ).not.toMatch(/running low/i);
});

test('a bought dispersion of 30 % pigment: the dose is more than three times the powder’s grams', async () => {
  const dry = await told('pigment-1', JAR, '/shelf show item:Dusk');
  const wet = await told('pigment-2', `${JAR} pigment:30`, '/shelf show item:Dusk');
  expect(wet).toContain('30 %');
  expect(dry).not.toContain('30 %');
  expect(
    await told('pigment-3', JAR, '/shelf describe item:Dusk pigment:30', '/shelf show item:Dusk'),
  ).toContain('30 %');
});

test('six bars teach a jar as well as three', async () => {
  const bars = ['#b9b4c4', '#9a94b4', '#8a83ab', '#7a72a2', '#6d649b', '#625894']
    .map((hex, at) => `bar-${at + 1}:"1/${16 >> Math.min(at, 3)} tsp per cup, ${hex}"`)
    .join(' ');
  expect(await told('bars', JAR, `/calibrate bars item:Dusk ${bars}`)).toContain('Dusk');
});

test('what the base is decides the colours of a gradient and of an infusion', async () => {
  const gradient = (base: string, group: string) =>
    told(
      group,
      JAR,
      '/shelf add item:Snow colourant:"titanium dioxide"',
      `/pour gradient from:"1/4 tsp per cup Dusk" to:"1 tsp per cup Snow" steps:4 base:"${base}"`,
    );
  expect(await gradient('olive 100%', 'gradient-1')).not.toBe(await gradient('coconut 100%', 'gradient-2'));
  const infusion = (base: string, group: string) =>
    told(group, `/pour infusion bar:"20% #d9b86a" target:"#c79a3c" base:"${base}"`);
  expect(await infusion('olive 100%', 'infusion-1')).not.toBe(await infusion('coconut 100%', 'infusion-2'));
});

test('a plan for a class is written for each station, or for the whole class', async () => {
  const plan = (whom: string, group: string) =>
    told(
      group,
      `/plan oils:"olive 60%, coconut 40%" size:"500 g oils" people:6 stations:3 plan-is-for:${whom}`,
    );
  const station = await plan('station', 'class-1');
  const whole = await plan('class', 'class-2');
  // 500 g of oils at each of three stations: 3 x 300 g of olive. Of the whole class: 300 g of it in all.
  expect(station).toContain('900 g olive oil');
  expect(whole).toContain('300 g olive oil');
});

test('a challenge keeps deadlines out of the calendar, and settles ties by a word that all can check', async () => {
  expect(await told('calendar', '/challenge settings calendar:no')).toMatch(/calendar|events/i);
  expect(
    await told(
      'seed',
      '/challenge open title:Blue entries-until:"in 2 days" votes-until:"in 4 days" tie-seed:moonrise',
    ),
  ).toContain('Blue');
});

test('bars are cut, weighed and cured on the day that is told: what they lose a week is counted from it', async () => {
  const poured = (group: string, ...lines: readonly string[]) =>
    told(group, JAR, '/batch poured made:"2 cups Dusk 1/2 tsp" name:Tide on:2026-10-01', ...lines);
  const cut = '/batch cut weights:"112 g, 108 g" on:2026-10-03';
  // By hand: 4 of 220 g in one week, or in two.
  expect(await poured('week', cut, '/batch weigh weights:"110 g, 106 g" on:2026-10-10')).toContain(
    '1.8 % a week',
  );
  expect(await poured('weeks', cut, '/batch weigh weights:"110 g, 106 g" on:2026-10-17')).toContain(
    '0.9 % a week',
  );
  // 6 of 220 g in three weeks.
  const cured = '/batch cured weights:"108 g, 106 g" colours:"Dusk #5f5fa8" on:2026-10-24';
  expect(await poured('cured', cut, cured)).toContain('0.9 % a week, 2.7 % since the first weighing');
  const noted = '/batch note text:"smelt of figs" on:2026-10-20';
  expect(await poured('noted', noted, '/batch show')).toContain('2026-10-20: smelt of figs');
});

test('a report is withdrawn for one process alone', async () => {
  const evidence = await told(
    'withdrawn',
    '/colourant report item:"gold mica" result:held process:gel',
    '/colourant report item:"gold mica" result:faded process:ambient',
    '/colourant withdraw item:"gold mica" process:gel',
    '/colourant evidence item:"gold mica"',
  );
  expect(evidence).toContain('0 of 1 here saw gold mica');
  expect(evidence).toContain('faded; left to itself');
});

test('a photo is looked at where one asks in plain words, and its main colour makes a palette', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'options-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  const photo = join(folder, 'bar.jpg');
  await writeFile(photo, (await photoOf(['#3f6fa8'])).bytes);
  const question = '/ask question:"what went wrong with my bar?"';
  expect(await told('unseen', question)).not.toContain('On the photo');
  expect(await told('seen', `${question} photo:${photo}`)).toMatch(/On the photo: blue: #[0-9a-f]{6}/);
  expect(await told('palette', `/challenge palette photo:${photo}`)).toMatch(/^#3[ef]6[ef]a[78]/);
});
