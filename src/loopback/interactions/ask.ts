import type { Json } from '../state/json.ts';
import type { ChannelRecord } from '../state/room.ts';

/** What a member does, ready to be sent. */
export interface Ask {
  readonly type: number;
  readonly userId: string;
  readonly channel: ChannelRecord;
  readonly data: Json;
  readonly sourceMessageId?: string;
  readonly focusedType?: number;
  /** In words, for the journal: `/dose`, `press again`. */
  readonly what: string;
}
