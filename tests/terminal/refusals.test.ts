import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { askLine, type Seat } from '../../src/terminal/seat.ts';
import { wordsIn } from '../../src/words/index.ts';
import { photoOf } from '../commands/challenge/room.ts';
import { shoot } from '../photo/render/scene.ts';
import { shotOf } from '../photo/render/shots.ts';
import { openConversation } from '../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
let folder: string;
beforeAll(async () => {
  conversation = await openConversation();
  folder = await mkdtemp(join(tmpdir(), 'refused-'));
  await writeFile(join(folder, 'bar.jpg'), (await photoOf(['#3f6fa8'])).bytes);
  // A bar on a table, and nothing white beside it.
  const camera = { blur: 1, noise: 2, quality: 88 };
  const bar = await shoot(shotOf(5, camera, { colours: ['#3f6fa8', '#3f6fa8'], paper: 'none' }));
  await writeFile(join(folder, 'wood.jpg'), bar);
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
  await rm(folder, { recursive: true, force: true });
});

const AT = Date.UTC(2026, 10, 20, 12);
const MINUTE = 60_000;

/** Each case has a group and members of its own: none sees what another did. */
let groups = 0;
const seatIn = (group: string, { member = 'odile', minutes = 0, elsewhere = false }: By): Seat => ({
  member: `${member}-${group}`,
  group: elsewhere ? `${group}-b` : group,
  language: 'en',
  manages: true,
  roles: [],
  at: AT + minutes * MINUTE,
});

/** A line, and where it is not by the same member in the same group at once. */
type By = { readonly member?: string; readonly minutes?: number; readonly elsewhere?: boolean };
type Line = string | readonly [line: string, by: By];

/** Says the lines one after another (`/fill FORM` fills the form before it, `/press 2` presses the second button so far); the last is refused, the others are answered. */
async function refused(lines: readonly Line[]) {
  groups += 1;
  const group = `refusals-${groups}`;
  const answers = [];
  let form = '';
  const pressable: string[] = [];
  for (const line of lines) {
    const [text, by]: readonly [string, By] = typeof line === 'string' ? [line, {}] : line;
    const { answer } = await askLine(
      text
        .replace(/(BAR\.jpg|WOOD\.jpg)/, name => join(folder, name.toLowerCase()))
        .replace('/fill FORM', `fill ${form}`)
        .replace(/^\/(press|choose) (\d)/, (_, verb, at) => `${verb} ${pressable[Number(at) - 1]}`),
      seatIn(group, by),
      conversation,
    );
    if (answer.kind === 'form') form = answer.follow;
    if (answer.kind === 'reply') pressable.push(...(answer.choices ?? []).map(({ follow }) => follow));
    answers.push(
      answer.kind === 'problem'
        ? { id: answer.id, text: answer.text }
        : { id: answer.kind, text: answer.kind === 'reply' ? answer.headline : '' },
    );
  }
  expect(answers.slice(0, -1).filter(({ id }) => id !== 'reply' && id !== 'form')).toEqual([]);
  return answers.at(-1)!;
}

const POURED = '/batch poured made:"2 cups ultramarine blue 1/2 tsp; 1 cup plain" name:Tide';
const JAR = '/shelf add item:Dusk amount:"50 g" colourant:"ultramarine blue"';
const OPEN = '/challenge open title:"Blue hour" entries-until:"in 2 days" votes-until:"in 4 days"';
const ENTER = '/challenge enter title:Tide photo:BAR.jpg colourants:"ultramarine blue"';
const PLAN = '/plan oils:"olive 60%, coconut 40%" size:"500 g oils"';
const many = (count: number, one: string, by: string) => Array.from({ length: count }, () => one).join(by);

/** The last line, or lines, the id, and what the sentence must tell who wrote it. */
const CASES: Readonly<
  Record<string, readonly (readonly [lines: Line | readonly Line[], id: string, says: string])[]>
