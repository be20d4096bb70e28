import type { ReasonId } from '../../../src/engine/refusal.ts';

/**
 * A line as it is typed; before it may stand who and when: `@ines` another member, `+40` so many minutes later, `^` another group, `~` no
 * steward. `/fill FORM` fills the form before it, `/press 2` presses the second button so far, `BAR.jpg` is one of the test's files.
 */
type Lines = string | readonly string[];

/** What is said, by language where the question itself is in one, and which refusal the last line meets; with a part of its sentence in each language. */
export type RefusedCase = readonly [
  asked: Lines | { readonly en: Lines; readonly es: Lines },
  id: ReasonId,
  english: string,
  spanish: string,
];
/** Cases by their subject. */
export type RefusedCases = Readonly<Record<string, readonly RefusedCase[]>>;

export const POURED = '/batch poured made:"2 cups ultramarine blue 1/2 tsp; 1 cup plain" name:Tide';
export const JAR = '/shelf add item:Dusk amount:"50 g" colourant:"ultramarine blue"';
export const OPEN = '/challenge open title:"Blue hour" entries-until:"in 2 days" votes-until:"in 4 days"';
export const ENTER = '/challenge enter title:Tide photo:BAR.jpg colourants:"ultramarine blue"';
export const PLAN = '/plan oils:"olive 60%, coconut 40%" size:"500 g oils"';
