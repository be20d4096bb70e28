import { describe, expect, test } from 'vitest';
import { courtesyIn } from '../../../../src/engine/questions/fields/courtesy.ts';
import { tellsOfMakingSoap } from '../../../../src/engine/questions/fields/other-field.ts';
import {
  heldWhateverIsMeant,
  isBlindDiagnosis,
  isHardlyDoubt,
  isUnsureNearLye,
} from '../../../../src/engine/questions/fields/unsure.ts';
import { type Reading, readQuestion } from '../../../../src/engine/questions/read.ts';

/* What is said where nothing, or hardly anything, was understood. The words are our own. */

describe('what always holds is said of what may hurt, and not of what is calm', () => {
  test.each([
    ['the lye thing', 'unsure'],
    ['is it safe', 'unsure'],
    ['me pica la piel', 'unsure'],
    ['soap', 'unsure'],
    ['soap for a gift', undefined],
    ['the curtains', undefined],
  ])('%s', (question, held) => expect(heldWhateverIsMeant(question)).toBe(held));
});

describe('near lye nothing is understood', () => {
  test.each([
    ['four cups of batter it takes', true],
    ['the lye does a thing', true],
    ['what does lye do to a swirl colour', false],
    ['the curtains are long', false],
  ])('%s', (question, is) => expect(isUnsureNearLye(question, readQuestion(question))).toBe(is));
});

const reading = (job: Reading['job'], score: number): Reading => ({
  job,
  score,
  command: job === 'doubt' ? 'help' : 'diagnose',
  given: {},
  missing: [],
});

test('a doubt near lye is one only where it is surely meant', () => {
  expect(isHardlyDoubt(reading('doubt', 0.79), 'that lye figure is off')).toBe(true);
  expect(isHardlyDoubt(reading('doubt', 0.8), 'that lye figure is off')).toBe(false);
  expect(isHardlyDoubt(reading('doubt', 0.5), 'that figure is off')).toBe(false);
});

test('causes are told of a flaw that was told', () => {
  const isBlind = (question: string) =>
    isBlindDiagnosis(reading('diagnose', 0.9), question, readQuestion(question));
  expect(isBlind('tops ugly how fix')).toBe(true);
  expect(isBlind('went green')).toBe(false);
  expect(isBlind('white powder on top of the bars')).toBe(false);
});

describe('a courtesy is answered as what it is', () => {
  test.each([
    ['sorry wrong group', 'noHarm'],
    ['can you see photos', 'pictures'],
    ['buenas, hasta mañana', 'night'],
    ['thanks love', 'welcome'],
    ['finally done it, my first swirl', 'wellDone'],
    ['anybody around', 'here'],
    ['lovely day', 'any'],
  ])('%s', (text, kind) => expect(courtesyIn(text)).toBe(kind));
});

test('who helps at making soap is near its lye', () => {
  expect(tellsOfMakingSoap('my niece is coming to make soap')).toBe(true);
  expect(tellsOfMakingSoap('mi sobrina va a hacer jabón')).toBe(true);
  expect(tellsOfMakingSoap('my niece likes soap')).toBe(false);
});
