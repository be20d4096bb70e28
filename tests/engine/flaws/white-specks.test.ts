import { describe, expect, test } from 'vitest';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';

// White dots may be fat, powder or ash, and may be lye that did not dissolve (common practice, no source).
describe('white specks that nobody tested', () => {
  test.each([
    'white bits in my black soap',
    'little white dots all through my lavender soap',
    'motas blancas en mi jabón negro',
  ])('“%s”: are tested before anybody is told to use the bar', words => {
    const { causes } = diagnose(words);
    expect(causes.length).toBeGreaterThan(0);
    for (const { thisBatch } of causes) {
      expect(['test-white-specks', 'do-not-use']).toContain(thisBatch[0]);
      expect(thisBatch).not.toContain('use-as-it-is');
      expect(thisBatch).not.toContain('only-looks');
    }
  });

  test('once a strip has told, they are what they are', () => {
    const { causes } = diagnose('white dots all through my soap, the pH strip says 9 and it does not zap');
    expect(causes.flatMap(({ thisBatch }) => thisBatch)).not.toContain('test-white-specks');
  });

  test('specks of colour ask for no test of lye', () => {
    const { causes } = diagnose('dark blue specks all over my soap');
    expect(causes.flatMap(({ thisBatch }) => thisBatch)).not.toContain('test-white-specks');
  });
});

test('what changed after weeks did not change in lye', () => {
  const { causes } = diagnose('my pink went brown after two weeks');
  expect(causes[0]?.id).not.toBe('alkali-unstable-colourant');
  expect(diagnose('my pink went brown in the pot').causes[0]?.id).toBe('alkali-unstable-colourant');
});
