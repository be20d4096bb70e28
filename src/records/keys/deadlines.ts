import { bucketOf } from '../dues/due-buckets.ts';
import type { Span } from '../store.ts';
import { key, under } from './key.ts';

// Deadlines.
const inBucket = (bucket: number) => String(bucket).padStart(2, '0');
/** Something to do at a time: in its group's bucket, the time first, so that what is due there is one span. */
export const dueKey = (at: Date, group: string, what: string, id: string) =>
  key('due', inBucket(bucketOf(group)), at.toISOString(), group, what, id);
/** All that is to be done in a bucket, at whatever time. */
export const dues = (bucket: number): Span => under(key('due', inBucket(bucket)));
/** What is due in a bucket by a time, that millisecond included. */
export const dueBy = (now: Date, bucket: number): Span => ({
  from: dues(bucket).from,
  to: key('due', inBucket(bucket), new Date(now.getTime() + 1).toISOString()),
});
/** Where programs before format 2 wrote what is due: the year (of four digits, in this century) where the bucket is. */
export const duesBeforeBuckets = (): Span => ({ from: 'due/200', to: 'due/21' });
