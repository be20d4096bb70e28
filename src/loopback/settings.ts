import type { Limit } from './http/limits.ts';
import type { HostOptions } from './interface/host.ts';

const mebibyte = 1024 * 1024;

/** Options with their defaults filled in. */
export interface Settings {
  readonly port: number;
  readonly shards: number;
  readonly acknowledgeWithinMs: number;
  readonly tokenLifetimeMs: number;
  readonly patienceMs: number;
  readonly heartbeatMs: number;
  readonly attachmentSizeLimit: number;
  readonly requestSizeLimit: number;
  readonly keep: number;
  readonly token: string | undefined;
  readonly privilegedIntents: number;
  readonly limits: { readonly global: Limit | undefined; readonly channel: Limit | undefined };
  readonly now: () => number;
}

/** 50 a second in all: Topics > Rate Limits. 5 messages in 5 seconds of a channel: observed, it may change. */
const usual = { global: { count: 50, withinMs: 1_000 }, channel: { count: 5, withinMs: 5_000 } };

/** Sources of the defaults: 3 s and 15 min, Interactions > Receiving and Responding; 10 and 25 MiB, Reference > Uploading Files. */
export function settingsOf(options: HostOptions): Settings {
  return {
    port: options.port ?? 0,
    shards: options.shards ?? 1,
    acknowledgeWithinMs: options.acknowledgeWithinMs ?? 3_000,
    tokenLifetimeMs: options.tokenLifetimeMs ?? 15 * 60_000,
    patienceMs: options.patienceMs ?? 60_000,
    heartbeatMs: options.heartbeatMs ?? 41_250,
    attachmentSizeLimit: options.attachmentSizeLimit ?? 10 * mebibyte,
    requestSizeLimit: options.requestSizeLimit ?? 25 * mebibyte,
    keep: options.keep ?? Number.POSITIVE_INFINITY,
    now: options.now ?? Date.now,
    token: options.token,
    privilegedIntents: options.privilegedIntents ?? 0,
    limits:
      options.limits === 'none' ? { global: undefined, channel: undefined } : { ...usual, ...options.limits },
  };
}
