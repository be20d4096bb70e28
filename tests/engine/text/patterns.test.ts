import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { TextToFit } from '../../../src/engine/text/patterns/fitting.ts';
import { needsOf } from '../../../src/engine/text/patterns/needs.ts';

describe('what a text must hold before a pattern can fit', () => {
  test.each([
    [/\b(?:lye|naoh)\b.*\bspil(?:t|led)\b/u, [['lye', 'naoh'], ['spil']]],
    [/colou?rs? run/u, [['colo'], [' run']]],
    [/ab+cd/u, [['ab'], ['cd']]],
    [/ab{2,3}cd/u, [['ab'], ['cd']]],
    [/ab{0,3}cd/u, [['cd']]],
    [/\bon the hob\b$/u, [['on the hob']]],
    [/1\.5 g/u, [['1.5 g']]],
    [/neutrali[sz]\w*/u, [['neutrali']]],
    [/^(?!.*\bvinegar\b).*\blye\b/u, [['lye']]],
    [/(?<=sodium )hydroxide/u, [['sodium '], ['hydroxide']]],
    [/(?<!sodium )(?:acid|base)(?= cup)/u, [['acid', 'base'], [' cup']]],
    [/(?<what>lye) and \k<what>/u, [['lye'], [' and ']]],
    [/(?:oils? of olive|fat)/u, [[' of olive', 'fat']]],
    [/a\p{L}bc\u00e9de\x41fg\cJhi/u, [['bc'], ['de'], ['fg'], ['hi']]],
    // Nothing is sure of these.
    [/(?:lye|\d+)/u, []],
    [/(?:lye)?(?:naoh)*/u, []],
    [/a|bc/u, []],
    [/LYE/i, []],
    [/(?i:lye)/u, []],
    [/[[(]}lye/, [['lye']]],
    [/🔥lye/u, []],
  ])('%s', (pattern, needs) => {
    expect(needsOf(pattern)).toEqual(needs);
  });

  const PATTERNS = [
    /(?:lye|sodium (?:hydroxide|carbonate)s?) (?:was|is){1,2} spil(?:t|led){0,2}/,
    /ab?c+d*(?:ef|gh|i[jk]l)+m{2}\.n\w{1,3}\d?(?:op)?/,
    /(?:one|two(?: three)?|(?:four )?five) .{0,4}(?:six|seven)/,
  ];
  property.prop([
    fc.oneof(...PATTERNS.map(pattern => fc.stringMatching(pattern).map(text => ({ pattern, text })))),
  ])('is held by every text that fits', ({ pattern, text }) => {
    for (const list of needsOf(pattern)) expect(list.some(one => text.includes(one))).toBe(true);
    expect(new TextToFit(text).fits(pattern)).toBe(true);
  });
});

test('a text fits what it fitted', () => {
  const text = new TextToFit('the lye spilt on the hob');
  expect(text.fits(/\blye\b.*\bhob\b/u)).toBe(true);
  expect(text.fits(/\bhob\b.*\blye\b/u)).toBe(false);
  expect(text.fits(/\bsosa\b/u)).toBe(false);
  expect(text.fits(/LYE/iu)).toBe(true);
  expect(text.fits(/\bon (?:the|a) (?:hob|stove)/u)).toBe(true);
  expect(text.fits(/\bon (?:the|a) stove/u)).toBe(false);
});
