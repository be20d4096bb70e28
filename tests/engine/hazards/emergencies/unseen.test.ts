import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';
import { keptTexts, type LearnedText } from './learned-texts.ts';

type Told = { readonly text: string; readonly id: string };
/** Texts that nothing was learned from; see the note in the file. */
const unseen = JSON.parse(readFileSync(join(import.meta.dirname, 'emergencies-ninth.json'), 'utf8')) as {
  readonly emergencies: readonly Told[];
  readonly 'first-aid-questions': readonly Told[];
  readonly 'no-alarm': readonly { readonly text: string }[];
};
const idsIn = ({ text }: { readonly text: string }) => readEmergencies(text).map(({ id }) => id);

test('of emergencies that it never saw, first aid is shown for nearly all, and the right one', () => {
  const shown = unseen.emergencies.filter(one => idsIn(one).length > 0);
  expect(unseen.emergencies.filter(one => !shown.includes(one)).length).toBeLessThanOrEqual(0);
  const right = unseen.emergencies.filter(one => (idsIn(one) as readonly string[]).includes(one.id));
  expect(right.length).toBeGreaterThanOrEqual(76);
});

test('whoever asks ahead what to do if it happens is told', () => {
  const told = unseen['first-aid-questions'].filter(one =>
    (idsIn(one) as readonly string[]).includes(one.id),
  );
  expect(told.length).toBeGreaterThanOrEqual(22);
});

test('near misses alarm one time in sixteen at most', () => {
  const alarmed = unseen['no-alarm'].filter(one => idsIn(one).length > 0);
  expect(alarmed.map(({ text }) => text).length).toBeLessThanOrEqual(5);
});

/** What eight further writers told, every third text of each kind: nothing was learned from these. */
test('every third text of eight writers is understood as the others of theirs', () => {
  const kept = keptTexts();
  const of = (kind: LearnedText['kind']) => kept.filter(one => one.kind === kind);
  const shown = (all: readonly LearnedText[]) => all.filter(one => idsIn(one).length > 0);
  const right = of('emergency').filter(one => idsIn(one).some(id => id === one.label));
  expect(of('emergency').length).toBe(200);
  expect(shown(of('emergency')).length).toBe(200);
  expect(right.length).toBeGreaterThanOrEqual(194);
  expect(shown(of('question')).length).toBeGreaterThanOrEqual(49);
  // One who wept for joy is the eighth, since what is asked of colours was learned as calm; of 9,400 lines of the sets 54 fewer alarm.
  // Five more of 26 by a fifth, whose calm texts speak of volcanoes, pots thrown out and what a fair swallowed.
  // One more of 27 by a sixth. Two of 26 by a seventh, and of the fifth's one more since that one's emergencies were learned from.
  // Of 26 by an eighth four: pots and bars that their makers call volcano or foam.
  expect(shown(of('calm')).length).toBeLessThanOrEqual(19);
});
