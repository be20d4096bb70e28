import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = join(import.meta.dirname, '../../commands');
const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter(file => file.endsWith('.ts'))
  .map(file => ({ file, text: readFileSync(join(folder, file), 'utf8') }));

/** What is looked into is of our own making: no member wrote it, or it is an id of ours. */
const OF_OUR_OWN: ReadonlyMap<string, string> = new Map([
  ['ask/colour/shared-doses.ts', 'a caution that already says the name of its colour'],
  ['challenge/lookup.ts', 'the number under which a challenge is kept'],
  ['colourant/follow-ups.ts', 'the number of a page, sealed in a button'],
  ['help/answer.ts', 'a topic'],
  ['help/topics.ts', 'a topic, and the names of options that differ by a number'],
]);

/** A pattern between slashes, one that is built, and a decimal mark that is turned by hand. */
const READS =
  /(?<=[(=,:?!&|]\s*|return )\/(?![/*])(?:[^/\\\n[]|\\.|\[(?:[^\]\\\n]|\\.)*\])+\/[dgimsuvy]*(?=[.,;)\s\]])|String\.raw|new RegExp|replace(?:All)?\('[.,]|parseFloat/u;

/* A command says what is answered; what reads members' words is a named reader of the engine. */
test('no command looks into words by a pattern', () => {
  const found = sources.filter(({ text }) => READS.test(text)).map(({ file }) => file);
  expect(found.toSorted()).toEqual([...OF_OUR_OWN.keys()].toSorted());
});

test.each([
  String.raw`const LYE = /(?<!\p{L})(?:lye|sosa)(?!\p{L})/u;`,
  String.raw`text.split(/[,;\n]/)`,
  String.raw`return /^\d+$/.test(text);`,
  `if (!/^(?:dose|match)$/u.test(command)) return;`,
  'new RegExp(name)',
  `Number(typed.replace(',', '.'))`,
  'Number.parseFloat(typed)',
])('such as %s', line => {
  expect(READS.test(line)).toBe(true);
});

test.each(['const share = grams / oils;', `import { fold } from '../../fold.ts'; // a / b`])(
  'but not %s',
  line => {
    expect(READS.test(line)).toBe(false);
  },
);

/* What is carried typed cannot be misspelt. */
test('no file of /ask reads what an answer of ours tells by cast or by schema', () => {
  const readsBack = /\bdata\b[^;\n]* as [{A-Z(]|\.data\)\.data|safeParse|\bas Reply\b/u;
  const ask = sources.filter(({ file, text }) => file.startsWith('ask/') && readsBack.test(text));
  expect(ask.map(({ file }) => file)).toEqual([]);
  expect(readsBack.test('(alone.data as { understood?: object }).understood')).toBe(true);
  expect(readsBack.test('told.safeParse(answer.data).data?.doses')).toBe(true);
});
