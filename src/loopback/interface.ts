/**
 * The member side of the loopback host: what tests, the browser room and the benchmarks hold in their hands.
 * Types only. Ids are snowflakes as decimal strings, times are ISO 8601 in UTC, sizes are bytes.
 */
import type {
  APIApplicationCommand,
  APIApplicationCommandOptionChoice,
  APIMessage,
  APIModalInteractionResponseCallbackData,
  APIUser,
} from 'discord-api-types/v10';

/** A file in a member's hand, before it is uploaded. */
export interface MemberFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Guessed from the name's ending when absent. */
  readonly contentType?: string;
}

/** A file the host keeps, as it hangs on a message or in an option. */
export interface SeenFile {
  readonly id: string;
  readonly name: string;
  readonly size: number;
  readonly contentType: string;
  readonly description?: string;
  /** Loopback address that anyone on this machine may GET. */
  readonly url: string;
  /** The stored bytes themselves, without a request. */
  bytes(): Uint8Array;
}

/** A button or menu of a message, flattened out of rows, sections and containers. */
export interface Control {
  readonly kind:
    | 'button'
    | 'link'
    | 'text-menu'
    | 'user-menu'
    | 'role-menu'
    | 'mentionable-menu'
    | 'channel-menu';
  /** Absent on a link. */
  readonly customId?: string;
  /** A button's label, a menu's placeholder, else ''. */
  readonly label: string;
  readonly disabled: boolean;
  /** Of a text menu. */
  readonly options: readonly { readonly label: string; readonly value: string }[];
}

/** A message as one member sees it, frozen at the moment it was looked at; `host.latest(message)` looks again. */
export interface SeenMessage {
  readonly id: string;
  readonly channelId: string;
  readonly guildId?: string;
  readonly authorId: string;
  /** Only `visibleTo` sees it. */
  readonly ephemeral: boolean;
  /** A user's id when ephemeral, else everyone in the channel. */
  readonly visibleTo: string | 'everyone';
  /** The interaction it answers, for `host.redeliver` and `host.repliesTo`. */
  readonly interactionId?: string;
  /** Every text a reader meets, top to bottom: content, then each text display, joined by newlines. */
  readonly text: string;
  readonly components: NonNullable<APIMessage['components']>;
  readonly controls: readonly Control[];
  readonly files: readonly SeenFile[];
  /** The message object itself, as the platform would send it. */
  readonly raw: APIMessage;
}

/** A field of an open form, flattened out of its label. */
export interface FormField {
  readonly customId: string;
  readonly kind:
    | 'text'
    | 'text-menu'
    | 'user-menu'
    | 'role-menu'
    | 'mentionable-menu'
    | 'channel-menu'
    | 'files'
    | 'one-of'
    | 'some-of'
    | 'tick';
  readonly label: string;
  readonly required: boolean;
  /** Text it starts with. */
  readonly value?: string;
  readonly options: readonly { readonly label: string; readonly value: string }[];
}

/** A form (modal) a member has open. */
export interface OpenForm {
  readonly customId: string;
  readonly title: string;
  readonly fields: readonly FormField[];
  /** The interaction that opened it. */
  readonly interactionId: string;
  readonly raw: APIModalInteractionResponseCallbackData;
}

/** What the bot did with an interaction. `silence`: acknowledged without anything to see. */
export type Outcome =
  | { readonly kind: 'message'; readonly interactionId: string; readonly message: SeenMessage }
  | { readonly kind: 'form'; readonly interactionId: string; readonly form: OpenForm }
  | { readonly kind: 'silence'; readonly interactionId: string };

export type OptionValue = string | number | boolean | MemberFile | Member | Channel | Role;
export type Options = Readonly<Record<string, OptionValue>>;
/** Text, menu values, a tick, or files; a field left out is left empty. */
export type FieldValue = string | boolean | readonly string[] | readonly MemberFile[];
export type Fields = Readonly<Record<string, FieldValue>>;

/** Where a member acts. Default: the first channel of the member's guild. */
export interface Place {
  readonly channel?: Channel;
  /** `bot-dm`: direct messages with the bot; `elsewhere`: a private group the bot is not in (user install). */
  readonly context?: 'guild' | 'bot-dm' | 'elsewhere';
}

/** Everything a member can do that becomes an interaction. `command` is a path such as '/shelf add'. */
export type Action =
  | { readonly do: 'run'; readonly command: string; readonly options?: Options }
  | { readonly do: 'press'; readonly message: SeenMessage; readonly customId: string }
  | {
      readonly do: 'choose';
      readonly message: SeenMessage;
      readonly customId: string;
      readonly values: readonly string[];
    }
  | { readonly do: 'submit'; readonly form: OpenForm; readonly fields: Fields }
  | { readonly do: 'menu'; readonly name: string; readonly target: SeenMessage | Member };

