import { withSpokenOf } from '../engine/hazards/index.ts';
import { spokenOfIn } from '../engine/questions/leaning/subject/things.ts';
import { Refusal, refuse } from '../engine/refusal.ts';
import { refusalOf, StoreFailure } from '../records/failure.ts';
import { dropNotices, type Notice, noticesFor } from '../records/notices.ts';
import { preferencesAtHand, preferencesOf } from '../records/preferences.ts';
import { pressedAgain } from '../records/shelf/index.ts';
import { byClockOf } from '../words/dates.ts';
import { wordsIn } from '../words/index.ts';
import { plainThroughout } from '../words/marks.ts';
import { requireSteward } from './answering/access.ts';
import { onArrival } from './answering/arrival.ts';
import { contextOf } from './answering/context-of.ts';
import { forOneQuestion } from './answering/one-question.ts';
import { isBroughtAlong, responseModeOf } from './answering/response-mode.ts';
import { findTask, type Task } from './answering/task.ts';
import type { Suggestion } from './command.ts';
import type { Conversation } from './conversation.ts';
import { withFace } from './faces/faces.ts';
import { inOunces } from './faces/in-ounces.ts';
import { checkLegible, isShort } from './faces/legible.ts';
import { keepingFirstAid } from './first-aid/call-for-help.ts';
import { firstAidFor } from './first-aid/first-aid.ts';
import { emergenciesOf } from './first-aid/in-talk.ts';
import { emergenciesIn, freeTexts, languageOfHelp } from './first-aid/told.ts';
import { allKnown, holderOf, sealed, sealedChoice, type Unspoken } from './follow-ups/sealed.ts';
import { understoodIn } from './lately/understood-in.ts';
import type { Origin, Question } from './question.ts';
import type { Answer, Problem } from './reply.ts';
import { languageAskedFor, languageWritten } from './typed/language-written.ts';
import { Offer } from './typed/which-one.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'group-only': Record<string, never>;
    'our-fault': { reference: string };
  }
}

/** Answers a question. Never throws: a "no" and a fault of ours both come back as a problem. */
export async function receive(asked: Question, shared: Conversation): Promise<Answer> {
  const conversation = forOneQuestion(shared, asked);
  const { store } = conversation.services;
  const wishes = preferencesAtHand(store, asked.asker.id) ?? (await wishesOf(asked, conversation));
  const wished = languageAskedFor(asked) ?? wishes?.language;
  const language = languageOfHelp(freeTexts(asked), wished ?? languageWritten(asked));
  const question = { ...asked, language };
  const [answered, notices] = await Promise.all([
    answerTo(question, conversation),
    waitingFor(question, conversation),
  ]);
  if (answered.kind === 'reply') keepUnderstood(question, answered.data, conversation);
  const kept = keepingFirstAid(answered, freeTexts(question), wordsIn(language));
  const told = withNotices(kept, notices, question);
  const weighed = told.kind === 'reply' && wishes?.mass === 'ounces' ? inOunces(told, language) : told;
  const answer = weighed.kind === 'reply' ? await withFace(weighed, question, conversation) : weighed;
  const clock = wishes?.zone === undefined ? undefined : byClockOf(wishes.zone, language);
  const shown: Answer = { ...(asked.readsMarks ? answer : plainThroughout(answer, clock)), language };
  // An answer that is lost on its way has told nobody: what came along waits for the next.
  if (told !== kept)
    onArrival(shown, () => dropNotices(store, question.asker.id, notices).catch(() => undefined));
  return shown;
}

/** What a member is told along with the answer to a command that only they see: that something did not reach a group. */
async function waitingFor(question: Question, conversation: Conversation): Promise<readonly Notice[]> {
  if (question.kind !== 'command') return [];
  const { seenBy } = await responseModeOf(question, conversation);
  if (seenBy !== 'asker') return [];
  // A notice that cannot be read holds up no answer; it waits for the next.
  return await noticesFor(conversation.services.store, question.asker.id).catch(() => []);
}

