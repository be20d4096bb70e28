import { refuse } from '../../refusal.ts';
import { carbonateAsLye, hydroxideUnknown } from './recipe-line/doubts/not-the-lye.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** A hydroxide of which nobody knows whether it is sodium's or potassium's. */
    'lye-which-unknown': { text: string };
  }
}

/**
 * Throws `lye-not-hydroxide` where a carbonate is the alkali, and `lye-which-unknown` where nobody knows
 * which hydroxide stands there. Takes what `plainWords` gives. Pure.
 */
export function refuseOtherAlkali(plain: string): void {
  const carbonate = carbonateAsLye(plain);
  if (carbonate !== undefined) refuse('lye-not-hydroxide', { text: carbonate });
  const unknown = hydroxideUnknown(plain);
  if (unknown !== undefined) refuse('lye-which-unknown', { text: unknown });
}
