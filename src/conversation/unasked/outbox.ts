import type { Language } from '../../words/sentence.ts';
import type { Reply } from '../reply.ts';

/** Where a group is told things, and in which language. */
export type Place = { readonly group: string; readonly channel: string; readonly language: Language };

/** A message that was posted. */
export type Posted = { readonly channel: string; readonly message: string };

/** A time span to enter in the group's calendar; times in ms since 1970 UTC. */
export type Appointment = {
  readonly name: string;
  readonly says: string;
  readonly from: number;
  readonly until: number;
};

/** How a group may be told beyond the message itself; each only where the platform lets us. */
export type Telling = {
  /** Role whose holders are called by the message. */
  readonly calls?: string | undefined;
};

/** How groups are told what nobody has just asked for. Each chat platform brings its own. */
export interface Outbox {
  /** True when this process is the one that speaks to the group: its shard, where there are several. */
  serves(group: string): boolean;
  /** True when this process is the one that does what is due for no group. */
  leads?(): boolean;
  /** Which shards this process is, of how many; absent where there is only one. */
  shards?(): { readonly ids: readonly number[]; readonly of: number };
  /** The groups that this process speaks to now. */
  groups?(): readonly string[];
  /** Whether somebody is in a group; rejects when that cannot be told just now. Absent where nobody leaves. */
  readonly hasMember?: (group: string, member: string) => Promise<boolean>;
  /** True when this process would be the one, and the group has put us out: not while it is only out of reach. */
  isGone?(group: string): boolean;
  /**
   * Posts a reply. A nonce (at most 25 characters) used twice within minutes posts once and gives the same
   * message. Gives `barred` when the channel is gone or closed to us, which no second try would change; rejects
   * when a second try may help.
   */
  post(place: Place, reply: Reply, nonce: string, telling?: Telling): Promise<Posted | 'barred'>;
  /** Puts a reply in the place of a posted one. Gives `barred` when the message is gone or closed to us. */
  edit(place: Place, posted: Posted, reply: Reply): Promise<'edited' | 'barred'>;
  /**
   * Tells one member in private; what is offered there is theirs, in their own talk with us. A nonce as in `post`. Gives
   * `barred` when they let nothing in.
   */
  tell?(member: string, place: Place, reply: Reply, nonce?: string): Promise<'told' | 'barred'>;
  /** Opens a thread under a posted message, to talk about it. Gives `barred` where there can be none. */
  openThread?(posted: Posted, name: string): Promise<'opened' | 'barred'>;
  /** Enters something in the group's calendar and gives its id there, or `barred` where we may not. */
  schedule?(group: string, appointment: Appointment): Promise<string>;
  /** Moves an entry of the calendar, or takes it out where none is given. Gives `barred` where it cannot be moved. */
  reschedule?(group: string, id: string, appointment: Appointment | undefined): Promise<'done' | 'barred'>;
}
