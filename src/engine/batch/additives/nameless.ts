import { refuse } from '../../refusal.ts';
import { cut } from '../../text/excerpt.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'additive-without-name': { readonly text: string };
  }
}

/** An amount and nothing else: `3%`, `10 g`. */
const AMOUNT_ALONE = /^\d[\d.,]*\s*(?:%|g|gr|kg|ml|oz|tsp|tbsp|cdta|cda)?$/iu;

/** Throws a Refusal `additive-without-name` for an amount of nothing, such as the scent's in the field of additives. */
export function requireNames(additives: string | undefined): void {
  const pieces = (additives ?? '').split(/[;|\n]|,(?!\d)/u).map(piece => piece.trim());
  const nameless = pieces.find(piece => AMOUNT_ALONE.test(piece));
  if (nameless !== undefined) refuse('additive-without-name', { text: cut(nameless, 40) });
}
