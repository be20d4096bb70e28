import { mkdirSync, writeFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../../src/terminal/seat.ts';
import { jsonOf } from '../../../src/terminal/shown.ts';
import { speckedBar } from '../../photo/render/specked-bar.ts';
import { openConversation } from '../../sets/open-conversation.ts';
import { ALL, LIMITS, MOST, signLines, UNASKED } from './lines.ts';

/*
 * Every reply there is, in both languages: its face within its words, and one decimal sign in all of it.
 */

const FOLDER = '.tintmoot/test-pictures';
const PHOTO = `${FOLDER}/bar.png`;
/** Citations of laws are numbers of sections, written alike in every language. */
const CITED = /\d+ CFR [\d.]+(?: (?:and|y) [\d.]+)?/gu;
const WRONG = { en: /\d,\d/u, es: /\d\.\d/u } as const;

const IN_SPANISH = ['how much ultramarine blue for 2 cups?', '¿cuánto azul ultramar para 2 tazas?'] as const;

type Asked = {
  readonly by: string;
  readonly line: string;
  readonly command: string;
  readonly words: number;
  readonly text: string;
};

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(PHOTO, speckedBar());
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

async function askedIn(language: 'en' | 'es'): Promise<readonly Asked[]> {
  let at = Date.UTC(2026, 10, 2, 10);
  const asked: Asked[] = [];
  const signs = signLines(language).map(line => ({ by: 'maker' as const, line, later: 0 }));
  for (const { by, line, later } of [...ALL, ...signs]) {
    at += later * 3_600_000 + 60_000;
    const seat = {
      member: `${by}-${language}`,
      group: `home-${language}`,
      language,
      manages: true,
      roles: [],
      at,
    };
    // A question is answered in the language it is written in.
    const typed = language === 'es' ? line.replace(...IN_SPANISH) : line;
    const shown = await jsonOf(await askLine(typed.replaceAll('{photo}', PHOTO), seat, conversation), FOLDER);
    if (!shown.ok || !('face' in shown)) throw new Error(`${line}: ${JSON.stringify(shown).slice(0, 300)}`);
    const { command, face, text } = shown;
    asked.push({ by, line, command, words: face.split(/\s+/u).filter(Boolean).length, text });
  }
  return asked;
}

describe.each(['en', 'es'] as const)('every reply in %s', language => {
  let asked: readonly Asked[];
  beforeAll(async () => {
    asked = await askedIn(language);
  }, 600_000);

  test('is of every command that is declared', () => {
    const commands = new Set(asked.map(({ command }) => command));
    const missing = [...conversation.registry.actions.keys()].filter(
      path => !commands.has(path) && !UNASKED.has(path),
    );
    expect(missing).toEqual([]);
  });

  test('has one decimal sign', () => {
    const wrong = asked.flatMap(({ line, text }) =>
      text
        .replaceAll(CITED, '')
        .split('\n')
        .filter(one => WRONG[language].test(one))
        .map(one => [line, one]),
    );
    expect(wrong).toEqual([]);
    // The sign that is looked for is there to be found.
    expect(
      asked.filter(({ text }) => (language === 'en' ? /\d\.\d/ : /\d,\d/).test(text)).length,
    ).toBeGreaterThan(30);
  });

  test('has a face within its words', () => {
    const met = new Set<string>();
    const over = asked.filter(({ by, command, words }) => {
      // What is said in full because it is new to the member comes on top.
      const isFirst = !met.has(`${by} ${command}`);
      met.add(`${by} ${command}`);
      return !isFirst && words > (LIMITS[command] ?? MOST);
    });
    expect(over.map(({ line, words }) => [line, words])).toEqual([]);
  });
});
