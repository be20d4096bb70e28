import { fc, test } from '@fast-check/vitest';
import { ShardClientUtil } from 'discord.js';
import { describe, expect } from 'vitest';
import { BUCKETS, bucketOf, bucketsOf } from '../../src/records/dues/due-buckets.ts';

const ids = fc.bigInt({ min: 0n, max: 2n ** 63n - 1n }).map(String);
/** As the library deals groups out, which follows the platform's documentation, Gateway > Sharding. */
const shardOf = (id: string, of: number) => ShardClientUtil.shardIdForGuildId(id, of);

describe('the buckets of a shard', () => {
  test.prop([ids, fc.integer({ min: 1, max: 10_000 })])('hold every group of its own', (id, of) => {
    expect(bucketsOf({ ids: [shardOf(id, of)], of })).toContain(bucketOf(id));
  });

  test.prop([ids, fc.constantFrom(1, 2, 3, 4, 6, 8, 12, 16, 24, 48)])(
    'hold no group of another, where the buckets can be dealt out evenly',
    (id, of) => {
      const holding = Array.from({ length: of }, (_, shard) => shard).filter(shard =>
        bucketsOf({ ids: [shard], of }).includes(bucketOf(id)),
      );
      expect(holding).toEqual([shardOf(id, of)]);
    },
  );

  test.each([
    [1, 48],
    [2, 24],
    [48, 1],
    [100, 12],
    [10_000, 3],
  ])('of %i are %i', (of, count) => {
    expect(bucketsOf({ ids: [of - 1], of })).toHaveLength(count);
  });

  test('of a process that is two shards are those of both', () => {
    expect(bucketsOf({ ids: [0, 3], of: 4 })).toEqual(
      Array.from({ length: BUCKETS }, (_, bucket) => bucket).filter(bucket => [0, 3].includes(bucket % 4)),
    );
  });

  test.each(['direct-701234567890123456', 'house', 'g', ''])(
    'of what is no group, %j, is the first shard’s',
    group => {
      expect(bucketsOf({ ids: [0], of: 7 })).toContain(bucketOf(group));
      expect(bucketOf(group)).toBe(0);
    },
  );
});
