import { interval, stratified } from './sample.ts';

/** What a room reached; `all`, where a sample shows it: of how many changes it was drawn. */
export type Score = { readonly noticed: number; readonly of: number; readonly all?: number };

/** What the whole engine reached, percent, and where that lies 95 times in 100; `of` were tried of `all` changes. */
export type Overall = {
  readonly percent: number;
  readonly low: number;
  readonly high: number;
  readonly of: number;
  readonly all: number;
};

/** Percent of all changes of the engine that its tests must notice. */
export const ALL_AT_LEAST = 80;

/** Down to a tenth: nothing is told as more than it was. */
export const percentOf = (share: number): number => Math.floor(1000 * share) / 10;

/** The share of the whole engine by what is known of its rooms, each weighed by how many changes it has. */
export function overallOf(rooms: readonly Score[]): Overall {
  const parts = rooms.map(({ noticed, of, all = of }) => ({ noticed, of, all }));
  const { share, low, high } = stratified(parts);
  const sum = (read: (part: { readonly of: number; readonly all: number }) => number) =>
    parts.reduce((so, part) => so + read(part), 0);
  return {
    percent: percentOf(share),
    low: percentOf(low),
    high: percentOf(high),
    of: sum(({ of }) => of),
    all: sum(({ all }) => all),
  };
}

/**
 * The first of these bounds, percent, that a share is surely below: that of a room that was tried whole by its figure, that of a sample
 * by the upper end of its interval.
 */
export function surelyBelow(
  score: Score | Overall,
  ...bounds: readonly (number | undefined)[]
): number | undefined {
  const most = 'high' in score ? score.high : percentOf(mostOf(score));
  return bounds.find(bound => bound !== undefined && most < bound);
}

const mostOf = ({ noticed, of, all }: Score): number =>
  all === undefined ? (of === 0 ? 1 : noticed / of) : interval(noticed, of).high;
