import { z } from 'zod';
import type { Context } from '../../src/conversation/context.ts';
import { callsForFirstAid } from '../../src/conversation/first-aid/call-for-help.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Form, Reply } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { Offer } from '../../src/conversation/typed/which-one.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { inOrder } from '../../src/engine/questions/lye/amounts-first.ts';
import { withOwnJars } from '../../src/engine/questions/own-jars.ts';
import { type QuestionRead, type Reading, readQuestion } from '../../src/engine/questions/read.ts';
import { mayBeOfShelf } from '../../src/engine/questions/shelf-words.ts';
import { Refusal, refuse } from '../../src/engine/refusal.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import { nameOf } from '../../src/presenting/dose.ts';
import { keepAskedLine } from '../../src/records/asked/index.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { barredReading } from './barred.ts';
import { compareReply } from './compare.ts';
import { doubtReply } from './doubt.ts';
import { elsewhereReply, outsideReply } from './elsewhere.ts';
import { askFollowUps } from './follow-ups.ts';
import { lyeAnswer } from './lye.ts';
import { withNearest } from './nearest.ts';
import { filled, withItsAcid } from './options-of.ts';
import { plainRequestReply } from './plain-request.ts';
import { oilsWithoutShares, type PlanLacks, planLacks, withPortions } from './plan-lacks.ts';
import { scentReply } from './scents.ts';
import { severalJarsReply } from './several-jars.ts';
import { survivalReply } from './survival.ts';
import { toldAmountHeadline } from './told-amount.ts';
import { choicesOf, notes, type Told, textsOf, understoodBlock, usedCorrections } from './understood.ts';
import { isBlindDiagnosis, isGuessedColour, isHardlyDoubt, unsureOf, unsureReply } from './unsure.ts';
import { whichPortionReply } from './which-portion.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'question-empty': Record<never, never>;
  }
}

export type Asked = {
  readonly question: string;
  readonly photo?: Attachment | undefined;
};

/** Commands that write something: what was understood is shown first, and done on a press. */
const WRITES: ReadonlySet<string> = new Set(['shelf add', 'shelf use']);

/** Answers a plain question: what was understood in one line as the command it runs, then that command's answer. */
export async function answerQuestion(asked: Asked, context: Context): Promise<Reply> {
  const { question, photo } = asked;
  if (question.trim() === '' && !photo) refuse('question-empty', {});
  if (callsForFirstAid(question)) return shownAsReply(await context.run('first-aid', {}), context);
  const plain = photo ? undefined : await plainRequestReply(question, context);
  if (plain) return plain;
  const own = withOwnJars(
    question,
    (await listShelf(context.shelf)).map(({ name }) => name),
  );
  const read = own.restore(readQuestion(inOrder(own.text).ordered));
  const ofLye = photo
    ? undefined
    : await lyeAnswer(rightWords(question, read), { typed: question, read, context });
  const elsewhere = photo ? undefined : elsewhereReply(question, { read, near: ofLye }, context);
  if (elsewhere) return elsewhere;
  const barred = photo || ofLye ? undefined : barredReading(question, read);
  const survival = photo || barred ? undefined : survivalReply(question, { read, near: ofLye }, context);
  if (survival) return survival;
  if (ofLye?.kind === 'reply') return ofLye;
  // Candles and creams are scented too.
  const isElsewhere = read.outside !== undefined && read.outside !== 'other';
  const scent = photo || ofLye || isElsewhere ? undefined : scentReply(question, read, context);
  if (scent) return scent;
  const unsure =
    photo || ofLye || barred || read.outside === 'business'
      ? undefined
      : unsureReply(question, read, context);
  const nearestOr = (reply: Reply, isOfSoap = true) =>
    photo ? reply : withNearest(reply, question, { context, isOfSoap });
  if (unsure) return nearestOr(unsure);
  if (read.outside !== undefined && !ofLye && !barred) {
    const outside = outsideReply(read, context);
    return read.outside === 'other' ? nearestOr(outside, false) : outside;
  }
  const first =
    ofLye ??
    barred ??
    (photo && !read.readings.some(({ job }) => job === 'mix') ? asDiagnosis(question) : read.readings[0]);
  const reading = first && withItsAcid(first, question);
  if (!reading) return nearestOr(notUnderstood(read, context), false);
  if (reading.job === 'shelf-show' && !mayBeOfShelf(question))
    return nearestOr(notUnderstood(read, context), false);
  const isHardly = isHardlyDoubt(reading, question);
  if (reading.job === 'doubt' && !isHardly) return doubtReply(read, context);
  if (!photo && !ofLye && !barred && (isHardly || isBlindDiagnosis(reading, question, read)))
    return nearestOr(await unsureWithReadings(question, read, context));
  const several =
    reading.command === 'shelf add' ? await severalJarsReply(question, read.facts.named, context) : undefined;
  if (several) return several;
  const which = await whichPortionReply(reading, read, context);
  if (which) return which;
  const begun = filled(reading, context);
  const lacks = planLacks(reading, begun, question);
  const told = withPortions(begun, lacks);
  const given = { ...told, ...(photo && { photo }) };
  const others = read.readings.filter(({ job, command }) => job !== reading.job && command !== 'compare');
  const lines = [
    reading.command === 'compare' ? question : lineOf(reading.command, given),
    ...others.map(other => lineOf(other.command, filled(other, context))),
  ];
  const understood = understoodBlock(reading, { given, read, context });
  const choices = choicesOf(others, context);
  const data = {
    understood: {
      job: reading.job,
      command: reading.command,
      given: textsOf(given),
      facts: read.facts,
      corrections: usedCorrections(read, given),
    },
  };
  const answer = await answered(reading, { question, given, read, context, lacks });
  if (!ofLye && !barred && isGuessedColour(answer, reading, { question, read }))
    return nearestOr(await unsureWithReadings(question, read, context));
  await keepAskedLine(
    context.shelf,
    context.idempotencyKey,
    { command: 'ask', given: {}, candidates: lines },
    context.change.at,
  );
  return {
    ...answer,
    data: { ...answer.data, ...data },
    blocks: [understood, ...notes(reading, { read, context }), ...(ofLye?.notes ?? []), ...answer.blocks],
    choices: [...(answer.choices ?? []), ...choices].slice(0, 20),
  };
}

