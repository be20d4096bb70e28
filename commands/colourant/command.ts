import { action, commandGroup } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, text } from '../../src/conversation/option.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { checkReply } from '../../src/presenting/check.ts';
import { suggestJars } from '../../src/presenting/colour/suggest.ts';
import { weigh } from '../../src/presenting/evidence.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { findRecipe, nearestRecipes } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';
import { findMeant, findTogether, type Meant, meantByText } from '../../src/records/shelf/meant.ts';
import { phrases } from '../../src/words/declared.ts';
import { evidenceFollowUps, evidenceOn } from './follow-ups.ts';
import { labelled, plannedParts } from './label.ts';
import { longestList } from './options.ts';
import { reportActions } from './reports.ts';

const says = phrases('colourant');

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'colour-nothing-given': Record<string, never>;
    'label-nothing-named': Record<string, never>;
  }
}

async function checked(meant: Meant, context: Context): Promise<Reply> {
  const { identity } = meant;
  const weighed = identity === undefined ? undefined : weigh(identity, await evidenceOn(identity, context));
  return checkReply(meant, weighed, context.say);
}

/** The colours of a kept recipe, planned so that they can be weighed. */
async function inRecipe(asked: string, context: Context) {
  const { store, asker, workers } = context;
  const kept = await findRecipe(context.recipes, asked);
  const { spoons } = await preferencesOf(store, asker.id);
  const read = await readKept(kept, context.shelf, MEASURES[spoons]);
  return plannedParts(read, await workers.run('planBatch', read.request, { owner: asker.id }));
}

export default commandGroup(
  'colourant',
  says.purpose,
  {
    check: action({
      purpose: says.check.purpose,
      anywhere: true,
      // An item of one's own shelf is one's own; a label is anybody's.
      seenBy: ({ item }) => (item === undefined ? 'group' : 'asker'),
      options: {
        ingredients: text(says.check.ingredients, { most: longestList }).optional(),
        item: text(says.check.item).optional(),
      },
      completes: { item: suggestJars },
      namesJar: async ({ item }, { shelf }) =>
        item !== undefined && (await findMeant(shelf, item)).item !== undefined,
      async answer({ ingredients, item }, context) {
        if ((ingredients === undefined) === (item === undefined)) refuse('colour-nothing-given', {});
        const meant =
          item === undefined ? meantByText(ingredients ?? '') : await findMeant(context.shelf, item);
        return checked(meant, context);
      },
    }),
    ...reportActions,
    label: action({
      purpose: says.label.purpose,
      seenBy: 'asker',
      options: {
        market: choice(says.label.market),
        of: text(says.label.of, { most: longestList }).optional(),
        recipe: text(says.label.recipe, { most: 100 }).optional(),
      },
      completes: {
        recipe: async (typed, context) =>
          (await nearestRecipes(context.recipes, typed, 25)).map(name => ({ name, value: name })),
      },
      async answer({ of, recipe, market }, context) {
        if ((of === undefined) === (recipe === undefined)) refuse('label-nothing-named', {});
        const { components, unknown } =
          recipe === undefined
            ? await findTogether(context.shelf, of ?? '')
            : await inRecipe(recipe, context);
        if (components.length === 0) refuse('label-nothing-named', {});
        return { kind: 'reply', ...labelled(components, unknown, { market, say: context.say }) };
      },
    }),
  },
  { followUps: evidenceFollowUps },
);
