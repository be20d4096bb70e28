import type { Context } from '../../../src/conversation/context.ts';
import { type Block, LONGEST_LABEL } from '../../../src/conversation/reply.ts';
import { plainWords } from '../../../src/engine/questions/lye/amounts/words.ts';
import { tellsOfMade } from '../../../src/engine/questions/lye/asked-plainly.ts';
import { readLyeQuestion } from '../../../src/engine/questions/lye/question.ts';
import type { Way } from '../../../src/engine/questions/lye/recipe-line/items/item.ts';
import { readyLyeNamed } from '../../../src/engine/questions/lye/sums/ready-solution.ts';
import { lyeBeyondAllOils } from '../../../src/engine/questions/lye/topics/too-much-at-once.ts';
import { unlessRefused } from '../../../src/engine/refusal.ts';
import { cut } from '../../../src/engine/text/excerpt.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import type { AskReply } from '../understood.ts';
import { figureBefore } from './figure-before.ts';
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

/** What stopped a recipe. */
type Stop = {
  readonly question: string;
  readonly weighed: boolean;
  readonly problem: string;
  /** The recipes that the question may be of; a press asks again with one. */
  readonly ways?: readonly Way[];
};

/** One recipe, and words beside it: it is shown, since a press takes it as it stands. */
const soleOf = ({ problem, ways = [] }: Stop): Way | undefined =>
  ways.length === 1 && ways[0]!.without.length === 0 && problem !== 'oil-in-pot' ? ways[0] : undefined;

/** No number: something was not understood. The question itself comes back in a form to be put right. */
export async function stopped(headline: string, stop: Stop, context: Context): Promise<AskReply> {
  const { question, problem, ways = [] } = stop;
  const { say, idempotencyKey: line } = context;
  const isSole = soleOf(stop) !== undefined;
  await keepLines([question, ...ways.map(way => asked(way.line, say))], context);
  return {
    kind: 'reply',
    headline,
    data: {},
    short: { problem },
    understood: { kind: 'lye', lye: 'stopped' },
    blocks: [...figureBefore(context), ...besideStop(stop, say)],
    cautions: cautions(context),
    choices: [
      ...ways.map(({ without }, at) => ({
        kind: 'button' as const,
        label: cut(labelOf(without, { isSole }, say), LONGEST_LABEL),
        follow: askFollowUps.run.with({ line, at: at + 1 }),
      })),
      { kind: 'button', label: say.ask.change, follow: askFollowUps.change.with({ line }) },
    ],
  };
}

/** What is said beside a recipe that was stopped; what keeps from harm is never folded. */
function besideStop(stop: Stop, { lyeQuestions }: Context['say']): readonly Block[] {
  const { question, weighed } = stop;
  const beyond = lyeBeyondAllOils(question);
  const sole = soleOf(stop);
  const isReady = readyLyeNamed(plainWords(question, { clauses: true })) !== undefined;
  const firm = (text: string): Block => ({ kind: 'text', text, firm: true });
  return [
    ...(beyond === undefined ? [] : [firm(lyeQuestions.beyondAllOils({ lye: beyond }))]),
    { kind: 'text', text: lyeQuestions.noNumber },
    ...(sole ? [firm(lyeQuestions.readWithout(sole))] : []),
    ...(weighed && tellsOfMade(question)
      ? [{ kind: 'text' as const, text: lyeQuestions.weighedButUnread }]
      : []),
    ...(isReady ? [firm(lyeQuestions.readyHoldsWater)] : []),
  ];
}
