import type { Reply } from '../../../src/conversation/reply.ts';
import type { Outbox } from '../../../src/conversation/unasked/outbox.ts';

/** What a group sees in its channel. */
export type Message = { readonly id: string; readonly nonce: string; shown: Reply; edits: number };

/** A chat platform with one channel a group: a nonce posts once, as the real one holds for some minutes. */
export class Platform implements Outbox {
  readonly messages: Message[] = [];
  readonly #served: (group: string) => boolean;
  /** What members were told in private. */
  readonly told: { readonly member: string; readonly nonce: string | undefined; readonly shown: Reply }[] =
    [];
  barred = false;
  /** Whether members let nothing in. */
  closed = false;
  failing = false;

  constructor(served: (group: string) => boolean = () => true) {
    this.#served = served;
  }

  serves(group: string) {
    return this.#served(group);
  }

  async post({ channel }: { channel: string }, reply: Reply, nonce: string) {
    if (this.failing) throw new Error('the platform does not answer');
    if (this.barred) return 'barred' as const;
    if (nonce.length > 25) throw new Error('a nonce has at most 25 characters');
    const before = this.messages.find(message => message.nonce === nonce);
    if (before) return { channel, message: before.id };
    const message = { id: String(this.messages.length + 1), nonce, shown: reply, edits: 0 };
    this.messages.push(message);
    return { channel, message: message.id };
  }

  async edit(_place: unknown, posted: { message: string }, reply: Reply) {
    if (this.failing) throw new Error('the platform does not answer');
    const message = this.messages.find(({ id }) => id === posted.message);
    if (!message || this.barred) return 'barred' as const;
    message.shown = reply;
    message.edits += 1;
    return 'edited' as const;
  }

  async tell(member: string, _place: unknown, reply: Reply, nonce?: string) {
    if (this.closed) return 'barred' as const;
    if (!this.told.some(one => one.nonce === nonce)) this.told.push({ member, nonce, shown: reply });
    return 'told' as const;
  }

  /** The headlines in the channel, in the order they were posted. */
  get headlines(): readonly string[] {
    return this.messages.map(({ shown }) => shown.headline);
  }
}
