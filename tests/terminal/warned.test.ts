import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Reply } from '../../src/conversation/reply.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { LANGUAGES, type Language } from '../../src/words/sentence.ts';
import { openConversation } from '../sets/open-conversation.ts';
import { dose } from './warned/dose.ts';
import { plan } from './warned/plan.ts';
import type { WarnedCase } from './warned/row.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

let seats = 0;

/** The answer to the last of some lines, by a member of their own. */
async function answered(asked: WarnedCase[0], language: Language): Promise<Reply<string>> {
  seats += 1;
  const seat = { member: `m${seats}`, group: `g${seats}`, language, manages: true, roles: [] } as const;
  const replies: Reply<string>[] = [];
  for (const line of typeof asked === 'string' ? [asked] : asked) {
    const { answer } = await askLine(line, seat, conversation);
    if (answer.kind !== 'reply') throw new Error(`${line}: ${answer.kind}`);
    replies.push(answer);
  }
  return replies.at(-1)!;
}

/** All that an answer says below its headline, folded or not. */
const below = ({ blocks, cautions }: Reply<string>): string => JSON.stringify([blocks, cautions]);
/** The cautions that an answer names: those it shows as such, and those among its data. */
function named({ cautions, data }: Reply<string>): readonly string[] {
  const { warnings = [], cautions: others = [] } = data as Readonly<
    Record<'warnings' | 'cautions', readonly { readonly id?: string }[] | undefined>
  >;
  return [...cautions, ...warnings, ...others].flatMap(({ id }) => id ?? []);
}

describe.each(LANGUAGES)('what is warned of in %s', language => {
  test.for([...dose, ...plan])('%s', async ([asked, cautions]) => {
    const answer = await answered(asked, language);
    expect(named(answer)).toEqual(expect.arrayContaining(cautions.map(([id]) => id)));
    const parts = cautions.map(([, english, spanish]) => ({ en: english, es: spanish })[language]);
    expect(parts.filter(part => !below(answer).includes(part))).toEqual([]);
  });
});
