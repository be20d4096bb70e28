import { createHash } from 'node:crypto';

/**
 * The part of a key that reports on a colour are filed under: a catalogue id as it is, a set of ingredients (which
 * may be long) by 96 bits of its SHA-256. It also fits into a button.
 */
export const filed = (identity: string): string =>
  /^[a-z0-9-]{1,40}$/.test(identity)
    ? identity
    : `of-${createHash('sha256').update(identity).digest('hex').slice(0, 24)}`;
