import { expect, test } from 'vitest';
import { readInChat } from '../../read-in-chat.ts';

/*
 * Dry lye is sold by its purity, 85 to 100 % (common practice, no source): behind its name such a figure is that, and no weight, whether a
 * percent sign stands behind it or not. Read as grams it would call a right recipe short of lye.
 */

const LINES = [
  ['sosa del 98 para 500 g de oliva, sobreengrasado 5%', { purity: 98 }],
  ['oliva 500 coco 200 todo en gramos, sosa al 98, sobreengrasado 5', { purity: 98 }],
  ['500 g de oliva y 200 g de coco con potasa del 98, sobreengrasado del 2', { lye: 'KOH 98%' }],
  ['potasa del 85 para 600 g de coco, sobreengrasado 0%', { lye: 'KOH 85%' }],
  ['KOH at 85 for 500 g olive, 2% superfat', { lye: 'KOH 85%' }],
  ['500 g olive, 200 g coconut, NaOH at 97, 5% superfat', { purity: 97 }],
] as const;

test.each(LINES)('%s', (line, pure) => {
  const { given, weighed } = readInChat(line);
  expect(weighed).toBeUndefined();
  expect(given).toMatchObject(pure);
});

test('with its unit it is what was weighed', () => {
  expect(readInChat('potasa del 90 g para 500 g de oliva').weighed).toMatchObject({
    alkali: 'KOH',
    grams: 90,
  });
});
