import { refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import { fold } from '../../text/fold.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** Bleach or hydrogen peroxide. */
    'liquid-is-bleach': { text: string };
  }
}

const BLEACH =
  /\b(?:bleach|chlorine|hypochlorite|peroxide|lejia|cloro|lavandina|hipoclorito|peroxido|agua oxigenada)\b/u;

/** Throws a Refusal `liquid-is-bleach` where `name` is bleach or peroxide; `text` is what the refusal quotes. */
export function refuseBleach(name: string, text: string = name): void {
  if (BLEACH.test(fold(name))) refuse('liquid-is-bleach', { text: excerpt(text) });
}
