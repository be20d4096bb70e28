import { parseMix, type WrittenPart } from '../../colour/reading/mix-text.ts';
import { saysPlain } from '../../colour/reading/plain-soap.ts';
import { TYPICAL_BATTER } from '../../dispersion/batter.ts';
import type { Measures } from '../../quantities/units.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { leadingBatter, tailNamed } from '../../text/amounts/leading-amount.ts';
import { excerpt } from '../../text/excerpt.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'batch-portion-unsized': { readonly text: string };
    'batch-portions-many': { readonly most: number };
  }
}

/** A portion as its maker tells that it was made. */
export type PortionTold = {
  /** Undefined where it is called nothing. */
  readonly name: string | undefined;
  /** Of batter. */
  readonly grams: number;
  readonly millilitres: number;
  /** Empty where it stayed plain. */
  readonly parts: readonly WrittenPart[];
};

/** What portions are read by: the maker's spoons, and whether a text is the name of one jar or colourant. */
type ReadBy = { readonly measures: Measures; readonly isName: (text: string) => boolean };

const MOST_PORTIONS = 12;
/** Grams of batter; less is no portion. */
const LEAST = 1;

/**
 * What was made, told without a plan: portions apart by `;`, each its batter and its mix, as in `2 cups violet 1/2 tsp +
 * gold mica pastel; wedge: 1 cup plain`. Throws a Refusal: `batch-portion-unsized`, `batch-portions-many`, or one of the
 * mixes' and amounts' own.
 */
export function portionsMade(text: string, by: ReadBy): readonly PortionTold[] {
  const pieces = text.split(/\s*[;\n]\s*/u).filter(piece => piece !== '');
  if (pieces.length > MOST_PORTIONS) refuse('batch-portions-many', { most: MOST_PORTIONS });
  if (pieces.length === 0) refuse('batch-portion-unsized', { text: excerpt(text) });
  return pieces.map(piece => portionIn(piece, by));
}

function portionIn(piece: string, { measures, isName }: ReadBy): PortionTold {
  const [, name, rest = piece] = /^(\p{L}[\p{L}\p{N} '-]{0,30}):\s*(.+)$/u.exec(piece) ?? [];
  const head = leadingBatter(rest, measures);
  if (!head) return refuse('batch-portion-unsized', { text: excerpt(piece) });
  const { amount } = head;
  const density = TYPICAL_BATTER.gramsPerMillilitre;
  const grams = amount.measure === 'mass' ? amount.grams : amount.millilitres * density;
  if (grams < LEAST) refuse('batch-portion-unsized', { text: excerpt(piece) });
  const mix =
    tailNamed(piece, head.rest, tail => beginsWithName(tail, { measures, isName })) ??
    head.rest.replace(/^(?:(?:of|de)\s+|:\s*)/iu, '').trim();
  const parts = mix === '' || (saysPlain(mix) && !isName(mix)) ? [] : parseMix(mix, measures, isName);
  return { name, grams, millilitres: grams / density, parts };
}

/** Whether the first colour of a mix is called so. */
function beginsWithName(mix: string, { measures, isName }: ReadBy): boolean {
  try {
    return isName(parseMix(mix, measures, isName)[0]?.name ?? '');
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
}
