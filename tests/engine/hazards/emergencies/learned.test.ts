import { describe, expect, test } from 'vitest';
import weightsFile from '../../../../src/engine/hazards/emergencies/learned/weights.json' with {
  type: 'json',
};
import { readEmergencies } from '../../../../src/engine/hazards/emergencies/read.ts';
import { leastCpu } from '../../../cpu-time.ts';
import { isDue, WHOLE } from '../../../walk.ts';
import { fitModel, type Lesson } from '../../text/learned/fit.ts';
import { written } from '../../text/learned/written.ts';
import { FIT } from './fit-emergencies.ts';
import { type LearnedText, learnedTexts, lessonOf } from './learned-texts.ts';

const texts = learnedTexts();
let lessons: ReadonlyMap<LearnedText, Lesson> | undefined;
function fitWithout(away: (text: LearnedText) => boolean) {
  const all = lessons ?? new Map(texts.map(text => [text, lessonOf(text)]));
  lessons = all;
  return fitModel(
    texts.filter(text => !away(text)).map(text => all.get(text)!),
    FIT,
  );
}

test('the weights written down were fitted on these texts, and are small', () => {
  expect(weightsFile.origin).toBe(`fitted on ${texts.length} texts`);
  expect(weightsFile.data.length).toBeLessThan(300_000);
});

test.runIf(isDue('emergencies'))(
  'and are those that the texts give',
  () => {
    const { origin: _, ...model } = weightsFile;
    expect(model).toEqual(written(fitWithout(() => false)));
  },
  240_000,
);

/**
 * Figures of texts by writers whose texts were not learned from. The lexicon and its weights owe nothing to the fourth,
 * fifth and later writers; the others they know, so that only what was learned is new to those.
 */
const ALL = [
  { writer: 'first', shown: 1, two: 1, questions: 1, alarms: 0.09 },
  { writer: 'third', shown: 1, two: 1, questions: 0.93, alarms: 0.12 },
  { writer: 'own', shown: 0.97, two: 0.97, questions: 1, alarms: 0.18 },
  { writer: 'reviewed', shown: 0.85, two: 0.9, questions: 1, alarms: 0.17 },
  { writer: 'fourth', shown: 0.97, two: 0.97, questions: 0.8, alarms: 0.04 },
  { writer: 'fifth', shown: 0.85, two: 0.88, questions: 0.75, alarms: 0.06 },
  { writer: 'sixth', shown: 0.93, two: 0.9, questions: 0.8, alarms: 0.28 },
  { writer: 'seventh', shown: 0.97, two: 0.97, questions: 0.7, alarms: 0.04 },
  { writer: 'eighth', shown: 0.97, two: 0.95, questions: 0.95, alarms: 0.1 },
  { writer: 'tenth', shown: 0.97, two: 0.95, questions: 0.8, alarms: 0.12 },
  { writer: 'eleventh', shown: 0.97, two: 0.93, questions: 0.8, alarms: 0.12 },
  { writer: 'twelfth', shown: 0.95, two: 0.93, questions: 0.75, alarms: 0.12 },
  { writer: 'thirteenth', shown: 0.97, two: 0.93, questions: 0.8, alarms: 0.15 },
  { writer: 'fourteenth', shown: 0.97, two: 0.93, questions: 0.75, alarms: 0.2 },
  { writer: 'fifteenth', shown: 0.97, two: 0.93, questions: 0.75, alarms: 0.2 },
  { writer: 'sixteenth', shown: 0.97, two: 0.93, questions: 0.75, alarms: 0.2 },
] as const;
/** A fit takes seconds: the one whose hand is farthest from the others', or all where that is asked. */
const BOUNDS = WHOLE ? ALL : ALL.filter(({ writer }) => writer === 'fifth');
const PLAIN = [
  'beginner-in-a-hurry',
  'market-seller',
  'club-of-five',
  'kept flaws',
  'flaws 0',
  'flaws 1',
  'flaws 2',
  'flaws 3',
];
const PLAIN_ALARMS = 0.02;

