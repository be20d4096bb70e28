import { action, command, privateIfRecipe } from '../../src/conversation/command.ts';
import { choice, text, whole } from '../../src/conversation/option.ts';
import { parseOilPrices } from '../../src/engine/cost/oil-prices.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { findRecipe, nearestRecipes } from '../../src/records/recipes/index.ts';
import type { Asking } from './answer.ts';
import { answerPlan, formOf, freshPlan, planFollowUps } from './follow-ups.ts';
import { planNamesJar, whoSees } from './who-sees.ts';
import { changed, wordsGiven, written } from './written.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'oils-missing': Record<never, never>;
  }
}

export default command(
  'plan',
  action({
    purpose: {
      en: 'Plan a coloured batch: lye, water, portions, heat and prep list. Bare: a form',
      es: 'Planea un lote con color: sosa, agua, partes, calor y pasos. Sin nada: un formulario',
    },
    anywhere: true,
    opensForm: 'bare',
    seenBy: privateIfRecipe,
    options: {
      ...written,
      recipe: text(
        {
          en: 'A kept recipe to plan; other options change it',
          es: 'Una receta guardada; las demás opciones la cambian',
        },
        { most: 100 },
      ).optional(),
      'save-as': text(
        { en: 'Keep it as a recipe of that name', es: 'Guárdala como receta con ese nombre' },
        { most: 100 },
      ).optional(),
      prices: text(
        {
          en: 'What your oils cost: “olive 8 €/kg, coconut 6 € per 500 g”',
          es: 'Lo que cuestan tus aceites: «oliva 8 €/kg, coco 6 € por 500 g»',
        },
        { most: 1000 },
      ).optional(),
      people: whole(
        { en: 'For a class: how many people', es: 'Para una clase: cuántas personas' },
        { least: 1, most: 1000 },
      ).optional(),
      stations: whole(
        {
          en: 'For a class: how many stations. One each unless you say',
          es: 'Para una clase: cuántas mesas. Una por persona si no dices',
        },
        { least: 1, most: 1000 },
      ).optional(),
      'plan-is-for': choice(
        {
          en: 'For a class: whether the size is one station’s or everybody’s',
          es: 'Para una clase: si el tamaño es de una mesa o de toda la clase',
        },
        {
          station: { en: 'Each station', es: 'Cada mesa' },
          class: { en: 'The whole class', es: 'Toda la clase' },
        },
      ).optional(),
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
