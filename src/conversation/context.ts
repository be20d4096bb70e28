import type { Store } from '../records/store.ts';
import type { Words } from '../words/index.ts';
import type { Workers } from '../workers/workers.ts';
import type { Given, Origin } from './question.ts';
import type { CommandRegistry } from './registry.ts';

/** What the whole process shares. */
export type Services = {
  readonly store: Store;
  readonly workers: Workers;
  /** Looks at once for what has become due; undefined where nobody here keeps time. */
  readonly checkDue?: (() => void) | undefined;
};

/** What a command may know while it answers: who asks, in which words to speak, what is remembered. */
export type Context = Origin &
  Services & {
    readonly say: Words;
    /** Every command there is. */
    readonly registry: CommandRegistry;
    /**
     * Names the effect of this question: written under this id it happens once, however often the
     * question is delivered or the button pressed.
     */
    readonly idempotencyKey: string;
  };

/** What came with a press: menu values and form fields. Nobody signed them: validate them. */
export type Sent = { readonly values: readonly string[]; readonly fields: Given };
