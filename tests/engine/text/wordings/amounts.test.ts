import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import type { TextSet } from '../../../sets/text-set.ts';
import { wrongAmount } from '../../../sets/wrong-amount.ts';

/**
 * Amounts in every wording that we could think of, by our own hand (what others wrote is in tests/sets): parts, dictated numbers,
 * pieces, ranges, remarks, shares, pastes, oils and moulds in both languages. Expected values reckoned from NIST Handbook 44.
 */
const items = JSON.parse(readFileSync(new URL('amounts.json', import.meta.url), 'utf8')) as readonly Omit<
  TextSet['amounts'][number],
  'language'
>[];

test.each(items.map(item => [item.text, item] as const))('%s', (_, item) =>
  expect(wrongAmount(item)).toBeUndefined(),
);

const portionOf = (text: string) => {
  try {
    return parsePortionRange(text).low;
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal.id;
    throw refusal;
  }
};

describe('what may mean something else is asked', () => {
  test.each([
    ['2 cups of milk', 'amount-unit-unknown'],
    ['2 cups per pound', 'amount-unreadable'],
    ['115 g bars', 'amount-unit-unknown'],
    ['500 g less the water', 'amount-unit-unknown'],
    ['2 cups - 2 Tbsp', 'amount-unreadable'],
    ['half a jug', 'amount-vessel'],
    ['a bucket', 'amount-vessel'],
    ['two fifty grams', 'amount-unreadable'],
    ['3 to 2 cups', 'amount-unit-unknown'],
  ])('%s', (text, id) => expect(portionOf(text)).toBe(id));
});

test.each([
  ['125 ml jug', 125],
  ['150 ml mould', 150],
  ['a 115 ml cavity', 115],
])('the figure of “%s” is one figure and no count of pieces', (text, millilitres) =>
  expect(portionOf(text)).toMatchObject({ millilitres }),
);
