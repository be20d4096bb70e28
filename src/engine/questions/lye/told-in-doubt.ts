import { refuse } from '../../refusal.ts';
import { eachPieceIn } from './recipe-line/doubts/amounts/each-piece.ts';
import { superfatUnderOne } from './recipe-line/doubts/amounts/superfat-under-one.ts';
import { bothLyesIn } from './recipe-line/doubts/both-lyes.ts';
import { cocoaNamedIn } from './recipe-line/doubts/cocoa-named.ts';
import { leftOpenIn } from './recipe-line/doubts/left-open.ts';
import { lyeDampIn } from './recipe-line/doubts/lye-damp.ts';
import { takenOutIn } from './recipe-line/doubts/taken-out.ts';
import { vesselWeighedIn } from './recipe-line/doubts/vessel-weighed.ts';
import { weightDeniedIn } from './recipe-line/doubts/weight-denied.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** A vessel whose own weight may be in those of the oils. */
    'vessel-weighed': { text: string };
    /** Two alkalis whose shares are not told. */
    'lye-shares-untold': { text: string };
    /** Bare cocoa among oils. */
    'cocoa-which': { text: string };
    /** Lye that drew water from the air. */
    'lye-damp': { text: string };
    /** A superfat under one percent, and the percent that it is as a share of one. */
    'superfat-under-one': { text: string; percent: number | undefined };
  }
}

const LONGEST = 60;

/**
 * Throws what asks for a recipe of which something told beside it leaves open what is in the pot, wherever it stands and whatever is said
 * with it: `oil-lost` where some was taken out again, `vessel-weighed`, `lye-shares-untold`, `cocoa-which`, `superfat-under-one`, `lye-damp`,
 * `recipe-corrected` where a weight is denied, `recipe-words` where the recipe is left open, and `recipe-scaled` where the oils are those of one
 * bar of several. Takes what `plainWords` gives with its clauses. Pure.
 */
export function refuseToldInDoubt(plain: string): void {
  const out = takenOutIn(plain);
  if (out !== undefined) refuse('oil-lost', { text: out.slice(0, LONGEST) });
  const vessel = vesselWeighedIn(plain);
  if (vessel !== undefined) refuse('vessel-weighed', { text: vessel.slice(0, LONGEST) });
  const both = bothLyesIn(plain);
  if (both !== undefined) refuse('lye-shares-untold', { text: both });
  const cocoa = cocoaNamedIn(plain);
  if (cocoa !== undefined) refuse('cocoa-which', { text: cocoa.slice(0, LONGEST) });
  const under = superfatUnderOne(plain);
  if (under !== undefined) refuse('superfat-under-one', under);
  const damp = lyeDampIn(plain);
  if (damp !== undefined) refuse('lye-damp', { text: damp });
  const denied = weightDeniedIn(plain);
  if (denied !== undefined) refuse('recipe-corrected', { text: denied.slice(0, LONGEST) });
  const open = leftOpenIn(plain);
  if (open !== undefined) refuse('recipe-words', { text: open.slice(-LONGEST) });
  const each = eachPieceIn(plain);
  if (each !== undefined) refuse('recipe-scaled', { text: each.trim() });
}
