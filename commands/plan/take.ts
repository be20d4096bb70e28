import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import { recentPlanOf } from '../../src/records/recipes/index.ts';
import { useItems } from '../../src/records/shelf/index.ts';
import { undoChoice } from '../shelf/follow-ups.ts';

/** Takes every colour of the plan off the shelf: all of them or none, once. */
export const take = followUp({
  seenBy: 'asker',
  args: { plan: z.string() },
  async answer({ plan: id }, context) {
    const { say } = context;
    const { uses } = await recentPlanOf(context.shelf, id);
    const takings = uses.map(({ item, milligrams }) => ({ item, grams: milligrams / 1000 }));
    const outcomes = await useItems(context.shelf, takings, context.change);
    const notices = outcomes.flatMap(({ name, left, low }) =>
      low && left !== undefined ? [say.shelf.low({ name, left })] : [],
    );
    const repeated = outcomes.some(outcome => outcome.repeated) ? [say.shelf.repeated] : [];
    return {
      kind: 'reply',
      headline: say.plan.takenAll({ outcomes }),
      data: { outcomes },
      blocks: [...repeated, ...notices].map(notice => ({ kind: 'text', text: notice })),
      cautions: [],
      choices: undoChoice({ repeated: repeated.length > 0 }, context.change.cause, context),
    };
  },
});
