import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readUsed } from '../../commands/challenge/entering/colourants-used.ts';
import { responseModeOf } from '../../src/conversation/answering/response-mode.ts';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { firstAidReply } from '../../src/conversation/first-aid/first-aid.ts';
import { HAZARD_ENTRIES } from '../../src/conversation/first-aid/hazard-entries.ts';
import { seal } from '../../src/conversation/follow-ups/follow.ts';
import type { Given, Question } from '../../src/conversation/question.ts';
import { firstAidForWords, receive } from '../../src/conversation/receive.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import type { Answer } from '../../src/conversation/reply.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { EMERGENCY_IDS, type EmergencyId, HAZARDS } from '../../src/engine/hazards/index.ts';
import { openStore } from '../../src/records/open.ts';
import { wordsIn } from '../../src/words/index.ts';
import { PATIENT } from '../records/patience.ts';
import { sharedWorkers } from '../workers/shared.ts';

const registry = await readCommands(new URL('../../commands/', import.meta.url));
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
const emergencyOf = (answer: Answer) =>
  answer.kind === 'reply'
    ? (answer.data as { emergency?: { id: EmergencyId } }).emergency?.id
    : `${answer.kind} ${answer.kind === 'problem' ? answer.id : ''}`;
const problemOf = (answer: Answer) => (answer.kind === 'problem' ? answer.id : `not refused: ${answer.kind}`);

const told = JSON.parse(
  readFileSync(join(import.meta.dirname, '../engine/hazards/emergencies-own.json'), 'utf8'),
) as { emergencies: { text: string; id: EmergencyId; language: string }[] };
const reviewed = JSON.parse(
  readFileSync(join(import.meta.dirname, '../engine/hazards/emergencies-reviewed.json'), 'utf8'),
) as typeof told;
const sayingOf = (id: EmergencyId, language: Language) =>
  [...told.emergencies, ...reviewed.emergencies].find(
    one => one.id === id && one.language === language && one.text.length <= 100,
  )!.text;

const entries = [...registry.actions].flatMap(([path, action]) =>
  action.options.filter(({ kind }) => kind === 'text').map(({ name }) => ({ path, name })),
);
const keyOf = ({ path, name }: { path: string; name: string }) => `${path} ${name.replace(/-\d$/, '')}`;

test('every text option of every command is in the table of entries, and no other', () => {
  expect([...new Set(entries.map(keyOf))].sort()).toEqual(Object.keys(HAZARD_ENTRIES).sort());
});

test('every emergency is a hazard of all words', () => {
  for (const id of EMERGENCY_IDS)
    expect(HAZARDS.find(hazard => hazard.id === id)).toMatchObject({
      must: { say: 'first-aid' },
      entries: ['words'],
    });
  for (const kinds of Object.values(HAZARD_ENTRIES)) expect(kinds).toContain('words');
});

