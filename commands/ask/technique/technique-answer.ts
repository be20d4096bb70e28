import type { Context } from '../../../src/conversation/context.ts';
import type { Caution } from '../../../src/conversation/reply.ts';
import { nearestPart } from '../../../src/engine/questions/leaning/parts/nearest-part.ts';
import { type AnswerTo, answerTo } from '../../../src/engine/questions/technique/answer-to.ts';
import {
  type Technique,
  WITH_DRY_POWDER,
  WITH_RAW_BATTER,
} from '../../../src/engine/questions/technique/topic.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { oneText } from '../../../src/words/sentence.ts';
import { topicReply } from '../lye/matter.ts';
import type { AskReply } from '../understood.ts';

/** What is said to a technique, with the caution of what is at hand. `question`: tells which part of it is asked about; empty where none is known. */
export const techniqueAnswer = (technique: Technique, question: string, context: Context): AskReply =>
  answeredTo(technique, answerTo(technique, question), context);

/** Of a matter that tells of many things its sentence of the one that is asked about goes first. */
export function nearestFirst(technique: Technique, question: string, context: Context): AskReply {
  const to = answerTo(technique, question);
  const reply = answeredTo(technique, to, context);
  if (!OF_MANY_THINGS.has(technique) || 'lye' in to) return reply;
  const told = ownWords(to, context.say);
  const part = nearestPart(told, question);
  if (!part || part.first === told.answer) return reply;
  return {
    ...reply,
    headline: oneText(part.first),
    blocks: atOnceAndMore(part.whole).map(text => ({ kind: 'text', text })),
  };
}
const OF_MANY_THINGS: ReadonlySet<Technique> = new Set(['clean-tools', 'make-it-gel', 'mould-care']);

/** One of the answers of a technique, or the part of it that is known already. */
export function answeredTo(technique: Technique, to: AnswerTo, context: Context): AskReply {
  const { say } = context;
  if ('lye' in to)
    return { ...topicReply(to.lye, context), understood: { kind: 'lye', lye: to.lye, technique } };
  const { answer, why } = ownWords(to, say);
  return {
    kind: 'reply',
    headline: oneText(answer),
    data: {},
    understood: { kind: 'technique', technique, command: 'help', given: {}, ...to },
    blocks: atOnceAndMore(why).map(text => ({ kind: 'text', text })),
    cautions: [...cautionOf(technique, say.technique)],
  };
}

/** The words of one of the answers of a technique that are its own. */
export const ownWords = (to: Exclude<AnswerTo, { readonly lye: unknown }>, { technique }: Context['say']) =>
  'named' in to ? technique.named[to.named] : technique.topics[to.technique];

function* cautionOf(
  technique: Technique,
  { rawBatter, dust }: { readonly rawBatter: string; readonly dust: string },
): Generator<Caution> {
  if (WITH_RAW_BATTER.has(technique)) yield { id: 'raw-batter', text: rawBatter };
  if (WITH_DRY_POWDER.has(technique)) yield { id: 'powder-dust', text: dust };
}

/** So many words beside the headline are read with gloves on; the rest folds. */
const AT_ONCE = 55;

/** The first sentences, as many as are read at once, and the rest, a text each. */
function atOnceAndMore(sentences: readonly string[]): readonly string[] {
  let words = 0;
  const most = sentences.findIndex((sentence, at) => {
    words += wordCount(sentence);
    return at > 0 && words > AT_ONCE;
  });
  return most === -1
    ? [oneText(sentences)]
    : [oneText(sentences.slice(0, most)), oneText(sentences.slice(most))];
}
