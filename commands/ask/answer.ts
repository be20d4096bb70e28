import type { Context } from '../../src/conversation/context.ts';
import { callsForFirstAid } from '../../src/conversation/first-aid/call-for-help.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { withSpokenOf } from '../../src/engine/hazards/index.ts';
import { pastAside } from '../../src/engine/questions/fields/small-talk.ts';
import { withOwnJars } from '../../src/engine/questions/found/own-jars.ts';
import { spokenOfIn } from '../../src/engine/questions/leaning/things.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { whiffCautions } from '../../src/presenting/whiff.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { carriedReply } from './leaning/carried.ts';
import { clarifiedReply } from './leaning/clarified.ts';
import { inContextReply } from './leaning/in-context.ts';
import { inDangerReply, unlessLyeHeavy } from './leaning/in-danger.ts';
import { backToBefore, isNothing } from './leaning/leaned-back.ts';
import { leanedReply, stillHurtReply } from './leaning/leaning.ts';
import { plainRequestReply } from './plain-request.ts';
import { shownAsReply } from './run-reading.ts';
import { type Asked, standingAlone } from './standing-alone.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'question-empty': Record<never, never>;
  }
}

/** Answers a plain question: what was understood in one line as the command it runs, then that command's answer. */
export async function answerQuestion(asked: Asked, context: Context): Promise<Reply> {
  const found = await answerOf({ ...asked, question: pastAside(asked.question) }, context);
  const answer = asked.photo ? found : unlessLyeHeavy(found, context);
  const isTold = (id: string) => answer.cautions.some(one => one.id === id);
  const spokenOf = spokenOfIn(context.lately?.before(context));
  const cautions = whiffCautions(withSpokenOf(asked.question, spokenOf), context.say).filter(
    ({ id }) => !isTold(id),
  );
  return { ...answer, cautions: [...cautions, ...answer.cautions] };
}

async function answerOf(asked: Asked, context: Context): Promise<Reply> {
  const { question, photo } = asked;
  if (question.trim() === '' && !photo) refuse('question-empty', {});
  if (callsForFirstAid(question)) return shownAsReply(await context.run('first-aid', {}), context);
  const plain = photo ? undefined : await plainRequestReply(question, context);
  if (plain) return plain;
  const inDanger = photo ? undefined : await inDangerReply(question, context);
  if (inDanger) return inDanger;
  const hurt = photo ? undefined : stillHurtReply(question, context);
  if (hurt) return hurt;
  const own = withOwnJars(
    question,
    (await listShelf(context.shelf)).map(({ name }) => name),
  );
  const leaned = photo ? undefined : await leanedReply(question, own, context);
  if (leaned) return leaned;
  const inContext = photo ? undefined : await inContextReply(question, context);
  if (inContext) return inContext;
  const clarified = photo
    ? undefined
    : await clarifiedReply(question, context, both =>
        standingAlone({ question: both }, withOwnJars(both, []), context),
      );
  if (clarified) return clarified;
  const alone = await standingAlone(asked, own, context);
  const readAnew = (text: string) => standingAlone({ question: text }, withOwnJars(text, []), context);
  const carried = photo ? undefined : await carriedReply(question, { alone, readAnew }, context);
  if (carried) return carried;
  return (
    (!photo && isNothing(alone, question, context)
      ? await backToBefore(question, alone, context)
      : undefined) ?? alone
  );
}