/** A model that learned nothing of this writer; in the usual run one that learned of neither of two serves for both. */
const together: ReadonlySet<string> = new Set(['fifth', 'club-of-five']);
let ofNeither: ReturnType<typeof fitModel> | undefined;
function fitWithoutWriter(writer: string) {
  if (WHOLE) return fitWithout(text => text.writer === writer);
  ofNeither ??= fitWithout(text => together.has(text.writer));
  return ofNeither;
}

describe.runIf(isDue('emergencies'))('writers whose texts were not learned from are understood', () => {
  const share = (part: number, whole: number) => (whole === 0 ? 1 : part / whole);

  test.each(BOUNDS)(
    '$writer',
    ({ writer, ...bounds }) => {
      const model = fitWithoutWriter(writer);
      const read = texts
        .filter(text => text.writer === writer)
        .map(text => ({ ...text, ids: readEmergencies(text.text, model).map(({ id }) => id) }));
      const of = (kind: LearnedText['kind']) => read.filter(one => one.kind === kind);
      const shown = (all: typeof read) => all.filter(({ ids }) => ids.length > 0);
      const hurt = of('emergency');
      const helped = shown(hurt);
      const first = helped.filter(({ ids, label }) => ids[0] === label).length;
      const two = helped.filter(({ ids, label }) => ids.slice(0, 2).some(id => id === label)).length;
      const asked = shown(of('question')).length;
      const alarms = shown(of('calm')).length;
      console.info(
        `${writer} left out: shown ${helped.length} of ${hurt.length}, right first ${first}, among two ${two}, questions ${asked} of ${of('question').length}, alarms ${alarms} of ${of('calm').length}`,
      );
      expect(share(helped.length, hurt.length)).toBeGreaterThanOrEqual(bounds.shown);
      expect(share(two, helped.length)).toBeGreaterThanOrEqual(bounds.two);
      expect(share(asked, of('question').length)).toBeGreaterThanOrEqual(bounds.questions);
      expect(share(alarms, of('calm').length)).toBeLessThanOrEqual(bounds.alarms);
    },
    300_000,
  );

  test.each(WHOLE ? PLAIN : ['club-of-five'])(
    'plain questions and flaws: %s',
    writer => {
      const model = fitWithoutWriter(writer);
      const plain = texts.filter(text => text.writer === writer);
      const alarmed = plain.filter(({ text }) => readEmergencies(text, model).length > 0);
      console.info(`${writer} left out: alarms ${alarmed.length} of ${plain.length}`);
      for (const { text } of alarmed) console.info(`  ${text}`);
      expect(alarmed.length / plain.length).toBeLessThanOrEqual(PLAIN_ALARMS);
    },
    300_000,
  );
});

test('no plain question, flaw or name that was learned from shows first aid', () => {
  const alarmed = texts.filter(({ kind, text }) => kind === 'plain' && readEmergencies(text).length > 0);
  expect(alarmed.map(({ text }) => text)).toEqual([]);
});

test('of what was learned from, all is shown and nearly no calm text alarms', () => {
  const shown = (kind: LearnedText['kind']) =>
    texts.filter(one => one.kind === kind).map(({ text }) => readEmergencies(text).length > 0);
  const share = (all: readonly boolean[]) => all.filter(Boolean).length / all.length;
  expect(share(shown('emergency'))).toBeGreaterThan(0.997);
  expect(share(shown('question'))).toBeGreaterThan(0.97);
  // Under one in a hundred before a fourth hand's near misses were learned from, 1.02 % with them, 1.13 % with a fifth's, 1.17 % with a seventh's.
  expect(share(shown('calm'))).toBeLessThan(0.012);
});

// Half of it on a quiet machine; on a crowded one others empty the caches.
test('five thousand characters are read in under 40 ms of processor time', async () => {
  const long = texts
    .map(({ text }) => text)
    .join(' ')
    .slice(0, 5_000);
  expect(await leastCpu(() => readEmergencies(long), 40, 25)).toBeLessThan(40);
});
