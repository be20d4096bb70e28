import { Refusal, refuse } from '../engine/refusal.ts';
import { refusalOf, StoreFailure } from '../records/failure.ts';
import { dropNotices, type Notice, noticesFor } from '../records/notices.ts';
import { preferencesOf } from '../records/preferences.ts';
import { readOnce } from '../records/read-once.ts';
import { wordsIn } from '../words/index.ts';
import { plainThroughout } from '../words/marks.ts';
import type { Language } from '../words/sentence.ts';
import { requireSteward } from './access.ts';
import { isCallForHelp, keepingFirstAid } from './call-for-help.ts';
import {
  type Command,
  isAction,
  type ResponseMode,
  type SeenBy,
  type Suggestion,
  seenByFor,
} from './command.ts';
import type { Context, Listed } from './context.ts';
import type { Conversation } from './conversation.ts';
import { withFace } from './faces.ts';
import { emergenciesIn, firstAidFor, freeTexts, languageOfHelp } from './first-aid.ts';
import { open } from './follow.ts';
import { checkLegible, isShort } from './legible.ts';
import { nearest } from './nearest.ts';
import type { Origin, Question } from './question.ts';
import type { CommandRegistry } from './registry.ts';
import type { Answer, Form, Problem, Reply } from './reply.ts';
import { allKnown, holderOf, sealed, sealedChoice } from './sealing.ts';
import { typedValue } from './typed-value.ts';
import { Offer, takeOrOffer } from './which-one.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'group-only': Record<string, never>;
    'command-unknown': { typed: string; nearest: readonly string[] };
    'our-fault': { reference: string };
  }
}

export { sealedPost } from './sealing.ts';
export type { Conversation };

type Unspoken = Reply<string> | Form<string> | Problem;

type Task = ResponseMode & {
  readonly replaces: boolean;
  /** True when it works where only the asker brought us along. */
  readonly anywhere: boolean;
  readonly idempotencyKey: string;
  run(context: Context): Promise<Reply | Form> | Reply | Form;
  /** Whether the answer would name a jar of the asker's. */
  namesOwnJar?(context: Context): Promise<boolean>;
};

/** Who sees the answer, how fast it comes, and whether it replaces the message: known before answering. */
export async function responseModeOf(
  question: Question,
  conversation: Conversation,
): Promise<ResponseMode & { replaces: boolean }> {
  if (emergenciesIn(freeTexts(question)).length > 0) return TO_ASKER;
  try {
    await conversation.registry.prepare?.(question);
    const task = findTask(question, conversation);
    return isBroughtAlong(question) ? { ...task, seenBy: 'asker' } : task;
  } catch {
    return TO_ASKER;
  }
}

/** The store that does not say in this time (ms) whether a jar is named leaves the answer to the asker alone. */
const LOOKED_FOR = 1_000;

