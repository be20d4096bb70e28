import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { readCommands } from '../../src/conversation/registry.ts';
import { scenario } from '../../src/demo/scenario.ts';
import { openStore } from '../../src/records/open.ts';
import { askLine, type Seat } from '../../src/terminal/seat.ts';
import { jsonOf } from '../../src/terminal/shown.ts';
import { openWorkers } from '../../src/workers/workers.ts';

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

let conversation: Conversation;
const faults: unknown[] = [];
beforeAll(async () => {
  conversation = {
    registry: await readCommands(new URL('../../commands/', import.meta.url)),
    services: { store: await openStore('sqlite::memory:'), workers: openWorkers() },
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
const words = (text: string) => text.split(/\s+/).filter(Boolean).length;

describe.each(['en', 'es'] as const)('answers in %s', language => {
  test('have faces within their words, once the standing cautions are known', {
    timeout: 300_000,
  }, async () => {
    const at = seat(language);
    for (const line of [LINES[0]!, LINES[8]!, '/help']) await answered(line, at);
    const sizes = new Map<string, number>();
    for (const line of [...DEMO, ...LINES]) {
      const { face, command } = await answered(line, at);
      sizes.set(line, words(face) - (LIMITS[command] ?? MOST));
    }
    expect([...sizes].filter(([, over]) => over > 0)).toEqual([]);
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
