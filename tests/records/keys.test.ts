import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { bucketOf } from '../../src/records/dues/due-buckets.ts';
import {
  dueBy,
  dueKey,
  ledgerLine,
  part,
  shelf,
  shelfItem,
  shelfLot,
  under,
} from '../../src/records/keys.ts';

const anyText = fc.string({ unit: 'grapheme', maxLength: 30 });
const between = (key: string, { from, to }: { from: string; to: string }) => from <= key && key < to;

describe('a part of a key', () => {
  test.prop([anyText])('holds only what every store orders alike', text => {
    expect(part(text)).toMatch(/^[A-Za-z0-9_-]+$/);
  });

  test.prop([anyText, anyText])('is another for another text', (one, other) => {
    expect(part(one) === part(other)).toBe(one === other);
  });

  test.each([
    ['184000000000000001', '184000000000000001'],
    ['a/b', 'a_2fb'],
    ['_', '_5f'],
    ['', '_'],
    ['ñ', '_c3_b1'],
    ['true-red', 'true-red'],
  ])('of "%s" is "%s"', (text, encoded) => {
    expect(part(text)).toBe(encoded);
  });
});

describe('a key', () => {
  test.prop([anyText, anyText, anyText])(
    'of one member never lies under the shelf of another',
    (one, other, item) => {
      fc.pre(one !== other);
      expect(between(shelfItem(one, item), under(shelf(other)))).toBe(false);
      expect(between(shelfItem(one, item), under(shelf(one)))).toBe(true);
    },
  );

  test.prop([fc.nat({ max: 999_999 }), fc.nat({ max: 999_999 })])(
    'of a newer ledger line comes before the older',
    (a, b) => {
      expect(ledgerLine('m', 'i', a) < ledgerLine('m', 'i', b)).toBe(a > b);
    },
  );

  test.prop([fc.nat({ max: 999_999 }), fc.nat({ max: 999_999 })])(
    'of a later lot comes after the earlier',
    (a, b) => {
      expect(shelfLot('m', 'i', a) < shelfLot('m', 'i', b)).toBe(a < b);
    },
  );

  const times = fc.date({ min: new Date('2000-01-01'), max: new Date('9999-12-31'), noInvalidDate: true });
  test.prop([times, times, anyText])('of a time lies before every later one', (at, now, id) => {
    expect(between(dueKey(at, 'g', 'close', id), dueBy(now, bucketOf('g')))).toBe(at <= now);
  });
});
