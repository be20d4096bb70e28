import { textsOf } from '../../../src/conversation/question.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { mayBeGuessed } from '../../../src/engine/questions/fields/unsure.ts';
import type { QuestionRead, Reading } from '../../../src/engine/questions/read.ts';
import type { Answerer, Asked, NearLye } from '../asked.ts';
import { planLacks, withColours, withPortions } from '../colour/plan-lacks.ts';
import { choicesOf, notes, understoodBlock, usedCorrections } from '../how-read.ts';
import { keepLines } from '../kept-lines.ts';
import { askedOfThing } from '../technique/asked-of-thing.ts';
import type { AskReply, Ran, Understood } from '../understood.ts';
import { unsureWithReadings } from '../unsure.ts';
import { filled } from './options-of.ts';
import { answered } from './run-reading.ts';

/** More choices fit under no answer. */
const MOST_CHOICES = 20;

/** The command that the question was read as: what was understood in one line, its answer, and the other readings to press. */
export const asCommand: Answerer = {
  id: 'as-command',
  async answer(asked) {
    const reading = await asked.reading();
    return reading && (await runAs(reading, asked));
  },
};

async function runAs(reading: Reading, asked: Asked): Promise<AskReply> {
  const { question, photo, read, context } = asked;
  const near = await asked.nearLye();
  const begun = filled(reading, context);
  const lacks = planLacks(reading, begun, question);
  const told = withPortions(begun, lacks);
  const given = { ...told, ...(photo && { photo }) };
  const others = read.readings.filter(({ job, command }) => job !== reading.job && command !== 'compare');
  const of = askedOfThing(reading, question, textsOf(given), context);
  const ran = await answered(reading, { question, given, read, context, lacks });
  const answer = of ? { ...ran, headline: of.headline } : ran;
  if (!near.recipe && !asked.staysOut() && isGuessed(answer, reading, asked))
    return await unsureWithReadings(asked);
  await keepLines(
    [
      reading.command === 'compare' ? question : lineOf(reading.command, given),
      ...others.map(other => lineOf(other.command, filled(other, context))),
    ],
    context,
  );
  const understood: Understood = {
    kind: 'command',
    job: reading.job,
    command: reading.command,
    given: textsOf(given),
    ...(of?.of && { asked: of.of }),
    facts: withColours(read.facts, reading, question),
    corrections: usedCorrections(read, given),
  };
  return {
    ...answer,
    understood,
    blocks: [
      shownReading(reading, { given, read, context, near }),
      ...notes(reading, { read, context }),
      ...(near.recipe?.notes ?? near.behind ?? []),
      ...answer.blocks,
    ],
    choices: [...(answer.choices ?? []), ...choicesOf(others, context)].slice(0, MOST_CHOICES),
  };
}

/** What was understood, in a line. Of what a lye is for stays in sight with it. */
function shownReading(
  reading: Reading,
  { near, read, ...told }: Parameters<typeof understoodBlock>[1] & { readonly near: NearLye },
) {
  if (reading.job !== 'lye') return understoodBlock(reading, { ...told, read });
  // Words beside a recipe were passed by, or an oil was put right: that has a line of its own.
  const isDoubtful = (near.recipe?.notes.length ?? 0) > 0;
  const shown = isDoubtful ? { ...read, corrections: [] } : read;
  return { ...understoodBlock(reading, { ...told, read: shown }), firm: true };
}

/** A colour guessed from a leftover phrase, or asked back for where none was spoken of. */
function isGuessed(
  { short }: Ran,
  reading: Reading,
  { question, read }: { readonly question: string; readonly read: QuestionRead },
): boolean {
  if (!short || !mayBeGuessed(reading, question, read)) return false;
  return 'problem' in short
    ? short.problem === 'colourant-unknown' || short.problem === 'colourant-ambiguous'
    : read.facts.portion === undefined;
}
