import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');

/** The rooms in which texts of ours are made, chosen and shown. */
const SPEAKING = 'src/{words,presenting,conversation,engine/questions/leaning/parts}/**/*.ts';

/** What is cut up there is no finished text of ours. */
const CUT_UP: ReadonlyMap<string, string> = new Map([
  ['commands/ask/colour/shared-doses.ts', 'the name of a colourant, whose words a caution may say already'],
  ['commands/diagnose/form.ts', 'the ids that were ticked in a form'],
  ['commands/help/topics.ts', 'the name of a command'],
  ['src/conversation/answering/context-of.ts', 'the name of a command'],
  ['src/conversation/first-aid/first-aid.ts', 'the numbers that are sealed in a button'],
  ['src/conversation/follow-ups/follow.ts', 'what is sealed in a button'],
  ['src/conversation/registry/growing-registry.ts', 'the name of what a button leads to'],
  ['src/conversation/typed/command-line.ts', 'a line that a member typed'],
  ['src/conversation/typed/option-meant.ts', 'a list of names of options'],
  ['src/conversation/typed/typed-value.ts', 'a mark that a member typed'],
  [
    'src/engine/questions/leaning/parts/nearest-part.ts',
    'words looked for, beside a list: nothing of it is shown',
  ],
  ['src/presenting/colour/candidates.ts', 'a list of colourants that a member typed'],
  ['src/words/dates.ts', 'a mark for an instant, which each front shows in its own way'],
  ['src/words/en/batch/batch-refusals.ts', 'what a member typed, quoted'],
  ['src/words/es/batch/batch-refusals.ts', 'what a member typed, quoted'],
  ['src/words/locales.ts', 'the code of a language'],
]);

const CUTS = /\.(?:split|match|matchAll|exec|search)\(/u;
/** Where a sentence ends, as a pattern would say it. */
const ENDS_OF_SENTENCES = /\.split\(\s*(?:\/[^/\n]*\[[^\]\n]*[.!?][^\]\n]*\]|['"][.!?] ['"])/u;

const sourcesOf = (pattern: string) =>
  globSync(pattern, { cwd: root }).map(file => ({ file, text: readFileSync(join(root, file), 'utf8') }));

/* What is told in several sentences is a list of them; it becomes one text where it is shown (`oneText`). */
test('no finished text of ours is cut up again', () => {
  const sources = [...sourcesOf(SPEAKING), ...sourcesOf('commands/**/*.ts')];
  expect(sources.length).toBeGreaterThan(400);
  const cutting = sources.filter(({ text }) => CUTS.test(text)).map(({ file }) => file);
  expect(cutting.toSorted()).toEqual([...CUT_UP.keys()].toSorted());
});

test('nothing that shows or chooses texts looks for the ends of sentences', () => {
  const sources = [...sourcesOf(SPEAKING), ...sourcesOf('commands/**/*.ts')];
  expect(sources.filter(({ text }) => ENDS_OF_SENTENCES.test(text)).map(({ file }) => file)).toEqual([]);
});

test.each([
  [String.raw`why.split(/(?<=[.:!?]) (?=[\p{Lu}/¿])/u)`, true],
  ["answer.split('. ')", true],
  ["words.split(' ')", false],
  ["sealed.split('~')", false],
])('%s is seen for what it is', (line, isOne) => {
  expect(ENDS_OF_SENTENCES.test(line)).toBe(isOne);
});