/** What always holds near lye, with every reading of the question to choose from. */
async function unsureWithReadings(question: string, read: QuestionRead, context: Context): Promise<Reply> {
  const readings = read.readings.filter(({ command }) => command !== 'compare');
  const lines = readings.map(reading => lineOf(reading.command, filled(reading, context)));
  await keepAskedLine(
    context.shelf,
    context.idempotencyKey,
    { command: 'ask', given: {}, candidates: [question, ...lines] },
    context.change.at,
  );
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

/** The command's own answer, or what it lacks and the nearest thing that can be done. */
async function answered(
  reading: Reading,
  { question, given, read, context, lacks }: Told & { readonly question: string; readonly lacks: PlanLacks },
): Promise<Reply> {
  const { say } = context;
  const lacking = reading.missing.filter(name => given[name] === undefined);
  if (lacking.length > 0 && reading.command !== 'compare') {
    const names = read.facts.named;
    // "What can I make of these?": a mix of them can be shown, a list of everything cannot.
    const text =
      reading.job === 'mix' && names.length > 1
        ? say.ask.mixWithoutTarget({ mix: names.slice(0, 3).join(' + ') })
        : (oilsWithoutShares(lacks, say) ?? say.ask.lacks[reading.job]);
    return { kind: 'reply', headline: text, data: { lacking }, blocks: [], cautions: [] };
  }
  if (WRITES.has(reading.command)) {
    const follow = askFollowUps.run.with({ line: context.idempotencyKey, at: 0 });
    return {
      kind: 'reply',
      headline: say.ask.confirm({ line: lineOf(reading.command, given) }),
      data: {},
      blocks: [],
      cautions: [],
      choices: [{ kind: 'button', label: say.ask.doIt, weight: 'main', follow }],
    };
  }
  try {
    if (reading.command === 'compare') return await compareReply(read.facts.named, question, context);
    const answer = shownAsReply(await context.run(reading.command, given), context);
    if (reading.job === 'wet') return wettingFirst(answer, context);
    const told = reading.job === 'dose' ? toldAmountHeadline(answer, { question, read }, context) : undefined;
    return told === undefined ? answer : { ...answer, headline: told };
  } catch (error) {
    // A "no" is shown with what was understood, so that the misreading can be put right.
    if (error instanceof Offer)
      return {
        kind: 'reply',
        headline: say.refusal(error.refusal),
        data: { problem: error.refusal.id },
        blocks: [],
        cautions: [],
        choices: error.choices,
      };
    if (error instanceof Refusal)
      return {
        kind: 'reply',
        headline: say.refusal(error),
        data: { problem: error.id },
        blocks: [],
        cautions: [],
      };
    throw error;
  }
}

const carried = z.object({
  doses: z.tuple(
    [
      z.object({
        colourant: z.object({ id: z.string() }),
        carrier: z.object({ choice: z.enum(['water', 'oil', 'glycerin']) }),
      }),
    ],
    z.unknown(),
  ),
});

/** Who asks what to wet a colour in is told that first; the dose's own steps follow. */
function wettingFirst(answer: Reply, { say }: Context): Reply {
  const dose = carried.safeParse(answer.data).data?.doses[0];
  const colourant = dose && colourantById(dose.colourant.id);
  if (!dose || !colourant) return answer;
  const headline = say.ask.wetIn({
    carrier: say.dispersion.carriers[dose.carrier.choice],
    name: nameOf(colourant, say),
  });
  return { ...answer, headline };
}

/** A form cannot follow what was announced: its title says what to do. */
const shownAsReply = (answer: Reply | Form, { say }: Context): Reply =>
  answer.kind === 'reply'
    ? answer
    : { kind: 'reply', headline: say.ask.lacks.plan, data: {}, blocks: [], cautions: [] };

function notUnderstood({ facts }: QuestionRead, { say }: Context): Reply {
  const [name] = facts.named;
  return {
    kind: 'reply',
    headline: say.ask.notUnderstood,
    data: { understood: { nothing: true, facts } },
    blocks: [{ kind: 'text', text: name === undefined ? say.ask.canDo : say.ask.nearestFor({ name }) }],
    cautions: [],
  };
}
