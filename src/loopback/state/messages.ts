import type { APIMessage } from 'discord-api-types/v10';
import type { HostEvent } from '../interface/events.ts';

export interface MessageRecord {
  readonly message: APIMessage;
  readonly guildId?: string;
  readonly visibleTo: string;
  readonly interactionId?: string;
  /** Deferred, its answer still to come. */
  readonly pending: boolean;
}

/** Messages as they stand: a fold over the journal. */
export class Messages {
  readonly #byId = new Map<string, MessageRecord>();
  readonly #byChannel = new Map<string, Set<string>>();
  readonly #keep: number;

  constructor(keep: number) {
    this.#keep = keep;
  }

  apply(event: HostEvent): void {
    if (event.kind === 'message-created' || event.kind === 'message-edited') {
      this.#byId.set(event.message.id, event);
      const channel = this.#byChannel.get(event.message.channel_id) ?? new Set();
      this.#byChannel.set(event.message.channel_id, channel.add(event.message.id));
      const oldest = this.#byId.values().next().value;
      if (oldest && this.#byId.size > this.#keep) this.#drop(oldest.message.id, oldest.message.channel_id);
    } else if (event.kind === 'message-deleted') this.#drop(event.id, event.channelId);
  }

  #drop(id: string, channelId: string): void {
    this.#byId.delete(id);
    this.#byChannel.get(channelId)?.delete(id);
  }

  get(id: string): MessageRecord | undefined {
    return this.#byId.get(id);
  }

  /** Oldest first. */
  inChannel(channelId: string): readonly MessageRecord[] {
    return [...(this.#byChannel.get(channelId) ?? [])].flatMap(id => this.#byId.get(id) ?? []);
  }
}
