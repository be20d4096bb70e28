/** What guilds, channels and members are and can do. Permissions are bit sets, see `permissionBits`. */
import type { APIApplicationCommandOptionChoice, APIUser } from 'discord-api-types/v10';
import type { MemberFile, MessageView, OpenForm, Outcome } from './views.ts';

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
  | { readonly do: 'press'; readonly message: MessageView; readonly customId: string }
  | {
      readonly do: 'choose';
      readonly message: MessageView;
      readonly customId: string;
      readonly values: readonly string[];
    }
  | { readonly do: 'submit'; readonly form: OpenForm; readonly fields: Fields }
  | { readonly do: 'menu'; readonly name: string; readonly target: MessageView | Member };

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
  run(command: string, options?: Options, place?: Place): Promise<MessageView>;
  /** Runs a command that opens a form. */
  openForm(command: string, options?: Options, place?: Place): Promise<OpenForm>;
  /** The choices offered while `focused` (its text so far in `options`) is being typed. */
  complete(
    command: string,
    options: Options,
    focused: string,
    place?: Place,
  ): Promise<readonly APIApplicationCommandOptionChoice[]>;
  press(message: MessageView, customId: string): Promise<MessageView>;
  pressForForm(message: MessageView, customId: string): Promise<OpenForm>;
  choose(message: MessageView, customId: string, values: readonly string[]): Promise<MessageView>;
  chooseForForm(message: MessageView, customId: string, values: readonly string[]): Promise<OpenForm>;
  submit(form: OpenForm, fields: Fields): Promise<MessageView>;
  menu(name: string, target: MessageView | Member, place?: Place): Promise<MessageView>;
  menuForForm(name: string, target: MessageView | Member, place?: Place): Promise<OpenForm>;
  postMessage(text: string, files?: readonly MemberFile[], place?: Place): Promise<MessageView>;
  /** Forwards a message: the new one carries a snapshot of what it says and shows, and nothing of its own. */
  forward(message: MessageView, place?: Place): MessageView;
  /** Deletes a message: an own one, an ephemeral one ("dismiss"), or any with the manage-messages permission. */
  deleteMessage(message: MessageView): void;
  /** What this member sees in a place (default: the guild's first channel), oldest first. */
  sees(place?: Place): readonly MessageView[];
  /** Changes take effect on the next interaction. */
  grant(change: {
    readonly permissions?: bigint;
    readonly roles?: readonly Role[];
    readonly locale?: string;
    readonly directMessages?: boolean;
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
  /** Archives a thread; a locked one is opened again by those who manage threads only. */
  archive(locked?: boolean): void;
  /** True for a thread that lies in the archive. */
  readonly archived: boolean;
  /** Permission bits the bot has here; posting without them is refused (50001, 50013). */
  allowBot(permissions: bigint): void;
  remove(): void;
}

export interface NewMember {
  readonly name: string;
  /** The same person in another guild, or a fixed id for a replayed room. */
  readonly id?: string;
  /** Permission bits beyond what everyone has in an ordinary channel. Use `permissionBits`. */
  readonly permissions?: bigint;
  readonly roles?: readonly Role[];
  /** Client language, as in 'en-US' or 'es-ES'. Default 'en-US'. */
  readonly locale?: string;
  /** Whether direct messages from the bot are let in. Default true; else posting one is refused (50007). */
  readonly directMessages?: boolean;
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
  /** The bot is not in this guild: its members use the commands they installed for themselves. */
  readonly foreign?: boolean;
}

/** An entry in the calendar of a guild (a scheduled event); times in ISO 8601. */
export interface CalendarEntry {
  readonly id: string;
  readonly name: string;
  readonly says: string;
  readonly starts: string;
  readonly ends: string;
}

export interface Guild {
  readonly id: string;
  readonly name: string;
  readonly channels: readonly Channel[];
  readonly members: readonly Member[];
  readonly roles: readonly Role[];
  /** Threads and forum posts, archived ones included. */
  readonly threads: readonly Channel[];
  readonly calendar: readonly CalendarEntry[];
  addMember(member: NewMember): Member;
  addChannel(name: string): Channel;
  /** A channel that holds posts only, each a thread. */
  addForum(name: string): Channel;
  /** A public thread of a channel, or a post of a forum. Default: of the first channel. */
  addThread(name: string, parent?: Channel): Channel;
  addRole(name: string, permissions?: bigint, mentionable?: boolean): Role;
  /** The bot is thrown out: GUILD_DELETE, and its routes answer 10004 or 50001 from then on. */
  removeBot(): void;
}
