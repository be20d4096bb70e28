import { refuse } from '../../engine/refusal.ts';
import { nearestNames } from '../../engine/text/spelling/closest-name.ts';
import { valuesOn } from '../../engine/values-on.ts';
import { type ResponseMode, seenByFor } from '../command.ts';
import type { Context } from '../context.ts';
import type { Conversation } from '../conversation.ts';
import { isCallForHelp } from '../first-aid/call-for-help.ts';
import { open } from '../follow-ups/follow.ts';
import { holderOf } from '../follow-ups/sealed.ts';
import type { Question } from '../question.ts';
import type { CommandRegistry } from '../registry/registry.ts';
import type { Form, Reply } from '../reply.ts';
import { whichOneFollowUps } from '../typed/asked-again.ts';
import { renamed } from '../typed/formerly.ts';
import { offerCommands, takeOrOffer } from '../typed/which-one.ts';
import { tellAsked } from './asked.ts';
import { isForOneQuestion } from './one-question.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'command-unknown': { typed: string; nearest: readonly string[] };
  }
}

export type Task = ResponseMode & {
  readonly replaces: boolean;
  /** True when it works where only the asker brought us along. */
  readonly anywhere: boolean;
  readonly idempotencyKey: string;
  run(context: Context): Promise<Reply | Form> | Reply | Form;
  /** Whether the answer would name a jar of the asker's. */
  namesOwnJar?(context: Context): Promise<boolean>;
};

/** What tells a question from any other, with its id. */
const partOf = (question: Question): unknown =>
  question.kind === 'follow'
    ? question.sealed
    : question.kind === 'point'
      ? question.message
      : question.given;

type Found = { readonly id: string; readonly part: unknown; readonly task: Task };

/** For what answers one question alone: it is asked on the way who sees it, how fast it comes, and what it says. */
const found = valuesOn<Conversation, Found>();

/** What is to be done, found once for a question. Throws the Refusals of a button, and of a command or entry that there is not. */
export function findTask(question: Question, conversation: Conversation): Task {
  if (!isForOneQuestion(conversation)) return taskFor(question, conversation);
  const [before, part] = [found.get(conversation), partOf(question)];
  if (before?.id === question.id && before.part === part) return before.task;
  const task = taskFor(question, conversation);
  found.set(conversation, { id: question.id, part, task });
  return task;
}

function taskFor(question: Question, { registry, key, keyBefore: before }: Conversation): Task {
  switch (question.kind) {
    case 'command':
    case 'typing': {
      const path = question.path.join(' ');
      const known = registry.actions.get(path);
      const found = known ?? helpCommand(path, registry);
      if (!found) {
        // A registry of a few commands need not hold what the buttons lead to.
        if (!registry.complete && !registry.nameOf.has(whichOneFollowUps['again-alone']))
          return unknownCommand(path, registry);
        const nearest = nearestCommands(path, registry);
        return {
          seenBy: 'asker',
          pace: 'quick',
          access: 'member',
          opensForm: false,
          replaces: false,
          anywhere: true,
          idempotencyKey: question.id,
          run: context => offerCommands({ typed: path, nearest, given: question.given }, context),
        };
      }
      const isBare = Object.keys(question.given).length === 0;
      return {
        ...found,
        opensForm: found.opensForm === 'bare' ? isBare : found.opensForm,
        seenBy: seenByFor(found.seenBy, question.given),
        replaces: false,
        idempotencyKey: question.id,
        run: context => {
          if (known) tellAsked(path, renamed(question.given, found.options, found.formerly));
          return takeOrOffer({ command: path, action: found, given: known ? question.given : {} }, context);
        },
        ...(found.namesJar && {
          namesOwnJar: async (context: Context) => (await found.namesJar?.(question.given, context)) ?? false,
        }),
      };
    }
    case 'follow': {
      const opened = open(question.sealed, { key, before, holder: holderOf(question), at: question.at });
      const found = registry.followUps.get(opened.name) ?? refuse('follow-up-invalid', {});
      const args = Object.fromEntries(found.argNames.map((name, index) => [name, opened.args[index] ?? '']));
      const sent = { values: question.values, fields: question.fields };
      const seenBy = seenByFor(found.seenBy, args);
      return {
        ...found,
        seenBy,
        anywhere: true,
        idempotencyKey: opened.nonce,
        run: context => found.take(args, context, sent),
        ...(found.namesJar && {
          namesOwnJar: async (context: Context) => (await found.namesJar?.(args, context, sent)) ?? false,
        }),
      };
    }
    case 'point': {
      const found = registry.menuEntries.get(question.entry) ?? unknownCommand(question.entry, registry);
      return {
        ...found,
        anywhere: found.anywhere ?? false,
        opensForm: false,
        replaces: false,
        idempotencyKey: question.id,
        run: context => found.take(question.message, context),
      };
    }
  }
}

/** First aid, for whoever calls for help under a name that no command has. */
const helpCommand = (typed: string, registry: CommandRegistry) =>
  isCallForHelp(typed) ? registry.actions.get('first-aid') : undefined;

const nearestCommands = (typed: string, registry: CommandRegistry): readonly string[] =>
  nearestNames(typed, [...registry.actions.keys()], 3);

export const unknownCommand = (typed: string, registry: CommandRegistry): never =>
  refuse('command-unknown', { typed, nearest: nearestCommands(typed, registry) });