function withNotices(answer: Unspoken, notices: readonly Notice[], { language }: Origin): Unspoken {
  if (answer.kind !== 'reply' || notices.length === 0) return answer;
  // Nothing stands before what to do; it waits for the next answer.
  if ('emergency' in answer.data) return answer;
  const { conversation, challengeSteps } = wordsIn(language);
  const told = notices.map(({ title, reason }) =>
    reason === undefined
      ? conversation.notTold({ title })
      : challengeSteps.takenOutOfYours({ title, reason }),
  );
  return { ...answer, blocks: [...told.map(text => ({ kind: 'text', text }) as const), ...answer.blocks] };
}

/** Remembers what a question was understood as, where the process remembers. */
function keepUnderstood(
  asked: Question | Origin,
  data: object,
  { services: { lately } }: Conversation,
): void {
  const given = 'given' in asked ? asked.given.question : undefined;
  lately?.keep(asked, understoodIn(asked, data), typeof given === 'string' ? given : '');
}

/** How much of what one call may take is waited for what a member prefers: a sound store says it in a few ms. */
const WISHES_WITHIN = 0.15;

/** What the member prefers, their language before all; undefined when it cannot be looked up in time. */
async function wishesOf({ asker }: Origin, { services: { store } }: Conversation) {
  const { promise: late, resolve } = Promise.withResolvers<undefined>();
  const timer = setTimeout(resolve, WISHES_WITHIN * (store.patience ?? 2_000));
  const looked = preferencesOf(store, asker.id).catch(() => undefined);
  return await Promise.race([looked, late]).finally(() => clearTimeout(timer));
}

/** The id under which a question changes something; a button whose change was taken back makes it anew. */
async function causeOf(
  { kind, id, asker }: Question,
  { idempotencyKey: cause }: Pick<Task, 'idempotencyKey'>,
  { services: { store } }: Conversation,
): Promise<string> {
  if (kind !== 'follow') return cause;
  return pressedAgain({ store, member: asker.id }, { cause, press: id }).catch((failure: unknown) => {
    // What changes nothing is answered without the records too; what does will meet the same failure.
    if (failure instanceof StoreFailure) return cause;
    throw failure;
  });
}

async function answerTo(question: Question, conversation: Conversation): Promise<Unspoken> {
  const say = wordsIn(question.language);
  try {
    // Before anything is loaded, looked up, checked or reckoned: whoever is hurt is told what to do.
    const { registry } = conversation;
    const before = emergenciesOf(conversation.services.lately?.before(question));
    const texts = textsInTalk(question, conversation);
    const firstAid = await firstAidFor(texts, question, { say, registry, before });
    if (firstAid) return sealed(firstAid, question, conversation);
    checkLegible(question);
    await registry.prepare?.(question);
    const task = findTask(question, conversation);
    const context = contextOf(question, conversation, await causeOf(question, task, conversation));
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

/** What a question says in free words; a smell of egg alone with the ultramarine that was spoken of just before. */
function textsInTalk(question: Question, { services: { lately } }: Conversation): readonly string[] {
  const texts = freeTexts(question);
  const spokenOf = spokenOfIn(lately?.before(question));
  return spokenOf === undefined ? texts : texts.map(text => withSpokenOf(text, spokenOf));
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
  shared: Conversation,
): Promise<readonly Suggestion[]> {
  if (!isShort(question.typed)) return [];
  const conversation = forOneQuestion(shared, question);
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
  const wishes = await wishesOf(origin, conversation);
  const language = languageOfHelp([words], wishes?.language ?? origin.language);
  const say = wordsIn(language);
  const { registry, services } = conversation;
  const before = emergenciesOf(services.lately?.before(origin));
  const reply = await firstAidFor([words], origin, { say, registry, before });
  if (reply) keepUnderstood(origin, reply.data, conversation);
  return reply && { ...sealed(reply, { ...origin, language }, conversation), language };
}
