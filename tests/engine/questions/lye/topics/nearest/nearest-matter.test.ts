import { statSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  type Nearest,
  nearestBy,
  nearestMatters,
} from '../../../../../../src/engine/questions/lye/topics/nearest/read.ts';
import weightsFile from '../../../../../../src/engine/questions/lye/topics/nearest/weights.json' with {
  type: 'json',
};
import { lyeTopicIn } from '../../../../../../src/engine/questions/lye/topics/topics.ts';
import { unaccented } from '../../../../../../src/engine/text/unaccented.ts';
import * as english from '../../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../../src/words/es/index.ts';
import { isDue, WHOLE } from '../../../../../walk.ts';
import { fitModel } from '../../../../text/learned/fit.ts';
import { FIT, lessonOf, MATTERS } from '../../../fit-matters.ts';
import { isLearned, KEPT, type MatterText, matterTexts, REVIEWERS } from '../../../matter-texts.ts';

const texts = matterTexts();

/** How a reader did: the right matter said, another one, the right one among those to choose from, or nothing of use. */
const toldOf = (label: string, { sure, offered }: Nearest) =>
  sure
    ? sure.topic === label
      ? 'right'
      : 'wrong'
    : offered.some(topic => topic === label)
      ? 'asked'
      : 'silent';

test('every text is about a matter that has an answer, or about none', () => {
  expect(texts.filter(({ label }) => !MATTERS.includes(label))).toEqual([]);
});

test('the weights written down know every matter, were fitted on these texts, and are small', () => {
  expect(weightsFile.classes).toEqual(MATTERS);
  expect(weightsFile.origin).toBe(`fitted on ${texts.filter(isLearned).length} texts`);
  const file = new URL(
    '../../../../../../src/engine/questions/lye/topics/nearest/weights.json',
    import.meta.url,
  );
  expect(statSync(file).size).toBeLessThan(390_000);
  const asked = texts.filter(({ label, writer }) => label !== 'none' && writer !== 'own');
  const wrong = asked.filter(({ label, text }) => toldOf(label, nearestMatters(text)) === 'wrong');
  expect(wrong.map(({ text }) => text)).toEqual([]);
});

test.each([
  ['en', english],
  ['es', spanish],
] as const)(
  '%s: each short question is read as its own matter, and fits on a button',
  (_, { ask, lyeQuestions }) => {
    const misread = Object.entries(lyeQuestions.matters).filter(
      ([topic, text]) => toldOf(topic, nearestMatters(text)) !== 'right',
    );
    expect(misread).toEqual([]);
    const long = Object.values(lyeQuestions.matters).filter(job => ask.ratherThat({ job }).length > 80);
    expect(long).toEqual([]);
  },
);

test('what two makers ask of other things, none of which was learned from, is taken for no matter of lye', () => {
  const kept = texts.filter(({ writer }) => KEPT.some(one => one === writer));
  expect(kept.length).toBeGreaterThan(200);
  const taken = kept.filter(({ text }) => nearestMatters(text).sure);
  const offered = kept.filter(({ text }) => nearestMatters(text).offered.length > 0);
  console.info(`kept: ${taken.length} taken, ${offered.length} offered of ${kept.length}`);
  for (const { text } of taken) console.info(`  ${nearestMatters(text).sure?.topic}: ${text}`);
  expect(taken.length).toBeLessThanOrEqual(4);
  expect(offered.length).toBeLessThanOrEqual(20);
});

const plain = (text: string) =>
  unaccented(text)
    .replace(/[^a-z0-9]+/gu, ' ')
    .trim();

/**
 * At least so many of a reviewer's questions about a matter right, and at most so many wrong, where patterns find none; the
 * last column bounds the lines about no matter that are taken for one. Our own phrasings were written by somebody who
 * knew these questions, so a new writer does somewhat worse.
 */
const ALL = [
  { writer: 'chemist', right: 0, wrong: 1, taken: 4 },
  { writer: 'second-maker', right: 0, wrong: 1, taken: 4 },
  { writer: 'least-prepared', right: 0, wrong: 1, taken: 8 },
  { writer: 'fourth-reviewer', right: 21, wrong: 3, taken: 20 },
  { writer: 'pharmacist', right: 20, wrong: 2, taken: 1 },
  { writer: 'four-at-the-dairy', right: 10, wrong: 2, taken: 1 },
] as const;
const BOUNDS = WHOLE ? ALL : ALL.filter(({ writer }) => writer === 'fourth-reviewer');

/** What is told of each question of one writer by what all the others taught. */
function readUntaught(writer: string) {
  const asked = texts.filter(one => one.writer === writer);
  const same = new Set(asked.map(({ text }) => plain(text)));
  const taught = (one: MatterText) => isLearned(one) && one.writer !== writer && !same.has(plain(one.text));
  const model = fitModel(texts.filter(taught).map(lessonOf), FIT);
  return asked.map(one => ({
    ...one,
    pattern: lyeTopicIn(one.text),
    nearest: nearestBy(one.text, model, MATTERS),
  }));
}

describe.runIf(isDue('matters'))('a writer whose questions were not learned from is understood', () => {
  test('the writers are the reviewers', () => {
    expect(ALL.map(({ writer }) => writer)).toEqual(REVIEWERS);
  });

  test.each(BOUNDS)(
    '$writer',
    ({ writer, right, wrong, taken }) => {
      const read = readUntaught(writer);
      const matters = read.filter(({ label }) => label !== 'none');
      const unmet = matters.filter(({ pattern }) => pattern === undefined);
      const tally = (of: typeof read, told: string) =>
        of.filter(({ label, nearest }) => toldOf(label, nearest) === told).length;
      const met = matters.filter(({ pattern }) => pattern !== undefined);
      const metRight = met.filter(({ pattern, label }) => pattern === label).length;
      console.info(
        `${writer}: of ${matters.length} by patterns right ${metRight}, wrong ${met.length - metRight}, silent ${unmet.length}`,
      );
      for (const [name, of] of [
        ['of these silent', unmet],
        ['of all, without patterns', matters],
      ] as const)
        console.info(
          `  ${name}: right ${tally(of, 'right')}, wrong ${tally(of, 'wrong')}, asked ${tally(of, 'asked')}, silent ${tally(of, 'silent')}`,
        );
      const none = read.filter(({ label, pattern }) => label === 'none' && pattern === undefined);
      const takenOf = none.filter(({ nearest }) => nearest.sure);
      console.info(`  of ${none.length} about no matter: taken ${takenOf.length}`);
      for (const { text, nearest, label } of [
        ...takenOf,
        ...unmet.filter(one => toldOf(one.label, one.nearest) === 'wrong'),
      ])
        console.info(`    ${nearest.sure?.topic} (${nearest.sure?.chance.toFixed(2)}) for ${label}: ${text}`);
      expect(tally(unmet, 'right')).toBeGreaterThanOrEqual(right);
      expect(tally(unmet, 'wrong')).toBeLessThanOrEqual(wrong);
      expect(takenOf.length).toBeLessThanOrEqual(taken);
    },
    300_000,
  );
});
