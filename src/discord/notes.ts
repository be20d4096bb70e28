import { type Message, type REST, Routes } from 'discord.js';
import { forOneQuestion } from '../conversation/answering/one-question.ts';
import { watchOwn } from '../conversation/answering/own-watch.ts';
import type { Conversation } from '../conversation/conversation.ts';
import type { Origin } from '../conversation/question.ts';
import { firstAidForWords, receive } from '../conversation/receive.ts';
import type { Answer } from '../conversation/reply.ts';
import type { Language } from '../engine/language.ts';
import type { Talk } from '../engine/questions/leaning/before.ts';
import type { Lean } from '../engine/questions/leaning/lean-kinds.ts';
import { unaccented } from '../engine/text/unaccented.ts';
import { languageOf, wordsIn } from '../words/index.ts';
import { requestOf } from './post.ts';
import { payloadOf, problemPayload } from './render.ts';

export type NoteDesk = { readonly conversation: Conversation; readonly posting: REST };

/**
 * Answers a message that tells of an emergency, with the first aid, and one that asks us a plain question, with its answer,
 * where everybody who reads the message reads it too. What is to us is never met with silence: a "no" is told as well, and
 * what is the asker's own is sent to `/ask`. True when it was answered. The platform lets us read what is written to us and
 * in direct messages, and everything where it granted the message content intent.
 */
export async function answerNote(message: Message, desk: NoteDesk): Promise<boolean> {
  if (message.author.bot || message.content === '' || !message.channel.isSendable()) return false;
  const origin = originOf(message);
  const words = wordsTo(message.content);
  const conversation = forOneQuestion(desk.conversation, origin);
  const answer =
    (await firstAidForWords(words, origin, conversation)) ??
    (await answerToWords(words, message, conversation));
  if (!answer || answer.kind === 'form') return false;
  const payload =
    answer.kind === 'reply' ? payloadOf(answer, wordsIn(answer.language)) : problemPayload(answer);
  const { body, files } = requestOf(payload);
  // Told once, also where its receipt was lost and the library sends it anew.
  const once = { nonce: message.id, enforce_nonce: true };
  await desk.posting.post(Routes.channelMessages(message.channelId), { body: { ...body, ...once }, files });
  return true;
}

/** The answer to a note that is no emergency, as everybody may read it; undefined where it is not for us. */
async function answerToWords(
  words: string,
  message: Message,
  conversation: Conversation,
): Promise<Answer | undefined> {
  const isForUs = isToUs(message);
  if (!isForUs && !(await isQuestionAmongMembers(words, message, conversation))) return undefined;
  watchOwn(conversation);
  const answer = await answerInWords(words, message, conversation);
  const isOwn = message.guild !== null && (await isOwnTold(answer, message, conversation));
  // Of what nobody asked us only what was found is told.
  if (!isForUs) return isOwn || answer.kind === 'problem' ? undefined : answer;
  return isOwn ? sentToAsk(answer.language) : answer;
}

const isToUs = ({ guild, client, mentions }: Message): boolean =>
  guild === null ||
  (client.user !== null && mentions.has(client.user, { ignoreEveryone: true, ignoreRoles: true }));

/** What cannot be looked up may be theirs. */
async function isOwnTold(answer: Answer, { author }: Message, conversation: Conversation): Promise<boolean> {
  const { tellsOwn } = await import('../conversation/answering/own-told.ts');
  return tellsOwn(answer, author.id, conversation).catch(() => answer.kind === 'reply');
}

const sentToAsk = (language: Language): Answer => ({
  kind: 'problem',
  id: 'own-by-ask',
  text: wordsIn(language).conversation.ownByAsk,
  language,
});

/** Longer notes are talk among members. */
const LONGEST_QUESTION = 300;
/** What is about a member's own shelf is not told to everybody. */
const OWN: ReadonlySet<string> = new Set(['shelf-add', 'shelf-use', 'shelf-show']);
/** How likely a reading must be before anybody’s note is answered unasked: of what other hands wrote about other fields nothing is, from here on. */
const SURE = 0.85;

/** Whether a note among members asks with a question mark for something that we surely do and that nothing is missing for. */
async function isQuestionAmongMembers(
  words: string,
  message: Message,
  { services: { lately } }: Conversation,
): Promise<boolean> {
  if (words.length > LONGEST_QUESTION || !words.includes('?')) return false;
  // A third of all that is loaded: with the first note, so that no start waits for it.
  const [{ readQuestion }, { BAR_WORDS }, { leanOf }] = await Promise.all([
    import('../engine/questions/read.ts'),
    import('../engine/questions/fields/soap-words.ts'),
    import('../engine/questions/leaning/lean.ts'),
  ]);
  const talk = lately?.before(originOf(message));
  const lean = leanOf(words, talk);
  // Only what surely goes on from an answer of ours, asked by the same member, is for us.
  if (lean && lean.kind !== 'fine') return isSameAgain(lean, talk);
  const { readings, facts } = readQuestion(words);
  const [reading] = readings;
  if (!reading || OWN.has(reading.job)) return false;
  // Turns of phrase alone do not tell a flaw of a bar from talk.
  const tellsFlaw = facts.findings > 0 && BAR_WORDS.test(unaccented(words, LONGEST_QUESTION));
  const isTalk = reading.job === 'help' || (reading.job === 'diagnose' && !tellsFlaw);
  return reading.score >= SURE && reading.missing.length === 0 && !isTalk;
}

/** The command of before with a change in it: “is it safe?” may be asked of anybody. */
const isSameAgain = (lean: Lean, talk: Talk | undefined): boolean =>
  lean.kind === 'runs' &&
  talk?.last.kind === 'command' &&
  lean.readings.every(({ command }) => talk.last.kind === 'command' && command === talk.last.command);

/** What a note says, without whom it calls. */
const wordsTo = (content: string): string => content.replace(/<@!?\d+>/gu, ' ').trim();

const answerInWords = (words: string, message: Message, conversation: Conversation) =>
  receive(
    {
      ...originOf(message),
      kind: 'command',
      path: ['ask'],
      given: { question: words || '?' },
    },
    conversation,
  );

/** A message does not say its writer's language: the group's stands in, unless they prefer another. */
function originOf({ id, author, guild, channelId, createdTimestamp }: Message): Origin {
  const locale = guild?.preferredLocale;
  return {
    id,
    at: createdTimestamp,
    asker: { id: author.id, name: author.displayName, manages: false, roles: [] },
    group: guild?.id ?? `direct-${author.id}`,
    channel: channelId,
    opensFolds: true,
    readsMarks: true,
    language: languageOf(locale ?? 'en'),
    locale,
  };
}
