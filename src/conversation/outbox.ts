import type { Language } from '../words/sentence.ts';
import type { Reply } from './reply.ts';

/** Where a group is told things, and in which language. */
export type Place = { readonly group: string; readonly channel: string; readonly language: Language };

/** A message that was posted. */
export type Posted = { readonly channel: string; readonly message: string };

/** How groups are told what nobody has just asked for. Each chat platform brings its own. */
export interface Outbox {
  /** True when this process is the one that speaks to the group: its shard, where there are several. */
  serves(group: string): boolean;
  /** Whether somebody is in a group; rejects when that cannot be told just now. Absent where nobody leaves. */
  readonly hasMember?: (group: string, member: string) => Promise<boolean>;
  /**
   * Posts a reply. A nonce (at most 25 characters) used twice within minutes posts once and gives the same
   * message. Gives `barred` when the channel is gone or closed to us, which no second try would change; rejects
   * when a second try may help.
   */
  post(place: Place, reply: Reply, nonce: string): Promise<Posted | 'barred'>;
  /** Puts a reply in the place of a posted one. Gives `barred` when the message is gone or closed to us. */
  edit(place: Place, posted: Posted, reply: Reply): Promise<'edited' | 'barred'>;
}
