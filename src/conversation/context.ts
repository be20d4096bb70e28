import type { BatchBook } from '../records/batches/batch.ts';
import type { RecipeShelf } from '../records/recipes/recipe.ts';
import type { Shelf } from '../records/shelf/shelf.ts';
import type { Store } from '../records/store.ts';
import type { Words } from '../words/index.ts';
import type { Phrase } from '../words/sentence.ts';
import type { Workers } from '../workers/workers.ts';
import type { Lately } from './lately/lately.ts';
import type { Given, Origin } from './question.ts';
import type { DataOf, Form, ReplyWith } from './reply.ts';

/** What the whole process shares. */
export type Services = {
  readonly store: Store;
  readonly workers: Workers;
  /** Looks at once for what has become due; undefined where nobody here keeps time. */
  readonly checkDue?: (() => void) | undefined;
  /** What each member asked last, for the next turn to lean on; undefined where every question stands alone. */
  readonly lately?: Lately | undefined;
};

/** What a question changes, and by whose hand; written under its `cause` it is made once. */
export type Change = {
  readonly cause: string;
  readonly at: Date;
  readonly byName: string;
  /** The interaction itself: another press of the same button is another. */
  readonly press: string;
};

/** A command as a list of commands shows it; `subcommands` by name. */
export type Listed = {
  readonly name: string;
  readonly purpose: Phrase;
  readonly subcommands: readonly string[];
  /** What can be asked of it, by path: `dose`, `shelf add`. */
  readonly asks: readonly {
    readonly path: string;
    readonly purpose: Phrase;
    readonly options: readonly { readonly name: string; readonly says: Phrase }[];
  }[];
};

/** What a command may know while it answers: who asks, in which words to speak, what is remembered. */
export type Context = Origin &
  Services & {
    readonly say: Words;
    /** The asker's own. */
    readonly shelf: Shelf;
    /** The batches that the asker noted. */
    readonly book: BatchBook;
    /** Whose hand it is and when, as records note it. */
    readonly by: { readonly member: string; readonly at: Date };
    /** The asker's own and those shared to the group. */
    readonly recipes: RecipeShelf;
    /** The change that this question makes, once. */
    readonly change: Change;
    /** Every command there is, for those who ask what there is. */
    readonly commands: readonly Listed[];
    /**
     * Names the effect of this question: written under this id it happens once, however often the
     * question is delivered or the button pressed.
     */
    readonly idempotencyKey: string;
    /**
     * Answers another command for the same asker, as if they had typed it. Texts are typed as its options want them. Throws as
     * that command does.
     */
    run<Name extends string>(command: Name, given: Given): Promise<ReplyWith<DataOf<Name>> | Form>;
    /** Whether the answer to another command would name a jar of the asker's. Throws as that command does. */
    namesJar(command: string, given: Given): Promise<boolean>;
  };

/** What came with a press: menu values and form fields. Nobody signed them: validate them. */
export type Sent = { readonly values: readonly string[]; readonly fields: Given };
