import type { WebSocket } from 'ws';

/** How many past events a session can replay. */
const replayable = 10_000;

/** One identified session: its shard, its numbered events, and the socket that carries them while there is one. */
export class Session {
  readonly id: string;
  readonly shard: number;
  readonly shardCount: number;
  readonly intents: number;
  readonly #sent: { readonly seq: number; readonly frame: string }[] = [];
  #seq = 0;
  #socket: WebSocket | undefined;

  constructor(given: { id: string; shard: number; shardCount: number; intents: number; socket: WebSocket }) {
    this.id = given.id;
    this.shard = given.shard;
    this.shardCount = given.shardCount;
    this.intents = given.intents;
    this.#socket = given.socket;
  }

  get socket(): WebSocket | undefined {
    return this.#socket;
  }

  /** Guilds are dealt out by id; what belongs to no guild goes to shard 0. Source: Gateway > Sharding. */
  carries(guildId: string | undefined): boolean {
    if (guildId === undefined) return this.shard === 0;
    return Number((BigInt(guildId) >> 22n) % BigInt(this.shardCount)) === this.shard;
  }

  /** Sends a numbered event, or keeps it until the session resumes. `data` is JSON text. */
  dispatch(name: string, data: string): void {
    this.#seq += 1;
    const frame = `{"op":0,"s":${this.#seq},"t":"${name}","d":${data}}`;
    this.#sent.push({ seq: this.#seq, frame });
    if (this.#sent.length > replayable) this.#sent.splice(0, replayable / 2);
    this.#socket?.send(frame);
  }

  detach(socket: WebSocket): void {
    if (this.#socket === socket) this.#socket = undefined;
  }

  /** Takes a new socket and sends what came after `seq`; false when that is no longer known. */
  resume(socket: WebSocket, seq: number): boolean {
    const first = this.#sent[0]?.seq ?? this.#seq + 1;
    if (seq < first - 1 || seq > this.#seq) return false;
    this.#socket?.close(4000);
    this.#socket = socket;
    for (const { seq: number, frame } of this.#sent) if (number > seq) socket.send(frame);
    this.dispatch('RESUMED', '{}');
    return true;
  }
}
