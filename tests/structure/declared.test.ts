import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { LYE_CAUTIONS } from '../../src/engine/batch/lye/lye-cautions.ts';
import * as say from '../../src/words/en/index.ts';

const root = new URL('../../', import.meta.url);
/** What tests and their tables say, themselves left out. */
const tests = globSync('tests/**/*.ts', { cwd: root })
  .filter(path => !path.startsWith('tests/structure/') && !path.startsWith('tests/mutants/'))
  .map(path => ({ path, text: readFileSync(new URL(path, root), 'utf8') }));

/** Every quoted text, and every key of a table, of any test. */
const quoted = new Set(
  tests.flatMap(({ text }) =>
    [...text.matchAll(/(['"`])([a-z][a-z0-9-]*)\1|^\s*([a-z][a-z0-9]*):/gm)].map(
      match => match[2] ?? match[3]!,
    ),
  ),
);

const registry = await readCommands(new URL('commands/', root));

describe('a test looks at', () => {
  test('every refusal', () => {
    expect(Object.keys(say.refusals).filter(id => !quoted.has(id))).toEqual([]);
  });

  test('every caution about lye, of a dose and of a plan', () => {
    const ids = [
      ...LYE_CAUTIONS.map(({ id }) => id),
      ...Object.keys(say.dosing.cautions),
      ...Object.keys(say.batch.warnings),
    ];
    expect(ids.filter(id => !quoted.has(id))).toEqual([]);
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
