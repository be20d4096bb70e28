import type { Conversation } from '../../src/conversation/conversation.ts';
import { apart, colourNamed } from '../../src/engine/text/colours/colour-name.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { NEAR } from './same-thing.ts';
import type { TextSet, Written } from './text-set.ts';
import { wrongAmount } from './wrong-amount.ts';
import { type Answered, wrongQuestion } from './wrong-question.ts';

export type Part = { readonly right: number; readonly total: number };
export type Score = Readonly<Record<'questions' | 'amounts' | 'colours' | 'scope', Part>> & {
  readonly misses: readonly string[];
};

/** Right where everything that the label states was understood: the job, the names, the numbers within 1 %. */
export async function score(set: TextSet, conversation: Conversation): Promise<Score> {
  const misses: string[] = [];
  const part = async <Item extends { text: string }>(
    name: string,
    items: readonly Item[],
    wrong: (item: Item) => Promise<string | undefined> | string | undefined,
  ): Promise<Part> => {
    let right = 0;
    for (const [at, item] of items.entries()) {
      const why = await (async () => wrong(item))().catch(
        (error: unknown) => `threw ${String((error as { id?: string }).id ?? error)}`,
      );
      if (why === undefined) right += 1;
      else misses.push(`${name} ${at} “${item.text}”: ${why}`);
    }
    return { right, total: items.length };
  };
  const asked = async (text: string, written: Written) => {
    const language = written === 'mixed' ? mostly(text) : written;
    const seat = { member: `reader-${Math.random()}`, group: 'sets', language, manages: false, roles: [] };
    return (await askLine(`/ask question:${JSON.stringify(text.replaceAll('\n', ' '))}`, seat, conversation))
      .answer;
  };
  return {
    questions: await part('question', set.questions, async ({ text, language, job, expect }) => {
      const answer = await asked(text, language);
      if (answer.kind !== 'reply')
        return `no reply: ${answer.kind} ${answer.kind === 'problem' ? answer.id : ''}`;
      return wrongQuestion(answer.data as Answered, job, expect);
    }),
    amounts: await part('amount', set.amounts, item => wrongAmount(item)),
    colours: await part('colour', set.colours, ({ text, hex }) => {
      const read = colourNamed(text);
      if (!read) return `unread, ${hex}`;
      const far = apart(read.hex, hex);
      return far <= NEAR ? undefined : `${read.hex} (${read.name}) is ${far.toFixed(0)} from ${hex}`;
    }),
    scope: await part('scope', set.scope, async ({ text, language, outside }) => {
      const answer = await asked(text, language);
      const data = (answer.kind === 'reply' ? answer.data : {}) as Answered & { emergency?: unknown };
      const isOutside = data.understood?.outside !== undefined || data.emergency !== undefined;
      if (outside) return isOutside ? undefined : `answered inside: ${data.understood?.command ?? 'nothing'}`;
      if (isOutside) return `sent away: ${data.understood?.outside ?? 'first aid'}`;
      return (data.understood?.command ?? data.understood?.lye) === undefined ? 'not understood' : undefined;
    }),
    misses,
  };
}

const SPANISH = new Set(
  'a al algo así con cual cuando cuanto cuántos cuánto de del el en es esta está la las lo los más me mi no o para pero por porque puedo que qué se si sin sobre su un una y ya yo'.split(
    ' ',
  ),
);
const ENGLISH = new Set(
  'a about an and are can did do for from get got have how i in is it like me my no of on or please so that the this to we what when which why will with you'.split(
    ' ',
  ),
);
/** The language that most of a text's small words are of. */
function mostly(text: string): 'en' | 'es' {
  const words = text.toLowerCase().split(/[^\p{L}]+/u);
  const of = (list: ReadonlySet<string>) => words.filter(word => list.has(word)).length;
  return of(SPANISH) > of(ENGLISH) ? 'es' : 'en';
}
