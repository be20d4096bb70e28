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
  let rooms = 0;
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
    /** The last answer of a talk of its own. */
    lastOf: async (turns: readonly string[], language: Language = 'en'): Promise<Reply> => {
      rooms += 1;
      const channel = `room-${rooms}`;
      const answers: Reply[] = [];
      for (const question of turns)
        answers.push(reply(await ask(['ask'], { question }, { channel, language })));
      return answers.at(-1)!;
    },
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

/** The grams of NaOH that stand behind a recipe in a headline. */
export const lyeIn = (headline: string): number =>
  Number(/: (\d+(?:[.,]\d+)?) g (?:of |de )?NaOH/u.exec(headline)?.[1]?.replace(',', '.'));

/** What is said where a recipe was changed and is not whole. */
export const ASKS_WHOLE = {
  en: 'For lye I need the whole recipe anew: every oil with its weight, and the superfat.',
  es: 'Para la sosa necesito la receta entera otra vez: cada aceite con su peso, y el sobreengrasado.',
};
