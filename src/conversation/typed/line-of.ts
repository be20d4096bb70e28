import { quoted } from '../../engine/text/lines/option-line.ts';
import type { Given } from '../question.ts';

/** A command with its options as it would be typed; files are left out. */
export const lineOf = (command: string, given: Given): string =>
  [
    `/${command}`,
    ...Object.entries(given).flatMap(([name, value]) =>
      typeof value === 'object' ? [] : [`${name}:${quoted(String(value))}`],
    ),
  ].join(' ');
