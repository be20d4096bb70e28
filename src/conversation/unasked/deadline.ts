import type { Due } from '../../records/dues/dues.ts';
import type { Store } from '../../records/store.ts';
import type { Workers } from '../../workers/workers.ts';
import type { Outbox } from './outbox.ts';

/** What there is to act with when a time has come: nobody has asked, so there is no context. */
export type DeadlineServices = {
  readonly store: Store;
  readonly outbox: Outbox;
  /** Draws; without it everything is told in words alone. */
  readonly workers?: Workers | undefined;
  /** The time, ms since 1970 UTC. */
  readonly now: () => number;
  /** Hears where a group could not be told. */
  readonly onBarred?: ((where: { group: string; channel: string; what: string }) => void) | undefined;
};

/** Does what is due, as often as it is called for the same due: its effects must not add up. */
export type DeadlineAct = (due: Due) => Promise<void>;

/** What to do, by the name of the due. */
export type DeadlineActs = Readonly<Record<string, DeadlineAct>>;