> = {
  'the batch book': [
    [[POURED, '/batch weigh weights:","'], 'batch-weights-unreadable', 'in grams'],
    [[POURED, `/batch weigh weights:"${many(51, '100 g', ', ')}"`], 'batch-weights-many', 'At most'],
    ['/batch show batch:Tide', 'batch-unknown', 'Tide'],
    ['/batch cut', 'batch-unknown', '/batch poured'],
    [[POURED, '/batch cut on:soon'], 'batch-day-unfit', '2026-11-03'],
    [[POURED, '/batch cut on:2026-12-24'], 'batch-day-unfit', 'no day that has been'],
    [[POURED, '/batch cut on:2026-11-03'], 'batch-day-before-pour', 'poured on 2026-11-20'],
    ['/batch poured made:";"', 'batch-portion-unsized', '2 cups violet'],
    [`/batch poured made:"${many(13, '1 cup plain', '; ')}"`, 'batch-portions-many', 'At most'],
    ['/batch poured', 'batch-nothing-said', '/plan'],
    ['/batch poured recipe:Tide made:"2 cups plain"', 'batch-two-sources', 'not both'],
    [[POURED, ['/batch share', { elsewhere: true }]], 'batch-not-here', 'poured in another place'],
    [[POURED, '/batch cured colours:"sky #aabbcc"'], 'batch-colours-unreadable', 'sky #aabbcc'],
  ],
  challenges: [
    [
      '/challenge enter title:Tide photo:BAR.jpg colourants:"gold mica"',
      'challenge-none-such',
      '/challenge list',
    ],
    [[OPEN, OPEN.replace('Blue hour', 'Red hour'), ENTER], 'challenge-which', '“Blue hour”'],
    ['/challenge open title:Blue joined-before:lately', 'challenge-date-unreadable', '2026-11-20'],
    [
      [`${OPEN} entries:2`, ENTER, ENTER.replace('Tide', 'Foam'), '/challenge withdraw'],
      'challenge-entry-which',
      'Tide',
    ],
    [[`${OPEN} cure-days:28`, `${ENTER} made:2026-11-19`], 'challenge-entry-unfit', '28'],
    [[OPEN, '/challenge withdraw'], 'challenge-entry-none', '/challenge enter'],
    [
      [OPEN, '/challenge show', '/press 1', '/fill FORM photo:BAR.jpg title:" " colourants:"gold mica"'],
      'challenge-bar-title-unfit',
      '1 to 80',
    ],
    [[OPEN, ENTER.replace('ultramarine blue', ' , ')], 'challenge-colourants-missing', 'apart by commas'],
    ['/challenge open title:Blue palette:"teal 60%, gold 20%"', 'challenge-shares-unfit', '80 %'],
    ['/challenge recipe recipe:Tide', 'bar-not-won', 'No bar of yours came first'],
  ],
  'a season’s palette': [
    ['/season propose title:Dusk colours:teal', 'season-colours-unfit', 'apart by commas'],
    ['/season vote palette:Dusk', 'season-palette-unknown', '/season propose'],
    ['/season settle', 'season-nothing-put', '/season propose'],
    [
      [
        '/season propose title:Dusk colours:"teal, gold, cream"',
        ['/season propose title:Dawn colours:"rose, gold, cream"', { member: 'ines' }],
        '/season settle',
      ],
      'season-tie',
      'Dawn',
    ],
    [
      [
        '/season propose title:Dusk colours:"teal, gold, cream"',
        ['/season propose title:Dusk colours:"rose, gold, cream"', { member: 'ines' }],
      ],
      'season-title-taken',
      'another title',
    ],
  ],
  'colours and labels': [
    ['/colourant check ingredients:","', 'list-nothing-recognised', 'label'],
    ['/colourant check', 'colour-nothing-given', 'one thing to check'],
    ['/colourant label market:eu', 'label-nothing-named', 'Name the colours'],
    ['/colourant withdraw item:"ultramarine blue"', 'report-none-of-yours', 'nothing to take back'],
    ['/help topic:zzzz', 'topic-unknown', 'zzzz'],
    [
      ['/diagnose words:"white powder on top"', '/choose 1 moonbeams'],
      'flaw-choice-unknown',
      'from the menu',
    ],
    [['/diagnose', '/fill FORM words:""'], 'flaw-nothing-given', 'what you see'],
  ],
  'mixing and matching': [
    ['/match target:teal from:shelf', 'match-without-colourants', 'shelf'],
    ['/match', 'match-without-target', '#6b3fa0'],
    ['/match target:teal photo:BAR.jpg', 'match-two-targets', 'not both'],
    [[JAR, '/calibrate bars item:Dusk photo:BAR.jpg'], 'calibration-photo-without-dose', 'dose'],
    [
      [JAR, '/calibrate bars item:Dusk photo:WOOD.jpg dose:"1/4 tsp per cup"'],
      'calibration-photo-without-white',
      'white paper',
    ],
    [
      [JAR, '/calibrate bars item:Dusk bar-1:"0, #f0e8d8"'],
      'calibration-without-bars',
      'at least one bar with colour',
    ],
    ['/calibrate plan', 'plan-bars-without-jars', '/shelf add'],
    [`/calibrate plan jars:"${many(9, 'ultramarine blue', ', ')}"`, 'plan-bars-too-many', 'At most'],
    [[JAR, '/calibrate plan jars:Dusk portion:"2 l"'], 'plan-bars-portion', '2 Tbsp to 4 cups'],
    ['/palette make colours:"sunset, twelve layers"', 'palette-size', '2 to 8 colours'],
    ['/palette today', 'palette-without-jars', '/shelf add'],
  ],
  'wetting and dosing': [
    ['/dose colourant:"ultramarine blue" portion:"2 cups" carrier:vodka', 'carrier-is-alcohol', 'burns'],
    [
      '/dose colourant:"ultramarine blue" portion:"2 cups" carrier:water premix:"1:3 in olive oil"',
      'premix-carrier-twice',
      'keep one of them',
    ],
  ],
  'the shelf': [
    [[JAR, '/shelf compare one:Dusk other:Dusk'], 'compare-with-itself', 'same jar twice'],
    [
      [JAR, '/shelf add item:Snow colourant:"titanium dioxide"', '/shelf compare one:Dusk other:Snow'],
      'compare-white-with-colour',
      'two whites, or two colours',
    ],
    ['/shelf add item:Dusk price:"8 €"', 'price-without-size', '50 g'],
    ['/shelf add item:Dusk size:"50 g"', 'size-without-price', 'price'],
    ['/plan oils:"olive 100%" size:"500 g oils" prices:";"', 'oil-price-unreadable', '8 €/kg'],
    [
      [JAR, '/shelf use item:Dusk amount:"5 g"', ['/press 1', { minutes: 40 }]],
      'undo-too-late',
      'more than 10 minutes ago',
    ],
    [
      [JAR, '/shelf restock item:Dusk amount:"20 g"', '/shelf use item:Dusk amount:"60 g"', '/press 1'],
      'shelf-undo-not-enough',
      'Only 10 g',
    ],
    ['/shelf undo', 'undo-nothing', 'nothing to take back'],
    [
      ['/shelf add item:Mystery', '/dose colourant:Mystery portion:"2 cups"'],
      'jar-unidentified',
      '/shelf describe',
    ],
    [
      ['/shelf add item:Mystery amount:"50 g"', '/shelf use item:Mystery amount:"2 tsp"'],
      'spoons-not-weighed',
      '/shelf weigh',
    ],
  ],
  'plans and recipes': [
    ['/plan size:"500 g oils"', 'oils-missing', 'Which oils?'],
    [[PLAN, '/recipe save name:Tide', '/recipe rescale recipe:Tide to:bigger'], 'factor-unreadable', 'x3'],
    [
      [PLAN, '/recipe save name:Tide', '/recipe share recipe:Tide', '/recipe share recipe:Tide'],
      'recipe-shared-already',
      'unshare',
    ],
    [
      [
        PLAN,
        '/recipe save name:Tide',
        '/recipe share recipe:Tide',
        [PLAN, { member: 'ines' }],
        ['/recipe save name:Tide', { member: 'ines' }],
        ['/recipe share recipe:Tide', { member: 'ines' }],
      ],
      'recipe-shared-name-taken',
      'another name',
    ],
  ],
  pouring: [
    ['/pour swirl mould:"25x9x7 cm" shares:blue', 'swirl-shares-unreadable', 'blue 50%'],
    ['/pour swirl mould:"25x9x7 cm" shares:"blue 70%, white 60%"', 'swirl-shares-over', '130 %'],
    ['/pour swirl mould:"2 cups" shares:"blue 50%, white 50%"', 'pour-not-a-mould', 'cylinder 8x25 cm'],
    ['/pour line mould:"12 cavities x 100 ml"', 'pour-cavity-depth', '3 cm deep'],
    ['/pour layers mould:"cylinder 8x25 cm" layers:3 raised:2', 'pour-tilt-round', 'loaf or slab'],
    ['/pour swirl mould:"25x9x7 cm" shares:"blue 50%, white 50%" depth:9', 'swirl-too-deep', '7 cm'],
    ['/pour infusion bar:brownish target:mustard', 'infusion-bar-unreadable', '20% #d9b86a'],
    ['/pour infusion bar:"20% #d9b86a"', 'infusion-without-target', 'colour you want'],
  ],
  'what is no colour, no lye, no jar': [
    ['/dose colourant:henna portion:"2 cups"', 'colour-not-for-soap', 'hair colour only'],
    ['/plan oils:"olive 100%" size:"500 g oils" lye:lejía', 'lye-or-bleach', 'write “NaOH”'],
    ['/calibrate bars bar-1:"1/8 tsp per cup #8b93bd"', 'calibration-without-item', 'Which jar?'],
    [
      '/calibrate bars bar-1:"gold mica 1 tsp + titanium dioxide 1/2 tsp #8899bb"',
      'calibration-mix-without-jar',
      'no jar of your shelf',
    ],
    ['/flaws drop file:"bar.jpg"', 'flaw-picture-unknown', '/flaws pictures'],
  ],
  'files and lines': [
    ['/match photo:/nowhere/bar.jpg', 'file-not-found', '/nowhere/bar.jpg'],
    ['/dose portion:"1 cup" portion:"2 cups" colourant:"gold mica"', 'line-option-twice', 'give it once'],
  ],
};

describe.each(Object.entries(CASES))('%s', (_, cases) => {
  test.for(cases)('%s: %s', async ([lines, id, says]) => {
    const isOne =
      typeof lines === 'string' ||
      (lines.length === 2 && typeof lines[1] === 'object' && !Array.isArray(lines[1]));
    const told = await refused((isOne ? [lines] : lines) as readonly Line[]);
    expect(told).toEqual({ id, text: expect.stringContaining(says) });
  });
});

test('a form that cannot be read says so and opens again', async () => {
  const told = await refused(['/plan', '/fill FORM oils:"olive 100%" size:"500 g oils" superfat:lots']);
  const no = new Refusal('number-unreadable', { field: 'Superfat, percent' });
  expect(told.text).toBe(wordsIn('en').refusal(no));
});
