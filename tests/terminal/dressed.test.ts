import { describe, expect, test } from 'vitest';
import { dressed, lookOf } from '../../src/terminal/dressed.ts';

describe('a text in the terminal', () => {
  test('wraps at words, under where its text began, and loses none', () => {
    const text = '  ! Gloves and goggles: raw batter burns skin and eyes for a day or two.';
    const lines = dressed(text, { width: 30, colour: false }).split('\n');
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(30);
    expect(lines.slice(1).every(line => /^ {4}\S/.test(line))).toBe(true);
    expect(lines.map(line => line.trim()).join(' ')).toBe(text.trim());
  });

  test('keeps a word that is longer than the line whole, and leaves a pipe alone', () => {
    const long = `a ${'b'.repeat(50)} c`;
    expect(dressed(long, { width: 30, colour: false }).split('\n')).toEqual(['a', 'b'.repeat(50), 'c']);
    expect(dressed(long, { width: undefined, colour: false })).toBe(long);
  });

  test('shows a colour before its hex. Source: ISO 8613-6, direct colour: SGR 48;2;r;g;b', () => {
    expect(dressed('teal #1f7d7d', { width: 80, colour: true })).toBe(
      'teal \u001b[48;2;31;125;125m  \u001b[0m #1f7d7d',
    );
  });
});

describe('colour', () => {
  const terminal = { isTTY: true, columns: 80, getColorDepth: (): number => 24 };
  test.each([
    ['a terminal of 24 bits', terminal, {}, true],
    // Source: https://no-color.org
    ['NO_COLOR', terminal, { NO_COLOR: '1' }, false],
    ['NO_COLOR that is empty', terminal, { NO_COLOR: '' }, true],
    ['a terminal of 8 bits', { ...terminal, getColorDepth: (): number => 8 }, {}, false],
    ['a pipe', { isTTY: false }, {}, false],
  ] as const)('in %s', (_, stream, environment, colour) => {
    expect(lookOf(stream as never, environment).colour).toBe(colour);
  });
});
