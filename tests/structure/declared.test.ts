import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as say from '../../src/words/en/index.ts';
import * as dice from '../../src/words/es/index.ts';
import { LANGUAGES, type Language } from '../../src/words/sentence.ts';
import { BY_VALUES } from '../terminal/refused/by-values.ts';
import { REFUSED } from '../terminal/refused/index.ts';
import { WARNED } from '../terminal/warned/index.ts';
import { SPOON_ODD } from '../terminal/warned/spoon-odd.ts';
import { otherCautionsOf } from './other-cautions.ts';

const root = new URL('../../', import.meta.url);
/** What tests and their tables say, themselves left out. */
const tests = globSync('tests/**/*.ts', { cwd: root })
  .filter(path => !path.startsWith('tests/structure/') && !path.startsWith('tests/mutants/'))
  .map(path => ({ path, text: readFileSync(new URL(path, root), 'utf8') }));

/** Every quoted text, and every key of a table, of any test but the tables of refusals. */
const raised = new Set(
  tests
    .filter(({ path }) => !path.startsWith('tests/terminal/refused/'))
    .flatMap(({ text }) =>
      [...text.matchAll(/(['"`])([a-z][a-z0-9-]*)\1|^\s*([a-z][a-z0-9]*):/gm)].map(
        match => match[2] ?? match[3]!,
      ),
    ),
);

type Told = { readonly id: string; readonly en: string; readonly es: string };
const byValues = Object.values(BY_VALUES).flat();
/** Which refusals the tables of `tests/terminal/refusals.test.ts` hold, with the part of their sentences that is looked at. */
const told: readonly Told[] = [
  ...Object.values(REFUSED)
    .flat()
    .map(([, id, en, es]) => ({ id, en, es })),
  ...byValues.map(([id, , en, es]) => ({ id, en, es })),
];
/** How each sentence is written, by refusal. */
const written = { en: say.refusals, es: dice.refusals };
/** Whose sentence holds the whole of another refusal's, since both have to be told. */
const HOLDS_ANOTHER: ReadonlySet<string> = new Set(['metal-and-hurt']);
/** Letters that a part must have to be read at all. */
const SHORTEST = 8;
/** The parts that are too short, or that stand in another sentence too. */
const alike = (looked: readonly Told[], sentences: object, language: Language): readonly string[] =>
  looked.flatMap(({ id: own, [language]: part }) => {
    const others = Object.entries(sentences).filter(
      ([id, of]) => id !== own && !HOLDS_ANOTHER.has(id) && String(of).includes(part),
    );
    return part.length < SHORTEST || others.length > 0 ? [`${own}: ${part}`] : [];
  });

/** How each caution is written, by its id. */
const cautionsOf = (words: typeof say) => ({
  ...words.batch.lyeCautions,
  ...words.dosing.cautions,
  ...words.batch.warnings,
  ...otherCautionsOf(words),
});
const cautions = { en: cautionsOf(say), es: cautionsOf(dice) };
/** Which cautions tests meet, each with the part of its sentence that is looked at. */
const warned: readonly Told[] = [SPOON_ODD, ...WARNED.flatMap(([, all]) => all)].map(([id, en, es]) => ({
  id,
  en,
  es,
}));

describe('a test looks at', () => {
  test('every refusal, by what it says', () => {
    const ids = new Set(told.map(({ id }) => id));
    expect(Object.keys(say.refusals).filter(id => !ids.has(id))).toEqual([]);
  });

  test('what no line meets where it is raised', () => {
    expect(byValues.map(([id]) => id as string).filter(id => !raised.has(id))).toEqual([]);
  });

  test.each(LANGUAGES)('a part of each sentence that no other has, in %s', language => {
    expect(alike(told, written[language], language)).toEqual([]);
  });

  test('every caution, by what it says', () => {
    const looked = new Set(warned.map(({ id }) => id));
    expect(Object.keys(cautions.en).filter(id => !looked.has(id))).toEqual([]);
  });

  test.each(LANGUAGES)('a part of each caution that no other has, in %s', language => {
    expect(alike(warned, cautions[language], language)).toEqual([]);
  });
});
