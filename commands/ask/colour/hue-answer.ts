import type { Context } from '../../../src/conversation/context.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { isNamedElsewhere } from '../../../src/engine/questions/fields/other-field.ts';
import { type HueAsked, hueAsked } from '../../../src/engine/questions/found/asked/hue-asked.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { nameOf } from '../../../src/presenting/dose.ts';
import type { Answerer } from '../asked.ts';
import { shownAsReply } from '../reading/ran-command.ts';
import type { AskReply } from '../understood.ts';

/** A colourant that holds, where one is asked for by its hue, with its dose; undefined where nothing of the kind is asked. */
async function hueReply(
  question: string,
  read: QuestionRead,
  context: Context,
): Promise<AskReply | undefined> {
  const asked = isNamedElsewhere(read) || read.facts.named.length > 0 ? undefined : hueAsked(question);
  return asked && (await heldHue(asked, context));
}

/** The same for a hue that is known already; `portion`: for how much, where a talk has told it. */
export async function heldHue(
  { hue, colourant }: HueAsked,
  context: Context,
  portion?: string,
): Promise<AskReply> {
  const { say } = context;
  const given = {
    colourant: nameOf(colourant, say),
    portion: portion ?? say.ask.usualBatch,
  };
  const dose = shownAsReply(await context.run('dose', given), context);
  const note = colourant.id === 'red-30-lake' ? [say.ask.trueRed] : [];
  return {
    ...dose,
    headline: say.ask.hueHolds({ dose: dose.headline, light: colourant.light }),
    understood: { kind: 'command', job: 'mix', command: 'dose', given, hue },
    blocks: [
      ...note.map(text => ({ kind: 'text' as const, text })),
      { kind: 'text', text: say.ask.understood({ line: lineOf('dose', given) }), firm: true },
      ...dose.blocks,
    ],
  };
}

/** A colourant that holds is asked for by its hue. */
export const hue: Answerer = {
  id: 'hue',
  leavesTo: ['stays-out'],
  answer: ({ said, read, context }) => hueReply(said, read, context),
};
