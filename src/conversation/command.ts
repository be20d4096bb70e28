import { z } from 'zod';
import { valuesOn } from '../engine/values-on.ts';
import type { Phrase } from '../words/sentence.ts';
import type { Context, Sent } from './context.ts';
import { type DeclaredOption, declaredOptions } from './declared.ts';
import type { Follow, FollowTarget } from './follow-ups/follow.ts';
import type { Given, Pointed } from './question.ts';
import type { DataOf, Form, Reply, ReplyWith } from './reply.ts';
import { renamed } from './typed/formerly.ts';
import { validArgs, validOptions } from './typed/validate.ts';
import type { DeadlineActs, DeadlineServices } from './unasked/deadline.ts';

/** Who sees the answer. Fixed by the declaration, because it must be known before the answer is. */
export type SeenBy = 'asker' | 'group';
/**
 * Who sees it where that hangs on what was given, such as a recipe of one's own: decided by the words of the question
 * alone, before anything is looked up.
 */
export type SeenByGiven<From> = SeenBy | ((from: From) => SeenBy);

/** {@link SeenByGiven} for one question. */
export const seenByFor = <From>(declared: SeenByGiven<From>, from: From): SeenBy =>
  typeof declared === 'function' ? declared(from) : declared;

/** What is made from one of the member's own recipes is for them, until they show it. */
export const privateIfRecipe = ({ recipe }: Given): SeenBy => (recipe === undefined ? 'group' : 'asker');

/** `slow` answers are announced at once and filled in later; a form must be `quick`. */
export type Pace = 'quick' | 'slow';
export type Access = 'member' | 'steward';

/**
 * Whether the answer to what was given would name a jar of the asker's: it is then shown to them only, unless they
 * said that the group may know. Asked before the answer, for what the group sees.
 */
type NamesJar = { namesJar?(given: Given, context: Context): Promise<boolean> };
/** The same for what a press or a form leads to. */
type FollowNamesJar<Args> = {
  namesJar?(args: Args, context: Context, sent: Sent): boolean | Promise<boolean>;
};

/** How an answer appears, known before it exists. */
export type ResponseMode = {
  readonly seenBy: SeenBy;
  readonly pace: Pace;
  readonly access: Access;
  /** True when the answer may be a form: it can then not be announced as slow, a form must come at once. */
  readonly opensForm: boolean;
};

export type Suggestion = { readonly name: string; readonly value: string };
type Completer = (typed: string, context: Context) => readonly Suggestion[] | Promise<readonly Suggestion[]>;
type Answered<Data extends object = object> = ReplyWith<Data> | Form | Promise<ReplyWith<Data> | Form>;

/** One thing that can be asked: a bare command, or one subcommand. `Data`: what its answers tell programs. */
export type Action<Data extends object = object> = Omit<ResponseMode, 'opensForm' | 'seenBy'> &
  NamesJar & {
    readonly seenBy: SeenByGiven<Given>;
    readonly purpose: Phrase;
    /** `bare`: only when it is asked without any option. */
    readonly opensForm: boolean | 'bare';
    /** True for what members may bring along into groups that we are not in; it is then answered to them only. */
    readonly anywhere: boolean;
    readonly options: readonly DeclaredOption[];
    /** What of an answer must be alike for two answers to be the same, whatever the name; undefined where none can be. */
    readonly essence?: ((reply: Reply) => string) | undefined;
    /** Other names of options, which older lines still use: old name to new. */
    readonly formerly: Readonly<Record<string, string>>;
    /** Validates what was given and answers. Throws a Refusal for every expected "no". */
    take(given: Given, context: Context): Promise<ReplyWith<Data> | Form>;
    /** At most 25 suggestions for an option being typed; none when it does not complete. */
    complete(option: string, typed: string, context: Context): Promise<readonly Suggestion[]>;
  };

