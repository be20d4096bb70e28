import type { Conversation } from '../../src/conversation/conversation.ts';
import { openLately } from '../../src/conversation/lately/lately.ts';
import { receive } from '../../src/conversation/receive.ts';
import type { Answer } from '../../src/conversation/reply.ts';
import type { Language } from '../../src/words/sentence.ts';
import { openConversation } from '../sets/open-conversation.ts';

/** Who says something, where and when; what is left out is the same for all. */
export type Said = {
  readonly who?: string;
  readonly channel?: string;
  readonly group?: string;
  /** Minutes after the first. */
  readonly after?: number;
  readonly id?: string;
  readonly language?: Language;
};

const START = Date.UTC(2026, 10, 29, 12);

export type Reply = Extract<Answer, { kind: 'reply' }>;

/** A conversation that remembers what was asked last. */
export async function openTalk() {
  const alone = await openConversation();
  const conversation: Conversation = {
    ...alone,
    services: { ...alone.services, lately: openLately() },
  };
  let asked = 0;
  const ask = async (path: readonly string[], given: Record<string, string>, said: Said): Promise<Answer> => {
    asked += 1;
    const {
      who = 'maker',
      channel = 'pots',
      group = 'club',
      after = 0,
      id = `q${asked}`,
      language = 'en',
    } = said;
    const asker = { id: who, name: who, manages: false, roles: [] };
    const at = START + after * 60_000 + asked;
    return await receive(
      { kind: 'command', id, at, asker, group, channel, language, path, given },
      conversation,
    );
  };
  const reply = (answer: Answer): Reply => {
    if (answer.kind !== 'reply') throw new Error(`answered with ${JSON.stringify(answer)}`);
    return answer;
  };
  return {
    conversation,
    ask,
    /** A turn in plain words. */
    say: async (question: string, said: Said = {}): Promise<Reply> =>
      reply(await ask(['ask'], { question }, said)),
    [Symbol.asyncDispose]: () => alone[Symbol.asyncDispose](),
  };
}

export type Talk = Awaited<ReturnType<typeof openTalk>>;

/** All that an answer shows, as one text. */
export const textOf = ({ headline, blocks }: Reply): string =>
  [headline, ...blocks.flatMap(one => ('text' in one ? [one.text] : 'rows' in one ? one.rows : []))].join(
    '\n',
  );

/** What an answer says that it was understood as. */
export const understoodOf = ({ data }: Reply) =>
  (
    data as {
      understood?: {
        command?: string;
        given?: Record<string, string>;
        askedBack?: boolean;
        technique?: string;
        lye?: string;
      };
    }
  ).understood ?? {};
