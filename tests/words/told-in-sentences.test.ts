import { describe, expect, test } from 'vitest';
import { LANGUAGES } from '../../src/engine/language.ts';
import type { MatterTold } from '../../src/engine/questions/leaning/parts/part-of.ts';
import { wordsIn } from '../../src/words/index.ts';
import { oneText } from '../../src/words/sentence.ts';

/* What is told to a matter is a list of sentences, so that one of them may be said alone, and none is looked for. */

const mattersIn = (language: (typeof LANGUAGES)[number]): readonly (readonly [string, MatterTold])[] => {
  const { technique, lyeQuestions } = wordsIn(language);
  return [technique.topics, technique.named, lyeQuestions.topics].flatMap(part => Object.entries(part));
};

/** A sentence ends and another one begins. */
const TWO_SENTENCES = /[.!?] [\p{Lu}/¿«“]/u;

describe.each(LANGUAGES)('what is told to a matter: %s', language => {
  const matters = mattersIn(language);
  const sentences = matters.flatMap(([, { answer, why }]) => [...answer, ...why]);

  test('there are hundreds of matters, each with what to do and what stands behind it', () => {
    expect(matters.length).toBeGreaterThan(400);
    expect(matters.filter(([, { answer, why }]) => answer.length === 0 || why.length === 0)).toEqual([]);
  });

  test('one item is one sentence', () => {
    expect(sentences.filter(one => TWO_SENTENCES.test(one))).toEqual([]);
  });

  test('each ends as a sentence does, or with a line to type, and none begins or ends with a space', () => {
    const isBegun = (one: string) => !/[.!?”»)]$|\/[a-z-]+(?: [a-z]+:.*)?$/u.test(one);
    expect(sentences.filter(one => isBegun(one) || one.trim() !== one)).toEqual([]);
  });
});

test('sentences are one text where they are shown', () => {
  expect(oneText(['Gloves on.', 'Press it in.'])).toBe('Gloves on. Press it in.');
});
