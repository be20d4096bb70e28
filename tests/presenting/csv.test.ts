import { describe, expect, test } from 'vitest';
import { csv } from '../../src/presenting/csv.ts';

describe('comma-separated values', () => {
  // What begins a formula in a spreadsheet: OWASP, CSV Injection.
  test.each(['=1+1', '+1', '-1', '@SUM(1)', '\t=1', '\r=1', ' =1', '\u00a0=1', '＝1+1', '＠SUM(1)', '\n=1'])(
    'defuse %j',
    value => {
      expect(csv([[value]]).replace(/^"|"?\r\n$/g, '')).toBe(`'${value}`);
    },
  );

  // RFC 4180, section 2: quotes around what holds a comma, a quote or a break; a quote doubled; lines end with CRLF.
  test('are quoted as the standard says, numbers and plain names left alone', () => {
    expect(csv([['a,b', 'say "so"', 'two\nlines', -1.5, undefined, 'Dusk-2']])).toBe(
      '"a,b","say ""so""","two\nlines",-1.5,,Dusk-2\r\n',
    );
  });
});
