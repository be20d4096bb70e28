import { fc, test } from '@fast-check/vitest';
import { escapeMarkdown } from 'discord.js';
import { expect } from 'vitest';
import { plain } from '../../src/discord/render.ts';

/** Every kind of markup looked for, in every text. */
const escapedWhole = (text: string): string =>
  escapeMarkdown(text, { heading: true, bulletedList: true, maskedLink: true })
    .replaceAll(/^(\s*\d+)\.(?=\s)/gm, '$1\\.')
    .replaceAll('<', '\\<');

const pieces = fc.constantFrom(
  '*',
  '**',
  '_',
  '__',
  '~~',
  '||',
  '`',
  '```',
  '# ',
  '## ',
  '- ',
  '-',
  '* ',
  '1. ',
  '38.5 g',
  '2.',
  '[a](b)',
  '[',
  '](',
  ')',
  '<@1>',
  '<',
  '>',
  '> ',
  ':',
  '\\',
  '\n',
  '\n\n',
  ' ',
  '  ',
  '\t',
  'blue',
  '1/2 tsp',
  '(a)',
  'é',
  '\u2028',
  '\r',
);

test.prop([fc.array(pieces, { maxLength: 12 })], { numRuns: 4_000 })(
  'a sentence without markup is left as it is, and every other is escaped whole',
  list => {
    const text = list.join('');
    expect(plain(text)).toBe(escapedWhole(text));
  },
);