/**
 * A member of one guild. Methods reject with `Refused` when the platform itself would not let the member do it
 * (unknown command, option out of range, disabled button, missing permission), and with `Unanswered` when the bot
 * did not acknowledge in time or left a deferred answer open.
 */
export interface Member {
  readonly id: string;
  readonly name: string;
  readonly guild: Guild;
  readonly user: APIUser;
  /** General form of all below: resolves with whatever the bot showed. */
  perform(action: Action, place?: Place): Promise<Outcome>;
  /** Runs a command; resolves with the first real answer (a deferral is waited out). Rejects if a form opens. */
  run(command: string, options?: Options, place?: Place): Promise<SeenMessage>;
  /** Runs a command that opens a form. */
  openForm(command: string, options?: Options, place?: Place): Promise<OpenForm>;
  /** The choices offered while `focused` (its text so far in `options`) is being typed. */
  complete(
    command: string,
    options: Options,
    focused: string,
    place?: Place,
  ): Promise<readonly APIApplicationCommandOptionChoice[]>;
  press(message: SeenMessage, customId: string): Promise<SeenMessage>;
  pressForForm(message: SeenMessage, customId: string): Promise<OpenForm>;
  choose(message: SeenMessage, customId: string, values: readonly string[]): Promise<SeenMessage>;
  chooseForForm(message: SeenMessage, customId: string, values: readonly string[]): Promise<OpenForm>;
  submit(form: OpenForm, fields: Fields): Promise<SeenMessage>;
  menu(name: string, target: SeenMessage | Member, place?: Place): Promise<SeenMessage>;
  menuForForm(name: string, target: SeenMessage | Member, place?: Place): Promise<OpenForm>;
  postMessage(text: string, files?: readonly MemberFile[], place?: Place): Promise<SeenMessage>;
  /** Deletes a message: an own one, an ephemeral one ("dismiss"), or any with the manage-messages permission. */
  deleteMessage(message: SeenMessage): void;
  /** What this member sees in a channel (default: the guild's first), oldest first. */
  sees(channel?: Channel): readonly SeenMessage[];
  /** Changes take effect on the next interaction. */
  grant(change: {
    readonly permissions?: bigint;
    readonly roles?: readonly Role[];
    readonly locale?: string;
  }): void;
  leave(): void;
}

export interface Role {
  readonly kind: 'role';
  readonly id: string;
  readonly name: string;
}

export interface Channel {
  readonly kind: 'channel';
  readonly id: string;
  readonly name: string;
  readonly guildId: string;
  /** Permission bits the bot has here; posting without them is refused (50001, 50013). */
  allowBot(permissions: bigint): void;
  remove(): void;
}

export interface NewMember {
  readonly name: string;
  /** The same person in another guild, or a fixed id for a replayed room. */
  readonly id?: string;
  /** Permission bits; default: what everyone has in an ordinary channel. Use `permissionBits`. */
  readonly permissions?: bigint;
  readonly roles?: readonly Role[];
  /** Client language, as in 'en-US' or 'es-ES'. Default 'en-US'. */
  readonly locale?: string;
}

export interface NewGuild {
  readonly name: string;
  readonly id?: string;
  readonly locale?: string;
  readonly ownerId?: string;
  /** Names of text channels. Default: ['general']. */
  readonly channels?: readonly string[];
  /** Bits the bot has in every channel until `channel.allowBot`. */
  readonly botPermissions?: bigint;
}

export interface Guild {
  readonly id: string;
  readonly name: string;
  readonly channels: readonly Channel[];
  readonly members: readonly Member[];
  readonly roles: readonly Role[];
  addMember(member: NewMember): Member;
  addChannel(name: string): Channel;
  addRole(name: string, permissions?: bigint): Role;
  /** The bot is thrown out: GUILD_DELETE, and its routes answer 10004 or 50001 from then on. */
  removeBot(): void;
}

/** `close` breaks the socket without an answer, `hang` never answers, `lost` does the work and then breaks the socket. */
export type Fault = 500 | 502 | 429 | 401 | 403 | 404 | 'hang' | 'close' | 'lost';

export interface FaultOptions {
  /** How many matching requests fail. Default 1. */
  readonly times?: number;
  /** Retry-After of a 429 in seconds; `null` leaves the header out. Default 0.05. */
  readonly retryAfter?: number | null;
}

