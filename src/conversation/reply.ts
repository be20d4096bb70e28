import type { Language } from '../words/sentence.ts';
import type { Follow } from './follow.ts';

/** One number somebody measures out: what, how much in spoons first, and the rest behind it. */
export type Measure = { readonly label: string; readonly value: string; readonly note?: string };

/** What a reply is made of. Plain text everywhere: the fronts escape, wrap and decorate. */
export type Block =
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
    };

export type Caution = { readonly id: string; readonly text: string };

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
};

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
      readonly kind: 'pick';
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
