import { valuesOn } from '../../engine/values-on.ts';
import { wordsIn } from '../../words/index.ts';
import { type Action, type Command, isAction } from '../command.ts';
import type { Context, Listed } from '../context.ts';
import type { Conversation } from '../conversation.ts';
import type { Given, Origin } from '../question.ts';
import type { DataOf, Form, ReplyWith } from '../reply.ts';
import { typedValue } from '../typed/typed-value.ts';
import { takeOrOffer } from '../typed/which-one.ts';
import { requireSteward } from './access.ts';
import { isForOneQuestion } from './one-question.ts';
import { noteOwn } from './own-watch.ts';
import { unknownCommand } from './task.ts';

/** For what answers one question alone: who sees the answer is looked up in the same context as the answer. */
const contexts = valuesOn<Conversation, Context>();

/** What a command may know while it answers; the same again for the same question in the same language. */
export function contextOf(origin: Origin, conversation: Conversation, idempotencyKey: string): Context {
  if (!isForOneQuestion(conversation)) return made(origin, conversation, idempotencyKey);
  const known = contexts.get(conversation);
  const { id, language } = origin;
  if (known?.idempotencyKey === idempotencyKey && known.id === id && known.language === language)
    return known;
  const context = made(origin, conversation, idempotencyKey);
  contexts.set(conversation, context);
  return context;
}

function made(origin: Origin, conversation: Conversation, idempotencyKey: string): Context {
  const { services, registry } = conversation;
  const { id, at, asker, group, channel, here, language, locale } = origin;
  const { store } = services;
  /** Another command than the one that was asked: nobody may have needed it since the start. */
  const actionNamed = async (command: string): Promise<Action> => {
    if (!registry.actions.has(command))
      await registry.prepare?.({ ...origin, kind: 'command', path: command.split(' '), given: {} });
    return registry.actions.get(command) ?? unknownCommand(command, registry);
  };
  const context: Context = {
    id,
    at,
    asker,
    group,
    channel,
    here,
    language,
    locale,
    ...services,
    // Few questions draw, match or look at a photo.
    get workers() {
      return workersFor(group, services.workers);
    },
    shelf: { store, member: asker.id },
    book: { store, member: asker.id },
    by: { member: asker.id, at: new Date(at) },
    recipes: { store, member: asker.id, group },
    change: { cause: idempotencyKey, at: new Date(at), byName: asker.name, press: id },
    get commands() {
      return registry.commands.map(listed);
    },
    say: wordsIn(language),
    idempotencyKey,
    async run<Name extends string>(command: Name, given: Given) {
      const action = await actionNamed(command);
      if (action.access === 'steward') await requireSteward(context);
      const typed = typedFor(action, given);
      await noteOwn(conversation, { action, given: typed }, context);
      // What its answers tell is held where the command is declared.
      return (await takeOrOffer({ command, action, given: typed }, context)) as
        | ReplyWith<DataOf<Name>>
        | Form;
    },
    async namesJar(command, given) {
      const action = await actionNamed(command);
      return (await action.namesJar?.(typedFor(action, given), context)) ?? false;
    },
  };
  return context;
}

/** The workers, each job of whom counts for the group. */
const workersFor = (group: string, workers: Context['workers']): Context['workers'] => ({
  ...workers,
  run: (name, input, more) => workers.run(name, input, { group, ...more }),
});

/** A command as lists of commands show it. */
function listed({ name, purpose, does }: Command): Listed {
  const asks = isAction(does) ? { [name]: does } : does;
  return {
    name,
    purpose,
    subcommands: isAction(does) ? [] : Object.keys(does),
    asks: Object.entries(asks).map(([path, ask]) => ({
      path: path === name ? name : `${name} ${path}`,
      purpose: ask.purpose,
      options: ask.options.map(option => ({ name: option.name, says: option.says })),
    })),
  };
}

/** What was kept as text, as the values that the options of an action want. */
const typedFor = ({ options }: Action, given: Given): Given =>
  Object.fromEntries(
    Object.entries(given).map(([name, value]) => {
      const option = options.find(one => one.name === name);
      return [name, option && typeof value === 'string' ? typedValue(option, value) : value] as const;
    }),
  );
