import { z } from 'zod';
import type { Context } from '../../src/conversation/context.ts';
import { lineOf } from '../../src/conversation/line-of.ts';
import type { Attachment, Given } from '../../src/conversation/question.ts';
import type { Block, Choice, Form, Reply } from '../../src/conversation/reply.ts';
import { Offer } from '../../src/conversation/which-one.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { type QuestionRead, type Reading, readQuestion } from '../../src/engine/questions/read.ts';
import { shareOfBatter } from '../../src/engine/questions/share-of-batter.ts';
import { Refusal, refuse } from '../../src/engine/refusal.ts';
import { acidIn } from '../../src/engine/text/acid-words.ts';
import { nameOf } from '../../src/presenting/dose.ts';
import { keepAskedLine } from '../../src/records/asked/index.ts';
import { compareReply } from './compare.ts';
import { askFollowUps } from './follow-ups.ts';
import { lyeAnswer } from './lye.ts';
import { scentReply } from './scents.ts';

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
/** What a portion is taken for where a question tells none: doses are told by the cup. */

/** Answers a plain question: what was understood in one line as the command it runs, then that command's answer. */
export async function answerQuestion(asked: Asked, context: Context): Promise<Reply> {
  const { question, photo } = asked;
  if (question.trim() === '' && !photo) refuse('question-empty', {});
  const read = readQuestion(question);
  const ofLye = photo ? undefined : await lyeAnswer(question, read, context);
  if (ofLye?.kind === 'reply') return ofLye;
  const scent = photo || ofLye ? undefined : scentReply(question, read, context);
  if (scent) return scent;
  if (read.outside !== undefined && !ofLye) return outsideReply(read, context);
  const first =
    ofLye ??
    (photo && !read.readings.some(({ job }) => job === 'mix') ? asDiagnosis(question) : read.readings[0]);
  const reading = first && withItsAcid(first, question);
  if (!reading) return notUnderstood(read, context);
  const given = { ...ofPart(question, filled(reading, context)), ...(photo && { photo }) };
  const others = read.readings.filter(({ job, command }) => job !== reading.job && command !== 'compare');
  const lines = [
    reading.command === 'compare' ? question : lineOf(reading.command, given),
    ...others.map(other => lineOf(other.command, filled(other, context))),
  ];
  await keepAskedLine(
    context.shelf,
    context.idempotencyKey,
    { command: 'ask', given: {}, candidates: lines },
    context.change.at,
  );
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
  const answer = await answered(reading, { question, given, read, context });
  return {
    ...answer,
    data: { ...answer.data, ...data },
    blocks: [understood, ...notes(reading, { read, context }), ...(ofLye?.notes ?? []), ...answer.blocks],
    choices: [...(answer.choices ?? []), ...choices].slice(0, 20),
  };
}

type Told = { readonly given: Given; readonly read: QuestionRead; readonly context: Context };

const asDiagnosis = (question: string): Reading => ({
  job: 'diagnose',
  score: 1,
  command: 'diagnose',
  given: question.trim() === '' ? {} : { words: question },
  missing: [],
});

/** Questions of what a colour bears, in which an acid beside an ultramarine decides. */
const BEARING: ReadonlySet<string> = new Set(['survives-lye', 'law', 'wet']);

/** An acid that a question names beside an ultramarine is checked with it, and not dropped. */
function withItsAcid(reading: Reading, question: string): Reading {
  const acid = acidIn(question);
  const { ingredients } = reading.given;
  // The reader knows "acid" alone: one that is a fat is not the acid that was found in the list.
  if (acid === undefined && typeof ingredients === 'string')
    return {
      ...reading,
      given: { ...reading.given, ingredients: ingredients.replace(/, acid(?:o)?(?=,|$)/u, '') },
    };
  if (acid === undefined || !/\b(?:ultramar|77007)/iu.test(question) || !BEARING.has(reading.job))
    return reading;
  const listed = typeof ingredients === 'string' ? ingredients : 'ultramarine';
  return {
    ...reading,
    command: 'colourant check',
    given: { ingredients: acidIn(listed) === undefined ? `${listed}, ${acid}` : listed },
    missing: [],
  };
}

