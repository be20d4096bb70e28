import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { readyLyeNamed } from '../../src/engine/questions/lye/ready-solution.ts';
import { plainWords } from '../../src/engine/questions/lye/words.ts';
import { keepAskedLine } from '../../src/records/asked/index.ts';
import { askFollowUps } from './follow-ups.ts';
import { cautions } from './matter.ts';

/** Somebody has the lye in a jug, a batter or a bar already. */
const MADE =
  /\b(?:put|added|poured|used|mixed|made|weighed|went in|eché|eche|echó|puse|puso|hice|usé|use|agregué|añadí|mezclé|pesé)\b/iu;

/** No number: something was not understood. The question itself comes back in a form to be put right. */
export async function stopped(
  headline: string,
  {
    question,
    weighed,
    problem,
  }: { readonly question: string; readonly weighed: boolean; readonly problem: string },
  context: Context,
): Promise<Reply> {
  const { say, shelf, idempotencyKey, change } = context;
  await keepAskedLine(
    shelf,
    idempotencyKey,
    { command: 'ask', given: {}, candidates: [question] },
    change.at,
  );
  return {
    kind: 'reply',
    headline,
    data: { understood: { lye: 'stopped' }, problem },
    blocks: [
      { kind: 'text', text: say.lyeQuestions.noNumber },
      ...(weighed && MADE.test(question)
        ? [{ kind: 'text' as const, text: say.lyeQuestions.weighedButUnread }]
        : []),
      ...(readyLyeNamed(plainWords(question, { clauses: true })) !== undefined
        ? [{ kind: 'text' as const, text: say.lyeQuestions.readyHoldsWater, firm: true }]
        : []),
    ],
    cautions: cautions(context),
    choices: [
      { kind: 'button', label: say.ask.change, follow: askFollowUps.change.with({ line: idempotencyKey }) },
    ],
  };
}
