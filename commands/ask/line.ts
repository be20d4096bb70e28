import type { Given } from '../../src/conversation/question.ts';
import { quoted } from '../../src/engine/text/option-line.ts';

/** A command with its options as it would be typed; files are left out. */
export const lineOf = (command: string, given: Given): string =>
  [
    `/${command}`,
    ...Object.entries(given).flatMap(([name, value]) =>
      typeof value === 'object' ? [] : [`${name}:${quoted(String(value))}`],
    ),
  ].join(' ');
