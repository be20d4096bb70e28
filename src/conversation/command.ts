import { z } from 'zod';
import type { Phrase } from '../words/sentence.ts';
import type { Context, Sent } from './context.ts';
import type { DeadlineActs, DeadlineServices } from './deadline.ts';
import { type DeclaredOption, declaredOptions } from './declared.ts';
import type { Follow, FollowTarget } from './follow.ts';
import type { Given, Pointed } from './question.ts';
import type { Form, Reply } from './reply.ts';
import { validArgs, validOptions } from './validate.ts';

/** Who sees the answer. Fixed by the declaration, because it must be known before the answer is. */
export type SeenBy = 'asker' | 'group';
/** `slow` answers are announced at once and filled in later; a form must be `quick`. */
export type Pace = 'quick' | 'slow';
export type Access = 'member' | 'steward';

/**
 * Whether the answer to what was given would name a jar of the asker's: it is then shown to them only, unless they
 * said that the group may know. Asked before the answer, for what the group sees.
 */
type NamesJar = { namesJar?(given: Given, context: Context): Promise<boolean> };

/** How an answer appears, known before it exists. */
export type ResponseMode = { readonly seenBy: SeenBy; readonly pace: Pace; readonly access: Access };

export type Suggestion = { readonly name: string; readonly value: string };
type Completer = (typed: string, context: Context) => readonly Suggestion[] | Promise<readonly Suggestion[]>;
type Answered = Reply | Form | Promise<Reply | Form>;

/** One thing that can be asked: a bare command, or one subcommand. */
export type Action = ResponseMode &
  NamesJar & {
    readonly purpose: Phrase;
    readonly options: readonly DeclaredOption[];
    /** Validates what was given and answers. Throws a Refusal for every expected "no". */
    take(given: Given, context: Context): Promise<Reply | Form>;
    /** At most 25 suggestions for an option being typed; none when it does not complete. */
    complete(option: string, typed: string, context: Context): Promise<readonly Suggestion[]>;
  };

/** Declares an action. `options` are zod schemas made by the builders of `option.ts`. */
export function action<Shape extends z.core.$ZodLooseShape>(declared: {
  readonly purpose: Phrase;
  readonly seenBy: SeenBy;
  readonly pace?: Pace;
  readonly access?: Access;
  readonly options: Shape;
  readonly completes?: { readonly [Name in keyof Shape]?: Completer };
  readonly namesJar?: (asked: z.output<z.ZodObject<Shape>>, context: Context) => boolean | Promise<boolean>;
  answer(asked: z.output<z.ZodObject<Shape>>, context: Context): Answered;
}): Action {
  const { namesJar } = declared;
  const schema = z.object(declared.options);
  const completes: Readonly<Record<string, Completer | undefined>> = declared.completes ?? {};
  const options = declaredOptions(schema, new Set(Object.keys(completes)));
  return {
    purpose: declared.purpose,
    seenBy: declared.seenBy,
    pace: declared.pace ?? 'quick',
    access: declared.access ?? 'member',
    options,
    ...(namesJar && {
      namesJar: async (given: Given, context: Context) =>
        await namesJar(validOptions(schema, options, given), context),
    }),
    async take(given, context) {
      return declared.answer(validOptions(schema, options, given), context);
    },
    async complete(option, typed, context) {
      const completer = completes[option.replace(/-\d$/, '')] ?? completes[option];
      return completer ? (await completer(typed, context)).slice(0, 25) : [];
    },
  };
}

/** What happens when a button is pressed, a menu chosen from, or a form sent. */
export type FollowUp<Args = never> = ResponseMode &
  FollowTarget & {
    /** True when the answer takes the place of the message it was pressed on. */
    readonly replaces: boolean;
    readonly argNames: readonly string[];
    take(args: Readonly<Record<string, string>>, context: Context, sent: Sent): Promise<Reply | Form>;
    /** The follow-up with its arguments, to put in a choice. */
    with(args: Args): Follow;
  };

/** Declares a follow-up. Arguments travel in a signed id: few, short, of `[A-Za-z0-9_-]`. */
export function followUp<Shape extends Record<string, z.ZodType<string | number, string>>>(declared: {
  readonly for?: 'asker' | 'group';
  readonly hours?: number;
  readonly seenBy: SeenBy;
  readonly pace?: Pace;
  readonly access?: Access;
  readonly replaces?: boolean;
  readonly args: Shape;
  answer(args: z.output<z.ZodObject<Shape>>, context: Context, sent: Sent): Answered;
}): FollowUp<{ readonly [Name in keyof Shape]: string | number }> {
  const schema = z.object(declared.args);
  const argNames = Object.keys(declared.args);
  const made: FollowUp<{ readonly [Name in keyof Shape]: string | number }> = {
    for: declared.for ?? 'asker',
    hours: declared.hours ?? 24,
    seenBy: declared.seenBy,
    pace: declared.pace ?? 'quick',
    access: declared.access ?? 'member',
    replaces: declared.replaces ?? false,
    argNames,
    async take(args, context, sent) {
      return declared.answer(validArgs(schema, args), context, sent);
    },
    with: args => ({ followUp: made, args: argNames.map(name => String(args[name])) }),
  };
  return made;
}

/** An entry in the menu of a message, answered like a command. */
export type MenuEntry = ResponseMode & {
  readonly name: Phrase;
  take(message: Pointed['message'], context: Context): Answered;
};

export type Command = {
  readonly name: string;
  readonly purpose: Phrase;
  /** The action itself, or its subcommands by name: never both, the platform has no room for it. */
  readonly does: Action | Readonly<Record<string, Action>>;
  readonly followUps: Readonly<Record<string, FollowUp>>;
  readonly menu?: MenuEntry;
  readonly deadlines?: Deadlines;
};

/** What to do when a time has come that the command once set; the names of its dues are its own. */
type Deadlines = (services: DeadlineServices) => DeadlineActs;

type Extras = {
  readonly followUps?: Readonly<Record<string, FollowUp>>;
  readonly menu?: MenuEntry;
  readonly deadlines?: Deadlines;
};

/** A command that is one action. */
export const command = (
  name: string,
  does: Action,
  { followUps = {}, menu, deadlines }: Extras = {},
): Command => ({
  name,
  purpose: does.purpose,
  does,
  followUps,
  ...(menu && { menu }),
  ...(deadlines && { deadlines }),
});

/** A command with subcommands. */
export const commandGroup = (
  name: string,
  purpose: Phrase,
  does: Readonly<Record<string, Action>>,
  { followUps = {}, menu, deadlines }: Extras = {},
): Command => ({
  name,
  purpose,
  does,
  followUps,
  ...(menu && { menu }),
  ...(deadlines && { deadlines }),
});

/** True when a command is one action without subcommands. */
export const isAction = (does: Command['does']): does is Action => typeof does.take === 'function';
