import { z } from 'zod';
import { type AskedLine, askedLineOf } from '../../records/asked/index.ts';
import { followUp } from '../command.ts';
import type { Context } from '../context.ts';
import type { Given } from '../question.ts';
import { replaced } from './what-is-meant.ts';

/** What was given without its files: those cannot be kept. */
export const plainGiven = (given: Given): AskedLine['given'] =>
  Object.fromEntries(
    Object.entries(given).filter(
      (entry): entry is [string, string | number | boolean] => typeof entry[1] !== 'object',
    ),
  );

const args = { line: z.string(), at: z.string().transform(Number) };

type Pressed = { readonly line: string; readonly at: number };

const pressed = async (args: Pressed, context: Context) => {
  const { command, given } = await lineMeant(args, context);
  return context.run(command, given);
};

/** What was unclear may turn out to be a jar of the asker's. */
const meansJar = async (args: Pressed, context: Context): Promise<boolean> => {
  const { command, given } = await lineMeant(args, context);
  return context.namesJar(command, given);
};

/** The command that was asked, with the candidate that was pressed in place of what was unclear. */
async function lineMeant({ line, at }: Pressed, context: Context) {
  const kept = await askedLineOf(context.shelf, line);
  const { option, replaces, candidates, command } = kept;
  const by = candidates[at];
  // Without an option it is the command that was unclear.
  if (option === undefined && by !== undefined) return { command: by, given: kept.given };
  const value = option === undefined ? undefined : kept.given[option];
  const given =
    option === undefined || by === undefined || typeof value !== 'string'
      ? kept.given
      : { ...kept.given, [option]: replaced(value, replaces ?? value, by) };
  return { command, given };
}

/** The line again with what was pressed on, for everybody. */
export const againForGroup = followUp({
  seenBy: 'group',
  pace: 'slow',
  args,
  namesJar: meansJar,
  answer: pressed,
});
/** The same for whoever pressed alone. */
export const againForAsker = followUp({ seenBy: 'asker', pace: 'slow', args, answer: pressed });

/** The buttons of "which one?"; one command registers them for all. */
export const whichOneFollowUps = { again: againForGroup, 'again-alone': againForAsker };
