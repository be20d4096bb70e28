import type { Context } from '../../../src/conversation/context.ts';
import type { Choice } from '../../../src/conversation/reply.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import type { QuestionRead } from '../../../src/engine/questions/read.ts';
import { colourWordIn } from '../../../src/engine/text/colours/colour-words-in.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';
import type { AskReply } from '../understood.ts';

/** What goes wrong most in a pot or a mould that somebody stands before. */
const MOST_OFTEN = ['thick-now', 'riced-now', 'changed-in-pot', 'rising-now', 'no-lumps'] as const;

/** A cry that names nothing is asked one thing: what happened, with what happens most to choose from. */
export async function troubleReply(
  question: string,
  { readings: [reading] }: QuestionRead,
  context: Context,
): Promise<AskReply> {
  const { technique, ask } = context.say;
  const colour = colourWordIn(question);
  if (colour !== undefined) return wantedOrTurned(colour.toLowerCase(), context);
  const isHelp = reading?.job === 'help';
  await keepLines([lineOf('first-aid', {}), lineOf('help', {})], context);
  return {
    kind: 'reply',
    headline: ask.trouble.headline,
    data: {},
    understood: {
      kind: 'asked-back',
      ...(isHelp ? { job: 'help', command: 'help' } : { command: 'ask' }),
      given: {},
    },
    blocks: [{ kind: 'text', text: ask.trouble.why }],
    cautions: [],
    choices: [
      run(ask.trouble.hurt, 0, context),
      ...MOST_OFTEN.map(id => ({
        kind: 'button' as const,
        label: ask.ratherThat({ job: technique.matters[id] }),
        follow: askFollowUps.technique.with({ technique: id }),
      })),
      run(ask.ratherThat({ job: ask.jobs.help }), 1, context),
    ],
  };
}

/** "Brown help": a colour that is wished, or one that came. */
async function wantedOrTurned(colour: string, context: Context): Promise<AskReply> {
  const { ask } = context.say;
  const lines = [
    lineOf('match', { target: colour }),
    lineOf('diagnose', { words: ask.trouble.became({ colour }) }),
  ];
  await keepLines(lines, context);
  return {
    kind: 'reply',
    headline: ask.trouble.wantedOrTurned({ colour }),
    data: {},
    understood: { kind: 'asked-back', command: 'ask', given: {}, colour },
    blocks: [{ kind: 'text', text: ask.tellMore }],
    cautions: [],
    choices: [
      run(ask.trouble.wanted({ colour }), 0, context),
      run(ask.trouble.turned({ colour }), 1, context),
    ],
  };
}

const run = (label: string, at: number, { idempotencyKey: line }: Context): Choice => ({
  kind: 'button',
  label,
  follow: askFollowUps.run.with({ line, at }),
});
