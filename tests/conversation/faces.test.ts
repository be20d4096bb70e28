import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { readCommands } from '../../src/conversation/registry.ts';
import { scenario } from '../../src/demo/scenario.ts';
import { openStore } from '../../src/records/open.ts';
import { askLine, type Seat } from '../../src/terminal/seat.ts';
import { jsonOf } from '../../src/terminal/shown.ts';
import { sharedWorkers } from '../workers/shared.ts';

/** Words that a face may have, by command. Source: the issue that asks for short faces. */
const LIMITS: Readonly<Record<string, number>> = {
  dose: 90,
  diagnose: 110,
  plan: 130,
  match: 90,
  preview: 90,
  'colourant check': 80,
  help: 70,
};
const MOST = 130;

/** The README's examples, the demo's lines, and what is long: many colours, milk, doubt. */
const LINES = [
  '/dose colourant:"ultramarine blue" portion:"2 cups"',
  '/dose colourant:"titanium dioxide" portion:"1 cup" with:"gold mica pastel"',
  '/dose colourant:"ultramarine blue" portion:"1 cup" with-1:"gold mica" with-2:"titanium dioxide tint" with-3:"red iron oxide" with-4:"chromium oxide green"',
  '/dose colourant:carmine portion:"2-3 cups" strength:pastel',
  '/dose colourant:"ultramarine violet" portion:"1 cup" premix:"1 tsp in 1 Tbsp oil"',
  '/diagnose words:"blue specks all over, no zap"',
  '/diagnose words:"white crackly veins on top, the soap got hot, oozing liquid, zaps"',
  '/diagnose words:"it looks odd"',
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; 500 ml gold mica pastel in water; rest plain"',
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups ultramarine blue; rest plain" liquid:"goat milk" fragrance:"3%, vanillin 8%" additives:"honey 10 g, salt 5%"',
  '/plan oils:"olive 100%" size:"500 g oils" lye:"50% lye solution"',
  '/plan oils:"coconut 30%, olive 70%" size:"1000 g oils" people:6 stations:3',
  '/match target:#1f7d7d portion:"1 cup"',
  '/match target:#6b3fa0 portion:"500 ml" from:catalogue',
  '/preview mix:"ultramarine blue + gold mica" portion:"1 cup"',
  '/preview mix:"neon pink + titanium dioxide + gold mica" gel:true',
  '/colourant check item:carmine',
  '/colourant check item:"gold mica"',
  '/colourant check ingredients:"Mica (CI 77019), Carmine (CI 75470), Titanium Dioxide (CI 77891), Blue 1 Lake, Iron Oxides (CI 77491), Tin Oxide, Red 40 Lake"',
  '/help',
  '/help topic:plan',
  '/help topic:challenge',
  '/shelf list',
  '/prefer',
];

const lineOf = ({ command, options }: (typeof scenario)[number]) =>
  `${command} ${Object.entries(options)
    .map(([name, value]) => `${name}:"${value}"`)
    .join(' ')}`;
const DEMO = scenario
  .filter(({ command }) => /^\/(?:shelf|plan|dose|recipe|diagnose)/.test(command))
  .map(lineOf);

/** Jars, a plan, and what is kept, foretold, bought and shared with them. */
const JARS = [
  '/shelf add item:Dusk colourant:"ultramarine violet" amount:"50 g" price:"8.50 €"',
  '/shelf add item:Sun colourant:"gold mica" amount:"50 g" price:"6 €"',
  '/shelf add item:Leaf colourant:"chromium oxide green" amount:"50 g"',
  '/shelf add item:Brick colourant:"red iron oxide" amount:"50 g"',
];
const MADE = [
  '/dose colourant:Dusk portion:"2 cups"',
  '/match target:#6b3fa0 portion:"500 ml"',
  '/plan oils:"coconut 30%, olive 50%, palm 20%" size:"1000 g oils" portions:"2 cups Dusk; 500 ml Sun pastel; rest plain" prices:"olive 8 €/kg, coconut 6 € per 500 g, palm 4 €/kg"',
  '/batch poured name:Lagoon',
  '/batch poured made:"2 cups Dusk 1/2 tsp; 1 cup Sun 1 tsp; 1 cup Leaf 1/4 tsp; 1 cup Brick 1/4 tsp" name:Many',
  '/batch list',
  '/batch show batch:Lagoon',
  '/batch dates',
  '/batch cut weights:"112 g, 108 g"',
  '/batch weigh weights:"107.4, 103.4"',
  '/batch cured colours:"Dusk #7f5fa8"',
  '/palette today',
  '/palette make colours:"#4b3a78, #b14e78, #de6f4d, #f2b95c"',
  '/palette buy colours:"#5f8f5a, #2f6b46"',
  '/pour layers mould:"25x9x6 cm" layers:12 raised:0.2',
  '/pour line mould:"25x9x6 cm" lines:2',
  '/pour swirl mould:"25x9x6 cm" shares:"blue 70%, white 30%"',
  '/pour gradient from:"ultramarine blue full" to:plain steps:8',
  '/pour infusion',
  '/pour infusion bar:"20% #dcc58a" target:"#cda64f" oils:"1000 g"',
  '/swap offer item:Dusk',
  '/swap list',
  '/season show',
  '/calibrate plan',
  '/calibrate bars item:Dusk bar-1:"1/8 tsp per cup #8b93bd" bar-2:"1/2 tsp per cup #4d5aa0"',
  '/shelf compare one:Dusk other:"ultramarine blue"',
];

