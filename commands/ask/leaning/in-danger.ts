import type { Context } from '../../../src/conversation/context.ts';
import { firstAidReply } from '../../../src/conversation/first-aid/first-aid.ts';
import { namesLye } from '../../../src/engine/questions/fields/soap-words.ts';
import type { Before, Ran } from '../../../src/engine/questions/leaning/before.ts';
import { isOfSoundSoap } from '../../../src/engine/questions/leaning/danger/danger.ts';
import { asksToGoOn } from '../../../src/engine/questions/leaning/danger/go-on.ts';
import { asksWhetherLye, objects } from '../../../src/engine/questions/leaning/danger/objects.ts';
import { type AskedInDanger, askedInDanger } from '../../../src/engine/questions/leaning/danger/turns.ts';
import { isStillHurt } from '../../../src/engine/questions/leaning/subject/points-back.ts';
import { lyeAskedIn } from '../../../src/engine/questions/lye/question.ts';
import { oneText } from '../../../src/words/sentence.ts';
import type { Answerer, Turn } from '../asked.ts';
import { cautions, topicReply } from '../lye/matter.ts';
import { ranCommand } from '../reading/ran-command.ts';
import { orItsNo } from '../reading/run-reading.ts';
import { type AskReply, leansOnTalk, ofFirstAid } from '../understood.ts';

/** What was diagnosed, or said of ash, may be lye all the same. */
const mayBeLye = (last: Before): boolean =>
  (last.kind === 'command' && last.command === 'diagnose') ||
  (last.kind === 'technique' && last.id === 'ash-avoid');

/** What a turn asks of soap or lye that may hurt, as the talk told; undefined where it asks of something else. */
async function inDangerReply(question: string, context: Context): Promise<AskReply | undefined> {
  const talk = context.lately?.before(context);
  if (!talk) return undefined;
  if (talk.last.kind === 'emergency' && asksToGoOn(question, talk.last.ids)) return goOnReply(context);
  const { danger, last } = talk;
  if (mayBeLye(last) && asksWhetherLye(question)) return leansOnTalk(topicReply('ash-or-lye', context));
  if (last.kind === 'command' && objects(question)) {
    const barred = await stillBarred(last, context);
    if (barred) return barred;
  }
  if (danger === undefined) return undefined;
  // What names lye tells what it is about.
  if (namesLye(question)) return undefined;
  // Weights are reckoned, and who is hurt is helped.
  const { amount, weighed } = lyeAskedIn(question);
  if (amount || weighed || (danger !== 'lye-heavy' && isStillHurt(question))) return undefined;
  const asked = askedInDanger(question, danger);
  if (!asked) return undefined;
  const answer = leansOnTalk(told(asked, context));
  if (last.kind !== 'emergency' || asked.kind !== 'matter') return answer;
  const { stillHere } = context.say.firstAid;
  return { ...answer, blocks: [...answer.blocks, { kind: 'text', text: stillHere, firm: true }] };
}

/** What is asked of soap or lye that may hurt, as the talk told. */
export const inDanger: Answerer<Turn> = {
  id: 'in-danger',
  answer: ({ question, context }) => inDangerReply(question, context),
};

/** What stays out of soap stays out of it, whatever is held against that. */
async function stillBarred({ command, given }: Ran, context: Context): Promise<AskReply | undefined> {
  if (command !== 'colourant check' || given.item === undefined) return undefined;
  const answer = await orItsNo(() => ranCommand(command, given, context), context);
  if (!answer.short || !('problem' in answer.short) || answer.short.problem !== 'colour-barred')
    return undefined;
  return {
    ...answer,
    headline: context.say.leaning.stillBarred({ told: answer.headline }),
    understood: { kind: 'command', job: 'survives-lye', command, given, leans: true },
  };
}

/** What is said of sound soap is not said of one that has too much lye. */
export function unlessLyeHeavy(reply: AskReply, context: Context): AskReply {
  const { understood } = reply;
  const said =
    understood.kind === 'technique'
      ? understood.technique
      : understood.kind === 'lye'
        ? understood.lye
        : undefined;
  const isHeavy = context.lately?.before(context)?.danger === 'lye-heavy';
  return isHeavy && said !== undefined && isOfSoundSoap(said)
    ? leansOnTalk(told({ kind: 'used' }, context))
    : reply;
}

function told(asked: AskedInDanger, context: Context): AskReply {
  const { leaning, lyeQuestions } = context.say;
  const mended = lyeQuestions.topics['rebatch-lye-heavy'];
  const ofHeavy = (headline: string, texts: readonly string[]): AskReply => ({
    kind: 'reply',
    headline,
    data: {},
    understood: { kind: 'lye', lye: 'rebatch-lye-heavy' },
    blocks: texts.map(text => ({ kind: 'text', text, firm: true })),
    cautions: cautions(context),
  });
  switch (asked.kind) {
    case 'matter':
      return topicReply(asked.id, context);
    case 'metal':
      return ofFirstAid(firstAidReply(['hydrogen-from-metal'], context));
    case 'used':
      return ofHeavy(leaning.lyeHeavy, [oneText(mended.answer), oneText(mended.why)]);
    case 'proved':
      return ofHeavy(leaning.lyeHeavyMended, [leaning.lyeHeavy]);
    case 'colour':
      return ofHeavy(leaning.lyeHeavyColour, [leaning.lyeHeavy, oneText(mended.answer)]);
  }
}

/** Whether to go on after lye was on somebody: help stays in sight. */
function goOnReply(context: Context): AskReply {
  const { leaning, firstAid } = context.say;
  return leansOnTalk({
    kind: 'reply',
    headline: leaning.goOn,
    data: {},
    understood: { kind: 'lye', lye: 'lye-on-skin' },
    blocks: [
      { kind: 'text', text: leaning.goOnHow, firm: true },
      { kind: 'text', text: firstAid.stillHere, firm: true },
    ],
    cautions: cautions(context),
  });
}
