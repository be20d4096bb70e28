import type { Context } from '../../src/conversation/context.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { SURELY_ELSEWHERE } from '../../src/engine/questions/fields/other-field.ts';
import {
  heldWhateverIsMeant,
  isBlindDiagnosis,
  isHardlyDoubt,
  isUnsureNearLye,
} from '../../src/engine/questions/fields/unsure.ts';
import { isOfAWord } from '../../src/engine/questions/lye/asked-plainly.ts';
import type { Answerer, Asked } from './asked.ts';
import { behind, outsideReply } from './elsewhere.ts';
import { choicesOf } from './how-read.ts';
import { keepLines } from './kept-lines.ts';
import { topicReply } from './lye/matter.ts';
import { orNearest } from './lye/nearest-matter.ts';
import { filled } from './reading/options-of.ts';
import type { AskReply } from './understood.ts';

/** Of what is not understood: what always holds near lye, or what is missing is asked back. */
function unsureOf(question: string, context: Context): AskReply {
  const held = heldWhateverIsMeant(question);
  return held === undefined ? askedBack(context) : topicReply(held, context);
}

/** Asks for what nobody can answer without. */
const askedBack = ({ say: { ask } }: Context): AskReply => ({
  kind: 'reply',
  headline: ask.tellMore,
  data: {},
  understood: { kind: 'asked-back', command: 'ask', given: {} },
  blocks: [{ kind: 'text', text: ask.canDo }],
  cautions: [],
});

/** What always holds near lye, with every reading of the question to choose from. */
export async function unsureWithReadings(asked: Asked): Promise<AskReply> {
  const { question, read, context } = asked;
  const readings = read.readings.filter(({ command }) => command !== 'compare');
  const lines = readings.map(reading => lineOf(reading.command, filled(reading, context)));
  await keepLines([question, ...lines], context);
  const reply = { ...unsureOf(question, context), choices: choicesOf(readings, context) };
  return await orNearest(reply, asked);
}

/** A question near lye of which nothing is understood. */
export const nearLyeUnsure: Answerer = {
  id: 'unsure-near-lye',
  leavesTo: ['lye', 'check'],
  async answer(asked) {
    const { question, read, context } = asked;
    if (read.outside === 'business' || !isUnsureNearLye(question, read)) return undefined;
    const unsure = unsureOf(question, context);
    // Lye in lessons, films or hair is another field; what always holds near lye stands behind that.
    const isElsewhere = read.outside === 'other' && read.elsewhere >= SURELY_ELSEWHERE;
    return await orNearest(isElsewhere ? behind(unsure, outsideReply(read, context)) : unsure, asked);
  },
};

/** A word of lye with no oil and no amount is no recipe: what always holds is said, and the nearest matters are offered. */
export const wordOfLye: Answerer = {
  id: 'word-of-lye',
  leavesTo: ['lye'],
  async answer(asked) {
    const reading = await asked.reading();
    return reading && isOfAWord(reading, asked.question) ? await unsureWithReadings(asked) : undefined;
  },
};

/** A doubt that hardly is one near lye, and causes of a flaw that nobody told. */
export const hardlyTold: Answerer = {
  id: 'hardly-told',
  leavesTo: ['lye', 'check'],
  async answer(asked) {
    const { question, read, photo } = asked;
    const reading = await asked.reading();
    if (!reading || photo) return undefined;
    const isHardly = isHardlyDoubt(reading, question) || isBlindDiagnosis(reading, question, read);
    return isHardly ? await unsureWithReadings(asked) : undefined;
  },
};
