import type { CauseId } from './cause.ts';
import type { FindingId } from './findings.ts';
import type { RemedyId } from './remedies.ts';

/** Who says so: the member's words, a measured picture, or the answer to a question of ours. */
export type Witness = 'words' | 'photo' | 'answer';

/**
 * One thing seen, felt or done, as soft evidence (Pearl's virtual evidence).
 * `probability` is the chance, 0 to 1, that the finding is truly there given what the witness said:
 * above one half speaks for it, below speaks against it, one half says nothing.
 */
export type Evidence = {
  readonly finding: FindingId;
  readonly probability: number;
  readonly via: Witness;
  /** The member's own words it came from, or the witness itself where there are none. */
  readonly from: string;
};

/** How much one finding moved a cause: natural logarithm of a likelihood ratio, positive in its favour. */
export type Weight = { readonly finding: FindingId; readonly weight: number };

export type RankedCause = {
  readonly id: CauseId;
  /** Chance, 0 to 1, that this cause is at work. Two causes may hold at once, so these may sum past 1. */
  readonly probability: number;
  /** Strongest first. */
  readonly because: readonly Weight[];
  readonly against: readonly Weight[];
  /** How the whole wording leans, beside the findings: natural log of a likelihood ratio, small. */
  readonly wording: number;
  readonly thisBatch: readonly RemedyId[];
  readonly nextBatch: readonly RemedyId[];
  /** True where the soap must not be used as it is (lye in unknown excess). */
  readonly doNotUse: boolean;
};

export type ReadFinding = {
  readonly id: FindingId;
  readonly from: string;
  readonly via: Witness;
  /** False where the member said it is not there. */
  readonly present: boolean;
  readonly probability: number;
};

export type Diagnosis = {
  readonly causes: readonly RankedCause[];
  readonly findings: readonly ReadFinding[];
  /** Somebody's skin or eye hurts: this is said before any cause. */
  readonly firstAid?: 'skin' | 'eye';
  /** Present where the evidence does not carry a verdict. */
  readonly cantTell?: 'nothing-known' | 'too-little' | 'evenly-matched';
  /** What to look at next, most telling first, at most three. */
  readonly lookAt: readonly FindingId[];
  /** The words were longer than is read; the rest was left out. */
  readonly cut?: true;
};
