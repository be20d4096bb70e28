import type { Context } from '../../src/conversation/context.ts';
import { type Attachment, textsOf } from '../../src/conversation/question.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { askedPart } from '../../src/engine/questions/asking/asked-part.ts';
import { mayBeOfShelf } from '../../src/engine/questions/fields/shelf-words.ts';
import type { Questioned } from '../../src/engine/questions/found/own-jars.ts';
import { withSharedHead } from '../../src/engine/questions/found/shared-head.ts';
import { inOrder } from '../../src/engine/questions/lye/amounts/amounts-first.ts';
import { type QuestionRead, type Reading, readQuestion } from '../../src/engine/questions/read.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import { plainReply } from '../../src/presenting/plain-reply.ts';
import { beyondRangeReply } from './beyond-range.ts';
import { barredReading } from './colour/barred.ts';
import { hueReply } from './colour/hue-answer.ts';
import { paletteIdeaReply } from './colour/palette-idea.ts';
import { planLacks, withColours, withPortions } from './colour/plan-lacks.ts';
import { scentReply } from './colour/scents.ts';
import { severalJarsReply } from './colour/several-jars.ts';
import { colourSumReply } from './colour/shares.ts';
import { survivalReply } from './colour/survival.ts';
import { asksOfContest, contestReply } from './contest.ts';
import { doubtReply } from './doubt.ts';
import {
  elsewhereReply,
  fieldFirst,
  isNamedElsewhere,
  isSurelyElsewhere,
  outsideReply,
} from './elsewhere.ts';
import { givesWay } from './gives-way.ts';
import { keepLines } from './kept-lines.ts';
import { lyeAnswer } from './lye/lye-answer.ts';
import { withNearest } from './lye/nearest-matter.ts';
import { filled, withItsAcid } from './options-of.ts';
import { answered } from './run-reading.ts';
import { askedOfNamedReply } from './technique/asked-of-named.ts';
import { askedOfThing } from './technique/asked-of-thing.ts';
import { techniqueReply } from './technique/technique.ts';
import { choicesOf, notes, understoodBlock, usedCorrections } from './understood.ts';
import { isBlindDiagnosis, isGuessedColour, isHardlyDoubt, unsureOf, unsureReply } from './unsure.ts';
import { whichPortionReply } from './which-portion.ts';

/** What is asked, and a photo that came with it. */
export type Asked = {
  readonly question: string;
  readonly photo?: Attachment | undefined;
};

