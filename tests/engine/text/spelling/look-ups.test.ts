import { expect, test } from 'vitest';
import { rememberedWord } from '../../../../src/engine/remembered.ts';
import { speller } from '../../../../src/engine/text/spelling/speller.ts';
import { wordsAround } from '../../../../src/engine/text/spelling/symmetric-delete.ts';
import { wordSpeller } from '../../../../src/engine/text/spelling/word-speller.ts';

test('words one letter away are found, by whichever of the four slips; the list is read at the first look-up', () => {
  let reads = 0;
  const around = wordsAround(
    () => {
      reads += 1;
      return ['olive', 'coconut'];
    },
    () => 1,
  );
  expect(reads).toBe(0);
  for (const slip of ['olve', 'oliive', 'olibe', 'olvie', 'olive'])
    expect([slip, ...around(slip)]).toEqual([slip, 'olive']);
  expect([...around('almond')]).toEqual([]);
  expect(reads).toBe(1);
});

test('what was found is remembered, also that nothing was; and no more words than a bound', () => {
  let calls = 0;
  const find = rememberedWord(word => {
    calls += 1;
    return word === 'known' ? word : undefined;
  });
  for (const word of ['known', 'known', 'other', 'other']) find(word);
  expect(calls).toBe(2);
  for (let at = 0; at < 6000; at += 1) find(`word ${at}`);
  expect(calls).toBe(6002);
  find('known');
  expect(calls).toBe(6003);
});

test('of two words as near, the lexicons take the first by the alphabet; who measures something out is asked', () => {
  const words = ['palmy', 'balmy'];
  expect(speller(words, new Set())('xalmy')).toBe('balmy');
  expect(speller(words, new Set())('palny')).toBe('palmy');
  expect(speller(words, new Set(['xalmy']))('xalmy')).toBeUndefined();
  // Two slips in five letters are no slip: one letter moved across the word.
  expect(speller(words, new Set())('almyb')).toBeUndefined();
  const { meant } = wordSpeller(new Set(words), new Set());
  expect(meant('xalmy')).toBeUndefined();
  expect(meant('palny')).toBe('palmy');
});
