import { statSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { TALK } from '../../../../src/engine/questions/technique/beside.ts';
import { mattersBy, mattersOf } from '../../../../src/engine/questions/technique/read.ts';
import {
  isMatter,
  isTechnique,
  TECHNIQUE_ORIGINS,
} from '../../../../src/engine/questions/technique/topic.ts';
import weightsFile from '../../../../src/engine/questions/technique/weights.json' with { type: 'json' };
import * as english from '../../../../src/words/en/index.ts';
import * as spanish from '../../../../src/words/es/index.ts';
import { drawn, isDue, WHOLE } from '../../../walk.ts';
import { fitModel } from '../../text/learned/fit.ts';
import { INBOXES } from '../inbox.ts';
import { CLASSES, FIT, lessonOf } from './fit-technique.ts';
import { LISTS, ORDINARY, techniqueTexts } from './texts.ts';

const texts = techniqueTexts();
const LIKELY = 0.3;

test('every text is about a matter that has an answer, or about none', () => {
  expect(texts.filter(({ label }) => !CLASSES.includes(label))).toEqual([]);
});

test('the weights written down know every matter, were fitted on these texts, and are small', () => {
  expect(weightsFile.classes).toEqual(CLASSES);
  expect(weightsFile.origin).toBe(`fitted on ${texts.length} texts`);
  const file = new URL('../../../../src/engine/questions/technique/weights.json', import.meta.url);
  expect(statSync(file).size).toBeLessThan(660_000);
});

test.each([
  ['en', english],
  ['es', spanish],
] as const)(
  '%s: each short question is read as its own matter, and fits on a button',
  (_, { ask, technique }) => {
    const misread = Object.entries(technique.matters).filter(
      ([id, text]) => mattersOf(text).near[0]?.matter !== id,
    );
    expect(misread).toEqual([]);
    const long = Object.values(technique.matters).filter(job => ask.ratherThat({ job }).length > 80);
    expect(long).toEqual([]);
  },
);

describe.skipIf(!WHOLE && !isDue('techniques'))('a writer whose questions were not learned from', () => {
  // Of 100 of a writer's questions about a matter at least so many are answered with it, at most so many with another one, and so many of
  // those about none; those who wrote a list of every matter spread over rarer ones than members ask.
  const LEAST = {
    'home-help': 45,
    'market-garden': 43,
    caretaker: 50,
    porter: 48,
    florist: 50,
    mechanic: 58,
    midlands: 75,
    'dye-works': 72,
    lifeguard: 75,
    barbershop: 68,
    auckland: 55,
    brisbane: 50,
    'dairy-and-workbench': 50,
    'ledger-and-fishing-port': 50,
    'library-and-salon': 50,
    'lorry-and-pharmacy': 50,
    'organ-and-olive-press': 50,
    'schoolroom-and-needle': 50,
    'signalbox-and-kitchen': 50,
    'surgery-and-terrace': 50,
  } as const;
  const MOST_WRONG = 18;
  const MOST_TAKEN = 24;

  test.each(drawn([...LISTS, ...ORDINARY, ...INBOXES], 1, 'technique'))(
    '%s is answered rightly',
    { timeout: 600_000 },
    writer => {
      const model = fitModel(texts.filter(one => one.writer !== writer).map(lessonOf), FIT);
      const told = texts
        .filter(one => one.writer === writer)
        .map(({ text, label }) => ({ label, first: mattersBy(text, model, CLASSES).near[0]! }));
      const asked = told.filter(({ label }) => label !== 'none');
      const said = asked.filter(({ first }) => first.chance >= LIKELY);
      const right = said.filter(({ label, first }) => first.matter === label).length;
      const none = told.filter(({ label }) => label === 'none');
      const taken = none.filter(({ first }) => first.chance >= LIKELY).length;
      console.info(
        `${writer}: ${right} right, ${said.length - right} wrong, ${asked.length - said.length} silent of ${asked.length}; ${taken} taken of ${none.length}`,
      );
      expect((100 * right) / asked.length).toBeGreaterThanOrEqual(LEAST[writer]);
      expect((100 * (said.length - right)) / asked.length).toBeLessThanOrEqual(MOST_WRONG);
      expect((100 * taken) / none.length).toBeLessThanOrEqual(MOST_TAKEN);
    },
  );
});

test('no matter is named after what every object has', () => {
  expect(isTechnique('constructor')).toBe(false);
  expect(isMatter('toString')).toBe(false);
  expect(Object.keys(TECHNIQUE_ORIGINS).length).toBeGreaterThan(80);
});

test('where nothing is asked yet there is no technique', () => {
  expect(TALK.map(isMatter)).toEqual([true, true, true]);
  expect(TALK.map(isTechnique)).toEqual([false, false, false]);
});
