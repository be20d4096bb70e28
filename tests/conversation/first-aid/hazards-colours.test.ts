import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readUsed } from '../../../commands/challenge/entering/colourants-used.ts';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import type { Given } from '../../../src/conversation/question.ts';
import { receive } from '../../../src/conversation/receive.ts';
import { readCommands } from '../../../src/conversation/registry/registry.ts';
import type { Answer } from '../../../src/conversation/reply.ts';
import { TYPICAL_BATTER } from '../../../src/engine/dispersion/batter.ts';
import { openStore } from '../../../src/records/open.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { PATIENT } from '../../records/patience.ts';
import { sharedWorkers } from '../../workers/shared.ts';
import { HAZARD_ENTRIES } from '../hazard-entries.ts';
import { HAZARDS } from '../hazard-table.ts';

const registry = await readCommands(new URL('../../../commands/', import.meta.url));
const languages = ['en', 'es'] as const;
type Language = (typeof languages)[number];
let conversation: Conversation;

beforeAll(async () => {
  conversation = {
    registry,
    services: { store: await openStore('sqlite::memory:', PATIENT), workers: sharedWorkers() },
    key: new Uint8Array(32).fill(5),
    onFault: fault => {
      throw fault;
    },
  };
});

afterAll(async () => {
  await conversation.services.workers.close();
  await conversation.services.store.close();
});

let next = 0;
const at = Date.UTC(2026, 1, 3);

const origin = (language: Language) => ({
  id: String(900_000_000_000 + next++),
  at,
  asker: { id: 'm1', name: 'Ana', manages: true, roles: [] },
  group: 'g1',
  channel: 'bench',
  language,
  locale: language === 'en' ? 'en-US' : 'es-ES',
});

const run = (path: string, given: Given, language: Language = 'en') =>
  receive({ ...origin(language), kind: 'command', path: path.split(' '), given }, conversation);

const problemOf = (answer: Answer) => (answer.kind === 'problem' ? answer.id : `not refused: ${answer.kind}`);

/** The rest of a question that brings a colourant in through one option. */
const COLOURANT_WAYS: Readonly<Record<string, (name: string) => [path: string, given: Given]>> = {
  'batch poured made': name => ['batch poured', { made: `1 cup ${name} 1/4 tsp` }],
  'colourant check ingredients': name => ['colourant check', { ingredients: name }],
  'colourant check item': name => ['colourant check', { item: name }],
  'colourant label of': name => ['colourant label', { market: 'us', of: name }],
  'colourant report item': name => ['colourant report', { item: name, result: 'held', process: 'gel' }],
  'dose colourant': name => ['dose', { colourant: name, portion: '1 cup' }],
  'dose with': name => ['dose', { colourant: 'gold mica', 'with-1': name, portion: '1 cup' }],
  'plan portions': name => ['plan', { oils: 'olive oil 500 g', portions: `1 cup ${name}` }],
  'pour gradient from': name => ['pour gradient', { from: name, to: 'plain' }],
  'pour gradient to': name => ['pour gradient', { from: 'plain', to: name }],
  'pour line colourant': name => ['pour line', { mould: '25x9x6 cm', colourant: name }],
  'preview mix': name => ['preview', { mix: name }],
  'shelf add colourant': name => ['shelf add', { item: 'my jar', colourant: name }],
  'shelf add ingredients': name => ['shelf add', { item: 'my jar', ingredients: name }],
  'shelf add item': name => ['shelf add', { item: name }],
  'shelf compare one': name => ['shelf compare', { one: name, other: 'gold mica' }],
  'shelf compare other': name => ['shelf compare', { one: 'gold mica', other: name }],
  'shelf describe colourant': name => ['shelf describe', { item: 'known jar', colourant: name }],
  'shelf describe ingredients': name => ['shelf describe', { item: 'known jar', ingredients: name }],
};

/** Read by one function, which is asked itself: a challenge would have to be open. */
const CHALLENGE_WAYS = ['challenge enter colourants', 'challenge replace colourants'];

const POISONS: Readonly<Record<Language, readonly string[]>> = {
  en: ['cadmium red', 'lead white', 'cinnabar', 'realgar', 'zinc chromate', 'nickel titanate'],
  es: ['amarillo de cadmio', 'albayalde', 'cinabrio', 'rejalgar', 'cromato de zinc', 'titanato de níquel'],
};

const METALS: Readonly<Record<Language, readonly string[]>> = {
  en: ['aluminium powder'],
  es: ['polvo de aluminio'],
};

/** What stands in a kitchen, by its kinds; the names are ours to choose (common practice). */
const COLOURLESS: Readonly<Record<Language, readonly string[]>> = {
  en: [
    'red wine',
    'orange juice',
    'goat milk',
    'sugar',
    'vinegar',
    'olive oil',
    'lavender essential oil',
    'salt',
    'chamomile extract',
    'beeswax',
    'lye',
    'vodka',
  ],
  es: [
    'vino tinto',
    'jugo de naranja',
    'leche de cabra',
    'azúcar',
    'vinagre',
    'aceite de oliva',
    'aceite esencial de lavanda',
    'sal',
    'extracto de manzanilla',
    'cera de abejas',
    'sosa cáustica',
    'aguardiente',
  ],
};

