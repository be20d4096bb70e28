import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { LYE_CAUTIONS } from '../../src/engine/batch/lye/lye-cautions.ts';
import * as say from '../../src/words/en/index.ts';
import * as dice from '../../src/words/es/index.ts';
import { LANGUAGES, type Language } from '../../src/words/sentence.ts';
import { BY_VALUES } from '../terminal/refused/by-values.ts';
import { REFUSED } from '../terminal/refused/index.ts';
import { dose } from '../terminal/warned/dose.ts';
import { plan } from '../terminal/warned/plan.ts';

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

const cautionsOf = ({ batch, dosing }: Pick<typeof say, 'batch' | 'dosing'>) => ({
  ...batch.lyeCautions,
  ...dosing.cautions,
  ...batch.warnings,
});
const cautions = { en: cautionsOf(say), es: cautionsOf(dice) };
/** Which cautions `tests/terminal/warned.test.ts` meets. */
const warned: readonly Told[] = [...dose, ...plan].flatMap(([, all]) =>
  all.map(([id, en, es]) => ({ id, en, es })),
);

const registry = await readCommands(new URL('commands/', root));

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

  test('every caution about lye, of a dose and of a plan, by what it says', () => {
    const ids: readonly string[] = [
      ...LYE_CAUTIONS.map(({ id }) => id),
      ...Object.keys(say.dosing.cautions),
      ...Object.keys(say.batch.warnings),
    ];
    const looked = new Set(warned.map(({ id }) => id));
    expect(ids.filter(id => !looked.has(id))).toEqual([]);
  });

  test.each(LANGUAGES)('a part of each caution that no other has, in %s', language => {
    expect(alike(warned, cautions[language], language)).toEqual([]);
  });

  test('every command', () => {
    const paths = [...registry.actions.keys()];
    const asked = (path: string) =>
      tests.some(
        ({ text }) =>
          text.includes(`/${path}`) ||
          text.includes(`'${path}'`) ||
          text.includes(`'${path.split(' ').join("', '")}'`),
      );
    expect(paths.filter(path => !asked(path))).toEqual([]);
  });

  test('every option of every command', () => {
    const never: string[] = [];
    for (const [path, { options }] of registry.actions) {
      const about = tests.filter(({ text }) => text.includes(path.split(' ')[0]!)).map(({ text }) => text);
      for (const { name } of options) {
        const given = new RegExp(String.raw`(?<![\w-])(?:'${name}'|${name}):|(?<=[{,]\s*)${name}(?=\s*[,}])`);
        if (!about.some(text => given.test(text))) never.push(`/${path} ${name}`);
      }
    }
    expect(never).toEqual([]);
  });
});
