import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { cut } from '../../src/engine/text/excerpt.ts';
import { fold } from '../../src/engine/text/fold.ts';
import { placingsOf } from '../../src/records/challenges/index.ts';
import { shareRecipe } from '../../src/records/recipes/index.ts';
import { scopeOf } from './lookup.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'bar-not-won': { readonly asked: string | undefined };
  }
}

/**
 * By leave of its maker alone: shows the group the recipe of a bar that won, for whoever wants to keep it. Throws a
 * Refusal `bar-not-won`, or one of sharing a recipe.
 */
export async function giveRecipe(
  asked: { readonly recipe: string; readonly challenge?: string | undefined },
  context: Context,
): Promise<Reply> {
  const won = (await placingsOf(scopeOf(context), context.asker.id)).filter(({ place }) => place === 1);
  const named = asked.challenge;
  const found =
    named === undefined
      ? won[0]
      : won.find(({ challenge, title }) => challenge === named || fold(title) === fold(named));
  if (!found) return refuse('bar-not-won', { asked: named && cut(named, 60) });
  const shared = await shareRecipe(context.recipes, asked.recipe, context.change);
  const { title, bar } = found;
  return {
    kind: 'reply',
    headline: context.say.community.recipeGiven({ title, bar, recipe: shared.name }),
    data: { challenge: found.challenge, recipe: shared.name, repeated: shared.repeated },
    blocks: [],
    cautions: [],
  };
}
