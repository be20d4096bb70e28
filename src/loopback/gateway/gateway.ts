import type { IncomingMessage, Server } from 'node:http';
import { type RawData, type WebSocket, WebSocketServer } from 'ws';
import { behindSecret } from '../http/entrance.ts';
import type { Kernel } from '../kernel.ts';
import { isRecord, type Json, listOf, numberOf, recordOf, textOf } from '../state/json.ts';
import { botJson, guildJson } from '../state/serializers.ts';
import { Session } from './session.ts';

/** Opcodes. Source: platform documentation, Topics > Opcodes and Status Codes. */
const op = {
  heartbeat: 1,
  identify: 2,
  resume: 6,
  reconnect: 7,
  invalid: 9,
  hello: 10,
  heartbeatAck: 11,
} as const;

/** Bits 0 to 16, 20, 21, 24 and 25; members, presences and content are privileged. Source: Gateway > List of Intents. */
const knownIntents = ((1 << 17) - 1) | (1 << 20) | (1 << 21) | (1 << 24) | (1 << 25);
const privilegedIntents = (1 << 1) | (1 << 8) | (1 << 15);

/** The gateway: sessions that identify, resume, and receive events. */
export class Gateway {
  readonly #kernel: Kernel;
  readonly #sockets: WebSocketServer;
  readonly #sessions = new Map<string, Session>();
  readonly #readyWatchers = new Set<() => void>();
  readonly #hushed = new WeakSet<WebSocket>();

  constructor(kernel: Kernel, server: Server) {
    this.#kernel = kernel;
    this.#sockets = new WebSocketServer({
      server,
      verifyClient: ({ req }: { req: IncomingMessage }) => behindSecret(req, kernel)?.pathname === '/gateway',
    });
    this.#sockets.on('connection', socket => this.#greet(socket));
  }

  /** Whether somebody receives, now or after resuming, what this guild's members do. */
  hasListener(guildId: string | undefined): boolean {
    return [...this.#sessions.values()].some(session => session.carries(guildId));
  }

  /** Sends an event to the sessions of a guild's shard that asked for one of `intents` (0: to all). */
  dispatch(
    name: string,
    guildId: string | undefined,
    intents: number,
    dataFor: (session: Session) => Json,
  ): void {
    let shared: { readonly data: Json; readonly text: string } | undefined;
    for (const session of this.#sessions.values()) {
      if (!session.carries(guildId) || (intents !== 0 && (session.intents & intents) === 0)) continue;
      const data = dataFor(session);
      if (shared?.data !== data) shared = { data, text: JSON.stringify(data) };
      session.dispatch(name, shared.text);
    }
  }

  /** Resolves when this many shards have a live session. */
  whenReady(shards: number): Promise<void> {
    return new Promise(resolve => {
      const look = (): void => {
        const live = new Set([...this.#sessions.values()].filter(s => s.socket).map(s => s.shard));
        if (live.size < shards) return;
        this.#readyWatchers.delete(look);
        resolve();
      };
      this.#readyWatchers.add(look);
      look();
    });
  }

  get connections(): number {
    return this.#sockets.clients.size;
  }

  drop(code: number | undefined): void {
    for (const socket of this.#sockets.clients) {
      if (code === undefined) socket.terminate();
      else socket.close(code);
    }
  }

  hush(): void {
    for (const socket of this.#sockets.clients) this.#hushed.add(socket);
  }

  askToReconnect(): void {
    for (const socket of this.#sockets.clients) send(socket, { op: op.reconnect, d: null });
  }

  invalidate(): void {
    this.#sessions.clear();
    for (const socket of this.#sockets.clients) send(socket, { op: op.invalid, d: false });
  }

  close(): void {
    for (const socket of this.#sockets.clients) socket.terminate();
    this.#sockets.close();
  }

  #greet(socket: WebSocket): void {
    let session: Session | undefined;
    // Who does not send a heartbeat for two intervals is gone: Gateway > Sending Heartbeats.
    const silence = setTimeout(() => socket.close(4009), 2 * this.#kernel.settings.heartbeatMs).unref();
    socket.on('error', () => socket.terminate());
    socket.on('close', code => {
      clearTimeout(silence);
      session?.detach(socket);
      // A client that says goodbye (1000, 1001) ends its session: Gateway > Disconnecting.
      if (session && (code === 1000 || code === 1001)) this.#sessions.delete(session.id);
    });
    socket.on('message', raw => {
      const frame = parse(raw);
      if (!frame) return socket.close(4002);
      const data = recordOf(frame.d);
      if (frame.op === op.heartbeat) {
        silence.refresh();
        if (!this.#hushed.has(socket)) send(socket, { op: op.heartbeatAck });
        return;
      }
      if (frame.op === op.identify) {
        if (session) return socket.close(4005);
        session = this.#identify(socket, data);
      } else if (frame.op === op.resume) session = this.#resume(socket, data);
    });
    send(socket, { op: op.hello, d: { heartbeat_interval: this.#kernel.settings.heartbeatMs } });
  }

  #identify(socket: WebSocket, data: Json): Session | undefined {
    const refusal = this.#refusalOf(data);
    if (refusal !== undefined) {
      socket.close(refusal);
      return undefined;
    }
    const [shard, shardCount] = listOf(data.shard);
    const { room, ids, origin, secret } = this.#kernel;
    const session = new Session({
      id: ids.next(),
      shard: numberOf(shard, 0),
      shardCount: numberOf(shardCount, 1),
      intents: numberOf(data.intents, 0),
      socket,
    });
    this.#sessions.set(session.id, session);
    const guilds = [...room.guilds.values()].filter(guild => !guild.foreign && session.carries(guild.id));
    const ready = {
      v: 10,
      user: botJson(room),
      guilds: guilds.map(guild => ({ id: guild.id, unavailable: true })),
      session_id: session.id,
      session_type: 'normal',
      resume_gateway_url: `${origin.replace('http:', 'ws:')}/${secret}/gateway`,
      shard: [session.shard, session.shardCount],
      application: { id: room.applicationId, flags: 0 },
    };
    session.dispatch('READY', JSON.stringify(ready));
    for (const guild of guilds) session.dispatch('GUILD_CREATE', JSON.stringify(guildJson(guild, room)));
    for (const watcher of this.#readyWatchers) watcher();
    return session;
  }

  /** The code an identify is turned away with. Source: Opcodes and Status Codes > Gateway Close Event Codes. */
  #refusalOf(data: Json): number | undefined {
    if (!this.#kernel.knows(textOf(data.token))) return 4004;
    const intents = numberOf(data.intents, 0);
    if (!Number.isInteger(intents) || (intents & ~knownIntents) !== 0) return 4013;
    if ((intents & privilegedIntents & ~this.#kernel.settings.privilegedIntents) !== 0) return 4014;
    return undefined;
  }

  #resume(socket: WebSocket, data: Json): Session | undefined {
    const session = this.#sessions.get(textOf(data.session_id) ?? '');
    if (session?.resume(socket, numberOf(data.seq, -1))) {
      for (const watcher of this.#readyWatchers) watcher();
      return session;
    }
    send(socket, { op: op.invalid, d: false });
    return undefined;
  }
}

const send = (socket: WebSocket, frame: Json): void => socket.send(JSON.stringify(frame));

function parse(raw: RawData): Json | undefined {
  try {
    const frame: unknown = JSON.parse((raw as Buffer).toString('utf8'));
    return isRecord(frame) ? frame : undefined;
  } catch {
    return undefined;
  }
}
