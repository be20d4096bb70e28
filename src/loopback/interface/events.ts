/** Everything that appears in the room, as data. Times are ISO 8601 in UTC. */
import type { APIApplicationCommand, APIMessage } from 'discord-api-types/v10';
import type { CalendarEntry } from './people.ts';
import type { OpenForm } from './views.ts';

/** Everything that appears in the room. `seq` rises by one; replaying the list rebuilds the room. */
export type HostEvent = { readonly seq: number; readonly at: string } & HostEventBody;
export type HostEventBody =
  | { readonly kind: 'application'; readonly id: string; readonly name: string }
  | {
      readonly kind: 'guild-added';
      readonly id: string;
      readonly name: string;
      readonly locale: string;
      readonly ownerId: string;
      readonly botPermissions: string;
      /** True for a guild the bot is not in: its members may bring it along themselves. */
      readonly foreign?: boolean;
    }
  | { readonly kind: 'guild-removed'; readonly id: string }
  | {
      readonly kind: 'channel-added';
      readonly guildId: string;
      readonly id: string;
      readonly name: string;
      /** A text channel where absent. */
      readonly form?: 'text' | 'forum' | 'thread';
      /** The channel or forum that a thread belongs to. */
      readonly parentId?: string;
    }
  | {
      readonly kind: 'thread-changed';
      readonly guildId: string;
      readonly id: string;
      readonly archived: boolean;
      readonly locked: boolean;
    }
  | {
      readonly kind: 'private-channel-added';
      readonly id: string;
      readonly userId: string;
      readonly context: 'bot-dm' | 'elsewhere';
    }
  | {
      readonly kind: 'calendar-changed';
      readonly guildId: string;
      readonly id: string;
      /** Absent when it was taken out. */
      readonly entry?: CalendarEntry;
    }
  | { readonly kind: 'channel-changed'; readonly id: string; readonly botPermissions: string }
  | { readonly kind: 'channel-removed'; readonly guildId: string; readonly id: string }
  | {
      readonly kind: 'role-added';
      readonly guildId: string;
      readonly id: string;
      readonly name: string;
      readonly permissions: string;
      /** Absent where anybody may call it. */
      readonly mentionable?: boolean;
    }
  | {
      readonly kind: 'member-joined' | 'member-changed';
      readonly guildId: string;
      readonly id: string;
      readonly name: string;
      readonly permissions: string;
      readonly roles: readonly string[];
      readonly locale: string;
      readonly directMessages: boolean;
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
      readonly visibleTo: string;
      readonly interactionId?: string;
      readonly pending: boolean;
    }
  | {
      readonly kind: 'message-deleted';
      readonly id: string;
      readonly channelId: string;
      readonly visibleTo: string;
    }
  | {
      readonly kind: 'form-opened';
      readonly form: OpenForm;
      readonly visibleTo: string;
      readonly channelId: string;
      readonly sourceMessageId?: string;
    }
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
