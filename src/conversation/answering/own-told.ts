import { z } from 'zod';
import { COMMON_WORDS } from '../../engine/text/spelling/trade/trade-words.ts';
import { deaccented } from '../../engine/text/unaccented.ts';
import { preferencesOf } from '../../records/preferences.ts';
import { listShelf } from '../../records/shelf/index.ts';
import type { Conversation } from '../conversation.ts';
import type { Answer } from '../reply.ts';
import { hasNamedJar } from './own-watch.ts';

/** What these answer is the asker's alone, whether or not they show their jars. */
const OWN_COMMANDS = /^(?:shelf|batch|recipe|palette|calibrate|privacy|prefer|swap)\b/u;
const understood = z.object({ understood: z.object({ command: z.string() }) });

/**
 * Whether an answer tells of what its asker keeps for themselves: it is of a command of their own records, one of the
 * commands that it ran named a jar, or the name of a jar stands anywhere in it, folds and buttons included.
 * `conversation` is that of one question, watched since before it was answered. Throws as the store does.
 */
export async function tellsOwn(answer: Answer, member: string, conversation: Conversation): Promise<boolean> {
  const read = answer.kind === 'reply' ? understood.safeParse(answer.data).data : undefined;
  if (read && OWN_COMMANDS.test(read.understood.command)) return true;
  const { store } = conversation.services;
  const [{ jars }, shelf] = await Promise.all([preferencesOf(store, member), listShelf({ store, member })]);
  if (jars === 'shown' || shelf.length === 0) return false;
  if (hasNamedJar(conversation)) return true;
  const told = textsIn(answer).join('\n');
  return shelf.some(({ name }) => isNamed(name, told));
}

/** Every text of an answer that somebody may read: `data` is for programs. */
const textsIn = (answer: Answer): readonly string[] =>
  textsOf(answer.kind === 'reply' ? { ...answer, data: undefined } : answer);

/** Signed ids and bytes are no words. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return [];
  return Object.entries(value).flatMap(([key, one]) => (key === 'follow' ? [] : textsOf(one)));
}

/** A name as a word of its own; one that is an everyday word only as it is written on the jar. */
function isNamed(name: string, told: string): boolean {
  const isCommon = COMMON_WORDS.has(deaccented(name));
  const [sought, text] = isCommon ? [name, told] : [deaccented(name), deaccented(told)];
  for (let at = text.indexOf(sought); at >= 0; at = text.indexOf(sought, at + 1)) {
    const beside = `${text[at - 1] ?? ' '}${text[at + sought.length] ?? ' '}`;
    if (!/[\p{L}\p{N}]/u.test(beside)) return true;
  }
  return false;
}
