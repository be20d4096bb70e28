import { expect } from 'vitest';

/** A figure of a bench and what it is held to. Ratios have the unit "times". */
export type Figure = {
  readonly what: string;
  readonly seen: number;
  readonly unit: string;
} & ({ readonly most: number } | { readonly least: number });

declare module 'vitest' {
  interface TaskMeta {
    figures?: readonly Figure[];
  }
}

/** Notes figures for the table that ends the run, then holds each to its bound. Once a test. */
export function hold(
  task: { readonly meta: { figures?: readonly Figure[] } },
  figures: readonly Figure[],
): void {
  task.meta.figures = figures;
  expect(figures.filter(figure => !holds(figure))).toEqual([]);
}

/** Whether a figure keeps its bound; what is no number keeps none. */
export const holds = (figure: Figure): boolean =>
  'most' in figure ? figure.seen <= figure.most : figure.seen >= figure.least;

/** What tinybench reports of one run, as far as a ratio needs it. */
type Timed = { readonly throughput: { readonly mean: number } };

/** How many times as many runs a second the first does, `each` counting the work in one run of either. */
export const timesAsMany = (ours: Timed, theirs: Timed, each = { ours: 1, theirs: 1 }): number =>
  (ours.throughput.mean * each.ours) / (theirs.throughput.mean * each.theirs);
