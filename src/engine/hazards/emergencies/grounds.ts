import type { Mentioned } from '../../flaws/reading/lexicon-reader.ts';
import type { Reading } from '../../flaws/reading/polarity.ts';
import type { Token } from '../../text/tokens.ts';
import type { EmergencyId } from './emergency.ts';

/** What {@link accountsOf} weighs. */
export type Grounds = {
  readonly tokens: readonly Token[];
  readonly mentions: readonly Mentioned<string>[];
  readonly reading: Reading;
  readonly isPast: readonly boolean[];
  readonly told: readonly { readonly id: EmergencyId; readonly from: number }[];
};
