import { announce } from './gateway/dispatches.ts';
import { Gateway } from './gateway/gateway.ts';
import { channelRoutes } from './http/channel-routes.ts';
import { commandRoutes } from './http/command-routes.ts';
import { directoryRoutes } from './http/directory-routes.ts';
import { FrontDoor } from './http/server.ts';
import { threadRoutes } from './http/thread-routes.ts';
import { callbackRoute } from './interactions/callback-route.ts';
import { Interactions } from './interactions/registry.ts';
import { webhookRoutes } from './interactions/webhook-routes.ts';
import type {
  Fault,
  FaultOptions,
  Guild,
  Host,
  HostEvent,
  HostOptions,
  MessageView,
  NewGuild,
} from './interface.ts';
import { Kernel } from './kernel.ts';
import { Community, foundGuild } from './members/community.ts';
import { messageView } from './members/views.ts';
import { type Settings, settingsOf } from './settings.ts';
import type { Json } from './state/json.ts';

/** Opens a loopback host on 127.0.0.1 and resolves once it listens. Throws when the port is taken. */
export async function openHost(options: HostOptions = {}): Promise<Host> {
  const settings = settingsOf(options);
  const kernel = new Kernel(settings);
  const door = new FrontDoor(kernel);
  const gateway = new Gateway(kernel, door.server);
  const interactions = new Interactions(kernel, gateway);
  const port = await door.open(settings.port, [
    callbackRoute(kernel, interactions),
    ...webhookRoutes(kernel, interactions),
    ...channelRoutes(kernel),
    ...threadRoutes(kernel),
    ...commandRoutes(kernel),
    ...directoryRoutes(kernel),
  ]);
  kernel.origin = `http://127.0.0.1:${port}`;
  kernel.replay(options.replay ?? []);
  if (kernel.room.applicationId === '') {
    const { id = kernel.ids.next(), name = 'the bot' } = options.application ?? {};
    kernel.record({ kind: 'application', id, name });
  }
  kernel.journal.subscribe(event => announce(kernel, gateway, event));
  return new LoopbackHost({ settings, kernel, door, gateway, interactions });
}

interface Parts {
  readonly settings: Settings;
  readonly kernel: Kernel;
  readonly door: FrontDoor;
  readonly gateway: Gateway;
  readonly interactions: Interactions;
}

/** The host as its holder sees it. See `Host` for what each method promises. */
class LoopbackHost implements Host {
  readonly #parts: Parts;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  get url(): string {
    return this.#parts.kernel.origin;
  }
  get api(): string {
    const { origin, secret } = this.#parts.kernel;
    return `${origin}/${secret}/api`;
  }
  get applicationId(): string {
    return this.#parts.kernel.room.applicationId;
  }
  get botId(): string {
    return this.applicationId;
  }
  get guilds(): readonly Guild[] {
    const { kernel, interactions } = this.#parts;
    return [...kernel.room.guilds.values()].map(record => new Community(kernel, interactions, record));
  }
  get requests(): Host['requests'] {
    return this.#parts.door.requests;
  }
  watchRequests(listener: Parameters<Host['watchRequests']>[0]): () => void {
    const { watchers } = this.#parts.door;
    watchers.add(listener);
    return () => watchers.delete(listener);
  }
  get events(): readonly HostEvent[] {
    return this.#parts.kernel.journal.events;
  }

  addGuild(guild: NewGuild): Guild {
    return foundGuild(this.#parts.kernel, this.#parts.interactions, guild);
  }

  commands(guildId?: string): ReturnType<Host['commands']> {
    return this.#parts.kernel.commands.in(guildId);
  }

  get connections(): number {
    return this.#parts.gateway.connections;
  }

  whenReady(shards = this.#parts.settings.shards): Promise<void> {
    return this.#parts.gateway.whenReady(shards);
  }

  latest(message: MessageView | string): MessageView | undefined {
    const record = this.#parts.kernel.messages.get(typeof message === 'string' ? message : message.id);
    return record && messageView(this.#parts.kernel, record);
  }

  repliesTo(interactionId: string): readonly MessageView[] {
    const shown = this.#parts.interactions.get(interactionId)?.shown ?? [];
    return shown.flatMap(id => this.latest(id) ?? []);
  }

  async nextMessage(
    fits: (message: MessageView) => boolean,
    when: Parameters<Host['nextMessage']>[1] = {},
  ): Promise<MessageView> {
    const { promise, resolve, reject } = Promise.withResolvers<MessageView>();
    const withinMs = when.withinMs ?? 5_000;
    const timer = setTimeout(() => reject(new Error(`no such message came within ${withinMs} ms`)), withinMs);
    const look = (event: HostEvent): void => {
      if (event.kind !== 'message-created' && event.kind !== 'message-edited') return;
      if (event.pending) return;
      const seen = messageView(this.#parts.kernel, event);
      if (fits(seen)) resolve(seen);
    };
    const leave = this.subscribe(look, when.afterSeq);
    try {
      return await promise;
    } finally {
      leave();
      clearTimeout(timer);
    }
  }

  file(id: string): ReturnType<Host['file']> {
    const { files } = this.#parts.kernel;
    const stored = files.get(id);
    return stored && files.seen(stored);
  }

  subscribe(listener: (event: HostEvent) => void, sinceSeq?: number): () => void {
    return this.#parts.kernel.journal.subscribe(listener, sinceSeq);
  }
  redeliver(interactionId: string): void {
    this.#parts.interactions.redeliver(interactionId);
  }
  dispatch(name: string, data: unknown, guildId?: string): void {
    this.#parts.gateway.dispatch(name, guildId, 0, () => data as Json);
  }
  dropConnections(code?: number): void {
    this.#parts.gateway.drop(code);
  }
  askToReconnect(): void {
    this.#parts.gateway.askToReconnect();
  }
  hushHeartbeats(): void {
    this.#parts.gateway.hush();
  }
  invalidateSessions(): void {
    this.#parts.gateway.invalidate();
  }
  expireLinks(): void {
    this.#parts.kernel.files.expireLinks();
  }
  faultNext(method: string, path: RegExp, fault: Fault, options?: FaultOptions): void {
    this.#parts.door.faults.lay(method, path, fault, options);
  }
  delayNext(method: string, path: RegExp, ms: number): void {
    this.#parts.door.faults.layDelay(method, path, ms);
  }

  async close(): Promise<void> {
    this.#parts.interactions.close();
    this.#parts.gateway.close();
    await this.#parts.door.close();
  }
  [Symbol.asyncDispose](): Promise<void> {
    return this.close();
  }
}