describe('what colours nothing, through every entry that names a colourant', () => {
  const { must } = HAZARDS.find(({ id }) => id === 'nothing-that-colours')!;
  const cases = Object.keys(COLOURANT_WAYS).flatMap(way => languages.map(language => ({ way, language })));
  test.each(cases)('$way in $language gets no dose', async ({ way, language }) => {
    await run('shelf add', { item: 'known jar', colourant: 'gold mica' });
    const listed = /ingredients|check|label|shelf add item/.test(way);
    for (const name of COLOURLESS[language]) {
      const [path, given] = COLOURANT_WAYS[way]!(name);
      const answer = await run(path, given, language);
      // A list is read and a jar is kept by any name, but neither is told an amount.
      const isUndosed =
        answer.kind === 'reply' &&
        listed &&
        (answer.data as { dose?: object }).dose === undefined &&
        !/\d ?(?:tsp|cdta)/u.test(`${answer.headline} ${JSON.stringify(answer.blocks)}`);
      // The jar of the name before is kept under the same name.
      const isKept = way === 'shelf add ingredients' && problemOf(answer) === 'shelf-name-taken';
      const isRefused = isKept || ('refuse' in must && must.refuse.includes(problemOf(answer)));
      expect(`${name}: ${isUndosed || isRefused || problemOf(answer)}`).toBe(`${name}: true`);
    }
  });
});

describe('poisonous colours and metal powders, through every entry that names a colourant', () => {
  const ways = Object.entries(HAZARD_ENTRIES).filter(([, kinds]) => kinds.includes('colourant'));

  test('every such entry has its way', () => {
    const known = [...Object.keys(COLOURANT_WAYS), ...CHALLENGE_WAYS];
    expect(known.sort()).toEqual(ways.map(([name]) => name).sort());
  });

  const cases = Object.keys(COLOURANT_WAYS).flatMap(way => languages.map(language => ({ way, language })));
  test.each(cases)('$way in $language', async ({ way, language }) => {
    await run('shelf add', { item: 'known jar', colourant: 'gold mica' });
    const listed = /ingredients/.test(way) || /check|label/.test(way);
    for (const name of POISONS[language]) {
      const [path, given] = COLOURANT_WAYS[way]!(name);
      expect(`${name}: ${problemOf(await run(path, given, language))}`).toBe(`${name}: colour-barred`);
    }
    for (const name of METALS[language]) {
      const [path, given] = COLOURANT_WAYS[way]!(name);
      const answer = await run(path, given, language);
      // A check tells what it is and gives no dose; everything else refuses.
      const told = answer.kind === 'reply' && listed ? (answer.data as object) : {};
      const refusals = HAZARDS.find(({ id }) => id === 'metal-powder')!.must;
      const isSafe =
        ('verdictIfPresent' in told && told.verdictIfPresent === 'never' && !('dose' in told && told.dose)) ||
        ('refuse' in refusals && refusals.refuse.includes(problemOf(answer)));
      expect(`${way} ${name}: ${isSafe}`).toBe(`${way} ${name}: true`);
    }
  });

  test('the colourants of a challenge’s bar', async () => {
    for (const language of languages)
      for (const name of [...POISONS[language], ...METALS[language]]) {
        const { store } = conversation.services;
        const context = {
          store,
          shelf: { store, member: 'm1' },
          asker: { id: 'm1' },
          say: wordsIn(language),
        };
        await expect(readUsed(name, { constraint: 'none' }, context as never)).rejects.toMatchObject({
          id: expect.stringMatching(/colour-barred|metal-never-in-lye/),
        });
      }
  });
});

type Dosed = { readonly grams: { readonly high: number } };

test('what the law limits is held under it in dose, plan and preview, named on the label, refused by name', async () => {
  await run('shelf add', { item: 'glow', ingredients: 'D&C Green No. 8' });
  // 21 CFR 74.2208: 0.01 % of the finished product; 85 % of the batter's mass is left in it (common practice).
  const most = (millilitres: number) =>
    millilitres * TYPICAL_BATTER.gramsPerMillilitre * 0.85 * 0.0001 * 1.05;
  const dose = await run('dose', { colourant: 'glow', portion: '1 cup', strength: '48' });
  const doses = dose.kind === 'reply' ? (dose.data as { doses: Dosed[] }).doses : [];
  expect(doses[0]!.grams.high).toBeLessThanOrEqual(most(237));
  const plan = await run('plan', { oils: 'olive oil 500 g', portions: '1 cup glow full' });
  const [portion] = plan.kind === 'reply' ? (plan.data as { portions: { doses: Dosed[] }[] }).portions : [];
  expect(portion!.doses[0]!.grams.high).toBeLessThanOrEqual(most(237));
  const preview = await run('preview', { mix: 'glow full' });
  expect(JSON.stringify(preview.kind === 'reply' ? preview.blocks : '')).toMatch(/of 1\/8 tsp/);
  const label = await run('colourant label', { market: 'us', of: 'D&C Green 8' });
  expect(label.kind === 'reply' && label.cautions.map(({ id }) => id)).toContain('label-legal-most');
  expect(problemOf(await run('dose', { colourant: 'D&C Green 8', portion: '1 cup' }))).toBe(
    'law-allows-too-little',
  );
});

test('a percent of colour is of the oils and the answer says so, wherever a strength is asked', async () => {
  const strengthEntries = Object.entries(HAZARD_ENTRIES).filter(([, kinds]) => kinds.includes('strength'));
  expect(strengthEntries.map(([name]) => name)).toEqual(['colourant report strength', 'dose strength']);
  for (const language of languages) {
    const answer = await run('dose', { colourant: 'gold mica', portion: '1 cup', strength: '1%' }, language);
    const cautions = answer.kind === 'reply' ? answer.cautions : [];
    expect(cautions.find(({ id }) => id === 'percent-of-oils')?.text).toMatch(/oils|aceites/);
    const report = { item: 'gold mica', result: 'held', process: 'gel', strength: '1%' };
    const reported = await run('colourant report', report, language);
    expect(reported.kind).toBe('reply');
    const seen = await run('colourant evidence', { item: 'gold mica' }, language);
    expect(JSON.stringify(seen)).toMatch(/1% of oils/);
  }
});
