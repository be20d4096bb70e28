import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

test.each([
  ['en', /\bsafe/i],
  ['es', /\bsegur[oa]s?\b/i],
])('no sentence about colourants (%s) promises more than chemistry can', (language, promise) => {
  for (const subject of ['stability', 'colourants']) {
    const sentences = readFileSync(
      new URL(`../../../src/words/${language}/colourants/${subject}.ts`, import.meta.url),
      'utf8',
    );
    expect(sentences).not.toMatch(promise);
  }
});
