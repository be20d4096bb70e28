import { expect, test } from 'vitest';
import type { MatterTold } from '../../src/engine/questions/leaning/parts/part-of.ts';
import { technique as english } from '../../src/words/en/colour/technique.ts';
import { technique as spanish } from '../../src/words/es/colour/technique.ts';
import { oneText } from '../../src/words/sentence.ts';

/* A figure that stands in one language stands in the other; what is arithmetic is reckoned here. */

/** Every figure of a text, a decimal comma as a point and 1,200 as 1200, in order of size. */
const figuresOf = (text: string): readonly number[] =>
  (text.replace(/(\d),(\d{3})(?!\d)/gu, '$1$2').match(/\d+(?:[.,]\d+)?/gu) ?? [])
    .map(figure => Number(figure.replace(',', '.')))
    .toSorted((a, b) => a - b);

const pairs = (['topics', 'named'] as const).flatMap(part =>
  Object.entries(english[part]).map(([id, said]) => [id, said, spanish[part]] as const),
);

test.each(pairs)('%s tells the same figures in both languages', (id, { answer, why }, other) => {
  const there = (other as Readonly<Record<string, MatterTold>>)[id]!;
  expect(figuresOf(oneText([...there.answer, ...there.why]))).toEqual(
    figuresOf(oneText([...answer, ...why])),
  );
});

test('half a gram of lye is 3.5 % of what 100 g of oils take (13.5 to 14.3 g NaOH, most recipes)', () => {
  expect(oneText(english.topics['small-batch'].why)).toContain('3.5 % of the lye for 100 g of oils');
  expect((100 * 0.5) / 14.3).toBeCloseTo(3.5, 1);
});

test('1,200 g of batter in three: a half and two quarters, or thirds (arithmetic)', () => {
  expect(oneText(english.topics['split-batter'].why)).toContain(
    '1,200 g for three colours: 600, 300 and 300, or 400 each',
  );
  expect([1200 / 2, 1200 / 4, 1200 / 3]).toEqual([600, 300, 400]);
});
