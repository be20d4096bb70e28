import type { Language } from '../words/sentence.ts';

/** A picture or file somebody handed in; nothing is read before it is asked for. */
export type Attachment = {
  /** The platform's id of the file, where it has one. */
  readonly id?: string;
  readonly name: string;
  readonly mediaType: string | undefined;
  /** Size in bytes as claimed by the front; the reader checks for itself. */
  readonly size: number;
  read(): Promise<Uint8Array>;
};

export type OptionValue = string | number | boolean | Attachment;
export type Given = Readonly<Record<string, OptionValue>>;

export type Asker = {
  readonly id: string;
  readonly name: string;
  /** May manage the group on the platform. The group's own steward role is looked up in the records. */
  readonly manages: boolean;
  readonly roles: readonly string[];
  /** When they joined the group, milliseconds since 1970 UTC; undefined where the front cannot know. */
  readonly joinedAt?: number;
};

/** What every question states, whoever carried it here. */
export type Origin = {
  /** The interaction's id: the same question delivered twice has the same id. */
  readonly id: string;
  /** When it was asked, milliseconds since 1970 UTC. */
  readonly at: number;
  readonly asker: Asker;
  readonly group: string;
  readonly channel: string | undefined;
  readonly language: Language;
  /** The member's locale tag as the front states it, such as `en-GB`; undefined where it states none. */
  readonly locale?: string | undefined;
};

export type Asked = {
  readonly kind: 'command';
  readonly path: readonly string[];
  readonly given: Given;
};
export type Typing = {
  readonly kind: 'typing';
  readonly path: readonly string[];
  readonly given: Given;
  readonly option: string;
  readonly typed: string;
};
/** A button pressed, a menu chosen from, or a form sent: the sealed id, and what came with it. */
export type Followed = {
  readonly kind: 'follow';
  readonly sealed: string;
  readonly values: readonly string[];
  readonly fields: Given;
};
/** A menu entry used on somebody's message. */
export type Pointed = {
  readonly kind: 'point';
  readonly entry: string;
  readonly message: {
    readonly id: string;
    readonly channel: string;
    readonly text: string;
    readonly attachments: readonly Attachment[];
  };
};

export type Question = Origin & (Asked | Typing | Followed | Pointed);
