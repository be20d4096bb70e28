import type { Context } from '../../../src/conversation/context.ts';
import { type Choice, LONGEST_LABEL } from '../../../src/conversation/reply.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { type Before, isOfLye, type Talk } from '../../../src/engine/questions/leaning/before.ts';
import {
  namesOil,
  namesOilOrFigure,
  saysOtherwise,
} from '../../../src/engine/questions/leaning/behind/names-another.ts';
import { namesOilOf } from '../../../src/engine/questions/leaning/recipes/recipe.ts';
import { pointsBack } from '../../../src/engine/questions/leaning/subject/points-back.ts';
import { colourantOf } from '../../../src/engine/questions/leaning/subject/subject.ts';
import { thingOf } from '../../../src/engine/questions/leaning/subject/things.ts';
import { colourWordIn } from '../../../src/engine/text/colours/colour-words-in.ts';
import { cut } from '../../../src/engine/text/excerpt.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { contestReply } from '../contest.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import { type AskReply, HALF, likeliestCause, saidNearLye } from '../understood.ts';
import { partReply } from './leaned-part.ts';
import { aidAgain, askedFor, plainly } from './leaning.ts';

/** Longer texts after first aid tell what they are about, words. */
const MOST_AFTER_HELP = 10;
/** So few words name no other matter. */
const MOST_OF_A_WORD = 4;
/** Fewer words hardly tell a subject of their own. */
const MOST_OF_A_TURN = 6;

/** Nothing was understood of it: it is asked back, sent away or taken for a doubt. */
export function isNothing(reply: AskReply, question: string, context: Context): boolean {
  const { understood } = reply;
  const isShort = wordCount(question) <= MOST_OF_A_TURN;
  switch (understood.kind) {
    case 'nothing':
    case 'asked-back':
    case 'doubt':
      return true;
    case 'outside':
      if (understood.chat !== undefined) return false;
      return understood.outside === 'other' || isAfterHelp(question, context);
    case 'lye':
      return isShort && understood.lye === 'unsure';
    case 'command':
      return isShort && isHardlyAnswered(reply, understood);
    default:
      return false;
  }
}

/** Who was told first aid a moment ago is not sent away. */
const isAfterHelp = (question: string, context: Context): boolean =>
  wordCount(question) <= MOST_OF_A_TURN - 1 && context.lately?.before(context)?.last.kind === 'emergency';

/** A menu, a colour that nobody knows, a flaw without a sign: a short turn says more of what came before. */
function isHardlyAnswered(
  reply: AskReply,
  { job, command, given = {}, facts }: Extract<AskReply['understood'], { kind: 'command' }>,
): boolean {
  const isBare = Object.keys(given).length === 0;
  if ((facts?.named?.length ?? 0) > 0 || facts?.target !== undefined) return false;
  if (command === 'help') return job === 'help' && isBare;
  if (command === 'diagnose') return (facts?.findings ?? 0) === 0 || !isDecided(reply);
  if (command === 'plan') return false;
  const { short } = reply;
  if (!short) return command === 'shelf add' && isBare;
  return 'lacking' in short || short.problem === 'colourant-unknown' || (command === 'shelf add' && isBare);
}

/** One cause of a flaw is likelier than all the others. */
const isDecided = (reply: AskReply): boolean => (likeliestCause(reply)?.probability ?? 0) >= HALF;

/** Of what nothing is understood, but which points back or is short: more of what was asked before, or one question that names it. */
export async function backToBefore(
  question: string,
  alone: AskReply,
  context: Context,
): Promise<AskReply | undefined> {
  const talk = context.lately?.before(context);
  if (!talk) return undefined;
  const { last: before, ran } = talk;
  const count = wordCount(question);
  if (ran && isOfLye(ran) && namesOilOf(ran, question)) return askedFor('whole-recipe', undefined, context);
  if (before.kind === 'emergency') return count <= MOST_AFTER_HELP ? aidAgain(before, context) : undefined;
  if (!pointsBack(question) && count > MOST_OF_A_TURN) return undefined;
  // "Cambio 200 por coco": near lye what is not understood is asked for, whole.
  if (before.kind === 'command' && isOfLye(before) && namesOilOrFigure(question))
    return askedFor('whole-recipe', undefined, context);
  const isOfMatter = before.kind === 'technique' || before.kind === 'matter';
  // An oil is a part of what is told of a pot: "the butter was cold".
  if (!pointsBack(question) && (colourWordIn(question) !== undefined || (!isOfMatter && namesOil(question))))
    return undefined;
  if (before.kind === 'recipe') return askedFor('whole-recipe', undefined, context);
  if (before.kind === 'contest') return await contestReply(context);
  // Who says that it was otherwise is not told the same once more.
  const isOtherwise = saysOtherwise(question) && !pointsBack(question);
  const part = isOtherwise ? undefined : await partReply('points', before, { question, context });
  if (part) return part;
  if (isOfMatter && !isOtherwise && count <= MOST_OF_A_WORD)
    return await partReply('goes-on', before, { question, context });
  if (before.kind === 'command' && isOfLye(before)) return askedFor('whole-recipe', undefined, context);
  const headline = askedOf(talk, context);
  if (headline === undefined) return undefined;
  const choices = await ofItsColour(talk, context);
  const asked = { ...plainly(headline, { kind: 'asked-back', command: 'ask', given: {} }), choices };
  // What always holds near lye stays behind the question.
  const isNearLye = saidNearLye(alone.understood) === 'unsure';
  return isNearLye ? { ...asked, blocks: alone.blocks, cautions: alone.cautions } : asked;
}

/** One question that names what a talk is about; undefined where nothing is known of it. */
function askedOf({ last, subject }: Talk, { say }: Context): string | undefined {
  const words = wordsOf(last, say);
  if (words !== undefined && last.kind === 'command') return say.leaning.aboutFlaw({ words });
  if (words !== undefined) return say.leaning.aboutMatter({ words });
  const name =
    (last.kind === 'command' ? (thingOf(last) ?? last.given.target) : undefined) ??
    subject?.hue ??
    colourantOf(subject);
  return name === undefined ? undefined : say.leaning.aboutThing({ name });
}

/** What may be asked of the colour that a talk is about, to be pressed instead of written. */
async function ofItsColour({ last, subject }: Talk, context: Context): Promise<readonly Choice[]> {
  const name = (last.kind === 'command' ? thingOf(last) : undefined) ?? colourantOf(subject);
  if (name === undefined || (last.kind === 'command' && last.command === 'diagnose')) return [];
  const { ask } = context.say;
  const portion = subject?.portion ?? '500 g oils';
  const lines = [lineOf('dose', { colourant: name, portion }), lineOf('colourant check', { item: name })];
  await keepLines(lines, context);
  return lines.map((line, at) => ({
    kind: 'button' as const,
    label: cut(ask.ratherThat({ job: line }), LONGEST_LABEL),
    follow: askFollowUps.run.with({ line: context.idempotencyKey, at }),
  }));
}

/** The words by which a flaw or a matter is named to somebody who asked of it. */
function wordsOf(before: Before, say: Context['say']): string | undefined {
  if (before.kind === 'technique') return say.technique.matters[before.id];
  const told =
    before.kind === 'matter'
      ? before.words
      : before.kind === 'command' && before.command === 'diagnose'
        ? before.given.words
        : undefined;
  return told === undefined ? undefined : cut(told, LONGEST_LABEL);
}