describe('emergencies, through every way that words come in', () => {
  const pairs = EMERGENCY_IDS.flatMap(id => languages.map(language => ({ id, language })));

  test.each(pairs)('$id in $language, through every text option', async ({ id, language }) => {
    const text = sayingOf(id, language);
    for (const { path, name } of entries) {
      const answer = await run(path, { [name]: text }, language);
      expect(`${path} ${name}: ${emergencyOf(answer)}`).toBe(`${path} ${name}: ${id}`);
      expect(answer.language).toBe(language);
    }
  });

  test.each(pairs)('$id in $language, through every menu entry', async ({ id, language }) => {
    for (const entry of registry.menuEntries.keys()) {
      const message = { id: '1', channel: 'c', text: sayingOf(id, language), attachments: [] };
      const answer = await receive({ ...origin(language), kind: 'point', entry, message }, conversation);
      expect(emergencyOf(answer)).toBe(id);
    }
  });

  test.each(pairs)('$id in $language, through the fields of every follow-up', async ({ id, language }) => {
    for (const [name, followUp] of registry.followUps) {
      const holder = { group: 'g1', asker: 'm1' };
      const args = followUp.argNames.map(() => '1');
      const sealed = seal({ followUp, args }, name, { key: conversation.key, holder, at });
      const fields = { anything: sayingOf(id, language) };
      const asked: Question = { ...origin(language), kind: 'follow', sealed, values: [], fields };
      expect(emergencyOf(await receive(asked, conversation))).toBe(id);
      expect(await responseModeOf(asked, conversation)).toMatchObject({
        seenBy: 'asker',
        pace: 'quick',
        replaces: false,
      });
    }
  });

  test('a line that is no command, and an unknown command', async () => {
    expect(emergencyOf(await run('lye in my eye help', {}))).toBe('lye-eye');
    const note = await firstAidForWords('me cayó sosa en el ojo', origin('es'), conversation);
    expect(note && emergencyOf(note)).toBe('lye-eye');
    expect(await firstAidForWords('lovely soap', origin('en'), conversation)).toBeUndefined();
  });

  test('the answer is numbered, names the number to call, and has nothing of a diagnosis', async () => {
    for (const language of languages)
      for (const id of EMERGENCY_IDS) {
        const answer = await run('diagnose', { words: sayingOf(id, language) }, language);
        if (answer.kind !== 'reply') throw new Error('no reply');
        const rows = answer.blocks.find(({ kind }) => kind === 'rows');
        expect(rows).toMatchObject({ numbered: true });
        const text = JSON.stringify(answer.blocks);
        const whom = { en: /911 \(US|animal poison line/, es: /112 \(ES|toxicología animal/ };
        expect(text).toMatch(whom[language]);
        expect(`${answer.headline} ${text}`).not.toMatch(/\d+ %:/);
        expect(text).not.toMatch(/undefined/);
        expect(answer.choices).toHaveLength(1);
      }
  });

  test('never neutralising, never making vomit: what is said of vinegar and vomiting is a no', async () => {
    const steps = languages.flatMap(language =>
      EMERGENCY_IDS.flatMap(id => wordsIn(language).firstAid.steps[id]({ call: 'C', poison: 'P' })),
    );
    const soured = steps
      .filter(step => /vinegar|vinagre|lemon|limón|vomit|vómito/i.test(step))
      .filter(step => !/never meet|no se juntan nunca/.test(step));
    expect(soured.length).toBeGreaterThan(10);
    for (const step of soured) expect(step).toMatch(/\b(?:no|not|nada|nunca|sin|ni)\b/i);
  });

  test('the button shows it to everyone', async () => {
    const answer = await run('diagnose', { words: sayingOf('lye-eye', 'en') });
    const [choice] = (answer.kind === 'reply' && answer.choices) || [];
    const asked: Question = {
      ...origin('en'),
      kind: 'follow',
      sealed: choice!.follow,
      values: [],
      fields: {},
    };
    expect(await responseModeOf(asked, conversation)).toMatchObject({ seenBy: 'group' });
    expect(emergencyOf(await receive(asked, conversation))).toBe('lye-eye');
  });
});

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

test('first aid shown in doubt says so first, and how to take it back; told outright it does not', async () => {
  for (const [language, doubtful, outright] of [
    [
      'en',
      'gran thought it was pudding and ate a spoonful straight from the mould',
      'lye splashed in my eye',
    ],
    ['es', 'la tetera de camping echa espuma gris y quema, adentro tiene soda', 'me salpicó sosa en el ojo'],
  ] as const) {
    const say = wordsIn(language);
    const inDoubt = await firstAidForWords(doubtful, origin(language), conversation);
    if (inDoubt?.kind !== 'reply') throw new Error('no first aid in doubt');
    expect(inDoubt.headline.startsWith(say.firstAid.ifHurt)).toBe(true);
    expect(inDoubt.blocks[0]).toEqual({ kind: 'text', text: say.firstAid.misread });
    const told = await firstAidForWords(outright, origin(language), conversation);
    if (told?.kind !== 'reply') throw new Error('no first aid');
    expect(told.headline).not.toContain(say.firstAid.ifHurt);
    expect(told.blocks.at(-1)).toEqual({ kind: 'text', text: say.firstAid.misread });
  }
});

const SCENTS = {
  burn: { en: 'cinnamon bark 2%', es: '2% de aceite de clavo de olor' },
  never: { en: '2% eau de toilette', es: '2% agua de colonia' },
} as const;

describe('scents that hurt, through every entry that names one', () => {
  const SCENT_WAYS: Readonly<Record<string, (scent: string) => readonly [string, Given]>> = {
    'plan fragrance': fragrance => [
      'plan',
      { oils: 'olive 70%, coconut 30%', size: '1000 g oils', fragrance },
    ],
  };
  const mustOf = (id: string) => HAZARDS.find(one => one.id === id)!.must;

  test('every such entry has its way', () => {
    const entriesOfScent = Object.keys(HAZARD_ENTRIES).filter(name =>
      HAZARD_ENTRIES[name]!.includes('scent'),
    );
    expect(entriesOfScent.length).toBeGreaterThan(0);
    expect(Object.keys(SCENT_WAYS).sort()).toEqual(entriesOfScent.sort());
  });

  test.each(languages)('in %s', async language => {
    for (const way of Object.values(SCENT_WAYS)) {
      const [path, burns] = way(SCENTS.burn[language]);
      const answer = await run(path, burns, language);
      expect(mustOf('scent-that-burns')).toEqual({ refuse: [problemOf(answer)] });
      const [, under] = way(`${SCENTS.burn[language]}, certificate 6%`);
      const told = await run(path, under, language);
      const { warnings } = (told.kind === 'reply' ? told.data : {}) as { warnings?: { id: string }[] };
      expect(warnings?.map(({ id }) => id)).toContain('scent-hurts');
      const [, never] = way(SCENTS.never[language]);
      expect(mustOf('scent-never-in-soap')).toEqual({
        refuse: [problemOf(await run(path, never, language))],
      });
    }
  });
});

const OLIVE = { oils: 'olive 70%, coconut 30%', size: '1000 g oils' };
/** Every entry that takes part of a recipe, by its kind: the rest of a question that brings a text in through it. */
const RECIPE_WAYS: Readonly<Record<string, readonly [kind: string, way: (text: string) => [string, Given]]>> =
  {
    'plan oils': ['oils', oils => ['plan', { oils, size: '1000 g oils' }]],
    'batch poured oils': ['oils', oils => ['batch poured', { name: 'mine', oils, size: '1000 g oils' }]],
    'plan lye': ['lye', lye => ['plan', { ...OLIVE, lye }]],
    'plan liquid': ['liquid', liquid => ['plan', { ...OLIVE, liquid }]],
    'plan additives': ['additive', additives => ['plan', { ...OLIVE, additives }]],
    'plan start': ['temperature', start => ['plan', { ...OLIVE, start }]],
    'ask question': ['question', question => ['ask', { question }]],
  };
type Both = Readonly<Record<Language, readonly string[]>>;
/** What brings each hazard of a recipe in, in both languages. */
const RECIPE_TEXTS: Readonly<Record<string, Both>> = {
  'fat-that-is-none': {
    en: ['milk 100%', 'olive 50%, honey 50%', 'paraffin 100%'],
    es: ['leche 100%', 'oliva 50%, miel 50%', 'parafina 100%'],
  },
  'lye-that-is-none': {
    en: ['lejia', 'baking soda', 'drain cleaner'],
    es: ['lejía', 'bicarbonato', 'desatascador'],
  },
  'liquid-that-reacts': { en: ['bleach', 'vodka'], es: ['lejía', 'agua oxigenada', 'ron'] },
  'sugar-that-overheats': {
    en: ['honey 8%', 'honey 40 g, sugar 40 g'],
    es: ['miel 8%', 'miel 40 g, azúcar 40 g'],
  },
  'acid-by-the-spoon': {
    en: ['1 tsp citric acid', '1 Tbsp anhydrous citric acid'],
    es: ['1 cdta ácido cítrico', '1 cda ácido cítrico anhidro'],
  },
  'batter-too-hot': { en: ['95 C', '210 F'], es: ['95 C', '210 F'] },
  'loaf-that-boils': { en: ['60 C'], es: ['60 C'] },
  'lye-half-understood': {
    en: ['how much lye for 500 g olive and 500 g moonbeam', 'how much lye for 1000 g olive in ambrosia'],
    es: ['cuánta sosa para 500 g de oliva y 500 g de ambrosía', 'cuánta lejía para 1000 g de oliva'],
  },
};

describe('what a recipe can hurt with, through every entry that takes a part of one', () => {
  const hazards = HAZARDS.filter(({ id }) => Object.hasOwn(RECIPE_TEXTS, id));

  test('every such hazard has its texts, and every such entry its way', () => {
    const kinds = new Set(Object.values(RECIPE_WAYS).map(([kind]) => kind));
    const ofKinds = HAZARDS.filter(({ entries: all }) => all.some(kind => kinds.has(kind)));
    expect(ofKinds.map(({ id }) => id).sort()).toEqual(Object.keys(RECIPE_TEXTS).sort());
    for (const kind of kinds) {
      const named = Object.entries(HAZARD_ENTRIES).filter(([, all]) =>
        (all as readonly string[]).includes(kind),
      );
      const ways = Object.entries(RECIPE_WAYS).filter(([, [of]]) => of === kind);
      expect(ways.map(([name]) => name).sort()).toEqual(named.map(([name]) => name).sort());
    }
  });

  const cases = hazards.flatMap(({ id }) => languages.map(language => ({ id, language })));
  test.each(cases)('$id in $language', async ({ id, language }) => {
    const { must, entries: kinds } = hazards.find(one => one.id === id)!;
    const ways = Object.entries(RECIPE_WAYS).filter(([, [kind]]) =>
      (kinds as readonly string[]).includes(kind),
    );
    for (const [name, [, way]] of ways)
      for (const text of RECIPE_TEXTS[id]![language]) {
        const [path, given] = way(text);
        const answer = await run(path, given, language);
        const warned = ((answer.kind === 'reply' ? answer.data : {}) as { warnings?: { id: string }[] })
          .warnings;
        const said = answer.kind === 'reply' ? `${answer.headline} ${JSON.stringify(answer.blocks)}` : '';
        const isHeld =
          'refuse' in must
            ? must.refuse.includes(problemOf(answer))
            : 'warn' in must
              ? must.warn.some(one => warned?.some(({ id: is }) => is === one))
              : answer.kind === 'reply' && !/\d g (?:de |of )?(?:NaOH|KOH|lye|sosa)\b/u.test(said);
        expect(`${name} “${text}”: ${isHeld || problemOf(answer)}`).toBe(`${name} “${text}”: true`);
      }
  });
});

describe('first aid speaks the language that is typed', () => {
  const cases = [
    ['me cayó sosa en el ojo y me quema mucho', 'en', 'es'],
    ['the lye splashed in my eye and it burns', 'es', 'en'],
    ['sosa ojo', 'en', 'en'],
  ] as const;
  test.each(cases)('%s, from a member set to %s: %s', async (text, set, spoken) => {
    const headline = wordsIn(spoken).firstAid.headlines['lye-eye'];
    const note = await firstAidForWords(text, origin(set), conversation);
    const typed = await run('diagnose', { words: text }, set);
    for (const answer of [note, typed]) {
      if (answer?.kind !== 'reply') throw new Error('no first aid');
      expect(answer.headline).toContain(headline);
      expect(answer.language).toBe(spoken);
    }
    const [choice] = (typed.kind === 'reply' && typed.choices) || [];
    const pressed: Question = {
      ...origin(set),
      kind: 'follow',
      sealed: choice!.follow,
      values: [],
      fields: {},
    };
    const shared = await receive(pressed, conversation);
    expect(shared.kind === 'reply' && shared.headline).toBe(headline);
  });

  test('what is clearly written in the other language is answered in it, a name or two is not', async () => {
    const answer = await run('diagnose', { words: 'el jabón tiene manchas en la superficie' }, 'en');
    expect(answer.language).toBe('es');
    expect((await run('diagnose', { words: 'manchas' }, 'en')).language).toBe('en');
  });
});

describe('several emergencies at once', () => {
  const shown = (ids: readonly EmergencyId[], language: Language) => {
    const { blocks } = firstAidReply(ids, { say: wordsIn(language), locale: 'en-US' });
    return {
      lists: blocks.filter(({ kind }) => kind === 'rows').length,
      lines: blocks.flatMap(block => (block.kind === 'text' ? [block.text] : [])),
    };
  };

  test('one list, and a short line for each further one', () => {
    expect(shown(['lye-eye', 'lye-skin'], 'en')).toEqual({
      lists: 1,
      lines: ['Also: lye on skin: running water, 20 minutes.'],
    });
    for (const language of languages)
      for (const first of EMERGENCY_IDS) {
        const all = shown([first, ...EMERGENCY_IDS.filter(id => id !== first)], language);
        expect(all.lists).toBe(1);
        expect(all.lines).toHaveLength(2);
        for (const line of all.lines) expect(line.length).toBeLessThanOrEqual(90);
      }
  });

  test('what the first already says is left out', () => {
    expect(shown(['lye-eruption', 'lye-skin'], 'en').lines).toEqual([]);
    expect(shown(['lye-skin', 'skin-reaction'], 'es').lines).toEqual([]);
    expect(shown(['lye-skin', 'lye-eruption'], 'es').lines).toHaveLength(1);
  });

  test('in words: the eye in full, the jug in a line', async () => {
    const words = 'the lye jug is boiling over and it went in my eye';
    const answer = await run('diagnose', { words });
    if (answer.kind !== 'reply') throw new Error('no first aid');
    expect(emergencyOf(answer)).toBe('lye-eye');
    expect(answer.blocks.filter(({ kind }) => kind === 'rows')).toHaveLength(1);
    expect(answer.blocks).toContainEqual({
      kind: 'text',
      text: 'Also: lye out of control: step back, add nothing.',
    });
  });
});
