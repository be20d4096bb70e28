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

  apply(event: HostEvent): void {
    if (event.kind === 'message-created' || event.kind === 'message-edited') {
      this.#byId.set(event.message.id, event);
      const channel = this.#byChannel.get(event.message.channel_id) ?? new Set();
      this.#byChannel.set(event.message.channel_id, channel.add(event.message.id));
    } else if (event.kind === 'message-deleted') {
      this.#byId.delete(event.id);
      this.#byChannel.get(event.channelId)?.delete(event.id);
    }
  }

  get(id: string): MessageRecord | undefined {
    return this.#byId.get(id);
  }

  /** Oldest first. */
  inChannel(channelId: string): readonly MessageRecord[] {
    return [...(this.#byChannel.get(channelId) ?? [])].flatMap(id => this.#byId.get(id) ?? []);
  }
}
