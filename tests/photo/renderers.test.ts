import { existsSync, globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { TAUGHT_IDS } from '../../src/photo/findings/ids.ts';

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

  test('findings stand in one order wherever all are listed', () => {
    const lists = globSync('**/*.py', { cwd: training }).flatMap(path =>
      [...textOf(path).matchAll(/[[(]\s*"coloured-specks[^\])]*mould-dimples"\s*[\])]/g)].map(([list]) => ({
        path,
        ids: list.match(/[a-z]+(?:-[a-z]+)*/g),
      })),
    );
    // One names the twelve that show in a close-up.
    const whole = lists.filter(({ ids }) => ids?.length === TAUGHT_IDS.length);
    expect(whole.length).toBeGreaterThan(12);
    for (const list of whole) expect(list).toEqual({ path: list.path, ids: [...TAUGHT_IDS] });
  });

  test('none of the training reads what judges it', () => {
    for (const path of globSync('**/*.py', { cwd: training }))
      expect([
        path,
        /tests[/.]photo|photo[AB]\b/.test(textOf(path).replaceAll(/"""[\s\S]*?"""/g, '')),
      ]).toEqual([path, false]);
  });
});

describe('flaws that are grown', () => {
  const body = textOf('renderers/grown_flaws_body.py');
  const numbered = [...listed(body, 'BY_NUMBER').matchAll(/(\d+): ([a-z_]+)/g)];

  test('each finding is grown by one process: a bled colour and parted layers where two colours meet', () => {
    const [, bled, parted] = /^BLED, PARTED = (\d+), (\d+)$/m.exec(body)!;
    expect([TAUGHT_IDS[Number(bled)], TAUGHT_IDS[Number(parted)]]).toEqual(['colour-bled', 'layer-gap']);
    const numbers = [...numbered.map(([, number]) => Number(number)), Number(bled), Number(parted)];
    expect(numbers.toSorted((a, b) => a - b)).toEqual(TAUGHT_IDS.map((_, i) => i));
  });

  test('each process is that of its finding', () => {
    const called: Readonly<Record<string, string>> = {
      veins: 'translucent-veins',
      crackle: 'crackle-network',
      film: 'powdery-film',
      dark_centre: 'dark-centre-ring',
      browning: 'brown-outside-in',
      wrinkles: 'wrinkled-top',
      dimples: 'mould-dimples',
    };
    for (const [, number, name] of numbered)
      expect(called[name!] ?? name!.replaceAll('_', '-')).toBe(TAUGHT_IDS[Number(number)]);
  });

  test('on other renderers’ bars they come before paper is laid beside them, on a part of the clean ones', () => {
    const pool = textOf('pool.py');
    const [grown, laid] = ['batch = with_flaws_grown(', 'put(with_things_laid('].map(call =>
      pool.indexOf(call),
    );
    expect(grown).toBeGreaterThan(0);
    expect(laid).toBeGreaterThan(grown!);
    const part = Number(/^GROWN = ([\d.]+)$/m.exec(textOf('grown_on.py'))?.[1]);
    // Clean bars are what false alarms are unlearned from: most of them stay clean.
    expect(part).toBeGreaterThan(0.1);
    expect(part).toBeLessThan(0.5);
  });

  test('where they may be and whether they are an area agrees with what they are', () => {
    const idsIn = (text: string): string[] =>
      [...text.matchAll(/\d+/g)].map(([number]) => TAUGHT_IDS[Number(number)]!);
    const [, top, face] = /^ON_TOP, ON_FACE = \(([^)]*)\), \(([^)]*)\)$/m.exec(
      textOf('renderers/draw_grown.py'),
    )!;
    // Ash, tears and buckled skin need air; a heart, a rim, a border and a blade's lines are seen on a cut.
    expect(idsIn(top!)).toEqual(['powdery-film', 'crack', 'wrinkled-top']);
    for (const id of ['dark-centre-ring', 'brown-outside-in', 'colour-bled', 'drag-lines', 'layer-gap'])
      expect(idsIn(face!)).toContain(id);
    const area = idsIn(/^AREA = \(([^)]*)\)$/m.exec(textOf('renderers/grown_canvas.py'))![1]!);
    expect(area).toEqual([
      'crackle-network',
      'powdery-film',
      'dark-centre-ring',
      'brown-outside-in',
      'wrinkled-top',
      'mould-dimples',
    ]);
  });
});
