import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Choice } from '../../src/conversation/reply.ts';
import type { NamedDose } from '../../src/presenting/dose.ts';
import { useItem } from '../../src/records/shelf/index.ts';
import type { Jar } from '../../src/records/shelf/jars/jar.ts';
import { undoChoice } from '../shelf/follow-ups.ts';

const take = followUp({
  seenBy: 'asker',
  args: { item: z.string(), milligrams: z.string().transform(Number) },
  async answer({ item, milligrams }, { shelf, change, say }) {
    const outcome = await useItem(shelf, item, milligrams / 1000, change);
    return {
      kind: 'reply',
      headline: outcome.repeated ? say.shelf.takenAlready(outcome) : say.shelf.taken(outcome),
      data: outcome,
      blocks: [],
      cautions: [],
      choices: undoChoice(outcome, change.cause, { say }),
    };
  },
});

/** Offers to take the dose off the shelf where there is enough of it. */
export function takeChoice(
  { item }: Jar,
  { grams, premix }: NamedDose['dose'],
  { say }: Context,
): readonly Choice[] {
  const used = (premix?.grams ?? grams).typical;
  if (!item || (item.stock.grams ?? 0) < used) return [];
  const milligrams = Math.round(used * 1000);
  return [
    {
      kind: 'button',
      label: say.shelf.take({ name: item.name, grams: milligrams / 1000 }),
      follow: take.with({ item: item.id, milligrams }),
    },
  ];
}

export const doseFollowUps = { take };
