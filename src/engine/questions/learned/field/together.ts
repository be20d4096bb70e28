import WRITTEN from './together.json' with { type: 'json' };

/** What tells of another field: three chances, 0 to 1, and whether words of a craft or a field's own name stand there, and no word of soap. */
export type Signs = {
  /** By the judge of the field. */
  readonly elsewhere: number;
  /** By the judge of jobs: that none of ours is asked, and the likeliest of them. */
  readonly noJob: number;
  readonly job: number;
  readonly craft: boolean;
  readonly named: boolean;
};

/** Chances nearer to none and all than this tell nothing more. */
const NEAREST = 1e-6;
const logOdds = (chance: number): number =>
  Math.log(Math.max(chance, NEAREST) / Math.max(1 - chance, NEAREST));

/**
 * The terms of the sum that {@link chanceOfBoth} weighs, in the order of its weights. Pure.
 */
export const termsOf = ({ elsewhere, noJob, job, craft, named }: Signs): readonly number[] => [
  logOdds(elsewhere),
  logOdds(noJob),
  logOdds(job),
  craft ? 1 : 0,
  named ? 1 : 0,
];

const WEIGHTS = [WRITTEN.elsewhere, WRITTEN.noJob, WRITTEN.job, WRITTEN.craft, WRITTEN.named] as const;

/**
 * How likely a question is about somebody else's field, 0 to 1, by both judges together: a logistic regression over their log odds and what
 * is plain in its words. Pure.
 */
export function chanceOfBoth(signs: Signs): number {
  const sum = termsOf(signs).reduce((all, term, at) => all + term * WEIGHTS[at]!, WRITTEN.intercept);
  return 1 / (1 + Math.exp(-sum));
}
