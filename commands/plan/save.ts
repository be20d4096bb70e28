import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import { recentPlanOf, saveRecipe } from '../../src/records/recipes/index.ts';
import { textOf } from './forms.ts';

/** A plan becomes a recipe of the member’s own, under the name that was sent. */
export const nameSent = followUp({
  seenBy: 'asker',
  args: { plan: z.string() },
  async answer({ plan: id }, context, { fields: sent }) {
    const { say } = context;
    const plan = await recentPlanOf(context.shelf, id);
    const kept = await saveRecipe(context.recipes, textOf(sent.name), plan, context.change);
    return { kind: 'reply', headline: say.recipes.saved(kept), data: kept, blocks: [], cautions: [] };
  },
});

/** Asks for that name. */
export const save = followUp({
  seenBy: 'asker',
  opensForm: true,
  args: { plan: z.string() },
  async answer({ plan: id }, context) {
    const { forms } = context.say.plan;
    await recentPlanOf(context.shelf, id);
    return {
      kind: 'form',
      title: forms.save,
      fields: [{ kind: 'line', name: 'name', label: forms.name, required: true, most: 80 }],
      follow: nameSent.with({ plan: id }),
    };
  },
});
