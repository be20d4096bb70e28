import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { describe, expect, test } from 'vitest';
import { MapWhenAsked, SetWhenAsked, whenAsked } from '../../src/engine/when-asked.ts';

const WORDS = ['moss', 'rust', 'moss', 'clay'];
const PAIRS = [
  ['moss', 1],
  ['rust', 2],
  ['moss', 3],
] as const;

describe('a set and a map that are filled when somebody looks', () => {
  /** Each way of looking, on a fresh one each time: none may see it empty. */
  const looksAtSet: readonly ((set: ReadonlySet<string>) => unknown)[] = [
    set => set.size,
    set => [set.has('moss'), set.has('sky')],
    set => [...set],
    set => [...set.keys()],
    set => [...set.values()],
    set => [...new Set(set)],
  ];
  test.each(looksAtSet)('a set says what a plain one says: %s', look => {
    expect(look(new SetWhenAsked(() => WORDS))).toEqual(look(new Set(WORDS)));
  });

  const looksAtMap: readonly ((map: ReadonlyMap<string, number>) => unknown)[] = [
    map => map.size,
    map => [map.has('moss'), map.has('sky')],
    map => [map.get('moss'), map.get('sky')],
    map => [...map],
    map => [...map.keys()],
    map => [...map.values()],
    map => [...map.entries()],
    map => [...new Map(map)],
  ];
  test.each(looksAtMap)('a map says what a plain one says: %s', look => {
    expect(look(new MapWhenAsked(() => PAIRS))).toEqual(look(new Map(PAIRS)));
  });

  test('what fills them is gathered with the first look, and once', () => {
    let gathered = 0;
    const set = new SetWhenAsked(() => {
      gathered += 1;
      return WORDS;
    });
    const map = new MapWhenAsked(() => {
      gathered += 1;
      return PAIRS;
    });
    expect(gathered).toBe(0);
    expect([set.has('moss'), set.size, map.get('rust'), map.size]).toEqual([true, 3, 2, 2]);
    expect(gathered).toBe(2);
  });
});

test('what is made when it is asked for is made once, whatever it is', () => {
  let made = 0;
  const nothing = whenAsked(() => {
    made += 1;
    return undefined;
  });
  expect(made).toBe(0);
  expect([nothing(), nothing()]).toEqual([undefined, undefined]);
  expect(made).toBe(1);
  expect(whenAsked(() => WORDS)()).toBe(WORDS);
});

/** Entries that sets and maps are given while a file and all that it needs is loaded. */
async function gatheredBy(file: string): Promise<number> {
  const program = `
    let given = 0;
    const [add, set] = [Set.prototype.add, Map.prototype.set];
    Set.prototype.add = function (one) { given += 1; return add.call(this, one); };
    Map.prototype.set = function (key, value) { given += 1; return set.call(this, key, value); };
    await import(${JSON.stringify(new URL(`../../src/engine/${file}`, import.meta.url).href)});
    console.log(given);
  `;
  const { stdout } = await promisify(execFile)(
    process.execPath,
    ['--disable-warning=ExperimentalWarning', '--input-type=module', '--eval', program],
    { maxBuffer: 1e6 },
  );
  return Number(stdout);
}

test('what reads an amount off a shelf gathers no list of names or words before it is asked', async () => {
  // 5,574 in all; the lists of common words, of colours and of names were 60,000 more.
  expect(await gatheredBy('quantities/told/stock.ts')).toBeLessThan(10_000);
});
