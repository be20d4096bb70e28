import { expect, test } from 'vitest';
import { readOnce, remembered, rememberedWord } from '../../src/engine/remembered.ts';

test('a short text is read once, a long one and one that cannot be read each time', () => {
  const read: string[] = [];
  const lengthOf = remembered(text => {
    read.push(text);
    if (text === 'torn') throw new Error('torn');
    return text.length;
  });
  const long = 'x'.repeat(81);
  for (const text of ['gold mica', 'gold mica', long, long]) expect(lengthOf(text)).toBe(text.length);
  for (let time = 0; time < 2; time += 1) expect(() => lengthOf('torn')).toThrow('torn');
  expect(read).toEqual(['gold mica', long, long, 'torn', 'torn']);
});

test('what gives undefined is remembered too, and after many texts all are read anew', () => {
  let reads = 0;
  const nothing = remembered(() => {
    reads += 1;
    return undefined;
  });
  for (let at = 0; at < 500; at += 1) nothing(String(at));
  nothing('0');
  expect(reads).toBe(500);
  nothing('one more');
  nothing('0');
  expect(reads).toBe(502);
});

test('a whole question is read once while it is answered, and anew when many others were read since', () => {
  const read: string[] = [];
  const lengthOf = readOnce(text => {
    read.push(text);
    return text.length;
  });
  const question = 'how much gold mica for 500 g of oils, '.repeat(10);
  for (let reader = 0; reader < 12; reader += 1) expect(lengthOf(question)).toBe(question.length);
  expect(read).toEqual([question]);
  for (let other = 0; other < 64; other += 1) lengthOf(`${question}${other}`);
  lengthOf(question);
  expect(read.filter(text => text === question)).toHaveLength(2);
});

test('a word is remembered however long, and so is that it is none', () => {
  let reads = 0;
  const find = rememberedWord(() => {
    reads += 1;
    return undefined;
  });
  const long = 'x'.repeat(200);
  for (const word of ['mica', 'mica', long, long]) expect(find(word)).toBeUndefined();
  expect(reads).toBe(2);
});

test('a text of eighty signs is still a short one', () => {
  let reads = 0;
  const lengthOf = remembered(text => {
    reads += 1;
    return text.length;
  });
  for (let time = 0; time < 3; time += 1) expect(lengthOf('x'.repeat(80))).toBe(80);
  expect(reads).toBe(1);
});