/** Declares an action. `options` are zod schemas made by the builders of `option.ts`. */
export function action<Shape extends z.core.$ZodLooseShape, Data extends object = object>(declared: {
  readonly purpose: Phrase;
  readonly seenBy: SeenByGiven<Given>;
  readonly pace?: Pace;
  readonly access?: Access;
  readonly opensForm?: boolean | 'bare';
  readonly anywhere?: boolean;
  readonly options: Shape;
  readonly completes?: { readonly [Name in keyof Shape]?: Completer };
  readonly essence?: (reply: Reply) => string;
  readonly formerly?: Readonly<Record<string, string>>;
  readonly namesJar?: (asked: z.output<z.ZodObject<Shape>>, context: Context) => boolean | Promise<boolean>;
  answer(asked: z.output<z.ZodObject<Shape>>, context: Context): Answered<Data>;
}): Action<Data> {
  const { namesJar } = declared;
  const schema = z.object(declared.options);
  const completes: Readonly<Record<string, Completer | undefined>> = declared.completes ?? {};
  const options = declaredOptions(schema, new Set(Object.keys(completes)));
  const read = valuesOn<Given, z.output<typeof schema>>();
  // Who sees an answer is decided by the same options as the answer: they are read once.
  const optionsIn = (given: Given): z.output<typeof schema> => {
    const known =
      read.get(given) ?? validOptions(schema, options, renamed(given, options, declared.formerly));
    read.set(given, known);
    return known;
  };
  return {
    purpose: declared.purpose,
    seenBy: declared.seenBy,
    pace: declared.pace ?? 'quick',
    access: declared.access ?? 'member',
    opensForm: declared.opensForm ?? false,
    anywhere: declared.anywhere ?? false,
    options,
    essence: declared.essence,
    formerly: declared.formerly ?? {},
    ...(namesJar && {
      namesJar: async (given: Given, context: Context) => await namesJar(optionsIn(given), context),
    }),
    async take(given, context) {
      return declared.answer(optionsIn(given), context);
    },
    async complete(option, typed, context) {
      const completer = completes[option.replace(/-\d$/, '')] ?? completes[option];
      return completer ? (await completer(typed, context)).slice(0, 25) : [];
    },
  };
}

/** What happens when a button is pressed, a menu chosen from, or a form sent. */
export type FollowUp<Args = never> = Omit<ResponseMode, 'seenBy'> &
  FollowTarget &
  FollowNamesJar<Readonly<Record<string, string>>> & {
    readonly seenBy: SeenByGiven<Readonly<Record<string, string>>>;
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
  readonly seenBy: SeenByGiven<Readonly<Record<string, string>>>;
  readonly pace?: Pace;
  readonly access?: Access;
  readonly opensForm?: boolean;
  readonly replaces?: boolean;
  readonly args: Shape;
  readonly namesJar?: FollowNamesJar<z.output<z.ZodObject<Shape>>>['namesJar'];
  answer(args: z.output<z.ZodObject<Shape>>, context: Context, sent: Sent): Answered;
}): FollowUp<{ readonly [Name in keyof Shape]: string | number }> {
  const schema = z.object(declared.args);
  const argNames = Object.keys(declared.args);
  const { namesJar } = declared;
  const made: FollowUp<{ readonly [Name in keyof Shape]: string | number }> = {
    for: declared.for ?? 'asker',
    hours: declared.hours ?? 24,
    seenBy: declared.seenBy,
    pace: declared.pace ?? 'quick',
    access: declared.access ?? 'member',
    opensForm: declared.opensForm ?? false,
    replaces: declared.replaces ?? false,
    argNames,
    ...(namesJar && {
      namesJar: (args: Readonly<Record<string, string>>, context: Context, sent: Sent) =>
        namesJar(validArgs(schema, args), context, sent),
    }),
    async take(args, context, sent) {
      return declared.answer(validArgs(schema, args), context, sent);
    },
    with: args => ({ followUp: made, args: argNames.map(name => String(args[name])) }),
  };
  return made;
}

/** An entry in the menu of a message, answered like a command. */
export type MenuEntry = Omit<ResponseMode, 'opensForm'> & {
  readonly name: Phrase;
  readonly anywhere?: boolean;
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
  /** True where its answers speak of every command there is. */
  readonly listsCommands?: boolean;
};

/** What to do when a time has come that the command once set; the names of its dues are its own. */
type Deadlines = (services: DeadlineServices) => DeadlineActs;

type Extras = {
  readonly followUps?: Readonly<Record<string, FollowUp>>;
  readonly menu?: MenuEntry;
  readonly deadlines?: Deadlines;
  readonly listsCommands?: boolean;
};

/** A command that is one action. */
export const command = <Name extends string>(
  name: Name,
  does: Action<DataOf<Name>>,
  { followUps = {}, menu, deadlines, listsCommands }: Extras = {},
): Command => ({
  name,
  purpose: does.purpose,
  does,
  followUps,
  ...(menu && { menu }),
  ...(deadlines && { deadlines }),
  ...(listsCommands && { listsCommands }),
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
