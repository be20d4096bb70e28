import { isLyeMatter } from '../../../src/engine/questions/lye/topics/lye-matter.ts';
import { featuresOf } from '../../../src/engine/questions/lye/topics/nearest/features.ts';
import { LYE_TOPIC_ORIGINS } from '../../../src/engine/questions/lye/topics/topic.ts';
import type { Fit, Lesson } from '../text/learned/fit.ts';
import type { MatterText } from './matter-texts.ts';

/** What a question may be about; `none` where it is none of the matters. */
export const MATTERS: readonly string[] = [...Object.keys(LYE_TOPIC_ORIGINS).filter(isLyeMatter), 'none'];

/** Letters of base64 that the weights take at most. */
const LARGEST = 380_000;
/** Bytes of a feature beside its weights: its hash and its rarity. */
const BESIDE = 4;

export const FIT: Fit = {
  classes: MATTERS.length,
  trust: 20,
  most: Math.floor((LARGEST * 3) / 4 / (BESIDE + MATTERS.length)),
  least: [2, 2, 3, 3],
};

/** What others wrote counts for more than what we thought of. */
const WEIGHTS = { own: 1, others: 1.5, none: 1 };

export const lessonOf = ({ text, label, writer }: MatterText): Lesson => ({
  features: featuresOf(text),
  label: MATTERS.indexOf(label),
  weight: label === 'none' ? WEIGHTS.none : writer === 'own' ? WEIGHTS.own : WEIGHTS.others,
});
