import { type Message, type REST, Routes } from 'discord.js';
import type { Conversation } from '../conversation/conversation.ts';
import type { Origin } from '../conversation/question.ts';
import { firstAidForWords, receive } from '../conversation/receive.ts';
import type { Talk } from '../engine/questions/leaning/before.ts';
import type { Lean } from '../engine/questions/leaning/lean.ts';
import { unaccented } from '../engine/text/unaccented.ts';
import { languageOf, wordsIn } from '../words/index.ts';
import { requestOf } from './post.ts';
import { payloadOf } from './render.ts';

export type NoteDesk = { readonly conversation: Conversation; readonly posting: REST };

/**
 * Answers a message that tells of an emergency, with the first aid, and one that asks us a plain question, with its answer,
 * where everybody who reads the message reads it too. True when it was answered. The platform lets us read what is written to us and in direct messages, and
 * everything where it granted the message content intent.
 */
export async function answerNote(message: Message, { conversation, posting }: NoteDesk): Promise<boolean> {
  if (message.author.bot || message.content === '' || !message.channel.isSendable()) return false;
  const origin = originOf(message);
  const firstAid = await firstAidForWords(message.content, origin, conversation);
  const answer =
    firstAid ??
    ((await isQuestion(message, origin, conversation))
      ? await answerInWords(message, conversation)
      : undefined);
  if (answer?.kind !== 'reply') return false;
  // A post has no buttons that are one member's own.
  const payload = payloadOf({ ...answer, choices: [] }, wordsIn(answer.language));
  const { body, files } = requestOf(payload);
  // Told once, also where its receipt was lost and the library sends it anew.
  const once = { nonce: message.id, enforce_nonce: true };
  await posting.post(Routes.channelMessages(message.channelId), { body: { ...body, ...once }, files });
  return true;
}

/** Longer notes are talk among members. */
const LONGEST_QUESTION = 300;
/** What is about a member's own shelf is not told to everybody. */
const OWN: ReadonlySet<string> = new Set(['shelf-add', 'shelf-use', 'shelf-show']);
/** How likely a reading must be before anybody’s note is answered unasked: of what other hands wrote about other fields nothing is, from here on. */
const SURE = 0.85;

/**
 * Whether a note is a question to us: it mentions us, is told to us alone, or asks with a question mark for something that we
 * surely do and that nothing is missing for.
 */
async function isQuestion(
  { content, mentions, client, guild }: Message,
  origin: Origin,
  { services: { lately } }: Conversation,
): Promise<boolean> {
  if (content.length > LONGEST_QUESTION) return false;
  const isToUs =
    guild === null ||
    (client.user !== null && mentions.has(client.user, { ignoreEveryone: true, ignoreRoles: true }));
  // A third of all that is loaded: with the first note, so that no start waits for it.
  const [{ readQuestion }, { BAR_WORDS }] = await Promise.all([
    import('../engine/questions/read.ts'),
    import('../engine/questions/soap-words.ts'),
  ]);
  const { leanOf } = await import('../engine/questions/leaning/lean.ts');
  const talk = lately?.before(origin);
  const lean = leanOf(wordsTo(content), talk);
  // Among members only what surely goes on from an answer of ours, asked by the same member, is for us.
  if (lean && lean.kind !== 'fine') return isToUs || (content.includes('?') && isSameAgain(lean, talk));
  const { readings, facts } = readQuestion(content);
  const [reading] = readings;
  if (!reading || OWN.has(reading.job)) return false;
  if (isToUs) return true;
  // Turns of phrase alone do not tell a flaw of a bar from talk.
  const tellsFlaw = facts.findings > 0 && BAR_WORDS.test(unaccented(content, LONGEST_QUESTION));
  const isTalk = reading.job === 'help' || (reading.job === 'diagnose' && !tellsFlaw);
  return content.includes('?') && reading.score >= SURE && reading.missing.length === 0 && !isTalk;
}

/** The command of before with a change in it: “is it safe?” may be asked of anybody. */
const isSameAgain = (lean: Lean, talk: Talk | undefined): boolean =>
  lean.kind === 'runs' &&
  talk?.last.kind === 'command' &&
  lean.readings.every(({ command }) => talk.last.kind === 'command' && command === talk.last.command);

/** What a note says, without whom it calls. */
const wordsTo = (content: string): string => content.replace(/<@!?\d+>/gu, ' ').trim();

const answerInWords = (message: Message, conversation: Conversation) =>
  receive(
    {
      ...originOf(message),
      kind: 'command',
      path: ['ask'],
      given: { question: wordsTo(message.content) || '?' },
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
