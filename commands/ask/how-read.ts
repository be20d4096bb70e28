import type { Context } from '../../src/conversation/context.ts';
import { type Given, textsOf } from '../../src/conversation/question.ts';
import type { Block, Choice } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { USUAL_SUPERFAT } from '../../src/engine/questions/lye/sums/check.ts';
import { OF_PORTION, type QuestionRead, type Reading } from '../../src/engine/questions/read.ts';
import { plantNamed } from '../../src/engine/stability/plant-classes.ts';
import type { Words } from '../../src/words/index.ts';
import { askFollowUps } from './follow-ups.ts';

/** What was told to a command, how the question was read, and where. */
export type QuestionTold = { readonly given: Given; readonly read: QuestionRead; readonly context: Context };

/** Slips that were put right in words that the command was given. */
export const usedCorrections = ({ corrections }: QuestionRead, given: Given) =>
  corrections.filter(({ to }) => Object.values(textsOf(given)).some(text => text.toLowerCase().includes(to)));

/** What was understood, in one line as the command it runs. */
export function understoodBlock(reading: Reading, { given, read, context }: QuestionTold): Block {
  const { say } = context;
  const corrections = usedCorrections(read, given).map(({ from, to }) => say.ask.corrected({ from, to }));
  const { target } = read.facts;
  const shade = reading.job === 'mix' && target ? [say.ask.target(target)] : [];
  const line =
    reading.command === 'compare'
      ? say.ask.comparing({ names: read.facts.named })
      : lineOf(reading.command, given);
  // Lye is weighed by it, and nobody told it.
  const superfat =
    reading.job === 'lye' && given.oils !== undefined && given.superfat === undefined
      ? [say.lyeQuestions.usualSuperfat({ percent: USUAL_SUPERFAT })]
      : [];
  const told = say.ask.understood({ line });
  const text = superfat.length > 0 ? [`${told}.`, ...superfat] : [told];
  return { kind: 'text', text: [...text, ...shade, ...corrections].join(' ') };
}

/** What a question says that its command has no option for. */
export function notes(
  { job }: Reading,
  { read, context: { say } }: { readonly read: QuestionRead; readonly context: Context },
): readonly Block[] {
  const { facts } = read;
  const lines = [
    ...(read.hotProcess ? [say.ask.hotProcess] : []),
    ...(OF_PORTION.has(job) && facts.portion !== undefined && facts.reckoned
      ? [say.ask.reckoned(facts.reckoned)]
      : []),
    ...(job === 'dose' && facts.portion === undefined ? [say.ask.byTheCup] : []),
    ...(job === 'dose' && facts.named.length === 2
      ? [say.ask.oneOfTwo({ first: facts.named[0]!, second: facts.named[1]! })]
      : []),
    // Of a colour that is named it is told first.
    ...(job === 'law' && facts.country !== undefined && facts.named.length === 0
      ? [say.ask.lawElsewhere({ country: facts.country })]
      : []),
    ...(job === 'law' && facts.named.length === 0 ? [say.ask.lawOfSelling] : []),
  ];
  return [...lines, ...(facts.plants ?? []).flatMap(name => fateOf(name, say))].map(text => ({
    kind: 'text',
    text,
  }));
}

/** What lye does to a plant that no catalogue holds, by what colours it. */
function fateOf(name: string, { plants }: Words): readonly string[] {
  const of = plantNamed(name)?.of;
  return of === undefined ? [] : [plants.fate[of](name)];
}

/** The other readings that are near, and a way to put this one right. */
export function choicesOf(
  others: readonly Reading[],
  { say, idempotencyKey: line }: Context,
): readonly Choice[] {
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
