import type { Context } from '../../src/conversation/context.ts';
import { askedPart } from '../../src/engine/questions/asking/asked-part.ts';
import { staysOut } from '../../src/engine/questions/found/asked/stays-out.ts';
import type { Questioned } from '../../src/engine/questions/found/jars/own-jars.ts';
import { withSharedHead } from '../../src/engine/questions/found/names/shared-head.ts';
import { withSlipsRight } from '../../src/engine/questions/found/slips-right.ts';
import { withItsAcid } from '../../src/engine/questions/jobs/acid-beside.ts';
import { inOrder } from '../../src/engine/questions/lye/amounts/amounts-first.ts';
import { type QuestionRead, type Reading, readQuestion } from '../../src/engine/questions/read.ts';
import { whenAsked } from '../../src/engine/when-asked.ts';
import type { Asked, NearLye, Turn } from './asked.ts';
import { askedOfLye } from './lye/asked-of-lye.ts';
import { behindTheAnswer } from './lye/gives-way.ts';
import { foundNearLye } from './lye/lye-answer.ts';

/** Reads a question by itself. `own`: its text with jars of the asker's own under names that every reader knows. */
export function readAsked(
  { question, photo }: Pick<Turn, 'question' | 'photo'>,
  own: Questioned,
  context: Context,
): Asked {
  const heard = withSharedHead(askedPart(own.text));
  const { ordered } = inOrder(heard);
  const read = own.restore(readQuestion(heard === own.text ? ordered : own.text, ordered));
  const out = whenAsked(() => (photo ? undefined : staysOut(question, read)));
  const nearLye = whenAsked(async () => (photo ? {} : await readNearLye(question, read, context)));
  return {
    question,
    photo,
    context,
    said: own.restore(heard),
    read,
    staysOut: out,
    nearLye,
    reading: whenAsked(async () => {
      const first =
        (await nearLye()).recipe ?? out() ?? (photo ? besidePhoto(question, read) : read.readings[0]);
      return first && withItsAcid(first, question);
    }),
  };
}

/** What is found near lye: what keeps from harm reads all that was typed, with its slips put right and as it stands. */
async function readNearLye(question: string, read: QuestionRead, context: Context): Promise<NearLye> {
  const right = withSlipsRight(question, read.corrections);
  const found = (await foundNearLye(askedOfLye(right, { typed: question, read, context })))?.found;
  const behind = behindTheAnswer(question, { read, found }, context);
  if (behind) return { behind };
  return found?.kind === 'reply' ? { told: found } : { recipe: found };
}

/** A photo is of a bar that is to be judged, unless a colour is to be mixed. */
const besidePhoto = (question: string, { readings }: QuestionRead): Reading | undefined =>
  readings.some(({ job }) => job === 'mix')
    ? readings[0]
    : {
        job: 'diagnose',
        score: 1,
        command: 'diagnose',
        given: question.trim() === '' ? {} : { words: question },
        missing: [],
      };
