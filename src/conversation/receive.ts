import { Refusal, refuse } from '../engine/refusal.ts';
import { refusalOf, StoreFailure } from '../records/failure.ts';
import { preferencesOf } from '../records/preferences.ts';
import { wordsIn } from '../words/index.ts';
import type { Language } from '../words/sentence.ts';
import { requireSteward } from './access.ts';
import { isAction, type ResponseMode, type SeenBy, type Suggestion } from './command.ts';
import type { Context, Services } from './context.ts';
import { type Follow, type Holder, open, seal } from './follow.ts';
import { checkLegible, isShort } from './legible.ts';
import { nearest } from './nearest.ts';
import type { Origin, Question } from './question.ts';
import type { CommandRegistry } from './registry.ts';
import type { Answer, Choice, Form, Problem, Reply } from './reply.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'command-unknown': { typed: string; nearest: readonly string[] };
    'our-fault': { reference: string };
  }
}

/** Everything a question needs to be answered; one for the whole process. */
export type Conversation = {
  readonly registry: CommandRegistry;
  readonly services: Services;
  /** Signs what buttons carry. */
  readonly key: Uint8Array;
  /** Told of faults of ours with the reference the member sees; never of what members wrote. */
  readonly onFault: (fault: unknown, reference: string) => void;
};

type Unspoken = Reply<string> | Form<string> | Problem;

type Task = ResponseMode & {
  readonly replaces: boolean;
  readonly idempotencyKey: string;
  run(context: Context): Promise<Reply | Form> | Reply | Form;
  /** Whether the answer would name a jar of the asker's. */
  namesOwnJar?(context: Context): Promise<boolean>;
};

/** Who sees the answer, how fast it comes, and whether it replaces the message: known before answering. */
export function responseModeOf(
  question: Question,
  conversation: Conversation,
): ResponseMode & { replaces: boolean } {
  try {
    return findTask(question, conversation);
  } catch {
    return { seenBy: 'asker', pace: 'quick', access: 'member', replaces: false };
  }
}

/** The store that does not say in this time (ms) whether a jar is named leaves the answer to the asker alone. */
const LOOKED_FOR = 1_000;

/** Who sees the answer: of what the group sees, the asker alone where a jar of theirs is named and they keep those to themselves. */
export async function seenByOf(question: Question, conversation: Conversation): Promise<SeenBy> {
  if (responseModeOf(question, conversation).seenBy === 'asker') return 'asker';
  const { promise: late, resolve } = Promise.withResolvers<SeenBy>();
  const timer = setTimeout(resolve, LOOKED_FOR, 'asker');
  const looked = visibilityOf(question, conversation).catch((): SeenBy => 'asker');
  return await Promise.race([looked, late]).finally(() => clearTimeout(timer));
}

async function visibilityOf(question: Question, conversation: Conversation): Promise<SeenBy> {
  checkLegible(question);
  const task = findTask(question, conversation);
  if (!task.namesOwnJar) return 'group';
  const context = contextOf(question, conversation, task.idempotencyKey);
  const { jars } = await preferencesOf(context.store, context.asker.id);
  return jars === 'shown' || !(await task.namesOwnJar(context)) ? 'group' : 'asker';
}

/** Answers a question. Never throws: a "no" and a fault of ours both come back as a problem. */
export async function receive(asked: Question, conversation: Conversation): Promise<Answer> {
  const language = await languageFor(asked, conversation);
  return { ...(await answerTo({ ...asked, language }, conversation)), language };
}

/** The language the member prefers; the platform's when they have none, or when it cannot be looked up. */
async function languageFor({ asker, language }: Origin, { services }: Conversation): Promise<Language> {
  const preferred = await preferencesOf(services.store, asker.id).catch(() => undefined);
  return preferred?.language ?? language;
}

async function answerTo(question: Question, conversation: Conversation): Promise<Unspoken> {
  const say = wordsIn(question.language);
  try {
    checkLegible(question);
    const task = findTask(question, conversation);
    const context = contextOf(question, conversation, task.idempotencyKey);
    if (task.access === 'steward') await requireSteward(context);
    return sealed(await task.run(context), question, conversation);
  } catch (error) {
    if (error instanceof Refusal) return { kind: 'problem', id: error.id, text: say.refusal(error) };
    const reference = question.id.slice(-6);
    conversation.onFault(error, reference);
    const ours = error instanceof StoreFailure ? refusalOf(error) : new Refusal('our-fault', { reference });
    return { kind: 'problem', id: ours.id, text: say.refusal(ours) };
  }
}

