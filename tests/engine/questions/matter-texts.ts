import { join } from 'node:path';
import { lyeMatters as english } from '../../../src/words/en/lye/lye-matters.ts';
import { lyeMatters as spanish } from '../../../src/words/es/lye/lye-matters.ts';
import { DOZENS, FIELD_WRITERS, jobTexts, OF_FIELDS, ORDINARY_WRITERS } from './job-texts.ts';
import { type LabelledLine, labelledLines } from './labelled-lines.ts';

/** A question with what it is about, a matter of lye or `none`. */
export type MatterText = LabelledLine;

/** Who asked of handling lye without having seen what finds it: one is left out at a time. */
export const REVIEWERS = [
  'chemist',
  'second-maker',
  'least-prepared',
  'fourth-reviewer',
  'pharmacist',
  'four-at-the-dairy',
] as const;

const folder = join(import.meta.dirname, 'lye-matters');

/**
 * What is asked beside lye, by writers of other things; these two are kept to try the model on. What only looks foreign may be
 * about lye all the same, and so may the lines of dozens.
 */
export const KEPT = ['six-voices', 'tablet-and-hall'] as const;

const elsewhere = (): readonly MatterText[] =>
  jobTexts()
    .filter(
      ({ label, writer }) =>
        label !== 'inside' &&
        ![DOZENS, OF_FIELDS, FIELD_WRITERS, ORDINARY_WRITERS].some(set => set.has(writer)),
    )
    .filter(({ part, label }) => part !== 'own' || label !== 'outside')
    // What is asked of lye without two figures is no recipe, and may be any of the matters.
    .filter(({ text, label }) => label !== 'lye' || (text.match(/\d+/gu) ?? []).length > 1)
    .filter(
      ({ part, label }, at) =>
        (part !== 'flaw' || at % 4 === 0) && (part !== 'own' || (at % 12 === 0 && label !== 'lye')),
    )
    .map(({ text, writer }) => ({
      text,
      label: 'none',
      writer: writer === 'own' ? 'own-elsewhere' : writer,
    }));

const ofWords = (): readonly MatterText[] =>
  [english, spanish].flatMap(matters =>
    Object.entries(matters).map(([label, text]) => ({ text, label, writer: 'own' })),
  );

/** Every text, those that are kept out too. */
export const matterTexts = (): readonly MatterText[] => [
  ...labelledLines(folder),
  ...ofWords(),
  ...elsewhere(),
];

export const isLearned = ({ writer }: MatterText) => !KEPT.some(kept => kept === writer);
