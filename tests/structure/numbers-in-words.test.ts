import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');

/** A figure that is made where a sentence is written: as it comes, with a point in every language. */
const BY_HAND =
  /\$\{\s*(?:Math\.|Number\()|\.to(?:Fixed|LocaleString|Exponential)\(|\.toPrecision\([^)]*\)\s*\}/u;

const byHand = (text: string): readonly string[] => text.split('\n').filter(line => BY_HAND.test(line));

test('a sentence rounds no number by itself: `numbersIn` writes it', () => {
  const files = globSync('src/words/**/*.ts', { cwd: root }).filter(file => file !== 'src/words/numbers.ts');
  expect(files.length).toBeGreaterThan(100);
  const found = files.flatMap(file =>
    byHand(readFileSync(join(root, file), 'utf8')).map(line => `${file}: ${line.trim()}`),
  );
  expect(found).toEqual([]);
});

test.each([
  [`\${Math.round(v.millilitres)} ml`, true],
  [`\${Math.floor(most / 1024)} MB`, true],
  [`about \${v.grams.toFixed(1)} g`, true],
  [`\${v.times.toPrecision(2)} times`, true],
  [`\${ml(v.millilitres)}`, false],
  [`\${whole(Math.ceil(v.celsius))} C`, false],
  ['const size = Math.round(minutes);', false],
])('%s is seen for what it is', (line, isOne) => {
  expect(byHand(line)).toHaveLength(isOne ? 1 : 0);
});
