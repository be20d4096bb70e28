import type { Context } from '../../../src/conversation/context.ts';
import { LONGEST_LABEL, type Reply } from '../../../src/conversation/reply.ts';
import { plainWords } from '../../../src/engine/questions/lye/amounts/words.ts';
import { tellsOfMade } from '../../../src/engine/questions/lye/asked-plainly.ts';
import { readLyeQuestion } from '../../../src/engine/questions/lye/question.ts';
import type { Way } from '../../../src/engine/questions/lye/recipe-line/items/item.ts';
import { readyLyeNamed } from '../../../src/engine/questions/lye/sums/ready-solution.ts';
import { lyeBeyondAllOils } from '../../../src/engine/questions/lye/topics/too-much-at-once.ts';
import { unlessRefused } from '../../../src/engine/refusal.ts';
import { cut } from '../../../src/engine/text/cut.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import { cautions } from './matter.ts';

/** A recipe of the strict reader as a question that asks for its lye, or whether that which was weighed is right. */
const asked = (line: string, { lyeQuestions }: Context['say']): string =>
  isWeighed(line) ? lyeQuestions.isItRight({ line }) : lyeQuestions.lyeFor({ line });
const isWeighed = (line: string): boolean =>
  unlessRefused(() => readLyeQuestion(line))?.weighed !== undefined;

const labelOf = (
  without: readonly string[],
  { isSole }: { readonly isSole: boolean },
  { lyeQuestions }: Context['say'],
): string => {
  if (isSole) return lyeQuestions.asRead;
  return without.length === 0 ? lyeQuestions.allIn : lyeQuestions.leftOutOfPot({ names: without });
};

/** No number: something was not understood. The question itself comes back in a form to be put right. */
export async function stopped(
  headline: string,
  {
    question,
    weighed,
    problem,
    ways = [],
  }: {
    readonly question: string;
    readonly weighed: boolean;
    readonly problem: string;
    /** The recipes that the question may be of; a press asks again with one. */
    readonly ways?: readonly Way[];
  },
  context: Context,
): Promise<Reply> {
  const { say, idempotencyKey } = context;
  // One recipe, and words beside it: it is shown, since a press takes it as it stands.
  const sole =
    ways.length === 1 && ways[0]!.without.length === 0 && problem !== 'oil-in-pot' ? ways[0] : undefined;
  const beyond = lyeBeyondAllOils(question);
  await keepLines([question, ...ways.map(({ line }) => asked(line, say))], context);
  return {
    kind: 'reply',
    headline,
    data: { understood: { lye: 'stopped' }, problem },
    blocks: [
      ...(beyond === undefined
        ? []
        : [{ kind: 'text' as const, text: say.lyeQuestions.beyondAllOils({ lye: beyond }), firm: true }]),
      { kind: 'text', text: say.lyeQuestions.noNumber },
      ...(sole ? [{ kind: 'text' as const, text: say.lyeQuestions.readWithout(sole), firm: true }] : []),
      ...(weighed && tellsOfMade(question)
        ? [{ kind: 'text' as const, text: say.lyeQuestions.weighedButUnread }]
        : []),
      ...(readyLyeNamed(plainWords(question, { clauses: true })) !== undefined
        ? [{ kind: 'text' as const, text: say.lyeQuestions.readyHoldsWater, firm: true }]
        : []),
    ],
    cautions: cautions(context),
    choices: [
      ...ways.map(({ without }, at) => ({
        kind: 'button' as const,
        label: cut(labelOf(without, { isSole: sole !== undefined }, say), LONGEST_LABEL),
        follow: askFollowUps.run.with({ line: idempotencyKey, at: at + 1 }),
      })),
      { kind: 'button', label: say.ask.change, follow: askFollowUps.change.with({ line: idempotencyKey }) },
    ],
  };
}
