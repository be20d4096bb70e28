import type { BatchNumbers } from './batch-numbers.ts';
import type { CauseId } from './cause.ts';
import type { FindingId } from './findings.ts';
import type { RemedyId } from './remedies.ts';

/** Who says so: the member's words, a measured picture, an answer to a question of ours, or their kept plan. */
export type Witness = 'words' | 'photo' | 'answer' | 'plan';

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
export type Weight = { readonly finding: FindingId; readonly via: Witness; readonly weight: number };

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
  /** True for a cause that may leave free lye. */
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
  /**
   * True where the soap may hold free lye, whichever cause comes first: it bites, or such causes have 15 % or more
   * between them. No cause's advice then has anybody use, cut or mend it.
   */
  readonly doNotUse: boolean;
  /** Chance, 0 to 1, of free lye: that at least one cause is at work that leaves some. */
  readonly freeLye: number;
  /** Somebody's skin or eye hurts: this is said before any cause. */
  readonly firstAid?: 'skin' | 'eye';
  /** Present where the evidence does not carry a verdict. */
  readonly cantTell?: 'nothing-known' | 'too-little' | 'evenly-matched';
  /** Two causes likely to be at work at once, the likelier first, and the chance of both. */
  readonly together?: { readonly causes: readonly [CauseId, CauseId]; readonly probability: number };
  /** What to look at next, most telling first, at most three. */
  readonly lookAt: readonly FindingId[];
  /** What to ask about next: absent when one cause is sure enough or nothing useful is left. */
  readonly ask?: FindingId;
  /** Numbers of this batch, for the remedies. */
  readonly batch: BatchNumbers;
  /** The words were longer than is read; the rest was left out. */
  readonly cut?: true;
};
