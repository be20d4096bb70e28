import { z } from 'zod';
import calibrationFile from '../model/calibration.json' with { type: 'json' };
import { TAUGHT_IDS, type TaughtId } from './ids.ts';

/**
 * How the network's answers are read, measured on renderers that the network had not been trained on (model/CARD.md).
 * A chance is 1 / (1 + exp(-(slope x logit + offset))). From `seen` on it is called seen (1: never), from `possibly` on possibly;
 * the ratios are how much oftener, at the least, that answer was given where the finding was drawn than where it was not.
 */
const reading = z.strictObject({
  slope: z.number().positive(),
  offset: z.number(),
  possibly: z.number().min(0).max(1),
  seen: z.number().min(0).max(1),
  ratios: z.strictObject({ possibly: z.number().positive(), seen: z.number().positive() }),
});

const otherAnswer = z.strictObject({ slope: z.number().positive(), offset: z.number(), from: z.number() });

const calibration = z.strictObject({
  noSoap: otherAnswer,
  poor: otherAnswer,
  findings: z.record(z.string(), reading),
});

type Calibration = z.output<typeof calibration>;

/** Reads what training/calibrate.py wrote; throws where it is something else. */
export const calibrationOf = (written: unknown): Calibration => calibration.parse(written);

const SET = calibrationOf(calibrationFile);

export type Answer = 'seen' | 'possibly' | 'not seen';

/** What is said of one finding: the answer, its calibrated chance, and how much that weighs as evidence. */
export type Answered = {
  readonly id: TaughtId;
  readonly answer: Answer;
  readonly chance: number;
  readonly ratio: number;
};

const chanceOf = (slope: number, offset: number, logit: number): number =>
  1 / (1 + Math.exp(-(slope * logit + offset)));

/** Reads one logit a finding, in the order of {@link TAUGHT_IDS}. */
export function answered(logits: readonly number[], by: Calibration = SET): readonly Answered[] {
  return TAUGHT_IDS.map((id, i) => {
    const { slope, offset, seen, possibly, ratios } = readingOf(id, by);
    const chance = chanceOf(slope, offset, logits[i] ?? Number.NEGATIVE_INFINITY);
    // A threshold of 1 is none, also where a chance is rounded up to 1.
    if (seen < 1 && chance >= seen) return { id, answer: 'seen', chance, ratio: ratios.seen };
    if (chance >= possibly) return { id, answer: 'possibly', chance, ratio: ratios.possibly };
    return { id, answer: 'not seen', chance, ratio: 1 };
  });
}

/** The chance that there is no soap in the picture is high enough to say so. */
export const showsNoSoap = (logit: number, { noSoap }: Calibration = SET): boolean =>
  chanceOf(noSoap.slope, noSoap.offset, logit) >= noSoap.from;

/** The chance that nothing can be read in the picture, for blur, night or grain, is high enough to say so. */
export const isTooPoor = (logit: number, { poor }: Calibration = SET): boolean =>
  chanceOf(poor.slope, poor.offset, logit) >= poor.from;

function readingOf(id: TaughtId, { findings }: Calibration): z.output<typeof reading> {
  const found = findings[id];
  if (!found) throw new Error(`calibration.json lacks ${id}`);
  return found;
}