/** The answer to a question that needs nothing from before. */
export async function standingAlone(
  { question, photo }: Asked,
  own: Questioned,
  context: Context,
): Promise<Reply> {
  // Talk beside what is asked tells of no job, no thing and no field; what keeps from harm reads all of it.
  const heard = withSharedHead(askedPart(own.text));
  const said = own.restore(heard);
  const { ordered } = inOrder(heard);
  const read = own.restore(readQuestion(heard === own.text ? ordered : own.text, ordered));
  const stays = photo ? undefined : barredReading(question, read);
  const hue = photo || stays ? undefined : await hueReply(said, read, context);
  if (hue) return hue;
  const sum = photo || stays ? undefined : await colourSumReply(said, context);
  if (sum) return sum;
  if (!photo && asksOfContest(said)) return await contestReply(context);
  const idea = photo ? undefined : await paletteIdeaReply(said, read, context);
  if (idea) return idea;
  const ofNamed = photo || stays ? undefined : await askedOfNamedReply(said, read, context);
  if (ofNamed) return ofNamed;
  const working = photo ? undefined : await techniqueReply(said, read, context);
  if (working) return working;
  const nearLye = photo
    ? undefined
    : await lyeAnswer(rightWords(question, read), { typed: question, read, context });
  const behind = givesWay(question, { read, near: nearLye }, context);
  const ofLye = behind ? undefined : nearLye;
  const elsewhere = photo ? undefined : elsewhereReply(question, { read, near: ofLye }, context);
  if (elsewhere) return elsewhere;
  const barred = ofLye ? undefined : stays;
  const survival = photo || barred ? undefined : survivalReply(question, { read, near: ofLye }, context);
  if (survival) return { ...survival, blocks: [...survival.blocks, ...(behind?.notes ?? [])] };
  if (ofLye?.kind === 'reply') return ofLye;
  // Candles and creams are scented too.
  const scent = photo || ofLye || isNamedElsewhere(read) ? undefined : scentTold(question, read, context);
  if (scent) return fieldFirst(scent, question, read, context);
  const unsure =
    photo || ofLye || barred || read.outside === 'business'
      ? undefined
      : unsureReply(question, read, context);
  const nearestOr = (reply: Reply, isOfSoap = true) =>
    photo ? reply : withNearest(reply, question, { context, isOfSoap });
  if (unsure) return nearestOr(unsure);
  if (read.outside !== undefined && !ofLye && !barred) {
    const outside = outsideReply(read, context);
    return read.outside === 'other'
      ? fieldFirst(await nearestOr(outside, false), question, read, context)
      : outside;
  }
  const first =
    ofLye ??
    barred ??
    (photo && !read.readings.some(({ job }) => job === 'mix') ? asDiagnosis(question) : read.readings[0]);
  // A word of lye with no oil and no amount is no recipe: what always holds is said, and the nearest matters are offered.
  if (!photo && !ofLye && first?.job === 'lye' && first.given.oils === undefined && !/\d/u.test(question))
    return nearestOr(await unsureWithReadings(question, read, context));
  const reading = first && withItsAcid(first, question);
  if (!reading) return nearestOr(notUnderstood(read, context), false);
  if (reading.job === 'shelf-show' && !isOfShelf(reading, question, read))
    return nearestOr(notUnderstood(read, context), false);
  const isHardly = isHardlyDoubt(reading, question);
  if (reading.job === 'doubt' && !isHardly) return doubtReply(read, context);
  if (!photo && !ofLye && !barred && (isHardly || isBlindDiagnosis(reading, question, read)))
    return nearestOr(await unsureWithReadings(question, read, context));
  const several =
    reading.command === 'shelf add' ? await severalJarsReply(question, read.facts, context) : undefined;
  if (several) return several;
  const which = await whichPortionReply(reading, read, context);
  if (which) return which;
  const beyond = beyondRangeReply(reading, { question, read }, context);
  if (beyond) return beyond;
  const begun = filled(reading, context);
  const lacks = planLacks(reading, begun, question);
  const told = withPortions(begun, lacks);
  const given = { ...told, ...(photo && { photo }) };
  const others = read.readings.filter(({ job, command }) => job !== reading.job && command !== 'compare');
  const lines = [
    reading.command === 'compare' ? question : lineOf(reading.command, given),
    ...others.map(other => lineOf(other.command, filled(other, context))),
  ];
  // Words beside a recipe were passed by, or an oil was put right.
  const isDoubtful = reading.job === 'lye' && (ofLye?.notes.length ?? 0) > 0;
  const understood = {
    // What was put right there has a line of its own.
    ...understoodBlock(reading, {
      given,
      read: isDoubtful ? { ...read, corrections: [] } : read,
      context,
    }),
    // Of what a lye is for stays in sight with it.
    ...((isDoubtful || reading.job === 'lye') && { firm: true }),
  };
  const choices = choicesOf(others, context);
  const asked = askedOfThing(reading, question, textsOf(given), context);
  const data = {
    understood: {
      job: reading.job,
      command: reading.command,
      given: textsOf(given),
      ...(asked?.of && { asked: asked.of }),
      facts: withColours(read.facts, reading, question),
      corrections: usedCorrections(read, given),
    },
  };
  const ran = await answered(reading, { question, given, read, context, lacks });
  const answer = asked ? { ...ran, headline: asked.headline } : ran;
  if (!ofLye && !barred && isGuessedColour(answer, reading, { question, read }))
    return nearestOr(await unsureWithReadings(question, read, context));
  await keepLines(lines, context);
  return {
    ...answer,
    data: { ...answer.data, ...data },
    blocks: [
      understood,
      ...notes(reading, { read, context }),
      ...((ofLye ?? behind)?.notes ?? []),
      ...answer.blocks,
    ],
    choices: [...(answer.choices ?? []), ...choices].slice(0, 20),
  };
}

/** From here on what was learned of a named jar needs no word of a shelf. */
const SURE_OF_SHELF = 0.97;
const isOfShelf = ({ score }: Reading, question: string, { facts }: QuestionRead): boolean =>
  mayBeOfShelf(question) || (score >= SURE_OF_SHELF && facts.named.length > 0);

/** A scent's answer; of a diffuser and the like, surely spoken of for themselves, the "no" is an answer as well. */
function scentTold(question: string, read: QuestionRead, context: Context): Reply | undefined {
  try {
    return scentReply(question, read, context);
  } catch (error) {
    if (!(error instanceof Refusal) || !isSurelyElsewhere(question, read)) throw error;
    const headline = context.say.refusal(error);
    return plainReply(headline, { problem: error.id });
  }
}

/** What always holds near lye, with every reading of the question to choose from. */
async function unsureWithReadings(question: string, read: QuestionRead, context: Context): Promise<Reply> {
  const readings = read.readings.filter(({ command }) => command !== 'compare');
  const lines = readings.map(reading => lineOf(reading.command, filled(reading, context)));
  await keepLines([question, ...lines], context);
  return { ...unsureOf(question, context), choices: choicesOf(readings, context) };
}

/** The question with the slips that its reader put right, which the line that is shown tells. */
const rightWords = (question: string, { corrections }: QuestionRead): string =>
  question.replace(/\p{L}[\p{L}\p{M}]*/gu, word => {
    const typed = unaccented(word);
    return corrections.find(({ from }) => from === typed)?.to ?? word;
  });

const asDiagnosis = (question: string): Reading => ({
  job: 'diagnose',
  score: 1,
  command: 'diagnose',
  given: question.trim() === '' ? {} : { words: question },
  missing: [],
});

function notUnderstood({ facts }: QuestionRead, { say }: Context): Reply {
  const [name] = facts.named;
  const text = name === undefined ? say.ask.canDo : say.ask.nearestFor({ name });
  return plainReply(say.ask.notUnderstood, { understood: { nothing: true, facts } }, [
    { kind: 'text', text },
  ]);
}
