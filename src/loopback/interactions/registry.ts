import type { Gateway } from '../gateway/gateway.ts';
import type { Kernel } from '../kernel.ts';
import { refusal } from '../refusals/findings.ts';
import { Unanswered } from '../refused.ts';
import type { Ask } from './ask.ts';
import { callbackTypes, type Ending, type Live } from './live.ts';
import { payloadOf } from './payload.ts';

/** Interactions under way, by id and by token. */
export class Interactions {
  readonly #kernel: Kernel;
  readonly #gateway: Gateway;
  readonly #byId = new Map<string, Live>();
  readonly #byToken = new Map<string, Live>();
  readonly #timers = new Set<NodeJS.Timeout>();

  constructor(kernel: Kernel, gateway: Gateway) {
    this.#kernel = kernel;
    this.#gateway = gateway;
  }

  /** Sends an interaction; resolves with what the bot made of it, rejects with `Unanswered`. */
  send(ask: Ask): { readonly id: string; readonly ending: Promise<Ending> } {
    const id = this.#kernel.ids.next();
    const token = Buffer.from(`interaction:${id}:${crypto.randomUUID()}`).toString('base64url');
    const guildId = ask.channel.guildId;
    const { promise, resolve, reject } = Promise.withResolvers<Ending>();
    const timer = this.#after(this.#kernel.settings.acknowledgeWithinMs, () => {
      if (live.acknowledgedAs === undefined) live.giveUp('The application did not respond');
    });
    let over = false;
    const live: Live = {
      id,
      token,
      type: ask.type,
      userId: ask.userId,
      guildId,
      channelId: ask.channel.id,
      context: ask.channel.context,
      dispatch: payloadOf(this.#kernel, ask, id, token),
      sourceMessageId: ask.sourceMessageId,
      focusedType: ask.focusedType ?? 3,
      sentAt: performance.now(),
      settle: ending => {
        over = true;
        this.#cancel(timer);
        resolve(ending);
      },
      giveUp: why => {
        this.#cancel(timer);
        if (over) return;
        over = true;
        this.#kernel.record({ kind: 'interaction-failed', interactionId: id, userId: ask.userId, why });
        reject(new Unanswered(id, `${ask.what}: ${why}`));
      },
      acknowledgedAs: undefined,
      originalId: undefined,
      followUps: 0,
      shown: [],
    };
    this.#byId.set(id, live);
    this.#byToken.set(token, live);
    this.#forgetOldest();
    const about = { interactionId: id, userId: ask.userId, channelId: ask.channel.id, what: ask.what };
    this.#kernel.record({ kind: 'interaction-sent', ...about });
    if (this.#gateway.hasListener(guildId)) this.#deliver(live);
    else live.giveUp('the bot is not connected');
    return { id, ending: promise };
  }

  redeliver(id: string): void {
    const live = this.#byId.get(id);
    if (!live) throw new Error(`no interaction ${id} to deliver again`);
    this.#deliver(live);
  }

  get(id: string): Live | undefined {
    return this.#byId.get(id);
  }

  /** The interaction a callback is for. Refuses unknown, answered and late ones. */
  toAnswer(id: string, token: string): Live {
    const live = this.#byId.get(id);
    if (!live || live.token !== token) throw refusal('interaction-unknown', 'Unknown interaction');
    if (live.acknowledgedAs !== undefined)
      throw refusal('acknowledged-twice', 'Interaction has already been acknowledged.');
    if (performance.now() - live.sentAt > this.#kernel.settings.acknowledgeWithinMs)
      throw refusal('interaction-late', 'Unknown interaction');
    return live;
  }

  /** The interaction of a follow-up token. Refuses unknown, outlived and unanswered ones. */
  byToken(token: string): Live {
    const live = this.#byToken.get(token);
    const isOver = live && performance.now() - live.sentAt > this.#kernel.settings.tokenLifetimeMs;
    if (!live || isOver) throw refusal('webhook-token', 'Invalid Webhook Token');
    if (live.acknowledgedAs === undefined) throw refusal('webhook-early', 'Unknown Webhook');
    return live;
  }

  /** Notes the first answer; a deferred one must be completed within the member's patience. */
  acknowledge(live: Live, callbackType: number): void {
    live.acknowledgedAs = callbackType;
    const afterMs = performance.now() - live.sentAt;
    this.#kernel.record({ kind: 'interaction-acknowledged', interactionId: live.id, afterMs });
    if (callbackType === callbackTypes.deferMessage)
      this.#after(this.#kernel.settings.patienceMs, () => live.giveUp('a deferred answer was left open'));
    if (callbackType === callbackTypes.deferUpdate)
      this.#after(this.#kernel.settings.patienceMs, () =>
        live.settle({ kind: 'silence', interactionId: live.id }),
      );
  }

  close(): void {
    for (const timer of this.#timers) clearTimeout(timer);
    this.#timers.clear();
    for (const live of this.#byId.values())
      if (live.acknowledgedAs === undefined) live.giveUp('the host has closed');
  }

  #forgetOldest(): void {
    const oldest = this.#byId.values().next().value;
    if (!oldest || this.#byId.size <= this.#kernel.settings.keep) return;
    this.#byId.delete(oldest.id);
    this.#byToken.delete(oldest.token);
  }

  #deliver(live: Live): void {
    this.#gateway.dispatch('INTERACTION_CREATE', live.guildId, 0, () => live.dispatch);
  }

  #after(ms: number, act: () => void): NodeJS.Timeout {
    const timer = setTimeout(() => {
      this.#timers.delete(timer);
      act();
    }, ms);
    this.#timers.add(timer.unref());
    return timer;
  }

  #cancel(timer: NodeJS.Timeout): void {
    clearTimeout(timer);
    this.#timers.delete(timer);
  }
}
