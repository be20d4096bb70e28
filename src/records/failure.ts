import { createHash } from 'node:crypto';
import { Refusal } from '../engine/refusal.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'records-not-read': Record<never, never>;
    'records-not-saved': Record<never, never>;
    'records-maybe-saved': Record<never, never>;
  }
}

/**
 * What went wrong: `unreachable` (disk, server or thread gone), `busy` (others kept the store locked),
 * `full` (no room), `corrupt` (what is stored cannot be read), `unknown-version` (written by a newer
 * Tintmoot), `closed` (the store was closed), `unfit` (the caller handed over something no store can keep).
 */
export type FailureKind =
  | 'unreachable'
  | 'busy'
  | 'full'
  | 'corrupt'
  | 'unknown-version'
  | 'closed'
  | 'unfit';

/** Whether a failed write may be in the store after all: `unknown` when contact was lost while it ran. */
export type Saved = 'no' | 'unknown';

/**
 * A read or a write that failed. Never used for "there is no such record": that is `undefined`.
 * `message` is for the log: it names keys as {@link anonymous} does, never what is stored under them.
 */
export class StoreFailure extends Error {
  override readonly name = 'StoreFailure';
  readonly kind: FailureKind;
  readonly during: 'open' | 'read' | 'write';
  readonly saved: Saved;

  constructor(
    kind: FailureKind,
    during: 'open' | 'read' | 'write',
    message: string,
    more: { readonly saved?: Saved; readonly cause?: unknown } = {},
  ) {
    super(message, 'cause' in more ? { cause: more.cause } : {});
    this.kind = kind;
    this.during = during;
    this.saved = more.saved ?? 'no';
  }
}

/** A key as a log may hold it: its kind, and a mark by which whoever has the store finds it; never whose it is. */
export const anonymous = (key: string): string =>
  `${key.split('/')[0]}#${createHash('sha256').update(key).digest('hex').slice(0, 12)}`;

/** A group as a log may hold it: a member's own talk with us is called after the member, and so is only marked. */
export const anonymousGroup = (group: string): string =>
  /^\d+$/.test(group) ? group : anonymous(`${group.split('-')[0]}/${group}`);

/** What to tell the member when the store failed: not read, not saved, or perhaps saved. */
export function refusalOf(failure: StoreFailure): Refusal {
  if (failure.during !== 'write') return new Refusal('records-not-read', {});
  return new Refusal(failure.saved === 'no' ? 'records-not-saved' : 'records-maybe-saved', {});
}
