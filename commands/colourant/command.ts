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
import { evidenceFollowUps, evidenceOn } from './follow-ups.ts';
import { labelled, plannedParts } from './label.ts';
import { longestList } from './options.ts';
import { reportActions } from './reports.ts';

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
  {
    en: 'Will it survive the lye, may it be used, and what this group has seen',
    es: 'Si aguanta la sosa, si se puede usar y qué ha visto este grupo',
  },
  {
    check: action({
      purpose: {
        en: 'Read a label: what lye does to each ingredient, dose, and the law',
        es: 'Lee una etiqueta: qué hace la sosa con cada ingrediente, dosis y normas',
      },
      anywhere: true,
      // An item of one's own shelf is one's own; a label is anybody's.
      seenBy: ({ item }) => (item === undefined ? 'group' : 'asker'),
      options: {
        ingredients: text(
          {
            en: 'The ingredients as the label has them: “Mica (CI 77019), Carmine (CI 75470)”',
            es: 'Los ingredientes como en la etiqueta: «Mica (CI 77019), Carmine (CI 75470)»',
          },
          { most: longestList },
        ).optional(),
        item: text({
          en: 'Or an item on your shelf, or a colourant such as “gold mica”',
          es: 'O un producto de tu estantería, o un colorante como «mica dorada»',
        }).optional(),
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
      purpose: {
        en: 'The colours of a finished bar as its label must list them',
        es: 'Los colores de una pastilla como debe listarlos su etiqueta',
      },
      seenBy: 'asker',
      options: {
        market: choice(
          { en: 'Where it will be sold', es: 'Dónde se venderá' },
          {
            us: { en: 'United States', es: 'Estados Unidos' },
            eu: { en: 'European Union', es: 'Unión Europea' },
          },
        ),
        of: text(
          {
            en: 'The colours in it: “ultramarine blue, gold mica”, or an ingredient list',
            es: 'Los colores que lleva: «azul ultramar, mica dorada», o una lista de ingredientes',
          },
          { most: longestList },
        ).optional(),
        recipe: text(
          { en: 'Or a kept recipe, by its name', es: 'O una receta guardada, por su nombre' },
          { most: 100 },
        ).optional(),
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
