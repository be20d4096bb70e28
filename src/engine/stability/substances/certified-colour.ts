import type { Confidence } from '../report.ts';
import type { Substance } from './substance.ts';

/** A colour that the US certifies batch by batch; it is sold as a dye and as a lake. */
export type CertifiedColour = {
  /** `red-40`. */
  readonly key: string;
  readonly ci: string;
  /** Its section of 21 CFR. */
  readonly us?: string;
  /** Of the dye. */
  readonly alkali: Substance['alkali'];
  /** `fades-slowly` unless said. */
  readonly light?: 'holds' | 'fades';
  /** `medium` unless said. */
  readonly confidence?: Confidence;
  /** Further names, parted by semicolons. */
  readonly names: string;
  readonly e?: string;
  /** Catalogue entries with the dose of the dye and of the lake. */
  readonly likeDye?: string;
  readonly likeLake?: string;
};
