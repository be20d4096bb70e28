import { LED_TO, TALK } from '../../../../src/engine/questions/technique/beside.ts';
import { featuresOf } from '../../../../src/engine/questions/technique/features.ts';
import { TECHNIQUE_ORIGINS } from '../../../../src/engine/questions/technique/topic.ts';
import type { Fit, Lesson } from '../../text/learned/fit.ts';
import type { TechniqueText } from './texts.ts';

/** What a question may be about; `none` where it asks for no matter. */
export const CLASSES: readonly string[] = [
  ...Object.keys(TECHNIQUE_ORIGINS),
  ...Object.keys(LED_TO),
  ...TALK,
  'none',
];

/** Letters of base64 that the weights take at most. */
const LARGEST = 650_000;
/** Bytes of a feature beside its weights: its hash and its rarity. */
const BESIDE = 4;

export const FIT: Fit = {
  classes: CLASSES.length,
  trust: 20,
  most: Math.floor((LARGEST * 3) / 4 / (BESIDE + CLASSES.length)),
  least: [2, 2, 3, 2],
};

/** Questions of other sets stand beside ours far oftener than members ask them. */
const ELSEWHERE = 0.3;

export const lessonOf = ({ text, label, writer }: TechniqueText): Lesson => ({
  features: featuresOf(text),
  label: CLASSES.indexOf(label),
  weight: writer === 'elsewhere' ? ELSEWHERE : 1,
});
