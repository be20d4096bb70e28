import { isSteward } from '../../src/conversation/answering/access.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import * as recipes from '../../src/records/recipes/index.ts';
import { UNDO_MINUTES } from '../../src/records/undo/index.ts';
import { answerPlan } from '../plan/follow-ups.ts';
import { rescaled } from './rescaled.ts';
import { asWritten, listed, told, withUndo } from './view.ts';

/** Which recipe is meant, by its name. */
type Named = { readonly recipe: string };
/** Under which name it is kept, where it is. */
type Kept = { readonly 'save-as'?: string | undefined };

export const listReply = async (context: Context): Promise<Reply> =>
  listed(await recipes.listRecipes(context.recipes), context);

/** The recipe planned anew, whose it is, and its own words. */
export async function showReply({ recipe }: Named, context: Context) {
  const found = await recipes.findRecipe(context.recipes, recipe);
  const reply = await answerPlan(found, { name: found.name, seenBy: 'asker' }, context);
  const by: readonly Block[] = found.shared
    ? [{ kind: 'text', text: context.say.recipes.by({ name: found.byName }) }]
    : [];
  return {
    ...reply,
    data: { ...reply.data, written: found.written, times: found.times, by: found.byName },
    blocks: [...by, ...reply.blocks, asWritten(found, context)],
  };
}

/** Keeps the last plan. */
export async function saveReply(asked: { readonly 'save-as': string }, context: Context): Promise<Reply> {
  const plan = await recipes.lastPlan(context.shelf);
  const kept = await recipes.saveRecipe(context.recipes, asked['save-as'], plan, context.change);
  return told(context.say.recipes.saved(kept), kept, context);
}

export async function copyReply(asked: Named & Kept, context: Context): Promise<Reply> {
  const found = await recipes.findRecipe(context.recipes, asked.recipe);
  const name = asked['save-as'] ?? found.name;
  const kept = await recipes.saveRecipe(context.recipes, name, found, context.change);
  return told(context.say.recipes.copied({ ...kept, from: found.name }), kept, context);
}

/** The recipe planned at another size, and kept where it is given a name. */
export async function rescaleReply(asked: Named & Kept & { readonly size: string }, context: Context) {
  const { say } = context;
  const found = await recipes.findRecipe(context.recipes, asked.recipe);
  const { plan, factor } = await rescaled(found, asked.size, context);
  const keptAs = asked['save-as'];
  const reply = await answerPlan(
    plan,
    { name: keptAs ?? found.name, saveAs: keptAs, seenBy: 'asker' },
    context,
  );
  const said =
    keptAs === undefined
      ? say.recipes.rescaled({ name: found.name, factor })
      : say.recipes.rescaledKept({ name: keptAs, from: found.name, factor });
  return {
    ...reply,
    data: { ...reply.data, factor },
    blocks: [{ kind: 'text' as const, text: said }, ...reply.blocks],
  };
}

export async function shareReply({ recipe }: Named, context: Context): Promise<Reply> {
  const shared = await recipes.shareRecipe(context.recipes, recipe, context.change);
  return told(context.say.recipes.sharedNow(shared), shared, context);
}

/** Takes back what was shared: its maker's, or any for a steward. */
export async function unshareReply({ recipe }: Named, context: Context): Promise<Reply> {
  const change = { ...context.change, steward: await isSteward(context) };
  const taken = await recipes.unshareRecipe(context.recipes, recipe, change);
  return withUndo(told(context.say.recipes.unshared(taken), taken, context), taken, context);
}

export async function removeReply({ recipe }: Named, context: Context): Promise<Reply> {
  const shelf = context.recipes;
  const gone = await recipes.removeRecipe(shelf, recipe, context.change);
  const stays = (await recipes.listRecipes(shelf)).some(
    one => one.shared && one.by === shelf.member && one.name === gone.name,
  );
  const more = stays ? [context.say.recipes.removedStillShared] : [];
  const minutes = gone.repeated ? [] : [context.say.undo.within({ minutes: UNDO_MINUTES })];
  const reply = told(context.say.recipes.removed(gone), gone, context, [...more, ...minutes]);
  return withUndo(reply, gone, context);
}
