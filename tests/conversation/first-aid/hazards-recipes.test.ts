import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import type { Given } from '../../../src/conversation/question.ts';
import { receive } from '../../../src/conversation/receive.ts';
import { readCommands } from '../../../src/conversation/registry/registry.ts';
import type { Answer } from '../../../src/conversation/reply.ts';
import { openStore } from '../../../src/records/open.ts';
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