/** One HTTP request the bot made, in order of arrival. */
export interface SeenRequest {
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

/** Everything that appears in the room. `seq` rises by one; replaying the list rebuilds the room. */
export type HostEvent = { readonly seq: number; readonly at: string } & HostEventBody;
export type HostEventBody =
  | { readonly kind: 'application'; readonly id: string; readonly name: string; readonly key: string }
  | {
      readonly kind: 'guild-added';
      readonly id: string;
      readonly name: string;
      readonly locale: string;
      readonly ownerId: string;
      readonly botPermissions: string;
    }
  | { readonly kind: 'guild-removed'; readonly id: string }
  | { readonly kind: 'channel-added'; readonly guildId: string; readonly id: string; readonly name: string }
  | { readonly kind: 'channel-changed'; readonly id: string; readonly botPermissions: string }
  | { readonly kind: 'channel-removed'; readonly guildId: string; readonly id: string }
  | {
      readonly kind: 'role-added';
      readonly guildId: string;
      readonly id: string;
      readonly name: string;
      readonly permissions: string;
    }
  | {
      readonly kind: 'member-joined' | 'member-changed';
      readonly guildId: string;
      readonly id: string;
      readonly name: string;
      readonly permissions: string;
      readonly roles: readonly string[];
      readonly locale: string;
    }
  | { readonly kind: 'member-left'; readonly guildId: string; readonly id: string }
  | {
      readonly kind: 'file-stored';
      readonly id: string;
      readonly name: string;
      readonly contentType: string;
      readonly bytes: Uint8Array;
    }
  | {
      readonly kind: 'message-created' | 'message-edited';
      readonly message: APIMessage;
      readonly guildId?: string;
      readonly visibleTo: string | 'everyone';
      readonly interactionId?: string;
      readonly pending: boolean;
    }
  | {
      readonly kind: 'message-deleted';
      readonly id: string;
      readonly channelId: string;
      readonly visibleTo: string | 'everyone';
    }
  | { readonly kind: 'form-opened'; readonly form: OpenForm; readonly visibleTo: string }
  | {
      readonly kind: 'interaction-sent';
      readonly interactionId: string;
      readonly userId: string;
      readonly channelId: string;
      readonly what: string;
    }
  | { readonly kind: 'interaction-acknowledged'; readonly interactionId: string; readonly afterMs: number }
  | {
      readonly kind: 'interaction-failed';
      readonly interactionId: string;
      readonly userId: string;
      readonly why: string;
    }
  | {
      readonly kind: 'commands-changed';
      readonly guildId?: string;
      readonly commands: readonly APIApplicationCommand[];
    };

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
  readonly application?: { readonly id?: string; readonly name?: string };
  /** Events of an earlier host: its guilds, members, files and messages stand again under the same ids. */
  readonly replay?: Iterable<HostEvent>;
}

export interface Host extends AsyncDisposable {
  /** `http://127.0.0.1:PORT` */
  readonly url: string;
  /** For the client's `rest.api`: `${url}/api`. */
  readonly api: string;
  readonly applicationId: string;
  readonly botId: string;
  readonly guilds: readonly Guild[];
  addGuild(guild: NewGuild): Guild;
  /** Registered commands of one guild, or the global ones. */
  commands(guildId?: string): readonly APIApplicationCommand[];
  /** Resolves when `shards` sessions (default: the recommended number) have identified. */
  whenReady(shards?: number): Promise<void>;
  /** Looks at a message again; undefined once deleted. */
  latest(message: SeenMessage | string): SeenMessage | undefined;
  /** Everything shown for one interaction, first answer first. */
  repliesTo(interactionId: string): readonly SeenMessage[];
  /** The first message, already there (after `seq`) or still to come, that fits; rejects after `withinMs` (default 5000). */
  nextMessage(
    fits: (message: SeenMessage) => boolean,
    when?: { readonly afterSeq?: number; readonly withinMs?: number },
  ): Promise<SeenMessage>;
  file(id: string): SeenFile | undefined;
  /** Requests of the bot so far (the last 10 000). */
  readonly requests: readonly SeenRequest[];
  /** Everything since the start. */
  readonly events: readonly HostEvent[];
  /** Calls for each past event after `sinceSeq` (default: none), then for each new one; returns the unsubscriber. */
  subscribe(listener: (event: HostEvent) => void, sinceSeq?: number): () => void;
  /** Sends the same dispatch once more, as a flaky gateway does. */
  redeliver(interactionId: string): void;
  /** Breaks every gateway socket; sessions stay resumable. With a code: closes with it. */
  dropConnections(code?: number): void;
  /** Asks every session to reconnect (op 7); it may resume. */
  askToReconnect(): void;
  /** Forgets every session and says so (op 9): a fresh identify is needed, missed events are lost. */
  invalidateSessions(): void;
  /** The next request that fits fails this way. `path` is tested against the decoded path after `/api/v10`. */
  faultNext(method: string, path: RegExp, fault: Fault, options?: FaultOptions): void;
  /** Adds to each acknowledgement's arrival, as a slow network does. */
  delayNext(method: string, path: RegExp, ms: number): void;
  close(): Promise<void>;
}
