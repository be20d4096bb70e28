import type { CauseId } from '../cause.ts';
import type { FindingId } from '../findings.ts';
import type { Level } from '../levels.ts';

/** The findings a cause brings with it, by how often. */
export type Likelihoods = { readonly [L in Level]?: readonly FindingId[] };

export type LikelihoodTable = { readonly [Id in CauseId]?: Likelihoods };
