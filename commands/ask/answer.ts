import type { Context } from '../../src/conversation/context.ts';
import { callsForFirstAid } from '../../src/conversation/first-aid/call-for-help.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { withSpokenOf } from '../../src/engine/hazards/index.ts';
import { pastAside } from '../../src/engine/questions/fields/small-talk.ts';
import { withOwnJars } from '../../src/engine/questions/found/jars/own-jars.ts';
import { spokenOfIn } from '../../src/engine/questions/leaning/subject/things.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { withNamesWhole } from '../../src/engine/text/short-names.ts';
import { withSpokenMarks } from '../../src/engine/text/spoken-marks.ts';
import { whenAsked } from '../../src/engine/when-asked.ts';
import { whiffCautions } from '../../src/presenting/whiff.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { answeredAlone } from './answerers.ts';
import type { Answerer, Turn } from './asked.ts';
import { type AnsweredBy, firstOf } from './first-of.ts';
import { carriedReply } from './leaning/carried.ts';
import { clarified } from './leaning/clarified.ts';
import { inContext } from './leaning/in-context.ts';
import { inDanger, unlessLyeHeavy } from './leaning/in-danger.ts';
import { backToBefore, isNothing } from './leaning/leaned-back.ts';
import { leaning, stillHurt } from './leaning/leaning.ts';
import { wholeSentence } from './plain-request.ts';
import { readAsked } from './read-asked.ts';
import { shownAsReply } from './reading/ran-command.ts';
import { type AskReply, ofFirstAid, shown } from './understood.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'question-empty': Record<never, never>;
  }
}

/** Words that call for help, whatever stands beside them. */
const firstAid: Answerer<Turn> = {
  id: 'first-aid',
  answer: async ({ question, context }) =>
    callsForFirstAid(question)
      ? ofFirstAid(shownAsReply(await context.run('first-aid', {}), context))
      : undefined,
};

/** Who answers a turn before it is read by itself; beside a photo only the first. The order is told in DEVELOPERS.md. */
export const TURNS: readonly Answerer<Turn>[] = [
  firstAid,
  wholeSentence,
  inDanger,
  stillHurt,
  leaning,
  inContext,
  clarified,
];
const TURNS_BESIDE_PHOTO: readonly Answerer<Turn>[] = [firstAid];

/** Who answers once it was read by itself, and tells too little so. Beside a photo nobody does. */
export const AFTER_ALL: readonly Answerer<Turn & { readonly alone: AskReply }>[] = [
  {
    id: 'carried',
    answer: ({ question, alone, readAnew, context }) => carriedReply(question, { alone, readAnew }, context),
  },
  {
    id: 'back-to-before',
    answer: ({ question, alone, context }) =>
      isNothing(alone, question, context) ? backToBefore(question, alone, context) : undefined,
  },
];

/** What is asked, and a photo that came with it. */
type Question = Pick<Turn, 'question' | 'photo'>;

/** Answers a plain question: what was understood in one line as the command it runs, then that command's answer. */
export async function answerQuestion(asked: Question, context: Context): Promise<Reply> {
  const found = (await answeredAs(asked, context)).reply;
  const answer = shown(asked.photo ? found : unlessLyeHeavy(found, context));
  const isTold = (id: string) => answer.cautions.some(one => one.id === id);
  const spokenOf = spokenOfIn(context.lately?.before(context));
  const cautions = whiffCautions(withSpokenOf(asked.question, spokenOf), context.say).filter(
    ({ id }) => !isTold(id),
  );
  return { ...answer, cautions: [...cautions, ...answer.cautions] };
}

/** The answer of the first who has one, and who that is. Throws a Refusal `question-empty`, and those of what is run. */
export async function answeredAs(
  { question: typed, photo }: Question,
  context: Context,
): Promise<AnsweredBy> {
  const question = pastAside(withNamesWhole(withSpokenMarks(typed)));
  if (question.trim() === '' && !photo) refuse('question-empty', {});
  const turn = turnOf({ question, photo }, context);
  const before = await firstOf(photo ? TURNS_BESIDE_PHOTO : TURNS, turn);
  if (before) return before;
  const alone = await answeredAlone(readAsked({ question, photo }, await turn.own(), context));
  return (photo ? undefined : await firstOf(AFTER_ALL, { ...turn, alone: alone.reply })) ?? alone;
}

function turnOf({ question, photo }: Question, context: Context): Turn {
  return {
    question,
    photo,
    context,
    own: whenAsked(async () => {
      const jars = await listShelf(context.shelf);
      return withOwnJars(
        question,
        jars.map(({ name }) => name),
      );
    }),
    readAnew: async text =>
      (await answeredAlone(readAsked({ question: text }, withOwnJars(text, []), context))).reply,
  };
}
