import { randomInt } from 'node:crypto';
import { arrived } from '../conversation/answering/arrival.ts';
import type { Action } from '../conversation/command.ts';
import type { Conversation } from '../conversation/conversation.ts';
import type { Given, Question } from '../conversation/question.ts';
import { firstAidForWords, receive } from '../conversation/receive.ts';
import type { Answer, Problem } from '../conversation/reply.ts';
import { readCommandLine } from '../conversation/typed/command-line.ts';
import { Refusal } from '../engine/refusal.ts';
import { wordsIn } from '../words/index.ts';
import type { Language } from '../words/sentence.ts';
import { fileAt, givenFrom } from './given.ts';

/** Who sits at the terminal. */
export type Seat = {
  readonly member: string;
  readonly group: string;
  readonly language: Language;
  /** Such as `es-MX`, where a country was given with the language. */
  readonly locale?: string | undefined;
  readonly manages: boolean;
  readonly roles: readonly string[];
  /** When it is asked, ms since 1970 UTC, to rehearse what takes days; now where it is left out. */
  readonly at?: number | undefined;
};

/** The answer, and the command it answers (`shelf add`; `press` for a button). */
export type Answered = { readonly command: string; readonly answer: Answer };

/** 2015-01-01T00:00:00Z: ids made here sort by time like the platform's snowflakes. */
const EPOCH = 1_420_070_400_000n;
const freshId = (at: number) => String(((BigInt(at) - EPOCH) << 22n) | BigInt(randomInt(1 << 22)));

/** What a line starts with when it follows a choice of an earlier answer: press ID, choose ID VALUE .., fill ID. */
const FOLLOWING = /^(press|choose|fill)\s+(\S+)\s*(.*)$/s;

/** Answers one line as the member in that seat. Never throws for what was typed. */
export async function askLine(line: string, seat: Seat, conversation: Conversation): Promise<Answered> {
  const following = FOLLOWING.exec(line.trim());
  const command =
    following?.[1] ?? (line.trim().startsWith('/') ? (line.trim().slice(1).split(/\s/, 1)[0] ?? '') : 'ask');
  try {
    const asked = following ? await follow(following) : await ask(line, conversation);
    const question: Question = { ...originOf(seat), ...asked };
    const path = asked.kind === 'command' ? asked.path.join(' ') : command;
    const answer = await receive(question, conversation);
    await arrived(answer);
    return { command: path, answer };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const firstAid = await firstAidForWords(line, originOf(seat), conversation);
    if (firstAid) return { command, answer: firstAid };
    return { command, answer: { ...problemOf(error, seat.language), language: seat.language } };
  }
}

/** A refusal as the problem a front shows. */
export const problemOf = (refusal: Refusal, language: Language): Problem => ({
  kind: 'problem',
  id: refusal.id,
  text: wordsIn(language).refusal(refusal),
});

/** What every line typed in a seat states, with an id of its own. */
export function originOf({ member, group, language, locale, manages, roles, at = Date.now() }: Seat) {
  // Whoever sits at this machine was always here.
  const asker = { id: member, name: member, manages, roles, joinedAt: 0 };
  return { id: freshId(at), at, asker, group, channel: undefined, language, locale };
}

async function ask(line: string, { registry }: Conversation) {
  // Words without a slash are a question in plain words.
  if (!line.trim().startsWith('/'))
    return { kind: 'command' as const, path: ['ask'], given: { question: line.trim() } };
  const optionNames = (action: Action | undefined) =>
    action && [
      ...action.options.flatMap(({ name }) => [name, name.replace(/-1$/, '')]),
      ...Object.keys(action.formerly),
    ];
  const { path, options } = readCommandLine(line, known => optionNames(registry.actions.get(known)));
  const declared = registry.actions.get(path.join(' '))?.options ?? [];
  return { kind: 'command' as const, path, given: await givenFrom(options, declared) };
}

async function follow([, verb, sealed = '', rest = '']: RegExpExecArray) {
  if (verb !== 'fill')
    return { kind: 'follow' as const, sealed, values: rest.split(/\s+/).filter(Boolean), fields: {} };
  const { options } = readCommandLine(`/fill ${rest}`, () => undefined);
  const fields: Record<string, Given[string]> = {};
  for (const { name, text } of options) fields[name] = name === 'photo' ? await fileAt(text) : text;
  return { kind: 'follow' as const, sealed, values: [], fields };
}
