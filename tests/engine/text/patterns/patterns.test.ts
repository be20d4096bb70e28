import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { rewritten, TextToFit } from '../../../../src/engine/text/patterns/fitting.ts';
import { inSmallLetters, needsOf } from '../../../../src/engine/text/patterns/needs.ts';

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
    [/LYE|NaOH/i, [['lye', 'naoh']]],
    [/año (?:µm|spilt)/iu, [['año ']]],
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

test('a pattern that takes capitals for small letters is run for every letter that it may mean', () => {
  const letters = Array.from('abcdefghijklmnopqrstuvwxyz áéíñóúü');
  for (const flags of ['i', 'iu']) {
    const any = new RegExp(`^[${letters.join('')}]$`, flags);
    const taken = Array.from({ length: 0x1_0000 }, (_, unit) => String.fromCharCode(unit)).filter(one =>
      any.test(one),
    );
    expect(taken.length).toBeGreaterThan(2 * letters.length - 2);
    for (const letter of letters) {
      const pattern = new RegExp(letter + letter, flags);
      expect(needsOf(pattern)).toEqual([[letter + letter]]);
      for (const one of taken.filter(other => pattern.test(other + other)))
        expect(inSmallLetters(one + one)).toBe(letter + letter);
    }
  }
});

test('patterns that are replaced one after another give what they give one by one', () => {
  const rewritings = [
    [/\blie\b/giu, 'lye'],
    [/\b(\d+) oz of lye\b/gu, (_: string, ounces: string) => `lye ${ounces}`],
    [/(?<=lye \d+), (?=water)/gu, ' and '],
    [/MICA/u, 'mica'],
    [/\s+/gu, ' '],
  ] as const;
  const oneByOne = (text: string) =>
    rewritings.reduce((said, [pattern, put]) => said.replace(pattern, put as string), text);
  expect(rewritten('5 oz of LIE,  water', rewritings)).toBe('lye 5, water');
  for (const text of ['5 oz of lie, water', 'MICA  and lie', 'mica', '', 'lye 5, water, 3 oz of lie, water'])
    expect(rewritten(text, rewritings)).toBe(oneByOne(text));
});

test('of several patterns the first that fits is told, by what it finds', () => {
  const text = new TextToFit('the lye spilt on the hob');
  expect(text.firstOf([/sosa/u, /spil(?:t|led)/u, /hob/u])).toBe('spilt');
  expect(text.firstOf([/HOB/iu, /lye/u])).toBe('hob');
  expect(text.firstOf([/hob$/u, /spilt/u])).toBe('hob');
  expect(text.firstOf([/sosa/u])).toBeUndefined();
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
