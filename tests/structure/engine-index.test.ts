import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join, resolve } from 'node:path';
import { runInThisContext } from 'node:vm';
import type * as named from 'tintmoot/engine';
import { describe, expect, expectTypeOf, test } from 'vitest';
import type { answerDose } from '../../src/engine/dosing/answer.ts';
import * as engine from '../../src/engine/index.ts';

const root = resolve(import.meta.dirname, '../..');
const packageFile = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  readonly name: string;
  readonly exports: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
};

const textsIn = (folder: string): readonly (readonly [path: string, text: string])[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(path => path.endsWith('.ts') && !path.endsWith('.d.ts'))
    .map(path => [`${folder}/${path}`, readFileSync(join(root, folder, path), 'utf8')]);

describe('the engine by its name', () => {
  test('leads to its index', () => {
    expect(packageFile.exports['./engine']).toBe('./src/engine/index.ts');
  });
  test('has the types of what it hands on', () => {
    expectTypeOf<typeof named.answerDose>().toEqualTypeOf<typeof answerDose>();
    expectTypeOf<ReturnType<typeof named.practicalSpoons>['teaspoons']>().toEqualTypeOf<number>();
    expectTypeOf<Parameters<typeof named.planBatch>[0]>().toHaveProperty('portions');
  });
});

describe('every entry point has an example that holds', () => {
  const files = textsIn('src/engine');
  const entries = Object.entries(engine).filter(
    ([name, value]) => typeof value === 'function' && /^[a-z]/u.test(name),
  );
  test('there are entry points', () => expect(entries.length).toBeGreaterThanOrEqual(17));
  test.each(entries.map(([name]) => name))('%s', name => {
    const pattern = new RegExp(
      `@example ((?:(?!@example)[\\s\\S])*?) // ([^\\n]*)\\n \\*/\\nexport function ${name}\\(`,
      'u',
    );
    const found = files.map(([, text]) => pattern.exec(text)).find(match => match !== null);
    if (!found) throw new Error(`${name} has no example`);
    const run = (code: string) =>
      runInThisContext(`({ ${Object.keys(engine).join(', ')} }) => (${code})`)(engine) as unknown;
    // What is long goes on behind the star of the next line.
    expect(run(found[1]!.replaceAll('\n * ', ' '))).toEqual(run(found[2]!));
  });
});

describe('what numbers stand on', () => {
  test('is called public only where the index hands it on: elsewhere nobody reads it, and a comment at the number tells it', () => {
    const index = readFileSync(join(root, 'src/engine/index.ts'), 'utf8');
    const strays = textsIn('src/engine').flatMap(([path, text]) =>
      [...text.matchAll(/@public[\s\S]*?export (?:const|function|type) (\w+)/gu)]
        .map(([, name = '']) => name)
        .filter(name => !new RegExp(`\\b${name}\\b`, 'u').test(index))
        .map(name => `${path}: ${name}`),
    );
    expect(strays).toEqual([]);
  });
});

describe('imports', () => {
  const declared = new Set([
    packageFile.name,
    ...Object.keys(packageFile.dependencies),
    ...Object.keys(packageFile.devDependencies),
  ]);
  const bare = (text: string) =>
    [
      ...text.matchAll(
        /(?:^|\n)(?:import|export)\b[^'"`;=()]*?\bfrom '([^'.][^']*)'|(?:^|\n)import '([^'.][^']*)'|import\('([^'.][^']*)'\)/gu,
      ),
    ]
      .map(([, from, bare, late]) => from ?? bare ?? late ?? '')
      .map(name =>
        name
          .split('/')
          .slice(0, name.startsWith('@') ? 2 : 1)
          .join('/'),
      )
      .filter(name => !name.startsWith('node:') && !builtinModules.includes(name));

  test.each(['src', 'commands', 'tests'])(
    'everything that %s imports is declared in package.json',
    folder => {
      const missing = textsIn(folder).flatMap(([path, text]) =>
        bare(text)
          .filter(name => !declared.has(name))
          .map(name => `${path}: ${name}`),
      );
      expect(missing).toEqual([]);
    },
  );

  test('what runs without development packages imports none', () => {
    const used = textsIn('src').concat(textsIn('commands'));
    const missing = used
      .filter(([path]) => !path.startsWith('src/photo/training'))
      .flatMap(([path, text]) =>
        bare(text.replaceAll(/(?:^|\n)import type [^;]*;/gu, '\n'))
          .filter(name => name !== packageFile.name && !(name in packageFile.dependencies))
          .map(name => `${path}: ${name}`),
      );
    expect(missing).toEqual([]);
  });
});
