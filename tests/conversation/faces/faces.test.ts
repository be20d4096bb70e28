import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { readCommands } from '../../../src/conversation/registry/registry.ts';
import { openStore } from '../../../src/records/open.ts';
import { askLine, type Seat } from '../../../src/terminal/seat.ts';
import { jsonOf } from '../../../src/terminal/shown.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { sharedWorkers } from '../../workers/shared.ts';
import { DEMO, JARS, LIMITS, LINES, MADE, MOST } from '../every-reply/lines.ts';

let conversation: Conversation;
const faults: unknown[] = [];
beforeAll(async () => {
  conversation = {
    registry: await readCommands(new URL('../../../commands/', import.meta.url)),
    services: { store: await openStore('sqlite::memory:'), workers: sharedWorkers() },
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

  test('say on the first plan what lye does, what to wear and what to do in full, the rest in a line that says all one acts on', async () => {
    const { face, folds } = await answered(LINES[8]!, seat(language, 'first-planner'));
    const { lyeCautions, lyeBrief } = wordsIn(language).batch;
    for (const id of ['lye-burns', 'lye-gear', 'lye-first-aid'] as const)
      expect(face).toContain(lyeCautions[id]);
    expect(face).toContain(lyeBrief);
    const safety = folds.find(({ id }) => id === 'safety')?.text;
    for (const id of [
      'lye-air',
      'lye-children',
      'lye-by-scale',
      'lye-aluminium',
      'lye-vessel',
      'lye-label',
    ] as const) {
      expect(face).not.toContain(lyeCautions[id]);
      expect(safety).toContain(lyeCautions[id]);
    }
    // What the line leaves to the fold is said in it in short: draught, aluminium, vessel, label, scale, children.
    for (const word of [
      /draught|aire/,
      /alumini/,
      /polypropyl|polipropil/,
      /label|rotul/,
      /scale|báscula/,
      /child|niños/,
    ])
      expect(lyeBrief).toMatch(word);
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
