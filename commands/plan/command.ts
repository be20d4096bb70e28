import { action, command, privateIfRecipe } from '../../src/conversation/command.ts';
import { choice, text, whole } from '../../src/conversation/option.ts';
import { parseOilPrices } from '../../src/engine/cost/oil-prices.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { findRecipe, nearestRecipes } from '../../src/records/recipes/index.ts';
import { phrases } from '../../src/words/declared.ts';
import type { Asking } from './answer.ts';
import { answerPlan, formOf, freshPlan, planFollowUps } from './follow-ups.ts';
import { planNamesJar, whoSees } from './who-sees.ts';
import { changed, wordsGiven, written } from './written.ts';

const says = phrases('plan');

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'oils-missing': Record<never, never>;
  }
}

export default command(
  'plan',
  action({
    purpose: says.purpose,
    anywhere: true,
    opensForm: 'bare',
    seenBy: privateIfRecipe,
    options: {
      ...written,
      recipe: text(says.recipe, { most: 100 }).optional(),
      'save-as': text(says['save-as'], { most: 100 }).optional(),
      prices: text(says.prices, { most: 1000 }).optional(),
      people: whole(says.people, { least: 1, most: 1000 }).optional(),
      stations: whole(says.stations, { least: 1, most: 1000 }).optional(),
      'plan-is-for': choice(says['plan-is-for']).optional(),
    },
    completes: {
      recipe: async (typed, context) =>
        (await nearestRecipes(context.recipes, typed, 25)).map(name => ({ name, value: name })),
    },
    async namesJar(asked, context) {
      const { oils, ...words } = wordsGiven(asked);
      return (
        oils !== undefined && (await planNamesJar(await freshPlan({ ...words, oils }, context), context))
      );
    },
    async answer(asked, context) {
      if (Object.values(asked).every(value => value === undefined))
        return formOf('begin', { now: {}, id: '', seenBy: 'group' }, context);
      const words = wordsGiven(asked);
      const { spoons } = await preferencesOf(context.store, context.asker.id);
      const recipe = asked.recipe === undefined ? undefined : await findRecipe(context.recipes, asked.recipe);
      const { oils } = words;
      if (!recipe && oils === undefined) refuse('oils-missing', {});
      const plan = recipe
        ? changed(recipe, words, spoons)
        : await freshPlan({ ...words, oils: oils ?? '' }, context);
      return answerPlan(
        plan,
        {
          name: recipe?.name,
          saveAs: asked['save-as'],
          lesson: lessonOf(asked),
          prices: asked.prices === undefined ? undefined : parseOilPrices(asked.prices),
          seenBy: recipe ? 'asker' : await whoSees(plan, context),
        },
        context,
      );
    },
  }),
  { followUps: planFollowUps },
);

type LessonAsked = {
  readonly people?: number | undefined;
  readonly stations?: number | undefined;
  readonly 'plan-is-for'?: 'station' | 'class' | undefined;
};

function lessonOf({ people, stations, 'plan-is-for': planIsFor = 'station' }: LessonAsked): Asking['lesson'] {
  if (people === undefined && stations === undefined) return undefined;
  const heads = people ?? stations ?? 1;
  return { people: heads, stations: stations ?? heads, planIsFor };
}
