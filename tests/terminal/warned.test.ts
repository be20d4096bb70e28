import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Reply } from '../../src/conversation/reply.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { LANGUAGES, type Language } from '../../src/words/sentence.ts';
import { openConversation } from '../sets/open-conversation.ts';
import { WARNED } from './warned/index.ts';
import type { WarnedCase } from './warned/row.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

let seats = 0;

const linesIn = (asked: WarnedCase[0], language: Language): readonly string[] => {
  const lines = typeof asked === 'object' && 'en' in asked ? asked[language] : asked;
  return typeof lines === 'string' ? [lines] : lines;
};

/** The answer to the last of some lines, by a member of their own. */
async function answered(asked: WarnedCase[0], language: Language): Promise<Reply<string>> {
  seats += 1;
  const seat = { member: `m${seats}`, group: `g${seats}`, language, manages: true, roles: [] } as const;
  const replies: Reply<string>[] = [];
  for (const line of linesIn(asked, language)) {
    const pressable = replies.flatMap(({ choices = [] }) => choices.map(({ follow }) => follow));
    const typed = line.replace(/^\/press (\d)/u, (_, at) => `press ${pressable[Number(at) - 1]}`);
    const { answer } = await askLine(typed, seat, conversation);
    if (answer.kind !== 'reply') throw new Error(`${line}: ${answer.kind}`);
    replies.push(answer);
  }
  return replies.at(-1)!;
}

/** All that an answer says below its headline, folded or not. */
const below = ({ blocks, cautions }: Reply<string>): string => JSON.stringify([blocks, cautions]);
/** The cautions that an answer names: those it shows as such, and those among its data. */
function cautionsNamed({ cautions, data }: Reply<string>): readonly string[] {
  const { warnings = [], cautions: others = [] } = data as Readonly<
    Record<'warnings' | 'cautions', readonly { readonly id?: string }[] | undefined>
  >;
  return [...cautions, ...warnings, ...others].flatMap(({ id }) => id ?? []);
}

describe.each(LANGUAGES)('what is warned of in %s', language => {
  const named = WARNED.map(one => [one[1].map(([id]) => id).join(', '), one] as const);
  test.for(named)('%s', async ([, [asked, cautions]]) => {
    const answer = await answered(asked, language);
    expect(cautionsNamed(answer)).toEqual(expect.arrayContaining(cautions.map(([id]) => id)));
    const parts = cautions.map(([, english, spanish]) => ({ en: english, es: spanish })[language]);
    expect(parts.filter(part => !below(answer).includes(part))).toEqual([]);
  });
});
