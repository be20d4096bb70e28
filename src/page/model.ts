/** What the server of the room and the page in the browser say to each other. Types only. */

import type {
  APIApplicationCommand,
  APIMessage,
  APIModalInteractionResponseCallbackData,
} from 'discord-api-types/v10';
import type { Language } from '../words/sentence.ts';

export type { Language };

/** Somebody who may be played: a member of one group. */
export type Seat = {
  readonly member: string;
  readonly name: string;
  readonly group: string;
  readonly groupName: string;
  readonly steward: boolean;
  readonly language: Language;
};

export type ShownFile = {
  readonly id: string;
  readonly name: string;
  readonly size: number;
  readonly contentType: string;
  /** Of a picture, pixels. */
  readonly width?: number;
  readonly height?: number;
};

/** A message as the member in a seat sees it. */
export type Shown = {
  readonly id: string;
  /** ISO 8601, UTC. */
  readonly at: string;
  readonly author: string;
  readonly fromBot: boolean;
  /** True when nobody else sees it. */
  readonly onlyYou: boolean;
  /** Announced, its answer still to come. */
  readonly pending: boolean;
  readonly edited: boolean;
  readonly text: string;
  readonly components: NonNullable<APIMessage['components']>;
  readonly files: readonly ShownFile[];
  readonly asked?: Asked;
  /** The interaction it answers. */
  readonly interaction?: string;
};

/** Who asked what a message answers, in the words it was asked with. */
export type Asked = {
  readonly by: string;
  readonly line: string;
  /** Of a fold that was opened: the message it belongs to, and its button there. */
  readonly unfolds?: { readonly message: string; readonly customId: string };
};

/** A question on its way. */
export type Waiting = Asked & { readonly interaction: string };

export type Command = Pick<APIApplicationCommand, 'name' | 'description' | 'type' | 'options'> & {
  readonly name_localizations?: Readonly<Record<string, string | null>> | null;
  readonly description_localizations?: Readonly<Record<string, string | null>> | null;
};

/** A form that is open before the member. */
export type ShownForm = {
  readonly interaction: string;
  readonly raw: APIModalInteractionResponseCallbackData;
};

/** Everything the page needs to stand, as it was at one moment. */
export type Snapshot = {
  readonly seat: Seat;
  readonly seats: readonly Seat[];
  readonly commands: readonly Command[];
  readonly messages: readonly Shown[];
  readonly waiting: readonly Waiting[];
  readonly form: ShownForm | null;
  /** True once the assistant answers. */
  readonly ready: boolean;
};

/** What changes afterwards. */
export type Change =
  | { readonly kind: 'everything'; readonly snapshot: Snapshot }
  | { readonly kind: 'message'; readonly message: Shown }
  | { readonly kind: 'gone'; readonly id: string }
  | { readonly kind: 'waiting'; readonly waiting: Waiting }
  | { readonly kind: 'settled'; readonly interaction: string }
  | { readonly kind: 'form'; readonly form: ShownForm }
  | { readonly kind: 'seats'; readonly seats: readonly Seat[] }
  | { readonly kind: 'commands'; readonly commands: readonly Command[] }
  | { readonly kind: 'ready' };

/** What somebody does. Files travel beside it, named as the options, fields or `post` that take them. */
export type PageAction =
  | {
      readonly do: 'run';
      readonly command: string;
      readonly options: Readonly<Record<string, string | number | boolean>>;
      readonly line: string;
    }
  | { readonly do: 'press'; readonly message: string; readonly customId: string; readonly line: string }
  | {
      readonly do: 'choose';
      readonly message: string;
      readonly customId: string;
      readonly values: readonly string[];
      readonly line: string;
    }
  | {
      readonly do: 'submit';
      readonly form: string;
      readonly fields: Readonly<Record<string, string | boolean | readonly string[]>>;
      readonly line: string;
    }
  | { readonly do: 'point'; readonly entry: string; readonly message: string; readonly line: string }
  | { readonly do: 'post'; readonly text: string }
  | { readonly do: 'put-away'; readonly message: string };

/** `unfit`: the room would not let it through. `silent`: no answer came. */
export type ActionResult =
  | { readonly done: true }
  | { readonly done: false; readonly why: 'unfit' | 'silent' | 'gone'; readonly detail: string };

/** What is being typed, for suggestions from the assistant. */
export type Typing = {
  readonly command: string;
  readonly options: Readonly<Record<string, string | number | boolean>>;
  readonly focused: string;
};

export type Suggested = {
  readonly name: string;
  readonly value: string | number;
  /** The colour it is, `#rrggbb`, where it is one. */
  readonly hex?: string | undefined;
};

/** A seat to be made; `group` is an id, or `groupName` founds a new one. */
export type NewSeat = {
  readonly name: string;
  readonly group?: string;
  readonly groupName?: string;
  readonly steward: boolean;
  readonly language: Language;
};