/** Suggestions for the option being typed. Never throws: no suggestion is a fine suggestion. */
export async function suggest(
  question: Extract<Question, { kind: 'typing' }>,
  conversation: Conversation,
): Promise<readonly Suggestion[]> {
  const action = conversation.registry.actions.get(question.path.join(' '));
  if (!action || !isShort(question.typed)) return [];
  try {
    const context = contextOf(question, conversation, question.id);
    return await action.complete(question.option, question.typed, context);
  } catch (error) {
    if (!(error instanceof Refusal)) conversation.onFault(error, question.id.slice(-6));
    return [];
  }
}

const contextOf = (origin: Origin, { services, registry }: Conversation, idempotencyKey: string): Context => {
  const { id, at, asker, group, channel, language } = origin;
  const { store } = services;
  return {
    id,
    at,
    asker,
    group,
    channel,
    language,
    ...services,
    shelf: { store, member: asker.id },
    recipes: { store, member: asker.id, group },
    change: { cause: idempotencyKey, at: new Date(at), byName: asker.name },
    commands: registry.commands.map(({ name, purpose, does }) => ({
      name,
      purpose,
      subcommands: isAction(does) ? [] : Object.keys(does),
    })),
    say: wordsIn(language),
    idempotencyKey,
  };
};

function findTask(question: Question, { registry, key }: Conversation): Task {
  switch (question.kind) {
    case 'command':
    case 'typing': {
      const path = question.path.join(' ');
      const found = registry.actions.get(path) ?? unknownCommand(path, registry);
      return {
        ...found,
        replaces: false,
        idempotencyKey: question.id,
        run: context => found.take(question.given, context),
        ...(found.namesJar && {
          namesOwnJar: async (context: Context) => (await found.namesJar?.(question.given, context)) ?? false,
        }),
      };
    }
    case 'follow': {
      const opened = open(question.sealed, { key, holder: holderOf(question), at: question.at });
      const found = registry.followUps.get(opened.name) ?? refuse('follow-up-invalid', {});
      const args = Object.fromEntries(found.argNames.map((name, index) => [name, opened.args[index] ?? '']));
      const sent = { values: question.values, fields: question.fields };
      return { ...found, idempotencyKey: opened.nonce, run: context => found.take(args, context, sent) };
    }
    case 'point': {
      const found = registry.menuEntries.get(question.entry) ?? unknownCommand(question.entry, registry);
      return {
        ...found,
        replaces: false,
        idempotencyKey: question.id,
        run: context => found.take(question.message, context),
      };
    }
  }
}

const unknownCommand = (typed: string, registry: CommandRegistry): never =>
  refuse('command-unknown', { typed, nearest: nearest(typed, [...registry.actions.keys()], 3) });

const holderOf = ({ group, asker }: Origin) => ({ group, asker: asker.id });

type Sealing = { readonly holder: Holder; readonly at: number };

/** Turns the follow-ups of an answer into signed ids. */
function sealed(answer: Reply | Form, origin: Origin, conversation: Conversation): Unspoken {
  const sealing = { holder: holderOf(origin), at: origin.at };
  if (answer.kind === 'form') return { ...answer, follow: signed(answer.follow, sealing, conversation) };
  return sealedReply(answer, sealing, conversation);
}

function sealedReply(
  { choices, ...rest }: Reply,
  sealing: Sealing,
  conversation: Conversation,
): Reply<string> {
  if (!choices) return rest;
  const sign = (one: Choice): Choice<string> => ({
    ...one,
    follow: signed(one.follow, sealing, conversation),
  });
  return { ...rest, choices: choices.map(sign) };
}

function signed(follow: Follow, { holder, at }: Sealing, { registry, key }: Conversation): string {
  const name = registry.nameOf.get(follow.followUp);
  if (!name) throw new Error('a choice leads to a follow-up that no command declares');
  return seal(follow, name, { key, holder, at });
}

/**
 * A reply that nobody asked for, ready to be posted in a group. Throws an Error when a choice is for one asker
 * only: in a post there is none.
 */
export function sealedPost(
  reply: Reply,
  { group, at }: { group: string; at: number },
  conversation: Conversation,
): Reply<string> {
  if (reply.choices?.some(({ follow }) => follow.followUp.for !== 'group'))
    throw new Error('a post offers a choice that is for one asker');
  return sealedReply(reply, { holder: { group, asker: '' }, at }, conversation);
}
