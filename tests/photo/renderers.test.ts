import { existsSync, globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

/**
 * The Python that trained the reader is run by no test; what it says of its renderers in several places has to agree, since one
 * that is left out of a list is silently not learned from.
 */
const training = new URL('../../src/photo/training/', import.meta.url);
const textOf = (path: string): string => readFileSync(new URL(path, training), 'utf8');
const train = textOf('train.py');
const everything = textOf('everything.py');

/** What a table or list of the name `name` holds between its brackets. */
function listed(text: string, name: string): string {
  const [, held] = new RegExp(`^${name} = [[{]([^\\]}]*)[\\]}]`, 'm').exec(text) ?? [];
  if (held === undefined) throw new Error(`no ${name}`);
  return held;
}
const namesIn = (held: string): string[] => [
  ...new Set([...held.matchAll(/"([a-z_]+)"/g)].map(match => match[1]!)),
];
const partsIn = (held: string): [string, number][] =>
  [...held.matchAll(/"([a-z_]+)": ([\d.]+)/g)].map(match => [match[1]!, Number(match[2])]);
const sorted = (names: readonly string[]): string[] => names.toSorted();

const shares = partsIn(listed(train, 'SHARES'));
const learned = shares.map(([name]) => name);
const isPackage = (name: string): boolean => existsSync(new URL(`renderers/${name}/__init__.py`, training));
const programOf = (name: string): string =>
  textOf(isPackage(name) ? `renderers/${name}/__init__.py` : `renderers/${name}.py`);
const offers = (name: string, what: 'draw' | 'one'): boolean =>
  new RegExp(`^def ${what}\\(`, 'm').test(programOf(name));

describe('the renderers that the reader learns from', () => {
  test('all that are started are learned from, and the other way round', () => {
    const started = [
      ...namesIn(listed(everything, 'ON_GPU')),
      ...namesIn(listed(everything, 'ON_PROCESSOR')),
    ];
    expect(sorted(started)).toEqual(sorted(learned));
  });

  test('each draws as those do that it is started with', () => {
    const single = namesIn(listed(everything, 'ON_PROCESSOR'));
    expect(sorted(single)).toEqual(sorted(namesIn(listed(train, 'ON_PROCESSOR'))));
    for (const name of learned)
      expect([name, offers(name, single.includes(name) ? 'one' : 'draw')]).toEqual([name, true]);
  });

  test('none has more than an eighth of a batch, and none is left without', () => {
    const all = shares.reduce((sum, [, part]) => sum + part, 0);
    for (const [name, part] of shares) {
      expect([name, part / all < 1 / 8]).toEqual([name, true]);
      expect([name, part / all > 1 / 60]).toEqual([name, true]);
    }
    for (const [name, clean] of partsIn(listed(everything, 'CLEAN')))
      expect([name, learned.includes(name), clean > 0.2 && clean < 0.5]).toEqual([name, true, true]);
  });

  test('the README tells of each', () => {
    const readme = textOf('README.md');
    for (const name of learned) expect(readme).toContain(`\`${name}\``);
  });

  test('none of the training reads what judges it', () => {
    for (const path of globSync('**/*.py', { cwd: training }))
      expect([
        path,
        /tests[/.]photo|photo[AB]\b/.test(textOf(path).replaceAll(/"""[\s\S]*?"""/g, '')),
      ]).toEqual([path, false]);
  });
});
