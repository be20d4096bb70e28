import type { Context } from '../../src/conversation/context.ts';
import { courtesyIn } from '../../src/engine/questions/fields/courtesy.ts';
import type { SmallTalk } from '../../src/engine/questions/fields/small-talk.ts';
import type { AskReply } from './understood.ts';

/** What is said to small talk, by its kind. */
export function smallTalkReply(kind: SmallTalk, { say: { ask } }: Context): AskReply {
  const headline =
    kind === 'praise'
      ? ask.welcome
      : kind === 'greets'
        ? ask.hello
        : kind === 'wrongChat'
          ? ask.chat.noHarm
          : ask.chat[kind];
  return {
    kind: 'reply',
    headline,
    data: {},
    understood: { kind: 'outside', outside: 'other', chat: kind },
    blocks: [],
    cautions: [],
  };
}

/** A courtesy for a courtesy: chat that asks for nothing yet. */
export function chatReply(question: string, { say: { ask } }: Context): AskReply {
  const kind = courtesyIn(question);
  return {
    kind: 'reply',
    headline: kind === 'welcome' ? ask.welcome : ask.chat[kind],
    data: {},
    understood: { kind: 'outside', outside: 'other', chat: kind },
    blocks: [],
    cautions: [],
  };
}
