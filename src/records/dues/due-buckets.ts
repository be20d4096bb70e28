/** Which shards a process is, of how many. */
export type Shards = { readonly ids: readonly number[]; readonly of: number };

/**
 * Into so many buckets dues are divided, by their group. A process reads the buckets in which its shards' groups can
 * lie: only those where the number of shards divides this one, and never all where it shares a factor with it.
 */
export const BUCKETS = 48;

/** The bits of an id below the time that shards are dealt by. Source: platform documentation, Gateway > Sharding. */
const SHARD_BITS = 22n;
const ID = /^\d{1,20}$/;

/** The bucket of a group's dues. What is no group of the platform's, as a talk with one member, is the first shard's. */
export const bucketOf = (group: string): number =>
  ID.test(group) ? Number((BigInt(group) >> SHARD_BITS) % BigInt(BUCKETS)) : 0;

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);

/** The buckets in which groups of these shards can lie; all of them where it is not said which. */
export function bucketsOf(shards?: Shards): readonly number[] {
  const all = Array.from({ length: BUCKETS }, (_, bucket) => bucket);
  if (!shards) return all;
  // x mod BUCKETS = b and x mod n = s have a solution where b and s agree modulo what the two numbers share.
  const shared = greatestCommonDivisor(BUCKETS, shards.of);
  const mine = new Set(shards.ids.map(id => id % shared));
  return all.filter(bucket => mine.has(bucket % shared));
}
