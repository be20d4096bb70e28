import type { Lack, LackBeside } from '../words/lack.ts';
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

const PICTURE_NAME = /\.(?:jpe?g|png|webp|hei[cf]|avif)$/iu;

/** Whether a file is a picture: by what the front says of it, by its name where it says nothing. */
export const isPicture = ({ name, mediaType }: Pick<Attachment, 'name' | 'mediaType'>): boolean =>
  mediaType === undefined ? PICTURE_NAME.test(name) : mediaType.startsWith('image/');

/** A member, role or channel that was picked by the platform's own option. */
export type Named = {
  readonly kind: 'member' | 'role' | 'channel';
  readonly id: string;
  readonly name: string;
  /** Of a channel: what we lack to post news there. */
  readonly lacks?: readonly Lack[];
  /** Of a channel: what we may not put beside the news there. */
  readonly lacksBeside?: readonly LackBeside[];
  /** Of a role: whether its holders hear of it where we name it. */
  readonly canBeCalled?: boolean;
};

export type OptionValue = string | number | boolean | Attachment | Named;
export type Given = Readonly<Record<string, OptionValue>>;

/** The options that are text. */
export const textsOf = (given: Given): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(given).filter((one): one is [string, string] => typeof one[1] === 'string'),
  );

export type Asker = {
  readonly id: string;
  readonly name: string;
  /** May manage the group on the platform. The group's own steward role is looked up in the records. */
  readonly manages: boolean;
  readonly roles: readonly string[];
  /** When they joined the group, milliseconds since 1970 UTC; undefined where the front cannot know. */
  readonly joinedAt?: number;
};

/** The place a question comes from, as the platform states it. */
export type Here = {
  /** Who let us in: the group, or only the member, who brought us along: then we can post nothing by ourselves. */
  readonly letInBy: 'group' | 'member';
  /** What we lack to post news here. */
  readonly lacks: readonly Lack[];
  /** What we may not put beside the news here. */
  readonly lacksBeside: readonly LackBeside[];
  /** Names of a few channels of the group in which we lack nothing. */
  readonly betterPlaces: () => readonly string[];
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
  /** Undefined where the front knows no places, as the terminal. */
  readonly here?: Here | undefined;
  /** True where the front shows marks (`words/marks.ts`); they are taken out for all others. */
  readonly readsMarks?: boolean | undefined;
  /** True where the front opens the folds of an answer by buttons; the others show or open them by themselves. */
  readonly opensFolds?: boolean | undefined;
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
    /** What it says; of a forwarded message, what was forwarded. */
    readonly text: string;
    readonly attachments: readonly Attachment[];
  };
};

export type Question = Origin & (Asked | Typing | Followed | Pointed);
