import { existsSync, readFileSync } from 'node:fs';
import type { TextSet } from './text-set.ts';

/** The parts of a set, as its file names them. */
export const PARTS = [
  'questions',
  'amounts',
  'colours',
  'scope',
] as const satisfies readonly (keyof TextSet)[];
export type Part = (typeof PARTS)[number];

/** The numbers of a set's lines that are not understood, part by part. */
export type Missed = Readonly<Record<Part, readonly number[]>>;

const written = new URL('missed.json', import.meta.url);

/** What `write-missed.ts` found, by the set's file; a set that it has not seen yet is not there. */
export const MISSED: Readonly<Record<string, Missed>> = existsSync(written)
  ? (JSON.parse(readFileSync(written, 'utf8')) as Record<string, Missed>)
  : {};

/** The numbers in what `score` tells of the whole of a set. */
export function missedIn(misses: readonly string[]): Missed {
  const of = (part: Part) =>
    misses.flatMap(miss => {
      const [, name, at] = /^([a-z]+) (\d+) “/.exec(miss) ?? [];
      return `${name}s` === part || name === part ? [Number(at)] : [];
    });
  return { questions: of('questions'), amounts: of('amounts'), colours: of('colours'), scope: of('scope') };
}
