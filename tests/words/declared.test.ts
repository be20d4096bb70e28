import { readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Action } from '../../src/conversation/command.ts';
import { isAction } from '../../src/conversation/command.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { phrases } from '../../src/words/declared.ts';
import { LANGUAGES, type Language, type Phrase } from '../../src/words/sentence.ts';

const root = new URL('../../', import.meta.url);
const registry = await readCommands(new URL('commands/', root));

const inAction = ({ purpose, options }: Action): readonly Phrase[] => [
  purpose,
  ...options.flatMap(({ says, choices = [] }) => [says, ...choices.map(({ label }) => label)]),
];

/** All that a command shows of itself before it is asked, in a language. */
const shown = (name: string, language: Language): readonly string[] => {
  const { purpose, does, menu } = registry.commands.find(one => one.name === name)!;
  const inside = isAction(does) ? inAction(does) : Object.values(does).flatMap(inAction);
  return [purpose, ...inside, ...(menu ? [menu.name] : [])].map(phrase => phrase[language]);
};

type Said = { readonly [Name in string]: string | Said };
const textsIn = (said: Said): readonly string[] =>
  Object.values(said).flatMap(one => (typeof one === 'string' ? [one] : textsIn(one)));

describe.each(LANGUAGES)('the phrases of declarations in %s', language => {
  const files = readdirSync(new URL(`src/words/${language}/declared/`, root), {
    recursive: true,
    encoding: 'utf8',
  }).filter(file => /\/[^/]+\.ts$/u.test(file));

  test('are in a file for each command there is', () => {
    expect(files.map(file => basename(file)).sort()).toEqual(
      registry.commands.map(({ name }) => `${name}.ts`).sort(),
    );
  });

  test.each(files)('%s holds what its command shows, and nothing else', async file => {
    const { says } = (await import(new URL(`src/words/${language}/declared/${file}`, root).href)) as {
      readonly says: Said;
    };
    expect([...new Set(textsIn(says))].sort()).toEqual(
      [...new Set(shown(basename(file, '.ts'), language))].sort(),
    );
  });
});

test('a phrase is one of the language it is asked for in', () => {
  const { purpose, what } = phrases('first-aid');
  expect([what.en, what.es]).toEqual(['What happened', 'Qué pasó']);
  expect(Object.keys(purpose)).toEqual(LANGUAGES);
});
