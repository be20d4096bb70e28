import type { Language } from '../words/sentence.ts';
import type { CautionId } from './cautions.ts';
import type { Follow } from './follow-ups/follow.ts';

/** The folds an answer may have, in the order they are offered. */
export const FOLDS = [
  'steps',
  'numbers',
  'portions',
  'others',
  'why',
  'colours',
  'shelf',
  'safety',
  'heat',
  'timeline',
  'law',
  'more',
] as const;
export type FoldId = (typeof FOLDS)[number];

/**
 * Where a part of a reply stands: in a fold, on the face only where the folds say the same in full, or, left out, on
 * the face for good.
 */
type Stands = {
  readonly fold?: FoldId | 'face';
  /** Never folded where a face grows too long: without it the answer is no answer, or somebody comes to harm. */
  readonly firm?: boolean;
};

/** One number somebody measures out: what, how much in spoons first, and the rest behind it. */
export type Measure = {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
  /** The colour it is about, `#rrggbb`. */
  readonly hex?: string;
};

/** What a reply is made of. Plain text everywhere: the fronts escape, wrap and decorate. */
export type Block = Stands &
  (
    | { readonly kind: 'measures'; readonly measures: readonly Measure[] }
    | { readonly kind: 'text'; readonly text: string; readonly folds?: boolean }
    | {
        readonly kind: 'rows';
        readonly title?: string;
        readonly rows: readonly string[];
        readonly numbered?: boolean;
      }
    | { readonly kind: 'picture'; readonly name: string; readonly png: Uint8Array; readonly alt: string }
    | {
        readonly kind: 'file';
        readonly name: string;
        readonly bytes: Uint8Array;
        readonly mediaType: string;
      }
  );

export type Caution = {
  readonly id: CautionId;
  readonly text: string;
  readonly fold?: FoldId | 'face';
  /** Never folded: without it somebody comes to harm. */
  readonly firm?: boolean;
  /** What is left of it on the face once the member has met it in full: a caution of every such answer. */
  readonly brief?: string;
  /** The line says all that one acts on: it stands for the caution at the first meeting too, the whole a press away. */
  readonly briefAtOnce?: boolean;
};

/** The most letters of a button on the platform. Source: platform documentation, Message Components > Button. */
export const LONGEST_LABEL = 80;

/** Something the reader may do next; `Target` is a {@link Follow} inside, a signed id once sealed. */
export type Choice<Target = Follow> =
  | {
      readonly kind: 'button';
      readonly label: string;
      readonly weight?: 'main' | 'plain' | 'danger';
      readonly follow: Target;
    }
  | {
      readonly kind: 'menu';
      readonly label: string;
      readonly items: readonly { readonly label: string; readonly value: string; readonly note?: string }[];
      readonly least: number;
      readonly most: number;
      readonly follow: Target;
    };

/** What is commonly asked next: a line as it would be typed, or one of several. */
export type Next =
  | { readonly label: string; readonly line: string }
  | { readonly label: string; readonly lines: readonly { readonly label: string; readonly line: string }[] };

/** The answer to a question, for any front to show. */
export type Reply<Target = Follow> = {
  readonly kind: 'reply';
  /** The number or the verdict, in one line. */
  readonly headline: string;
  /** The same answer for programs; later work only adds keys. */
  readonly data: object;
  readonly blocks: readonly Block[];
  readonly cautions: readonly Caution[];
  readonly choices?: readonly Choice<Target>[];
  /** What is commonly asked next, the commonest first. */
  readonly next?: readonly Next[];
  /** Words that its face may have. */
  readonly most?: number;
  /** The ways to open its folds, where the front opens them by button. */
  readonly unfold?: readonly { readonly id: FoldId; readonly follow: string }[];
};

/**
 * What answers tell programs, by command: one whose answers others go on from says here, beside the code that makes them, what stands in their
 * `data`. The declaration of the command is held against it.
 */
// biome-ignore lint/suspicious/noEmptyInterface: commands add to it.
export interface AnswerData {}

/** What the answers of a command tell programs; of most it is told nowhere. */
export type DataOf<Name extends string> = Name extends keyof AnswerData ? AnswerData[Name] : object;

/** A reply of which it is known what it tells programs. */
export type ReplyWith<Data extends object> = Reply & { readonly data: Data };

/** One field of a form; at most five fit one form. */
export type Field =
  | {
      readonly kind: 'line' | 'paragraph';
      readonly name: string;
      readonly label: string;
      readonly hint?: string;
      readonly required: boolean;
      readonly most?: number;
      readonly value?: string;
    }
  | {
      /** One of several, or any number of them: their values come back with spaces between. */
      readonly kind: 'pick' | 'several';
      readonly name: string;
      readonly label: string;
      readonly required: boolean;
      readonly items: readonly {
        readonly label: string;
        readonly value: string;
        readonly chosen?: boolean;
      }[];
    }
  | { readonly kind: 'picture'; readonly name: string; readonly label: string; readonly required: boolean };

/** Asks for more before answering. A form must come at once, and cannot follow a form. */
export type Form<Target = Follow> = {
  readonly kind: 'form';
  readonly title: string;
  readonly fields: readonly Field[];
  readonly follow: Target;
};

/** One sentence that says what was wrong and what would be right. */
export type Problem<Target = string> = {
  readonly kind: 'problem';
  readonly id: string;
  readonly text: string;
  /** What may have been meant, to press. */
  readonly choices?: readonly Choice<Target>[];
};

/** What leaves the conversation, in whose language: choices and forms carry signed ids instead of follow-ups. */
export type Answer = (Reply<string> | Form<string> | Problem) & { readonly language: Language };
