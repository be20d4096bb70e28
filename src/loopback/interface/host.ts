/** The host itself: opening it, watching it, making it misbehave. */
import type { APIApplicationCommand } from 'discord-api-types/v10';
import type { HostEvent } from './events.ts';
import type { Guild, NewGuild } from './people.ts';
import type { FileView, MessageView } from './views.ts';

/** `close` breaks the socket without an answer, `hang` never answers, `lost` does the work and then breaks the socket. */
export type Fault = 500 | 502 | 429 | 401 | 403 | 404 | 'hang' | 'close' | 'lost';

export interface FaultOptions {
  /** How many matching requests fail. Default 1. */
  readonly times?: number;
  /** Retry-After of a 429 in seconds; `null` leaves the header out. Default 0.05. */
  readonly retryAfter?: number | null;
}

/** One HTTP request the bot made, in order of arrival. */
export interface RequestView {
  readonly method: string;
  /** Decoded path after `/api/v10`. */
  readonly path: string;
  readonly query: string;
  /** Parsed JSON (of `payload_json` when multipart), else undefined. */
  readonly body: unknown;
  readonly files: number;
  /** Undefined while unanswered. */
  readonly status?: number;
  /** The platform's error code when it was refused. */
  readonly code?: number;
}

export interface HostOptions {
  /** Default 0: any free port. Always on 127.0.0.1. */
  readonly port?: number;
  /** Shards recommended to the bot. Default 1. */
  readonly shards?: number;
  /** Default 3000. */
  readonly acknowledgeWithinMs?: number;
  /** How long an interaction's token works. Default 15 minutes. */
  readonly tokenLifetimeMs?: number;
  /** How long a member waits for the end of a deferred answer. Default 60 000. */
  readonly patienceMs?: number;
  /** Default 41 250. */
  readonly heartbeatMs?: number;
  /** Bytes a file; default 10 MiB. */
  readonly attachmentSizeLimit?: number;
  /** Bytes a request; default 25 MiB. */
  readonly requestSizeLimit?: number;
  /** Milliseconds since 1970; snowflakes carry it. Default Date.now. */
  readonly now?: () => number;
  /** The bot's token. Default: the first that is shown; any other is refused from then on (401, 4004). */
  readonly token?: string;
  /** Privileged intents that were granted; asking for others is refused (4014). Default: none. */
  readonly privilegedIntents?: number;
  /** Rate limits of the bot's own requests; interactions are exempt. Default: 50 a second, 5 messages a channel in 5 s. */
  readonly limits?:
    | 'none'
    | {
        readonly global?: { readonly count: number; readonly withinMs: number };
        readonly channel?: { readonly count: number; readonly withinMs: number };
      };
  readonly application?: { readonly id?: string; readonly name?: string };
  /**
   * How many events, messages and interactions are kept before the oldest fall off. Default: all of them. Set it for
   * long runs, and well above what is in flight.
   */
  readonly keep?: number;
  /** Events of an earlier host: its guilds, members, files and messages stand again under the same ids. */
  readonly replay?: Iterable<HostEvent>;
}

export interface Host extends AsyncDisposable {
  /** `http://127.0.0.1:PORT` */
  readonly url: string;
  /** For the client's `rest.api`: under `url`, behind a secret that is made at each start. */
  readonly api: string;
  readonly applicationId: string;
  readonly botId: string;
  readonly guilds: readonly Guild[];
  addGuild(guild: NewGuild): Guild;
  /** Registered commands of one guild, or the global ones. */
  commands(guildId?: string): readonly APIApplicationCommand[];
  /** Resolves when `shards` sessions (default: the recommended number) have identified. */
  whenReady(shards?: number): Promise<void>;
  /** Gateway sockets that are open now. A killed bot's is open until its end has been heard. */
  readonly connections: number;
  /** Looks at a message again; undefined once deleted. */
  latest(message: MessageView | string): MessageView | undefined;
  /** Everything shown for one interaction, first answer first. */
  repliesTo(interactionId: string): readonly MessageView[];
  /** The first message, already there (after `seq`) or still to come, that fits; rejects after `withinMs` (default 5000). */
  nextMessage(
    fits: (message: MessageView) => boolean,
    when?: { readonly afterSeq?: number; readonly withinMs?: number },
  ): Promise<MessageView>;
  file(id: string): FileView | undefined;
  /** Requests of the bot so far (the last 10 000). */
  readonly requests: readonly RequestView[];
  /** Calls for each request that was read and answered, with its status; returns the unsubscriber. */
  watchRequests(listener: (request: RequestView) => void): () => void;
  /** Everything since the start, or the last `keep` or more. */
  readonly events: readonly HostEvent[];
  /** Calls for each past event after `sinceSeq` (default: none), then for each new one; returns the unsubscriber. */
  subscribe(listener: (event: HostEvent) => void, sinceSeq?: number): () => void;
  /** Sends the same dispatch once more, as a flaky gateway does. */
  redeliver(interactionId: string): void;
  /** Sends any dispatch as it is, however malformed, to the shard of a guild (default: the first). */
  dispatch(name: string, data: unknown, guildId?: string): void;
  /** Breaks every gateway socket; sessions stay resumable. With a code: closes with it. */
  dropConnections(code?: number): void;
  /** Every file address handed out so far stops working, as they do after a day; fresh ones come with the message. */
  expireLinks(): void;
  /** Asks every session to reconnect (op 7); it may resume. */
  askToReconnect(): void;
  /** Answers no heartbeat any more on the sockets there are, as a connection that has died unnoticed. */
  hushHeartbeats(): void;
  /** Forgets every session and says so (op 9): a fresh identify is needed, missed events are lost. */
  invalidateSessions(): void;
  /** The next request that fits fails this way. `path` is tested against the decoded path after `/api/v10`. */
  faultNext(method: string, path: RegExp, fault: Fault, options?: FaultOptions): void;
  /** Adds to each acknowledgement's arrival, as a slow network does. */
  delayNext(method: string, path: RegExp, ms: number): void;
  close(): Promise<void>;
}
