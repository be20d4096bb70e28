/** Rate limits of the bot's requests. Source: platform documentation, Topics > Rate Limits. */
import { createHash } from 'node:crypto';

/** So many requests within so many ms. */
export interface Limit {
  readonly count: number;
  readonly withinMs: number;
}

/** What a request is told of its limit; `retryAfter` in seconds when it is one too many. */
export interface Verdict {
  readonly headers: Readonly<Record<string, string>>;
  readonly retryAfter?: number;
  readonly global: boolean;
}

const allowed: Verdict = { headers: {}, global: false };

/** Fixed windows: one for everything, and one for writing in each channel. */
export class Limits {
  readonly #global: Limit | undefined;
  readonly #channel: Limit | undefined;
  readonly #windows = new Map<string, { until: number; left: number }>();

  constructor(limits: { readonly global: Limit | undefined; readonly channel: Limit | undefined }) {
    this.#global = limits.global;
    this.#channel = limits.channel;
  }

  /** Counts a request of the bot. Answers to interactions are no matter of these limits: do not ask for them. */
  take(method: string, path: string): Verdict {
    const now = performance.now();
    if (this.#global) {
      const all = this.#use('everything', this.#global, now);
      if (all.left < 0) return refused(all.until - now, true, {});
    }
    const [, channel] = /^\/channels\/(\d+)\/messages/.exec(path) ?? [];
    if (!this.#channel || channel === undefined || method === 'GET') return allowed;
    // Posting and editing are two buckets, each of its channel.
    const name = `${method} ${channel}`;
    const { left, until } = this.#use(name, this.#channel, now);
    const headers = {
      'x-ratelimit-limit': String(this.#channel.count),
      'x-ratelimit-remaining': String(Math.max(left, 0)),
      'x-ratelimit-reset': ((Date.now() + until - now) / 1000).toFixed(3),
      'x-ratelimit-reset-after': ((until - now) / 1000).toFixed(3),
      'x-ratelimit-bucket': createHash('md5').update(method).digest('hex'),
    };
    return left < 0 ? refused(until - now, false, headers) : { headers, global: false };
  }

  #use(
    name: string,
    { count, withinMs }: Limit,
    now: number,
  ): { readonly left: number; readonly until: number } {
    const open = this.#windows.get(name);
    const window = open && open.until > now ? open : { until: now + withinMs, left: count };
    window.left -= 1;
    this.#windows.set(name, window);
    return window;
  }
}

function refused(waitMs: number, global: boolean, headers: Readonly<Record<string, string>>): Verdict {
  const retryAfter = Math.ceil(waitMs) / 1000;
  return {
    headers: {
      ...headers,
      'retry-after': String(Math.ceil(retryAfter)),
      'x-ratelimit-scope': global ? 'global' : 'user',
      ...(global && { 'x-ratelimit-global': 'true' }),
    },
    retryAfter,
    global,
  };
}
