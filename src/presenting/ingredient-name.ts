import type { Component } from '../engine/stability/report.ts';
import { substanceById } from '../engine/stability/substances/index.ts';
import { cut } from '../engine/text/excerpt.ts';

/** Longest piece of a label that is repeated, characters. */
export const longestPart = 60;

/** An ingredient as its reader knows it: the label's name of it, or what the list wrote of a family. */
export function plainName({ id, as }: Component): string {
  const substance = substanceById(id);
  if (!substance) return cut(as, longestPart);
  // Of a family the list's own word is the closer one, unless it is a whole bracketed list.
  return substance.family && as.length <= longestPart && !as.includes('(') ? as : substance.names[0];
}

/** The name with the one number it has. */
export function partName(part: Component): string {
  const { ci } = part;
  const name = plainName(part);
  return ci && !name.includes(ci) && !ci.includes(',') ? `${name} (CI ${ci})` : name;
}