let conversation: Conversation;
const faults: unknown[] = [];
beforeAll(async () => {
  conversation = {
    registry: await readCommands(new URL('../../commands/', import.meta.url)),
    services: { store: await openStore('sqlite::memory:'), workers: sharedWorkers({ draws: false }) },
    key: new Uint8Array(32).fill(7),
    onFault: fault => faults.push(fault),
  };
});
afterAll(async () => {
  await conversation.services.workers.close();
  await conversation.services.store.close();
  expect(faults).toEqual([]);
});

const seat = (language: 'en' | 'es', member = 'reader'): Seat => ({
  member: `${member}-${language}`,
  group: `home-${language}`,
  language,
  manages: true,
  roles: [],
});

async function answered(line: string, at: Seat) {
  const shown = await jsonOf(await askLine(line, at, conversation), '.tintmoot/test-pictures');
  if (!shown.ok || !('face' in shown)) throw new Error(`${line}: ${JSON.stringify(shown)}`);
  return shown;
}
const wordsOf = (text: string) => text.split(/\s+/).filter(Boolean).length;

describe.each(['en', 'es'] as const)('answers in %s', language => {
  test('have faces within their words, once the standing cautions are known', {
    timeout: 300_000,
  }, async () => {
    const at = seat(language);
    for (const line of [LINES[0]!, LINES[8]!, '/help']) await answered(line, at);
    const sizes = new Map<string, number>();
    for (const line of [...DEMO, ...LINES]) {
      const { face, command } = await answered(line, at);
      sizes.set(line, wordsOf(face) - (LIMITS[command] ?? MOST));
    }
    expect([...sizes].filter(([, over]) => over > 0)).toEqual([]);
  });

  test('have faces within their words, jars, books and palettes too, and lose nothing', {
    timeout: 300_000,
  }, async () => {
    const at = seat(language, 'maker');
    for (const line of [LINES[0]!, LINES[8]!, ...JARS]) await answered(line, at);
    const over: (readonly [string, number])[] = [];
    for (const line of MADE) {
      const { face, command, folds, text } = await answered(line, at);
      const words = wordsOf(face) - (LIMITS[command] ?? MOST);
      if (words > 0) over.push([line, words]);
      for (const fold of folds)
        for (const piece of fold.text.split('\n').filter(Boolean))
          expect(text, `${line}: ${fold.id}`).toContain(piece.trim());
    }
    expect(over).toEqual([]);
  });

  test('say standing cautions in full the first time, then in a line with the whole in a fold', async () => {
    const at = seat(language, 'newcomer');
    const full = /Gloves and goggles: raw batter burns|Guantes y gafas: la masa cruda quema/;
    const first = await answered(LINES[0]!, at);
    const second = await answered(LINES[0]!, at);
    expect(first.face).toMatch(full);
    expect(second.face).not.toMatch(full);
    expect(second.face).toMatch(/Gloves and goggles on|Guantes y gafas puestos/);
    expect(second.folds.find(({ id }) => id === 'safety')?.text).toMatch(full);
    expect(second.text).toBe(first.text);
  });

  test('keep the lye step and what to do when it goes wrong on the face of every plan', async () => {
    const at = seat(language);
    for (const line of LINES.filter(one => one.startsWith('/plan'))) {
      const { face } = await answered(line, at);
      expect(face).toMatch(/goggles|gafas/i);
      expect(face).toMatch(/no vinegar|sin vinagre/i);
      expect(face).toMatch(
        /never the other way|Never liquid onto lye|it burns as it is|nunca al revés|nunca|quema/i,
      );
    }
  });

  test('lose nothing: what a face leaves out stands in a fold, and the whole has all of it', async () => {
    const at = seat(language);
    for (const line of LINES) {
      const { text, folds, headline } = await answered(line, at);
      expect(text).toContain(headline);
      for (const fold of folds)
        for (const piece of fold.text.split('\n').filter(Boolean))
          expect(text, `${line}: ${fold.id}`).toContain(piece.trim());
    }
  });

  test('fold nothing away from whoever is hurt', async () => {
    const { folds, text, face } = await answered('/first-aid what:lye-eye', seat(language));
    expect(folds).toEqual([]);
    expect(face).toBe(text);
  });
});
