/** What appears before a member's eyes. Ids are snowflakes as decimal strings, sizes are bytes. */
import type { APIMessage, APIModalInteractionResponseCallbackData } from 'discord-api-types/v10';

/** A file in a member's hand, before it is uploaded. */
export interface MemberFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Guessed from the name's ending when absent. */
  readonly contentType?: string;
}

/** A file the host keeps, as it hangs on a message or in an option. */
export interface FileView {
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
export interface MessageView {
  readonly id: string;
  readonly channelId: string;
  readonly guildId?: string;
  readonly authorId: string;
  /** Only `visibleTo` sees it. */
  readonly ephemeral: boolean;
  /** A user's id when ephemeral, else everyone in the channel. */
  readonly visibleTo: string;
  /** The interaction it answers, for `host.redeliver` and `host.repliesTo`. */
  readonly interactionId?: string;
  /** Every text a reader meets, top to bottom: content, then each text display, joined by newlines. */
  readonly text: string;
  readonly components: NonNullable<APIMessage['components']>;
  readonly controls: readonly Control[];
  readonly files: readonly FileView[];
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
  | { readonly kind: 'message'; readonly interactionId: string; readonly message: MessageView }
  | { readonly kind: 'form'; readonly interactionId: string; readonly form: OpenForm }
  | { readonly kind: 'silence'; readonly interactionId: string };