/** Who sees the answer: of what the group sees, the asker alone where a jar of theirs is named and they keep those to themselves. */
export async function seenByOf(question: Question, conversation: Conversation): Promise<SeenBy> {
  const { seenBy } = await responseModeOf(question, conversation);
  if (seenBy === 'asker') return 'asker';
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

/** True where only the asker let us in: everything is answered to them alone there. */
const isBroughtAlong = ({ here }: Origin): boolean => here?.letInBy === 'member';

/** How a "no" and first aid are told: at once, to whoever asked, and never in place of what stood there. */
const TO_ASKER = {
  seenBy: 'asker',
  pace: 'quick',
  access: 'member',
  opensForm: false,
  replaces: false,
} as const;

/** Answers a question. Never throws: a "no" and a fault of ours both come back as a problem. */
export async function receive(asked: Question, shared: Conversation): Promise<Answer> {
  const { services } = shared;
  const conversation = {
    ...shared,
    services: { ...services, store: readOnce(services.store, 'preference/') },
  };
  const language = languageOfHelp(freeTexts(asked), await languageFor(asked, conversation));
  const question = { ...asked, language };
  const [answered, notices] = await Promise.all([
    answerTo(question, conversation),
    waitingFor(question, conversation),
  ]);
  const kept = keepingFirstAid(answered, freeTexts(question), wordsIn(language));
  const told = await withNotices(kept, notices, question, conversation);
  const answer = told.kind === 'reply' ? await withFace(told, question, conversation) : told;
  return { ...(asked.readsMarks ? answer : plainThroughout(answer)), language };
}

/** What a member is told along with the answer to a command that only they see: that something did not reach a group. */
async function waitingFor(question: Question, conversation: Conversation): Promise<readonly Notice[]> {
  if (question.kind !== 'command') return [];
  const { seenBy } = await responseModeOf(question, conversation);
  if (seenBy !== 'asker') return [];
  // A notice that cannot be read holds up no answer; it waits for the next.
  return await noticesFor(conversation.services.store, question.asker.id).catch(() => []);
}

async function withNotices(
  answer: Unspoken,
  notices: readonly Notice[],
  { asker, language }: Origin,
  { services: { store } }: Conversation,
): Promise<Unspoken> {
  if (answer.kind !== 'reply' || notices.length === 0) return answer;
  // Nothing stands before what to do; it waits for the next answer.
  if ('emergency' in answer.data) return answer;
  await dropNotices(store, asker.id, notices).catch(() => undefined);
  const { notTold } = wordsIn(language).conversation;
  const told = notices.map(({ title }) => ({ kind: 'text', text: notTold({ title }) }) as const);
  return { ...answer, blocks: [...told, ...answer.blocks] };
}

/** The language the member prefers; the platform's when they have none, or when it cannot be looked up. */
async function languageFor({ asker, language }: Origin, { services }: Conversation): Promise<Language> {
  const preferred = await preferencesOf(services.store, asker.id).catch(() => undefined);
  return preferred?.language ?? language;
}

async function answerTo(question: Question, conversation: Conversation): Promise<Unspoken> {
  const say = wordsIn(question.language);
  try {
    // Before anything is loaded, looked up, checked or reckoned: whoever is hurt is told what to do.
    const { registry } = conversation;
    const firstAid = await firstAidFor(freeTexts(question), question, { say, registry });
    if (firstAid) return sealed(firstAid, question, conversation);
    checkLegible(question);
    await registry.prepare?.(question);
    const task = findTask(question, conversation);
    const context = contextOf(question, conversation, task.idempotencyKey);
    if (!task.anywhere && isBroughtAlong(question)) refuse('group-only', {});
    if (task.access === 'steward') await requireSteward(context);
    const answer = await task.run(context);
    if (answer.kind === 'form' && !task.opensForm) throw new Error('a form where none was declared');
    if (!allKnown(answer, conversation)) await registry.complete?.();
    return sealed(answer, question, conversation);
  } catch (error) {
    if (error instanceof Refusal) return { kind: 'problem', id: error.id, text: say.refusal(error) };
    if (error instanceof Offer) return await offered(error, question, conversation);
    const reference = question.id.slice(-6);
    conversation.onFault(error, reference);
    const ours = error instanceof StoreFailure ? refusalOf(error) : new Refusal('our-fault', { reference });
    return { kind: 'problem', id: ours.id, text: say.refusal(ours) };
  }
}

/** A "no" with what may be meant, each a signed button. */
async function offered(
  { refusal, choices }: Offer,
  question: Question,
  conversation: Conversation,
): Promise<Problem> {
  const { registry } = conversation;
  if (!choices.every(({ follow }) => registry.nameOf.has(follow.followUp))) await registry.complete?.();
  const sealing = { holder: holderOf(question), at: question.at };
  return {
    kind: 'problem',
    id: refusal.id,
    text: wordsIn(question.language).refusal(refusal),
    choices: choices.map(one => sealedChoice(one, sealing, conversation)),
  };
}

/** Suggestions for the option being typed. Never throws: no suggestion is a fine suggestion. */
export async function suggest(
  question: Extract<Question, { kind: 'typing' }>,
  conversation: Conversation,
): Promise<readonly Suggestion[]> {
  if (!isShort(question.typed)) return [];
  try {
    await conversation.registry.prepare?.(question);
    const action = conversation.registry.actions.get(question.path.join(' '));
    if (!action) return [];
    const context = contextOf(question, conversation, question.id);
    return await action.complete(question.option, question.typed, context);
  } catch (error) {
    if (!(error instanceof Refusal)) conversation.onFault(error, question.id.slice(-6));
    return [];
  }
}

/** The first aid for words that are no question to us: a line without a command, a note; undefined where none is needed. */
export async function firstAidForWords(
  words: string,
  origin: Origin,
  conversation: Conversation,
): Promise<Answer | undefined> {
  if (emergenciesIn([words]).length === 0) return undefined;
  const language = languageOfHelp([words], await languageFor(origin, conversation));
  const say = wordsIn(language);
  const reply = await firstAidFor([words], origin, { say, registry: conversation.registry });
  return reply && { ...sealed(reply, { ...origin, language }, conversation), language };
}

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

const contextOf = (origin: Origin, { services, registry }: Conversation, idempotencyKey: string): Context => {
  const { id, at, asker, group, channel, here, language, locale } = origin;
  const { store } = services;
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
    workers: {
      ...services.workers,
      run: (name, input, more) => services.workers.run(name, input, { group, ...more }),
    },
    shelf: { store, member: asker.id },
    recipes: { store, member: asker.id, group },
    change: { cause: idempotencyKey, at: new Date(at), byName: asker.name },
    get commands() {
      return registry.commands.map(listed);
    },
    say: wordsIn(language),
    idempotencyKey,
    async run(command, given) {
      const action = registry.actions.get(command) ?? unknownCommand(command, registry);
      if (action.access === 'steward') await requireSteward(context);
      const typed = Object.entries(given).map(([name, value]) => {
        const option = action.options.find(one => one.name === name);
        return [name, option && typeof value === 'string' ? typedValue(option, value) : value] as const;
      });
      return takeOrOffer({ command, action, given: Object.fromEntries(typed) }, context);
    },
  };
  return context;
};

function findTask(question: Question, { registry, key, keyBefore: before }: Conversation): Task {
  switch (question.kind) {
    case 'command':
    case 'typing': {
      const path = question.path.join(' ');
      const known = registry.actions.get(path);
      const found = known ?? helpCommand(path, registry) ?? unknownCommand(path, registry);
      const isBare = Object.keys(question.given).length === 0;
      return {
        ...found,
        opensForm: found.opensForm === 'bare' ? isBare : found.opensForm,
        seenBy: seenByFor(found.seenBy, question.given),
        replaces: false,
        idempotencyKey: question.id,
        run: context =>
          takeOrOffer({ command: path, action: found, given: known ? question.given : {} }, context),
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

const unknownCommand = (typed: string, registry: CommandRegistry): never =>
  refuse('command-unknown', { typed, nearest: nearest(typed, [...registry.actions.keys()], 3) });
