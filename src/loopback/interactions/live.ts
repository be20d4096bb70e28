import type { APIApplicationCommandOptionChoice } from 'discord-api-types/v10';
import type { Outcome } from '../interface/views.ts';
import type { Json } from '../state/json.ts';

/** Interaction types. Source: platform documentation, Interactions > Receiving and Responding > Interaction Type. */
export const interactionTypes = { command: 2, component: 3, autocomplete: 4, form: 5 } as const;

/** Callback types. Source: same page, Interaction Callback Type. */
export const callbackTypes = {
  message: 4,
  deferMessage: 5,
  deferUpdate: 6,
  update: 7,
  choices: 8,
  form: 9,
} as const;

/** What the bot made of an interaction; autocomplete ends in choices. */
export type Ending =
  | Outcome
  | { readonly kind: 'choices'; readonly choices: readonly APIApplicationCommandOptionChoice[] };

/** An interaction under way. */
export interface Live {
  readonly id: string;
  readonly token: string;
  readonly type: number;
  readonly userId: string;
  readonly guildId: string | undefined;
  readonly channelId: string;
  readonly context: 'guild' | 'bot-dm' | 'elsewhere';
  /** What the gateway carries, kept for a second delivery. */
  readonly dispatch: Json;
  /** The message a component or its form hangs on. */
  readonly sourceMessageId: string | undefined;
  /** Type of the option that is being typed, for autocomplete. */
  readonly focusedType: number;
  /** Monotonic milliseconds. */
  readonly sentAt: number;
  readonly settle: (ending: Ending) => void;
  readonly giveUp: (why: string) => void;
  acknowledgedAs: number | undefined;
  originalId: string | undefined;
  followUps: number;
  /** Messages shown for it, in order. */
  readonly shown: string[];
}
