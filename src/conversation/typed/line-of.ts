import { quoted } from '../../engine/text/lines/option-line.ts';
import type { Given } from '../question.ts';

/** A command with its options as it would be typed; files are left out. */
export function lineOf(command: string, given: Given): string {
  let line = `/${command}`;
  for (const name in given) {
    const value = given[name];
    if (value !== undefined && typeof value !== 'object') line += ` ${name}:${quoted(String(value))}`;
  }
  return line;
}