const textsOf = (given: Given): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(given).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );

/** Options as the command wants them: a dose without a portion is told by the cup, and says so. */
function filled({ command, given, missing }: Reading, { say }: Context): Given {
  return command === 'dose' &&
    given.colourant !== undefined &&
    given.portion === undefined &&
    missing.length <= 1
    ? { ...given, portion: say.match.oneCup }
    : given;
}

/** A dose for a part of the batter is not that of the whole. */
function ofPart(question: string, given: Given): Given {
  const { colourant, portion } = given;
  const share = shareOfBatter(question);
  const told =
    colourant !== undefined &&
    typeof portion === 'string' &&
    /\d/u.test(question) &&
    !/\d\/\d of /u.test(portion);
  return share !== undefined && told ? { ...given, portion: `${share} of ${portion}` } : given;
}

/** The command's own answer, or what it lacks and the nearest thing that can be done. */
async function answered(
  reading: Reading,
  { question, given, read, context }: Told & { readonly question: string },
): Promise<Reply> {
  const { say } = context;
  const lacking = reading.missing.filter(name => given[name] === undefined);
  if (lacking.length > 0 && reading.command !== 'compare') {
    const names = read.facts.named;
    // "What can I make of these?": a mix of them can be shown, a list of everything cannot.
    const text =
      reading.job === 'mix' && names.length > 1
        ? say.ask.mixWithoutTarget({ mix: names.slice(0, 3).join(' + ') })
        : say.ask.lacks[reading.job];
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
    return reading.job === 'wet' ? wettingFirst(answer, context) : answer;
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

/** Slips that were put right in words that the command was given. */
const usedCorrections = ({ corrections }: QuestionRead, given: Given) =>
  corrections.filter(({ to }) => Object.values(textsOf(given)).some(text => text.toLowerCase().includes(to)));

function understoodBlock(reading: Reading, { given, read, context }: Told): Block {
  const { say } = context;
  const corrections = usedCorrections(read, given).map(({ from, to }) => say.ask.corrected({ from, to }));
  const { target } = read.facts;
  const shade = reading.job === 'mix' && target ? [say.ask.target(target)] : [];
  const line =
    reading.command === 'compare'
      ? say.ask.comparing({ names: read.facts.named })
      : lineOf(reading.command, given);
  return { kind: 'text', text: [say.ask.understood({ line }), ...shade, ...corrections].join(' ') };
}

/** What a question says that its command has no option for. */
function notes(
  { job }: Reading,
  { read, context: { say } }: { readonly read: QuestionRead; readonly context: Context },
): readonly Block[] {
  const { facts } = read;
  const lines = [
    ...(read.hotProcess ? [say.ask.hotProcess] : []),
    ...(job === 'dose' && facts.portion === undefined ? [say.ask.byTheCup] : []),
    ...(job === 'law' && facts.named.length === 0 ? [say.ask.lawOfSelling] : []),
  ];
  return lines.map(text => ({ kind: 'text', text }));
}

/** The other readings that are near, and a way to put this one right. */
function choicesOf(others: readonly Reading[], { say, idempotencyKey: line }: Context): readonly Choice[] {
  return [
    ...others.map(
      ({ job }, at): Choice => ({
        kind: 'button',
        label: say.ask.ratherThat({ job: say.ask.jobs[job] }),
        follow: askFollowUps.run.with({ line, at: at + 1 }),
      }),
    ),
    { kind: 'button', label: say.ask.change, follow: askFollowUps.change.with({ line }) },
  ];
}

function outsideReply({ outside = 'other' }: QuestionRead, { say }: Context): Reply {
  return {
    kind: 'reply',
    headline: say.ask.outside[outside],
    data: { understood: { outside } },
    blocks: [{ kind: 'text', text: say.ask.canDo }],
    cautions: [],
  };
}

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
