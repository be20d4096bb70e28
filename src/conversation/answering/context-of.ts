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
  if (!isForOneQuestion(conversation)) return new Asking(origin, conversation, idempotencyKey);
  const known = contexts.get(conversation);
  const { id, language } = origin;
  if (known?.idempotencyKey === idempotencyKey && known.id === id && known.language === language)
    return known;
  const context = new Asking(origin, conversation, idempotencyKey);
  contexts.set(conversation, context);
  return context;
}

/**
 * What one question may know. Most ask little of it: what hangs on who asks and when is made for those who look. Of an
 * own class, since an object with a function for each of its calls was a thirtieth of what an answer made.
 */
class Asking implements Context {
  readonly #origin: Origin;
  readonly #conversation: Conversation;
  readonly idempotencyKey: string;
  #shelf: Context['shelf'] | undefined;
  #recipes: Context['recipes'] | undefined;
  #change: Context['change'] | undefined;

  constructor(origin: Origin, conversation: Conversation, idempotencyKey: string) {
    this.#origin = origin;
    this.#conversation = conversation;
    this.idempotencyKey = idempotencyKey;
  }

  get id() {
    return this.#origin.id;
  }
  get at() {
    return this.#origin.at;
  }
  get asker() {
    return this.#origin.asker;
  }
  get group() {
    return this.#origin.group;
  }
  get channel() {
    return this.#origin.channel;
  }
  get here() {
    return this.#origin.here;
  }
  get language() {
    return this.#origin.language;
  }
  get locale() {
    return this.#origin.locale;
  }
  get say() {
    return wordsIn(this.#origin.language);
  }
  get store() {
    return this.#conversation.services.store;
  }
  get checkDue() {
    return this.#conversation.services.checkDue;
  }
  get lately() {
    return this.#conversation.services.lately;
  }
  get workers() {
    return workersFor(this.group, this.#conversation.services.workers);
  }
  get shelf() {
    this.#shelf ??= { store: this.store, member: this.asker.id };
    return this.#shelf;
  }
  get book() {
    return this.shelf;
  }
  get by() {
    return { member: this.asker.id, at: new Date(this.at) };
  }
  get recipes() {
    this.#recipes ??= { store: this.store, member: this.asker.id, group: this.group };
    return this.#recipes;
  }
  get change() {
    const { asker, at, id, idempotencyKey: cause } = this;
    this.#change ??= { cause, at: new Date(at), byName: asker.name, press: id };
    return this.#change;
  }
  get commands() {
    return this.#conversation.registry.commands.map(listed);
  }

  async run<Name extends string>(command: Name, given: Given): Promise<ReplyWith<DataOf<Name>> | Form> {
    const action = await this.#actionNamed(command);
    if (action.access === 'steward') await requireSteward(this);
    const typed = typedFor(action, given);
    await noteOwn(this.#conversation, { action, given: typed }, this);
    // What its answers tell is held where the command is declared.
    return (await takeOrOffer({ command, action, given: typed }, this)) as ReplyWith<DataOf<Name>> | Form;
  }

  async namesJar(command: string, given: Given): Promise<boolean> {
    const action = await this.#actionNamed(command);
    return (await action.namesJar?.(typedFor(action, given), this)) ?? false;
  }

  /** Another command than the one that was asked: nobody may have needed it since the start. */
  async #actionNamed(command: string): Promise<Action> {
    const { registry } = this.#conversation;
    if (!registry.actions.has(command))
      await registry.prepare?.({ ...this.#origin, kind: 'command', path: command.split(' '), given: {} });
    return registry.actions.get(command) ?? unknownCommand(command, registry);
  }
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
